// @ts-check
/** The thread beside the server that does the program's own work: reads TypeScript, then begins. */
import { register } from "tsx/esm/api";

register();
await import("./worker.ts");
