import {
  drawFemur,
  drawPelvis,
  drawRibCage,
  drawScapula,
  drawVertebra,
} from "#lib/specimens/drawing/bones.ts";
import { describePlates } from "./looking.ts";

describePlates("single bones", {
  drawVertebra,
  drawFemur,
  drawScapula,
  drawPelvis,
  drawRibCage,
});
