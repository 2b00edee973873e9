import {
  drawHeart,
  drawHeartOpened,
  drawHeartWithWindow,
  drawLarynx,
  drawLungs,
} from "#lib/specimens/drawing/thorax-organs.ts";
import { describePlates } from "./looking.ts";

describePlates("organs of the chest", {
  drawHeart,
  drawHeartOpened,
  drawHeartWithWindow,
  drawLungs,
  larynx: (vary) => drawLarynx(vary, false),
  "larynx with thyroid gland": (vary) => drawLarynx(vary, true),
});
