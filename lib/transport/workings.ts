/** The computations of this room that a user may ask for on their own, in the order of a plan. */
import { cornerTurn } from "#lib/transport/corner-turn.ts";
import { crate } from "#lib/transport/crate.ts";
import { cratePlan } from "#lib/transport/crate-plan.ts";
import { cushion } from "#lib/transport/cushion.ts";
import { dropHeight } from "#lib/transport/drop-height.ts";
import { fragility } from "#lib/transport/fragility.ts";
import { handling } from "#lib/transport/handling.ts";
import { innerCase } from "#lib/transport/inner-case.ts";
import { passage } from "#lib/transport/route.ts";
import { sheetSupport } from "#lib/transport/sheet-support.ts";
import { volumetricMass } from "#lib/transport/volumetric-mass.ts";

export const transportWorkings = [
  cratePlan,
  fragility,
  sheetSupport,
  dropHeight,
  innerCase,
  cushion,
  crate,
  volumetricMass,
  handling,
  passage,
  cornerTurn,
] as const;
