import { drawPalm, drawUpperLimb, drawUpperLimbWithGirdle } from "#lib/specimens/drawing/upper-limb.ts";
import { describePlates } from "./looking.ts";

describePlates("the upper limb", {
  drawUpperLimb,
  drawUpperLimbWithGirdle,
  drawPalm,
});
