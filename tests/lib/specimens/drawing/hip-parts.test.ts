import { drawGlutealRegion, drawGroin } from "#lib/specimens/drawing/hip-parts.ts";
import { describePlates } from "./looking.ts";

describePlates("where limb and trunk meet", {
  drawGlutealRegion,
  drawGroin,
});
