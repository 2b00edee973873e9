/** From which sheet to which a series shows a structure. */
import type { Shown } from "#lib/specimens/schema.ts";

/** A structure and the sheets that cut it, first and last included. */
export type Span = { structureId: string; from: number; to: number; sides: readonly Shown["side"][] };
