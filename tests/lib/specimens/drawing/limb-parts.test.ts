import {
  drawForearmFromBehind,
  drawPoplitealFossa,
  drawShoulderJoint,
  drawSole,
} from "#lib/specimens/drawing/limb-parts.ts";
import { describePlates } from "./looking.ts";

describePlates("parts of the limbs", {
  drawShoulderJoint,
  drawForearmFromBehind,
  drawPoplitealFossa,
  drawSole,
});
