import { drawHead, drawSkullFront, drawSkullSide } from "#lib/specimens/drawing/head.ts";
import { describePlates } from "./looking.ts";

describePlates("head and skull", {
  drawHead,
  drawSkullSide,
  drawSkullFront,
});
