import { drawEquineDigitSection, drawEquineFoot } from "#lib/specimens/drawing/animal-limb.ts";
import { describePlates } from "./looking.ts";

describePlates("the foot of a horse", {
  drawEquineDigitSection,
  drawEquineFoot,
});
