import { drawBrainBelow, drawBrainSide, drawSpinalCord } from "#lib/specimens/drawing/brain.ts";
import { describePlates } from "./looking.ts";

describePlates("the brain", {
  drawBrainSide,
  drawBrainBelow,
  drawSpinalCord,
});
