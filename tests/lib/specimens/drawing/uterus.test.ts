import { drawUterus } from "#lib/specimens/drawing/uterus.ts";
import { describePlates } from "./looking.ts";

describePlates("the uterus", {
  drawUterus,
});
