/**
 * Whether a closed crate passes a door, a turn of a corridor, a lift, a ramp. Each
 * passage is a list of checks (needed, available, what is spare), and answers with
 * the strictest of them. The crate travels upright; only one that may stand on any
 * side is also tried turned, and then someone has to attend to it. A clearance of
 * 20 mm is kept in each direction.
 *
 * Invariants: a measure that nobody has taken is never clear; a larger passage
 * never has a stricter answer; a larger crate never a milder one.
 */
import { z } from "zod";
import {
  greatestTurningWidthMm,
  ladderLimitMm,
  leastBreadthForTurnedMm,
} from "#lib/transport/corner-turn.ts";
import {
  type CorridorTurn,
  CrateOrientation,
  type Door,
  type Lift,
  MassKg,
  Passage,
  passageKinds,
  type Ramp,
  Sides,
} from "#lib/transport/schema.ts";
import { type Outcome, outcomes, strictestOutcome } from "#lib/workings/outcome.ts";
import { cite } from "#lib/workings/sources.ts";
import { type Note, working } from "#lib/workings/working.ts";

/** In each direction, between crate and opening; common practice, no source. */
export const CLEARANCE_MM = 20;
/** One person in a lift (en-81-20). */
const PERSON_KG = 75;
/** One in twelve (iso-21542): steeper ones need more hands or a winch. */
const GENTLE_SLOPE_PERCENT = 100 / 12;
/** Rolling resistance of small wheels, as a share of the weight; common practice, no source. */
const ROLLING_SHARE = 0.02;
/** Force that one person may start a load with, as a mass (hse-l23, the lower figure for women is 15). */
const PUSH_START_KG = 20;

/** What was checked; together with the outcome it is the key of the sentence. */
export const passageFacts = [
  "door-width",
  "door-height",
  "corridor-width",
  "corridor-height",
  "ladder-limit",
  "lift-door-width",
  "lift-door-height",
  "lift-plan",
  "lift-height",
  "lift-load",
  "ramp-width",
  "ramp-slope",
  "ramp-tipping",
  "ramp-push",
  "ramp-load",
] as const;
export type PassageFact = (typeof passageFacts)[number];

/** How it passes: as it stands, on another side, sideways round the corner, turned across the car. */
export const passageManners = ["upright", "on-another-side", "sideways", "across-the-car"] as const;
export type PassageManner = (typeof passageManners)[number];

export const PassageCheck = z.object({
  fact: z.enum(passageFacts),
  outcome: z.enum(outcomes),
  /** The crate's measure, clearance included. */
  needed: z.number(),
  /** Null when nobody has measured it. */
  available: z.number().nullable(),
  spare: z.number().nullable(),
  unit: z.enum(["mm", "kg", "%", "°"]),
});
export type PassageCheck = z.infer<typeof PassageCheck>;

export const PassageResult = z.object({
  kind: z.enum(passageKinds),
  name: z.string().nullable(),
  outcome: z.enum(outcomes),
  manner: z.enum(passageManners),
  /** The check that decides: the strictest, and among equals the tightest. */
  fact: z.enum(passageFacts),
  /** The tightest of the lengths; null when none is known. */
  spareMm: z.number().nullable().meta({ title: "Spare", unit: "mm" }),
  checks: z.array(PassageCheck),
});
export type PassageResult = z.infer<typeof PassageResult>;

/** The crate on its way: how it stands, what it weighs, with what and whom. */
export const MovingCrate = z.object({
  outer: Sides,
  grossMassKg: MassKg.meta({ title: "Gross mass", unit: "kg" }),
  orientation: CrateOrientation.default("this-side-up"),
  tipAngleDeg: z.number().positive().max(90).optional().meta({ title: "Angle at which it tips", unit: "°" }),
  /** How far truck or dolly raise it above the floor. */
  raisedMm: z.number().min(0).max(1_000).default(0).meta({ title: "Raised above the floor", unit: "mm" }),
  truckMassKg: z.number().min(0).max(3_000).default(0).meta({ title: "Mass of the truck", unit: "kg" }),
  persons: z.number().int().min(1).max(20).default(1).meta({ title: "Persons with it", unit: "" }),
});
export type MovingCrate = z.output<typeof MovingCrate>;

/** The crate standing on one of its sides: the plan, its longer side first, and the height. */
type Posture = { longMm: number; shortMm: number; highMm: number; turned: boolean };

function posturesOf({ outer, orientation }: MovingCrate): Posture[] {
  const standing = (firstMm: number, secondMm: number, highMm: number, turned: boolean): Posture => ({
    longMm: Math.max(firstMm, secondMm),
    shortMm: Math.min(firstMm, secondMm),
    highMm,
    turned,
  });
  const upright = standing(outer.lengthMm, outer.widthMm, outer.heightMm, false);
  if (orientation === "this-side-up") return [upright];
  return [
    upright,
    standing(outer.lengthMm, outer.heightMm, outer.widthMm, true),
    standing(outer.widthMm, outer.heightMm, outer.lengthMm, true),
  ];
}

/** A check that bars when it fails; unless said otherwise. */
function check(
  fact: PassageFact,
  needed: number,
  available: number | undefined,
  unit: PassageCheck["unit"] = "mm",
  onFail: Outcome = "bar",
): PassageCheck {
  if (available === undefined) return { fact, outcome: "attend", needed, available: null, spare: null, unit };
  const spare = available - needed;
  return { fact, outcome: spare >= 0 ? "clear" : onFail, needed, available, spare, unit };
}

type Way = { manner: PassageManner; checks: PassageCheck[] };

const wayOutcome = (way: Way) =>
  strictestOutcome([way.manner === "upright" ? "clear" : "attend", ...way.checks.map((one) => one.outcome)]);

const rank = (outcome: Outcome) => outcomes.indexOf(outcome);

/** The mildest way; among equals the one named first. */
function mildest(ways: readonly [Way, ...Way[]]): Way {
  return ways.reduce((best, next) => (rank(wayOutcome(next)) < rank(wayOutcome(best)) ? next : best));
}

const mannerOf = (posture: Posture): PassageManner => (posture.turned ? "on-another-side" : "upright");

function wayThroughDoor(posture: Posture, door: z.infer<typeof Door>, raisedMm: number): Way {
  return {
    manner: mannerOf(posture),
    checks: [
      check("door-width", posture.shortMm + CLEARANCE_MM, door.clearWidthMm),
      check("door-height", posture.highMm + raisedMm + CLEARANCE_MM, door.clearHeightMm),
    ],
  };
}

/** Turning, and, where that fails, going on sideways without turning. */
function waysRoundCorner(posture: Posture, turn: z.infer<typeof CorridorTurn>, raisedMm: number): Way[] {
  const longMm = posture.longMm + CLEARANCE_MM;
  const shortMm = posture.shortMm + CLEARANCE_MM;
  const { firstWidthMm, secondWidthMm } = turn;
  // A corridor without a stated height is a room's height: only a stated one is checked.
  const height =
    turn.clearHeightMm === undefined
      ? []
      : [check("corridor-height", posture.highMm + raisedMm + CLEARANCE_MM, turn.clearHeightMm)];
  if (firstWidthMm === undefined || secondWidthMm === undefined) {
    const straight = check("corridor-width", shortMm, firstWidthMm ?? secondWidthMm);
    const unmeasured = check("corridor-width", shortMm, undefined);
    return [{ manner: mannerOf(posture), checks: [straight, unmeasured, ...height] }];
  }
  const turning: Way = {
    manner: mannerOf(posture),
    checks: [
      check("corridor-width", shortMm, greatestTurningWidthMm(longMm, firstWidthMm, secondWidthMm)),
      check("ladder-limit", longMm, ladderLimitMm(firstWidthMm, secondWidthMm)),
      ...height,
    ],
  };
  const sideways = (alongMm: number, acrossMm: number): Way => ({
    manner: "sideways",
    checks: [check("corridor-width", shortMm, alongMm), check("corridor-width", longMm, acrossMm), ...height],
  });
  return [turning, sideways(firstWidthMm, secondWidthMm), sideways(secondWidthMm, firstWidthMm)];
}

/** Straight in along the car's walls, or turned across it. */
function waysIntoLift(posture: Posture, lift: z.infer<typeof Lift>, crate: MovingCrate): Way[] {
  const longMm = posture.longMm + CLEARANCE_MM;
  const shortMm = posture.shortMm + CLEARANCE_MM;
  const highMm = posture.highMm + crate.raisedMm + CLEARANCE_MM;
  const { carWidthMm, carDepthMm } = lift;
  const rest = [
    check("lift-door-width", shortMm, lift.doorWidthMm),
    check("lift-door-height", highMm, lift.doorHeightMm),
    check("lift-height", highMm, lift.carHeightMm),
    liftLoad(lift, crate),
  ];
  const manner = mannerOf(posture);
  if (carWidthMm === undefined || carDepthMm === undefined) {
    const known = check("lift-plan", shortMm, carWidthMm ?? carDepthMm);
    return [{ manner, checks: [known, check("lift-plan", longMm, undefined), ...rest] }];
  }
  const roomLongMm = Math.max(carWidthMm, carDepthMm);
  const roomShortMm = Math.min(carWidthMm, carDepthMm);
  const straight: Way = {
    manner,
    checks: [check("lift-plan", longMm, roomLongMm), check("lift-plan", shortMm, roomShortMm), ...rest],
  };
  if (longMm <= roomLongMm) return [straight];
  const acrossMm = leastBreadthForTurnedMm(longMm, shortMm, roomLongMm);
  return [
    straight,
    { manner: "across-the-car", checks: [check("lift-plan", acrossMm, roomShortMm), ...rest] },
  ];
}

/** With truck and one person; too heavy only with the person means that it rides alone. */
function liftLoad(lift: z.infer<typeof Lift>, crate: MovingCrate): PassageCheck {
  const aloneKg = crate.grossMassKg + crate.truckMassKg;
  const alone = lift.ratedMassKg === undefined || aloneKg <= lift.ratedMassKg;
  return check("lift-load", aloneKg + PERSON_KG, lift.ratedMassKg, "kg", alone ? "attend" : "bar");
}

function wayUpRamp(posture: Posture, ramp: z.infer<typeof Ramp>, crate: MovingCrate): Way {
  const movedKg = crate.grossMassKg + crate.truckMassKg;
  const checks = [
    check("ramp-width", posture.shortMm + CLEARANCE_MM, ramp.clearWidthMm),
    check(
      "ramp-slope",
      ramp.slopePercent ?? 0,
      ramp.slopePercent === undefined ? undefined : GENTLE_SLOPE_PERCENT,
      "%",
      "attend",
    ),
  ];
  // A ramp without a stated load is a floor: only a stated one is checked.
  if (ramp.ratedMassKg !== undefined) {
    checks.push(check("ramp-load", movedKg + crate.persons * PERSON_KG, ramp.ratedMassKg, "kg"));
  }
  if (ramp.slopePercent !== undefined) {
    const slope = Math.atan(ramp.slopePercent / 100);
    const pushKg = movedKg * (Math.sin(slope) + ROLLING_SHARE * Math.cos(slope));
    checks.push(check("ramp-push", pushKg, crate.persons * PUSH_START_KG, "kg", "attend"));
    if (crate.tipAngleDeg !== undefined) {
      checks.push(check("ramp-tipping", (slope * 180) / Math.PI, crate.tipAngleDeg, "°"));
    }
  }
  return { manner: "upright", checks };
}

/** A crate on another side is only tried straight: one liberty at a time. */
function waysInPosture(passage: Passage, crate: MovingCrate, posture: Posture): Way[] {
  const ways = waysThrough(passage, crate, posture);
  return posture.turned ? ways.slice(0, 1) : ways;
}

function waysThrough(passage: Passage, crate: MovingCrate, posture: Posture): Way[] {
  switch (passage.kind) {
    case "door":
      return [wayThroughDoor(posture, passage, crate.raisedMm)];
    case "corridor-turn":
      return waysRoundCorner(posture, passage, crate.raisedMm);
    case "lift":
      return waysIntoLift(posture, passage, crate);
    case "ramp":
      return posture.turned ? [] : [wayUpRamp(posture, passage, crate)];
  }
}

/** The check that speaks for the way: the strictest, then the one with least to spare. */
function decidingCheck(checks: readonly PassageCheck[]): PassageCheck | undefined {
  const share = (one: PassageCheck) => (one.spare === null ? -1 : one.spare / Math.max(one.needed, 1));
  return [...checks].sort((a, b) => rank(b.outcome) - rank(a.outcome) || share(a) - share(b))[0];
}

/** @returns how one crate passes one passage, in the mildest manner that it may */
export function passCrate(passage: Passage, crate: MovingCrate): PassageResult {
  const [first, ...others] = posturesOf(crate).flatMap((posture) => waysInPosture(passage, crate, posture));
  if (first === undefined) throw new RangeError("a passage without a way through");
  const way = mildest([first, ...others]);
  const deciding = decidingCheck(way.checks);
  if (deciding === undefined) throw new RangeError("a way without a check");
  const sparesMm = way.checks.flatMap((one) => (one.unit === "mm" && one.spare !== null ? [one.spare] : []));
  return {
    kind: passage.kind,
    name: passage.name ?? null,
    outcome: wayOutcome(way),
    manner: way.manner,
    fact: deciding.fact,
    spareMm: sparesMm.length === 0 ? null : Math.min(...sparesMm),
    checks: way.checks,
  };
}

/** @returns the strictest passage of the way in; "attend" when no passage is known */
export function routeOutcome(results: readonly PassageResult[]): Outcome {
  return results.length === 0 ? "attend" : strictestOutcome(results.map((result) => result.outcome));
}

function notePassage(result: PassageResult, note: Note): void {
  for (const one of result.checks) {
    note(`${one.fact}, needed`, one.needed, one.unit);
    if (one.available !== null && one.spare !== null) {
      note(`${one.fact}, available`, one.available, one.unit);
      note(`${one.fact}, spare`, one.spare, one.unit, "available − needed");
    } else {
      note(`${one.fact}, available`, "not measured");
    }
  }
  note("manner", result.manner);
  note("outcome", result.outcome, "", result.fact);
}

export const passage = working({
  id: "passage",
  title: "Passage",
  about: "Whether a crate passes a door, a turn of a corridor, a lift or a ramp, and with how much to spare.",
  input: z.object({ crate: MovingCrate, passage: Passage }),
  output: PassageResult,
  sources: [
    cite("derived", "turn of a corridor"),
    cite("rectangle-in-rectangle", "a crate across the car of a lift"),
    cite("en-81-20", "75 kg for each person"),
    cite("iso-21542", "1 in 12"),
    cite("hse-l23", "20 kg to start a load"),
    cite("practice", "20 mm of clearance; rolling resistance 2 %"),
  ],
  cautions: [
    "Measure the clear opening with the leaf open, at floor and lintel: nominal sizes mislead.",
    "Never stand downhill of a crate.",
  ],
  compute({ crate, passage: through }, note) {
    const result = passCrate(through, crate);
    notePassage(result, note);
    return result;
  },
});
