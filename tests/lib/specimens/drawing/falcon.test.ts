import { drawFalconSkeleton } from "#lib/specimens/drawing/falcon.ts";
import { describePlates } from "./looking.ts";

describePlates("a falcon", {
  drawFalconSkeleton,
});
