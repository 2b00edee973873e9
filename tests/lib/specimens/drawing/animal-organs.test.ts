import {
  drawAirSacCast,
  drawDogOrgans,
  drawFishOrgans,
  drawRuminantStomach,
} from "#lib/specimens/drawing/animal-organs.ts";
import { describePlates } from "./looking.ts";

describePlates("organs of animals", {
  drawRuminantStomach,
  drawDogOrgans,
  drawFishOrgans,
  drawAirSacCast,
});
