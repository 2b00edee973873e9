import { drawSkeleton } from "#lib/specimens/drawing/skeleton.ts";
import { describePlates } from "./looking.ts";

describePlates("the skeleton", {
  drawSkeleton,
});
