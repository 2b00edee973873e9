/**
 * The crate around a cushioned load: its sides, its walls, what each part weighs,
 * where its centre of gravity lies and how far it may lean.
 *
 *        ┌═══════════════┐ ← lid batten        outer = inner + 2 ply + 2 battens
 *      ▐ ┌───────────────┐ ▌ ← plywood         outer height = inner + 2 ply
 *      ▐ │░░ cushion ░░░░│ ▌                       + lid batten + skid
 *      ▐ │░░┌────────┐░░░│ ▌ ← side batten
 *      ▐ │░░│  load  │░░░│ ▌                   inner = load + 2 wrap + 2 cushion
 *      ▐ └──┴────────┴───┘ ▌
 *          ██    ██    ██    ← skids, across the width
 *
 * Battens stand outside, on four sides and the lid, along every edge of a panel,
 * with middle battens where the unheld length would exceed 610 mm. The cushion is
 * counted as filling all the room, so the mass is on the high side.
 */
import { z } from "zod";
import { Refusal } from "#lib/platform/refusal.ts";
import { STANDARD_GRAVITY } from "#lib/transport/foam.ts";
import { PLYWOOD_KG_M3 } from "#lib/transport/inner-case.ts";
import { growSides, MassKg, Sides, volumeM3 } from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { type Note, working } from "#lib/workings/working.ts";

/** Spruce or pine, from memory. */
const SOFTWOOD_KG_M3 = 480;
/** 24 in: an unheld length of panel beyond this gets a middle batten (tm-43-0156, appendix D-1). */
const LONGEST_UNHELD_MM = 610;
/** A lid bears 10 kN on each square metre when crates may stand on it (gdv-packaging, 1.2). */
const LID_LOAD_KN_PER_M2 = 10;
/** Sideways coefficient for a load that may tip, on the road (en-12195-1). */
const ROAD_SIDEWAYS_COEFFICIENT = 0.6;
/** A crate taller than 1.2 m on a base under 0.5 m topples onto two persons; common practice. */
const TOPPLE_HEIGHT_MM = 1200;
const TOPPLE_BASE_MM = 500;

export const wallNames = ["light", "standard", "heavy", "framed"] as const;

export const Wall = z.object({
  name: z.enum(wallNames),
  plywoodMm: z.number().positive().max(60).meta({ title: "Plywood", unit: "mm" }),
  battenWidthMm: z.number().positive().max(300).meta({ title: "Batten, width", unit: "mm" }),
  battenDepthMm: z.number().positive().max(300).meta({ title: "Batten, depth", unit: "mm" }),
  middleBattens: z.boolean(),
  skidCount: z.number().int().min(2).max(12).meta({ title: "Skids", unit: "" }),
  skidHeightMm: z.number().positive().max(300).meta({ title: "Skid, height", unit: "mm" }),
  skidWidthMm: z.number().positive().max(300).meta({ title: "Skid, width", unit: "mm" }),
  hardwareKg: z.number().min(0).max(100).meta({ title: "Screws, handles, clasps", unit: "kg" }),
  engineeredBase: z.boolean(),
});
export type Wall = z.infer<typeof Wall>;

type WallRow = Wall & { toContentsKg: number; toPanelMm: number };

/**
 * Walls by mass of contents and largest side of a panel. Panels: the larger of
 * cci-six-steps (9.5 mm at least, 12 mm often taken) and tm-43-0156 (12.7 mm from
 * 227 kg); 454 and 1134 kg are the scopes of ASTM D6251 and D6256; battens, skids
 * and hardware are common practice. Skids stand 95 mm high so that the forks of a
 * hand pallet truck go under.
 */
const wallRows: readonly WallRow[] = [
  {
    name: "light",
    toContentsKg: 60,
    toPanelMm: 1200,
    plywoodMm: 12,
    battenWidthMm: 70,
    battenDepthMm: 20,
    middleBattens: false,
    skidCount: 2,
    skidHeightMm: 95,
    skidWidthMm: 70,
    hardwareKg: 1.5,
    engineeredBase: false,
  },
  {
    name: "standard",
    toContentsKg: 227,
    toPanelMm: 2000,
    plywoodMm: 12,
    battenWidthMm: 70,
    battenDepthMm: 22,
    middleBattens: true,
    skidCount: 3,
    skidHeightMm: 95,
    skidWidthMm: 70,
    hardwareKg: 1.5,
    engineeredBase: false,
  },
  {
    name: "heavy",
    toContentsKg: 454,
    toPanelMm: 2400,
    plywoodMm: 15,
    battenWidthMm: 95,
    battenDepthMm: 22,
    middleBattens: true,
    skidCount: 3,
    skidHeightMm: 100,
    skidWidthMm: 75,
    hardwareKg: 2.5,
    engineeredBase: false,
  },
  {
    name: "framed",
    toContentsKg: 1134,
    toPanelMm: 4800,
    plywoodMm: 18,
    battenWidthMm: 95,
    battenDepthMm: 45,
    middleBattens: true,
    skidCount: 3,
    skidHeightMm: 100,
    skidWidthMm: 100,
    hardwareKg: 6,
    engineeredBase: true,
  },
];

/**
 * @returns the lightest wall that the mass and the largest panel allow
 * @throws {Refusal} when the crate is beyond the table: an engineer designs it
 */
export function chooseWall(contentsKg: number, inner: Sides): Wall {
  const largestInnerMm = Math.max(inner.lengthMm, inner.widthMm, inner.heightMm);
  const row = wallRows.find(
    (wall) => contentsKg <= wall.toContentsKg && largestInnerMm + 2 * wall.plywoodMm <= wall.toPanelMm,
  );
  if (row === undefined) {
    throw new Refusal("invalid", "transport.crate-beyond-table", {
      contentsKg: Math.round(contentsKg),
      largestInnerMm: Math.round(largestInnerMm),
    });
  }
  const { toContentsKg: _mass, toPanelMm: _panel, ...wall } = row;
  return wall;
}

/** @returns mm of batten on one panel: its edges, and middle battens across its longer side */
function battenLengthMm(longMm: number, shortMm: number, wall: Wall): number {
  const edgesMm = 2 * (longMm + shortMm);
  if (!wall.middleBattens) return edgesMm;
  const unheldMm = longMm - 2 * wall.battenWidthMm;
  const middles = Math.max(
    0,
    Math.ceil((unheldMm - LONGEST_UNHELD_MM) / (LONGEST_UNHELD_MM + wall.battenWidthMm)),
  );
  return edgesMm + middles * Math.max(0, shortMm - 2 * wall.battenWidthMm);
}

const PartsKg = z.object({
  contents: z.number().meta({ title: "Contents", unit: "kg" }),
  plywood: z.number().meta({ title: "Plywood", unit: "kg" }),
  battens: z.number().meta({ title: "Battens", unit: "kg" }),
  skids: z.number().meta({ title: "Skids", unit: "kg" }),
  cushion: z.number().meta({ title: "Cushion", unit: "kg" }),
  hardware: z.number().meta({ title: "Screws, handles, clasps", unit: "kg" }),
});

export const CrateInput = z.object({
  sides: Sides.meta({ title: "What lies on the cushion" }),
  massKg: MassKg.meta({ title: "Mass on the cushion", unit: "kg" }),
  wrapMm: z.number().min(0).max(50).default(10).meta({ title: "Wrap on each face", unit: "mm" }),
  cushionMm: z.number().positive().max(300).meta({ title: "Thickness of the cushion", unit: "mm" }),
  foamDensityKgM3: z
    .number()
    .min(5)
    .max(500)
    .default(35)
    .meta({ title: "Density of the foam", unit: "kg/m³" }),
  /** From the underside of the load, as a share of its height. */
  centreOfGravityShare: z
    .number()
    .min(0.05)
    .max(0.95)
    .default(0.5)
    .meta({ title: "Height of the centre of gravity in the load", unit: "" }),
  stackable: z.boolean().default(true).meta({ title: "Other crates may stand on it" }),
  wall: Wall.optional(),
});
export type CrateInput = z.output<typeof CrateInput>;

export const Crate = z.object({
  inner: Sides,
  outer: Sides,
  wall: Wall,
  partsKg: PartsKg,
  /** To a tenth of a kilogram, as it is marked on the crate: every table is asked with the figure that is shown. */
  grossMassKg: z.number().meta({ title: "Gross mass", unit: "kg" }),
  /** 0 when nothing may stand on it. */
  lidLoadKn: z.number().meta({ title: "Load on the lid", unit: "kN" }),
  centreOfGravityHeightMm: z.number().meta({ title: "Height of the centre of gravity", unit: "mm" }),
  baseWidthMm: z.number().meta({ title: "Narrow side of the base", unit: "mm" }),
  tipAngleDeg: z.number().meta({ title: "Angle at which it tips", unit: "°" }),
  standsUnlashedOnRoad: z.boolean(),
  topplesOntoTwo: z.boolean(),
});
export type Crate = z.infer<typeof Crate>;

/** @returns degrees, the lean at which a crate tips over the narrow side of its base */
export function tipAngleDeg(baseWidthMm: number, centreOfGravityHeightMm: number): number {
  if (!(baseWidthMm > 0 && centreOfGravityHeightMm > 0))
    throw new RangeError("base and height must be above 0");
  return (Math.atan2(baseWidthMm / 2, centreOfGravityHeightMm) * 180) / Math.PI;
}

/** The sides and the mass alone, for a search that builds many. */
export function buildCrate(input: CrateInput): Crate {
  const { wrapMm, cushionMm } = input;
  const wrapped = growSides(input.sides, wrapMm);
  const inner = growSides(wrapped, cushionMm);
  const wall = input.wall ?? chooseWall(input.massKg, inner);
  const shell = growSides(inner, wall.plywoodMm);
  const outer: Sides = {
    lengthMm: shell.lengthMm + 2 * wall.battenDepthMm,
    widthMm: shell.widthMm + 2 * wall.battenDepthMm,
    heightMm: shell.heightMm + wall.battenDepthMm + wall.skidHeightMm,
  };

  const panelBattenMm = (firstMm: number, secondMm: number) =>
    battenLengthMm(Math.max(firstMm, secondMm), Math.min(firstMm, secondMm), wall);
  const battenKgPerMm = (wall.battenWidthMm * wall.battenDepthMm * SOFTWOOD_KG_M3) / 1e9;
  const sideBattensKg =
    2 *
    battenKgPerMm *
    (panelBattenMm(shell.lengthMm, shell.heightMm) + panelBattenMm(shell.widthMm, shell.heightMm));
  const lidBattensKg = battenKgPerMm * panelBattenMm(shell.lengthMm, shell.widthMm);
  const skid = { lengthMm: shell.widthMm, widthMm: wall.skidWidthMm, heightMm: wall.skidHeightMm };
  const partsKg = {
    contents: input.massKg,
    plywood: (volumeM3(shell) - volumeM3(inner)) * PLYWOOD_KG_M3,
    battens: sideBattensKg + lidBattensKg,
    skids: wall.skidCount * volumeM3(skid) * SOFTWOOD_KG_M3,
    cushion: (volumeM3(inner) - volumeM3(wrapped)) * input.foamDensityKgM3,
    hardware: wall.hardwareKg,
  };
  const sumKg = Object.values(partsKg).reduce((sum, partKg) => sum + partKg, 0);

  // Heights above the floor; plywood, cushion, side battens and hardware share the middle of the shell.
  const middleMm = wall.skidHeightMm + shell.heightMm / 2;
  const contentsMm =
    wall.skidHeightMm +
    wall.plywoodMm +
    cushionMm +
    wrapMm +
    input.sides.heightMm * input.centreOfGravityShare;
  const lidMm = wall.skidHeightMm + shell.heightMm + wall.battenDepthMm / 2;
  const centreOfGravityHeightMm =
    (partsKg.contents * contentsMm +
      (partsKg.plywood + partsKg.cushion + partsKg.hardware + sideBattensKg) * middleMm +
      lidBattensKg * lidMm +
      (partsKg.skids * wall.skidHeightMm) / 2) /
    sumKg;
  const baseWidthMm = Math.min(shell.lengthMm, shell.widthMm);

  return {
    inner,
    outer,
    wall,
    partsKg,
    grossMassKg: Math.round(sumKg * 10) / 10,
    lidLoadKn: input.stackable ? (shell.lengthMm * shell.widthMm * LID_LOAD_KN_PER_M2) / 1e6 : 0,
    centreOfGravityHeightMm,
    baseWidthMm,
    tipAngleDeg: tipAngleDeg(baseWidthMm, centreOfGravityHeightMm),
    standsUnlashedOnRoad: baseWidthMm / 2 / centreOfGravityHeightMm >= ROAD_SIDEWAYS_COEFFICIENT,
    topplesOntoTwo: outer.heightMm > TOPPLE_HEIGHT_MM && baseWidthMm < TOPPLE_BASE_MM,
  };
}

const asText = (sides: Sides) =>
  `${sides.lengthMm.toFixed(0)} × ${sides.widthMm.toFixed(0)} × ${sides.heightMm.toFixed(0)}`;

function noteCrate(crate: Crate, note: Note): void {
  const { wall, partsKg } = crate;
  note("inner length × width × height", asText(crate.inner), "mm", "load + 2 wrap + 2 cushion");
  note("wall", wall.name, "", "by mass of contents and largest panel");
  note("plywood", wall.plywoodMm, "mm");
  note(
    "battens",
    `${wall.battenWidthMm} × ${wall.battenDepthMm}`,
    "mm",
    wall.middleBattens ? "edges, and the middle beyond 610 mm unheld" : "edges",
  );
  note("skids", `${wall.skidCount} of ${wall.skidHeightMm} × ${wall.skidWidthMm}`, "mm", "across the width");
  note("outer length × width × height", asText(crate.outer), "mm", "inner + 2 plywood + battens + skids");
  note("mass of contents", partsKg.contents, "kg");
  note("mass of plywood", partsKg.plywood, "kg", "shell volume × 600 kg/m³");
  note("mass of battens", partsKg.battens, "kg", "length × section × 480 kg/m³");
  note("mass of skids", partsKg.skids, "kg", "volume × 480 kg/m³");
  note("mass of cushion", partsKg.cushion, "kg", "inner less wrapped load, × density");
  note("mass of hardware", partsKg.hardware, "kg");
  note("gross mass", crate.grossMassKg, "kg", "sum of the parts, to a tenth");
  note("load on the lid", crate.lidLoadKn, "kN", "10 kN/m² × lid; 0 when nothing may stand on it");
  note("in kilograms", (crate.lidLoadKn * 1000) / STANDARD_GRAVITY, "kg", "load / g");
  note("height of the centre of gravity", crate.centreOfGravityHeightMm, "mm", "Σ m z / Σ m");
  note("tips at", crate.tipAngleDeg, "°", "atan(half base / height)");
}

export const crate = working({
  id: "crate",
  title: "Crate",
  about:
    "Inner and outer sides, walls, parts, gross mass, lid load, centre of gravity and tipping of a crate.",
  input: CrateInput,
  output: Crate,
  sources: [
    cite("cci-six-steps", "crates: panels of 9.5 mm and more"),
    cite("tm-43-0156", "appendix D-1: panels by mass, middle battens beyond 610 mm"),
    cite("astm-crate-scopes", "454 kg and 1134 kg"),
    cite("gdv-packaging", "1.2 lid load; 1.4.2 tipping"),
    cite("en-12195-1", "sideways coefficient 0.6"),
    cite("pallet-truck-lift", "skids of 95 mm and more"),
    cite("densities", "plywood 600, softwood 480 kg/m³"),
    cite("ispm-15", "raw wood above 6 mm is treated and marked"),
    cite("practice", "battens, skids, hardware"),
  ],
  cautions: [
    "Across borders battens and skids need the mark of ISPM 15, plywood does not.",
    "Mark the centre of gravity outside when it is off the middle or the crate is above 1 t.",
    "From 454 kg of contents the base is an engineer's design.",
  ],
  compute(input, note) {
    const built = buildCrate(input);
    noteCrate(built, note);
    return built;
  },
});
