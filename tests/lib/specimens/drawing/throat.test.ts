import {
  drawLarynxOpened,
  drawNeck,
  drawOrbitFromAbove,
  drawPharynxFromBehind,
} from "#lib/specimens/drawing/throat.ts";
import { describePlates } from "./looking.ts";

describePlates("throat and orbit", {
  drawNeck,
  drawLarynxOpened,
  drawPharynxFromBehind,
  drawOrbitFromAbove,
});
