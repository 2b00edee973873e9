/**
 * The crate for one specimen, from what the catalogue knows of it to the doors of
 * the venue. Every figure of the plan is one of the smaller workings; this file
 * only chooses their inputs and puts them in order:
 *
 *   fragility ─┐                    ┌─ volumetric mass
 *   sheet? ────┤ kind of crate      ├─ handling ─┐
 *   drop ──────┴─ inner case ─ cushion ─ crate ──┴─ passages
 *     ▲                                    │
 *     └──────────── gross mass ────────────┘
 *
 * Gross mass and drop height depend on each other: a heavier crate falls less far,
 * a lower fall needs less foam, less foam makes a lighter crate. The plan takes the
 * lowest drop height of the carrier's table that its own crate is heavy enough for.
 * Where a thinner cushion would make the crate too light for it, that is one row
 * higher than the table asks: on the safe side.
 */
import { z } from "zod";
import { buildCrate, Crate, type CrateInput, crate } from "#lib/transport/crate.ts";
import {
  boardsOfCrateMm,
  Cushion,
  type CushionTrial,
  cushion,
  firstThatHolds,
  readFoams,
  tryCushion,
} from "#lib/transport/cushion.ts";
import {
  dropHeight,
  dropHeightMm,
  dropHeightsOfCarrierMm,
  type TooLight,
} from "#lib/transport/drop-height.ts";
import type { Foam } from "#lib/transport/foam.ts";
import { fragility } from "#lib/transport/fragility.ts";
import { crews, handling } from "#lib/transport/handling.ts";
import { InnerCase, innerCase, innerWallsMm, layInnerCase } from "#lib/transport/inner-case.ts";
import { PassageResult, passage, routeOutcome } from "#lib/transport/route.ts";
import {
  type BoardThicknessMm,
  CarrierClass,
  CrateKind,
  CrateOrientation,
  DropHeightMm,
  FoamId,
  FragilityClass,
  MassKg,
  OwnFoam,
  Passage,
  PeakG,
  type PlanReason,
  planReasons,
  SheetSupport,
  Sides,
} from "#lib/transport/schema.ts";
import { sheetSupport } from "#lib/transport/sheet-support.ts";
import { volumetricMass } from "#lib/transport/volumetric-mass.ts";
import { type Outcome, outcomes, strictestOutcome } from "#lib/workings/outcome.ts";
import { cite } from "#lib/workings/sources.ts";
import { type Note, type Step, working } from "#lib/workings/working.ts";

/** Absorbent for all the fluid and a tenth more; common practice, no source. */
const ABSORBENT_SHARE = 1.1;
/** A hand pallet truck and what it raises the crate by while rolling; common practice, no source. */
const TRUCK_KG = 75;
const TRUCK_RAISE_MM = 30;

export const CratePlanInput = z.object({
  sides: Sides.meta({ title: "Outer sides with mount" }),
  massKg: MassKg.meta({ title: "Mass with mount", unit: "kg" }),
  fragilityClass: FragilityClass,
  /** The curator's own figure in place of the starting value of the class. */
  curatorPeakG: PeakG.optional(),
  uprightOnly: z.boolean().meta({ title: "Upright only" }),
  /** Alike specimens in one crate: sheets of a series, bones of a set. */
  count: z.number().int().min(1).max(200).default(1).meta({ title: "Specimens in the crate", unit: "" }),
  sheet: z
    .object({
      thicknessMm: z.number().min(0.1).max(100).meta({ title: "Thickness of the sheet", unit: "mm" }),
      spanMm: z.number().min(1).max(3_000).meta({ title: "Span between the held edges", unit: "mm" }),
      designStrengthMpa: z
        .number()
        .min(0.1)
        .max(200)
        .optional()
        .meta({ title: "Design strength", unit: "MPa" }),
    })
    .optional(),
  jar: z
    .object({ fluidVolumeMl: z.number().min(0).max(1_000_000).meta({ title: "Fluid", unit: "ml" }) })
    .optional(),
  carrierClass: CarrierClass,
  foam: FoamId.optional(),
  ownFoam: OwnFoam.optional(),
  crew: z.enum(crews).default("women"),
  passages: z.array(Passage).max(50).default([]),
});
export type CratePlanInput = z.output<typeof CratePlanInput>;

const outcomeOfReason: Readonly<Record<PlanReason, Outcome>> = {
  "no-cushion-holds": "bar",
  "passage-bars": "bar",
  "passage-to-attend": "attend",
  "way-in-not-known": "attend",
  "base-to-be-engineered": "attend",
  "tips-unlashed": "attend",
};

export const CratePlan = z.object({
  outcome: z.enum(outcomes),
  /** Every reason for an outcome that is not clear; a plan kept before reasons were told has none. */
  reasons: z.array(z.enum(planReasons)).default([]),
  peakG: PeakG,
  /** Null for what is not a sheet. */
  sheetSupport: SheetSupport.nullable(),
  kind: CrateKind,
  orientation: CrateOrientation,
  /** What the crate was designed to fall from. */
  dropHeightMm: DropHeightMm,
  innerCase: InnerCase,
  innerCaseWallMm: z.number().nullable().meta({ title: "Plywood of the inner case", unit: "mm" }),
  cushion: Cushion,
  crate: Crate,
  volumetricMassKg: z.number().meta({ title: "Volumetric mass", unit: "kg" }),
  chargeableMassKg: z.number().meta({ title: "Chargeable mass", unit: "kg" }),
  handling: handling.output,
  absorbentMl: z.number().nullable().meta({ title: "Absorbent for at least", unit: "ml" }),
  passages: z.array(PassageResult),
  route: z.enum(outcomes),
});
export type CratePlan = z.infer<typeof CratePlan>;

// --------------------------------------------------------------- the kind of crate

/** A sheet without known thickness and span lies on its full face. */
function sheetInput(input: CratePlanInput, peakG: number) {
  if (input.fragilityClass !== "sheet" || input.sheet === undefined) return null;
  const { thicknessMm, spanMm, designStrengthMpa } = input.sheet;
  return { thicknessMm, spanMm, peakG, ...(designStrengthMpa === undefined ? {} : { designStrengthMpa }) };
}

type Born = { peakG: number; innerCase: boolean };

/** Kinds in order of preference: the simplest that may hold stands first. */
function kindsToTry(input: CratePlanInput, born: Born, support: SheetSupport | null): CrateKind[] {
  if (input.fragilityClass === "jar") return ["jar-case"];
  if (support === "upright-in-slots") return ["upright-slot-case"];
  if (support === "full-face") return ["full-face-sheet-carrier"];
  return born.innerCase ? ["double-case"] : ["single-case", "double-case"];
}

// ---------------------------------------------------------- cushion and gross mass

type InnerChoice = {
  kind: CrateKind;
  wallMm: (typeof innerWallsMm)[number];
  cushionMm: BoardThicknessMm;
};
type LaidCase = InnerCase & { choice: InnerChoice };

const innerCaseInput = (input: CratePlanInput, choice: InnerChoice) => ({
  ...choice,
  sides: input.sides,
  massKg: input.massKg,
  count: input.count,
});

/** Every load under every foam: kinds as preferred, then thin before thick, light wall before heavy. */
function* eachTrial(
  input: CratePlanInput,
  kinds: readonly CrateKind[],
  foams: readonly Foam[],
  fallMm: number,
  limitG: number,
) {
  for (const kind of kinds) {
    for (const cushionMm of boardsOfCrateMm(limitG)) {
      for (const wallMm of kind === "single-case" ? ([9] as const) : innerWallsMm) {
        const choice: InnerChoice = { kind, wallMm, cushionMm };
        const load: LaidCase = { ...layInnerCase(innerCaseInput(input, choice)), choice };
        for (const foam of foams) yield tryCushion(load, foam, cushionMm, fallMm, limitG);
      }
    }
  }
}

/** Nothing may stand on glass or filigree. */
const isStackable = (input: CratePlanInput) =>
  !["jar", "corrosion-cast", "articulated-skeleton"].includes(input.fragilityClass);

function crateInput(input: CratePlanInput, trial: CushionTrial<LaidCase>): CrateInput {
  const { load, thicknessMm, foam } = trial;
  return {
    sides: load.sides,
    massKg: load.massKg,
    wrapMm: load.wrapMm,
    cushionMm: thicknessMm,
    foamDensityKgM3: foam.densityKgM3,
    centreOfGravityShare: 0.5,
    stackable: isStackable(input),
  };
}

/** The lowest drop height whose own crate is heavy enough for it, and the crates of lower ones that are not. */
function settleDropHeight(input: CratePlanInput, kinds: readonly CrateKind[], limitG: number) {
  const foams = readFoams(input.ownFoam, input.foam);
  const tooLight: TooLight[] = [];
  for (const fallMm of dropHeightsOfCarrierMm(input.carrierClass)) {
    const trial = firstThatHolds(eachTrial(input, kinds, foams, fallMm, limitG));
    if (trial === null) break;
    const { grossMassKg } = buildCrate(crateInput(input, trial));
    if (dropHeightMm(input.carrierClass, grossMassKg) <= fallMm)
      return { fallMm, trial, grossMassKg, tooLight };
    tooLight.push({ dropHeightMm: fallMm, grossMassKg });
  }
  throw new RangeError("the highest drop of a table suits every mass");
}

// ------------------------------------------------------------------------ the plan

/** Takes the steps of a smaller working over into the plan's own. */
const repeat =
  (note: Note) =>
  ({ label, value, unit, formula }: Step): void => {
    note(label, value, unit, formula);
  };

/** The inputs of all the smaller workings, so that each can be explained on its own. */
function layOut(input: CratePlanInput) {
  const born = fragility({
    fragilityClass: input.fragilityClass,
    ...(input.curatorPeakG === undefined ? {} : { curatorPeakG: input.curatorPeakG }),
  });
  const sheet = sheetInput(input, born.peakG);
  const support =
    input.fragilityClass === "sheet" ? (sheet === null ? "full-face" : sheetSupport(sheet).support) : null;
  const { fallMm, trial, grossMassKg, tooLight } = settleDropHeight(
    input,
    kindsToTry(input, born, support),
    born.peakG,
  );
  const { kind, cushionMm } = trial.load.choice;
  const keepUpright = input.uprightOnly || kind === "jar-case" || kind === "upright-slot-case";
  const orientation: CrateOrientation = keepUpright ? "this-side-up" : "any-side";
  const built = buildCrate(crateInput(input, trial));
  const handlingInput = {
    grossMassKg,
    outer: built.outer,
    crew: input.crew,
    topplesOntoTwo: built.topplesOntoTwo,
    standsUnlashed: built.standsUnlashedOnRoad,
    keepUpright,
  };
  const onTruck = handling(handlingInput).mode === "pallet-truck";
  const moving = {
    outer: built.outer,
    grossMassKg,
    orientation,
    tipAngleDeg: built.tipAngleDeg,
    raisedMm: onTruck ? TRUCK_RAISE_MM : 0,
    truckMassKg: onTruck ? TRUCK_KG : 0,
    persons: onTruck ? 2 : 1,
  };
  return {
    fragility: { fragilityClass: input.fragilityClass, curatorPeakG: input.curatorPeakG },
    sheetSupport: sheet,
    support,
    orientation,
    dropHeight: { grossMassKg, carrierClass: input.carrierClass, tooLight },
    choice: trial.load.choice,
    innerCase: innerCaseInput(input, trial.load.choice),
    cushion: {
      massKg: trial.load.massKg,
      sides: trial.load.sides,
      bearingShare: trial.load.bearingShare,
      dropHeightMm: fallMm,
      peakG: born.peakG,
      thicknessMm: cushionMm,
      foam: trial.foam.id === "own" ? undefined : trial.foam.id,
      ownFoam: input.ownFoam,
    },
    crate: crateInput(input, trial),
    volumetricMass: { outer: built.outer, grossMassKg },
    handling: handlingInput,
    passages: input.passages.map((one) => ({ crate: moving, passage: one })),
  };
}

export const cratePlan = working({
  id: "crate-plan",
  title: "Crate for a specimen",
  about: "Drop height, cushion, crate, handling and way in for one specimen, each from the one before.",
  input: CratePlanInput,
  output: CratePlan,
  sources: [
    cite("ista-1a-2a", "drop heights"),
    cite("mil-hdbk-304", "drop heights by handling; Kersten; creep"),
    cite("stress-energy", "cushion"),
    cite("panel-transport-1998", "shock of panels; ester polyurethane; 100 mm for the very fragile"),
    cite("cci-six-steps", "carriers, cases, panels"),
    cite("conserve-o-gram-17-3", "at least 50 mm of cushion"),
    cite("tm-43-0156", "panels and battens"),
    cite("gdv-packaging", "lid load, tipping"),
    cite("hse-l23", "handling"),
    cite("air-volumetric-divisor", "volumetric mass"),
    cite("derived", "bending of sheets, turn of a corridor"),
    cite("practice", "fragility, wrap, lining, clearance"),
  ],
  cautions: [
    "Modelled, not tested: an estimate until the packed crate has been dropped. A second person signs.",
    "Fragility is a starting value: the curator decides.",
    "Local rules on handling and on wood across borders prevail: check with the local authority.",
  ],
  compute(input, note) {
    const inputs = layOut(input);
    const peakG = fragility.compute(inputs.fragility, note).peakG;
    if (inputs.sheetSupport !== null) sheetSupport.explain(inputs.sheetSupport).steps.forEach(repeat(note));
    const kind = note("kind of crate", inputs.choice.kind);
    note("orientation", inputs.orientation);
    const fall = dropHeight.compute(inputs.dropHeight, note);
    const load = innerCase.compute(inputs.innerCase, note);
    const cushioned = cushion.compute(inputs.cushion, note);
    const built = crate.compute(inputs.crate, note);
    const air = volumetricMass.explain(inputs.volumetricMass);
    air.steps.forEach(repeat(note));
    const handled = handling.compute(inputs.handling, note);
    const passed = inputs.passages.map((one) => passage.compute(one, note));
    const route = note(
      "way in",
      routeOutcome(passed),
      "",
      "the strictest passage; attend when none is known",
    );
    const absorbentMl =
      input.jar === undefined
        ? null
        : note("absorbent", input.jar.fluidVolumeMl * ABSORBENT_SHARE, "ml", "1.1 × fluid");
    const applies: Readonly<Record<PlanReason, boolean>> = {
      "no-cushion-holds": !cushioned.holds,
      "passage-bars": route === "bar",
      "passage-to-attend": passed.some((one) => one.outcome === "attend"),
      "way-in-not-known": passed.length === 0,
      "base-to-be-engineered": built.wall.engineeredBase,
      "tips-unlashed": !built.standsUnlashedOnRoad,
    };
    const reasons = planReasons.filter((reason) => applies[reason]);
    const outcome = note(
      "outcome",
      strictestOutcome(["clear", ...reasons.map((reason) => outcomeOfReason[reason])]),
      "",
      reasons.join(", "),
    );
    return {
      outcome,
      reasons,
      peakG,
      sheetSupport: inputs.support,
      kind,
      orientation: inputs.orientation,
      dropHeightMm: fall.dropHeightMm,
      innerCase: load,
      innerCaseWallMm: kind === "single-case" ? null : inputs.choice.wallMm,
      cushion: cushioned,
      crate: built,
      ...air.output,
      handling: handled,
      absorbentMl,
      passages: passed,
      route,
    };
  },
});

/** The plan, and beside each figure the working it came from: its steps, sources and cautions. */
export function explainCratePlan(input: unknown) {
  const plan = cratePlan.explain(input);
  const inputs = layOut(CratePlanInput.parse(input));
  return {
    plan,
    margin: {
      fragility: fragility.explain(inputs.fragility),
      sheetSupport: inputs.sheetSupport === null ? null : sheetSupport.explain(inputs.sheetSupport),
      dropHeight: dropHeight.explain(inputs.dropHeight),
      innerCase: innerCase.explain(inputs.innerCase),
      cushion: cushion.explain(inputs.cushion),
      crate: crate.explain(inputs.crate),
      volumetricMass: volumetricMass.explain(inputs.volumetricMass),
      handling: handling.explain(inputs.handling),
      passages: inputs.passages.map((one) => passage.explain(one)),
    },
  };
}
