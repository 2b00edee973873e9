/**
 * The foam between crate and contents: which, how thick, and how large the pads
 * on each face. A cushion holds when the shock, with a margin of 15 % for a model
 * that is not a test, stays within what the contents bear; when it still does
 * after a tenth of the thickness has crept away; when no pad is so tall that it
 * buckles; and when the static stress stays below the creep limit. The thinnest
 * board that holds wins, then the foam that stands first in the list.
 *
 * Each face of the contents has its own pads, because each face carries the same
 * weight on a different area. Where nothing holds, the best attempt is shown with
 * its faults, and what would hold instead.
 */
import { z } from "zod";
import { Refusal } from "#lib/platform/refusal.ts";
import {
  cushionOptimum,
  cushionPeakG,
  type Foam,
  foamsToTry,
  STANDARD_GRAVITY,
} from "#lib/transport/foam.ts";
import {
  BoardThicknessMm,
  boardThicknessesMm,
  DropHeightMm,
  FoamId,
  foamIds,
  MassKg,
  OwnFoam,
  PeakG,
  Sides,
} from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { standings } from "#lib/workings/standing.ts";
import { type Note, working } from "#lib/workings/working.ts";

/** Margin on G for an untested model; the model runs 7 to 14 % below remembered curves. */
export const SHOCK_MARGIN = 0.15;
/** Thickness lost to creep within 1000 h at the creep limit (MIL-HDBK-304, from memory). */
export const CREEP_LOSS = 0.1;
/** Kersten: the shorter side of a pad is at least this many thicknesses (MIL-HDBK-304, from memory). */
export const KERSTEN_FACTOR = 1.33;
/** Pads are cut to whole centimetres. */
const PAD_STEP_MM = 10;
/** Pads in the corners, in two halves, or one in the middle. */
const padCounts = [4, 2, 1] as const;

/** Room that box in box leaves (conserve-o-gram-17-3), and that very fragile things need (panel-transport-1998). */
const LEAST_CUSHION_MM = 50;
const LEAST_CUSHION_OF_VERY_FRAGILE_MM = 100;
/** "Extremely fragile" ends here (MIL-HDBK-304, from memory). */
const VERY_FRAGILE_UP_TO_G = 25;

export const cushionFaults = ["shock", "shock-after-creep", "buckling", "creep"] as const;
export type CushionFault = (typeof cushionFaults)[number];
export const cushionFaces = ["base-and-lid", "long-sides", "ends"] as const;

export const CushionFace = z.object({
  face: z.enum(cushionFaces),
  padCount: z.number(),
  padShortMm: z.number().meta({ title: "Pad, shorter side", unit: "mm" }),
  padLongMm: z.number().meta({ title: "Pad, longer side", unit: "mm" }),
  bearingAreaMm2: z.number().meta({ title: "Bearing area", unit: "mm²" }),
  staticStressKpa: z.number().meta({ title: "Static stress", unit: "kPa" }),
  peakG: z.number().meta({ title: "Shock", unit: "G" }),
  peakAfterCreepG: z.number().meta({ title: "Shock after creep", unit: "G" }),
  faults: z.array(z.enum(cushionFaults)),
});
export type CushionFace = z.infer<typeof CushionFace>;

/** What lies on the cushion: its sides, its mass, and the share of each face that can bear load. */
export type CushionLoad = { sides: Sides; massKg: number; bearingShare: number };

/** @returns mm, the shortest side that keeps a pad of this thickness from buckling */
export function kerstenSideMm(thicknessMm: number): number {
  if (!(thicknessMm > 0)) throw new RangeError("thickness must be above 0 mm");
  return KERSTEN_FACTOR * thicknessMm;
}

/** @returns mm, the boards that a crate may be built with, from the thinnest; curves alone would allow thinner */
export function boardsOfCrateMm(peakG: number) {
  const leastMm = peakG <= VERY_FRAGILE_UP_TO_G ? LEAST_CUSHION_OF_VERY_FRAGILE_MM : LEAST_CUSHION_MM;
  return boardThicknessesMm.filter((boardMm) => boardMm >= leastMm);
}

const roundUpTo = (step: number, value: number) => Math.ceil(value / step - 1e-9) * step;

/**
 * Pads on one face, as square as it allows:
 *
 *     4 pads        2 pads        1 pad
 *     ┌─┐  ┌─┐     ┌──┐ ┌──┐      ┌────┐
 *     └─┘  └─┘     │  │ │  │      │    │
 *     ┌─┐  ┌─┐     │  │ │  │      │    │
 *     └─┘  └─┘     └──┘ └──┘      └────┘
 */
function layPads(
  longMm: number,
  shortMm: number,
  padCount: number,
  wantedAreaMm2: number,
  thicknessMm: number,
) {
  const alongMm = padCount === 1 ? longMm : longMm / 2;
  const acrossMm = padCount === 4 ? shortMm / 2 : shortMm;
  const roomShortMm = Math.min(alongMm, acrossMm);
  const roomLongMm = Math.max(alongMm, acrossMm);
  const eachMm2 = wantedAreaMm2 / padCount;
  const squareMm = roundUpTo(PAD_STEP_MM, Math.max(Math.sqrt(eachMm2), kerstenSideMm(thicknessMm)));
  const padShortMm = Math.min(squareMm, roomShortMm);
  const neededMm = padShortMm < squareMm ? roundUpTo(PAD_STEP_MM, eachMm2 / padShortMm) : squareMm;
  return { padShortMm, padLongMm: Math.min(Math.max(padShortMm, neededMm), roomLongMm) };
}

function tryFace(
  face: (typeof cushionFaces)[number],
  [firstMm, secondMm]: readonly [number, number],
  load: CushionLoad,
  foam: Foam,
  thicknessMm: number,
  fallMm: number,
  limitG: number,
): CushionFace {
  const weightN = load.massKg * STANDARD_GRAVITY;
  const shrink = Math.sqrt(load.bearingShare);
  const bestStressKpa = cushionOptimum(foam, fallMm, thicknessMm).staticStressKpa;
  const wantedAreaMm2 = (weightN / Math.min(bestStressKpa, foam.creepLimitKpa)) * 1000;
  const tries = padCounts.map((padCount) => {
    const longMm = Math.max(firstMm, secondMm) * shrink;
    const shortMm = Math.min(firstMm, secondMm) * shrink;
    const pad = layPads(longMm, shortMm, padCount, wantedAreaMm2, thicknessMm);
    const bearingAreaMm2 = padCount * pad.padShortMm * pad.padLongMm;
    const staticStressKpa = (weightN / bearingAreaMm2) * 1000;
    const peakG = cushionPeakG(foam, staticStressKpa, fallMm, thicknessMm);
    const peakAfterCreepG = cushionPeakG(foam, staticStressKpa, fallMm, thicknessMm * (1 - CREEP_LOSS));
    const faults: CushionFault[] = [];
    if (!(peakG * (1 + SHOCK_MARGIN) <= limitG)) faults.push("shock");
    if (!(peakAfterCreepG <= limitG)) faults.push("shock-after-creep");
    if (pad.padShortMm < kerstenSideMm(thicknessMm)) faults.push("buckling");
    if (staticStressKpa > foam.creepLimitKpa) faults.push("creep");
    return { face, padCount, ...pad, bearingAreaMm2, staticStressKpa, peakG, peakAfterCreepG, faults };
  });
  return tries.reduce((best, next) => (isBetter(next, best) ? next : best));
}

type Judged = { faults: readonly CushionFault[]; peakG: number };

/** Fewer faults first, then, where both fail, the lower shock. */
function isBetter(next: Judged, best: Judged): boolean {
  if (next.faults.length !== best.faults.length) return next.faults.length < best.faults.length;
  return next.faults.length > 0 && next.peakG < best.peakG;
}

export type CushionTrial<Load extends CushionLoad = CushionLoad> = {
  load: Load;
  foam: Foam;
  thicknessMm: number;
  faces: CushionFace[];
  /** The worst over the faces. */
  peakG: number;
  peakAfterCreepG: number;
  faults: CushionFault[];
};

/** One foam of one thickness under one load. */
export function tryCushion<Load extends CushionLoad>(
  load: Load,
  foam: Foam,
  thicknessMm: number,
  fallMm: number,
  limitG: number,
): CushionTrial<Load> {
  const { lengthMm, widthMm, heightMm } = load.sides;
  const faces = (
    [
      ["base-and-lid", [lengthMm, widthMm]],
      ["long-sides", [Math.max(lengthMm, widthMm), heightMm]],
      ["ends", [Math.min(lengthMm, widthMm), heightMm]],
    ] as const
  ).map(([face, edges]) => tryFace(face, edges, load, foam, thicknessMm, fallMm, limitG));
  return {
    load,
    foam,
    thicknessMm,
    faces,
    peakG: Math.max(...faces.map((face) => face.peakG)),
    peakAfterCreepG: Math.max(...faces.map((face) => face.peakAfterCreepG)),
    faults: cushionFaults.filter((fault) => faces.some((face) => face.faults.includes(fault))),
  };
}

/** @returns the first trial that holds, else the best of them; null when there is none */
export function firstThatHolds<Load extends CushionLoad>(trials: Iterable<CushionTrial<Load>>) {
  let best: CushionTrial<Load> | null = null;
  for (const trial of trials) {
    if (trial.faults.length === 0) return trial;
    if (best === null || isBetter(trial, best)) best = trial;
  }
  return best;
}

function* eachTrial(
  load: CushionLoad,
  foams: readonly Foam[],
  thicknesses: readonly number[],
  fallMm: number,
  limitG: number,
) {
  for (const thicknessMm of thicknesses) {
    for (const foam of foams) yield tryCushion(load, foam, thicknessMm, fallMm, limitG);
  }
}

const WouldHold = z.object({
  thicknessMm: z.number().nullable().meta({ title: "A cushion of this thickness", unit: "mm" }),
  dropHeightMm: z.number().nullable().meta({ title: "A drop no higher than", unit: "mm" }),
  massKg: z.number().nullable().meta({ title: "Contents, with a heavier inner case, of", unit: "kg" }),
  peakG: z.number().nullable().meta({ title: "Contents that bear", unit: "G" }),
});

/** Thicker than any board: several glued together. */
const gluedThicknessesMm = [175, 200, 225, 250, 275, 300];

/** What would hold, one change at a time, where no board does. */
function findWhatHolds(
  load: CushionLoad,
  foams: readonly Foam[],
  fallMm: number,
  limitG: number,
): z.infer<typeof WouldHold> {
  const holds = (change: { massKg?: number; fallMm?: number; limitG?: number; boards?: readonly number[] }) =>
    firstThatHolds(
      eachTrial(
        { ...load, massKg: change.massKg ?? load.massKg },
        foams,
        change.boards ?? boardThicknessesMm,
        change.fallMm ?? fallMm,
        change.limitG ?? limitG,
      ),
    )?.faults.length === 0;
  const firstOf = (values: readonly number[], hold: (value: number) => boolean) => values.find(hold) ?? null;
  const steps = (from: number, by: number, count: number) =>
    Array.from({ length: count }, (_, index) => from + by * (index + 1));
  return {
    thicknessMm: firstOf([...boardThicknessesMm, ...gluedThicknessesMm], (boardMm) =>
      holds({ boards: [boardMm] }),
    ),
    dropHeightMm: firstOf(steps(Math.ceil(fallMm / 10) * 10, -10, Math.ceil(fallMm / 10) - 1), (lowerMm) =>
      holds({ fallMm: lowerMm }),
    ),
    massKg: firstOf(steps(Math.ceil(load.massKg * 2) / 2, 0.5, 120), (massKg) => holds({ massKg })),
    peakG: firstOf(steps(Math.ceil(limitG), 1, 200), (bornG) => holds({ limitG: bornG })),
  };
}

export const Cushion = z.object({
  holds: z.boolean(),
  foam: z.enum([...foamIds, "own"]),
  foamStanding: z.enum(standings),
  foamRemark: z.string(),
  foamDensityKgM3: z.number().meta({ title: "Density of the foam", unit: "kg/m³" }),
  thicknessMm: z.number().meta({ title: "Thickness", unit: "mm" }),
  peakG: z.number().meta({ title: "Shock", unit: "G" }),
  peakAfterCreepG: z.number().meta({ title: "Shock after creep", unit: "G" }),
  faces: z.array(CushionFace),
  faults: z.array(z.enum(cushionFaults)),
  /** What would hold instead, one change at a time; null when the cushion holds. */
  wouldHold: WouldHold.nullable(),
});
export type Cushion = z.infer<typeof Cushion>;

function noteTrial(trial: CushionTrial, fallMm: number, limitG: number, note: Note): void {
  const { foam, thicknessMm, load } = trial;
  const optimum = cushionOptimum(foam, fallMm, thicknessMm);
  note("greatest shock by the model", limitG / (1 + SHOCK_MARGIN), "G", "limit / 1.15");
  note("foam", foam.id, "", foam.remark);
  note("a", foam.aKpa, "kPa", foam.standing);
  note("b", foam.bPerKpa, "1/kPa", foam.standing);
  note(
    "least thickness",
    (foam.aKpa * foam.bPerKpa * Math.E * fallMm * (1 + SHOCK_MARGIN)) / limitG,
    "mm",
    "1.15 a b e h / G",
  );
  note("thickness of board", thicknessMm, "mm", "thinnest board that holds on every face");
  note("best static stress", optimum.staticStressKpa, "kPa", "t / (b h)");
  note("lowest shock", optimum.peakG, "G", "a b e h / t");
  note("shortest side of a pad", kerstenSideMm(thicknessMm), "mm", "1.33 t (Kersten)");
  for (const face of trial.faces) {
    note(
      `${face.face}: bearing area`,
      face.bearingAreaMm2,
      "mm²",
      `${face.padCount} × ${face.padShortMm.toFixed(0)} × ${face.padLongMm.toFixed(0)} mm`,
    );
    note(`${face.face}: static stress`, face.staticStressKpa, "kPa", `${load.massKg.toFixed(2)} kg · g / A`);
    note(`${face.face}: shock`, face.peakG, "G", "(a / s) exp(b s h / t)");
    note(`${face.face}: shock after creep`, face.peakAfterCreepG, "G", "the same at 0.9 t");
  }
}

export const cushion = working({
  id: "cushion",
  title: "Cushion",
  about: "Foam, thickness and bearing area on each face that keep the shock within what the contents bear.",
  input: z.object({
    massKg: MassKg.meta({ title: "Mass on the cushion", unit: "kg" }),
    sides: Sides,
    bearingShare: z
      .number()
      .min(0.1)
      .max(1)
      .default(1)
      .meta({ title: "Share of a face that can bear load", unit: "" }),
    dropHeightMm: DropHeightMm,
    peakG: PeakG,
    foam: FoamId.optional(),
    ownFoam: OwnFoam.optional(),
    thicknessMm: BoardThicknessMm.optional(),
  }),
  output: Cushion,
  sources: [
    cite("stress-energy", "peak stress as an exponential of energy density"),
    cite("polyethylene-curves", "a = 12.9 psi, b = 0.119 /psi"),
    cite("panel-transport-1998", "50 mm ester polyurethane: 45 G at 0.016 kgf/cm²"),
    cite("mil-hdbk-304", "Kersten; creep; useful static stress"),
    cite("practice", "margin of 15 %"),
  ],
  cautions: [
    "Modelled, not tested: an estimate until the packed crate has been dropped. A second person signs.",
    "Foam hardens in the cold and creeps in the heat.",
    "Pads bear on mount, base or inner case, never on free parts: cut the foam away around them.",
  ],
  compute(input, note) {
    const foams = readFoams(input.ownFoam, input.foam);
    const boards = input.thicknessMm === undefined ? boardThicknessesMm : [input.thicknessMm];
    const load = { sides: input.sides, massKg: input.massKg, bearingShare: input.bearingShare };
    const trial = firstThatHolds(eachTrial(load, foams, boards, input.dropHeightMm, input.peakG));
    if (trial === null) throw new RangeError("no foam and no board to try");
    noteTrial(trial, input.dropHeightMm, input.peakG, note);
    const holds = note("holds", trial.faults.length === 0, "", trial.faults.join(", "));
    return {
      holds,
      foam: trial.foam.id,
      foamStanding: trial.foam.standing,
      foamRemark: trial.foam.remark,
      foamDensityKgM3: trial.foam.densityKgM3,
      thicknessMm: trial.thicknessMm,
      peakG: trial.peakG,
      peakAfterCreepG: trial.peakAfterCreepG,
      faces: trial.faces,
      faults: trial.faults,
      wouldHold: holds ? null : findWhatHolds(load, foams, input.dropHeightMm, input.peakG),
    };
  },
});

/** @throws {Refusal} when the points of the own foam make no curve */
export function readFoams(own: OwnFoam | undefined, only: FoamId | undefined): Foam[] {
  try {
    return foamsToTry(own, only);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new Refusal("invalid", "transport.no-cushion-curve", {}, [
      { path: "ownFoam.points", message: error.message },
    ]);
  }
}
