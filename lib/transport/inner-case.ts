/**
 * What lies on the cushion. In a single case it is the specimen on its mount, cut
 * into the foam; in every other kind a rigid inner case takes the geometry and the
 * outer cushion takes the shock:
 *
 *     ┌──────────── inner case, plywood ┐     double and jar case: lining all round
 *     │░ lining ░░░░░░░░░░░░░░░░░░░░░░░░│     full-face carriers: a flat stack of
 *     │░ ┌───────────────────────────┐ ░│       panel · liner · sheet · liner · panel
 *     │░ │ specimen                  │ ░│     upright slots: divider · padding ·
 *     └──┴───────────────────────────┴──┘       sheet · padding · divider
 *
 * An inner case is never thinner than the shortest side that keeps a pad of the
 * outer cushion from buckling: the spare room is filled with lining.
 */
import { z } from "zod";
import { type CushionLoad, kerstenSideMm } from "#lib/transport/cushion.ts";
import { BoardThicknessMm, CrateKind, growSides, MassKg, Sides, volumeM3 } from "#lib/transport/schema.ts";
import { slotCaseDepthMm } from "#lib/transport/sheet-support.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

/** Generic plywood, from memory. */
export const PLYWOOD_KG_M3 = 600;
/** Polyethylene foam for linings, from memory. */
const LINING_KG_M3 = 35;

/** Common practice, no source: the room left for wrapping and the measures of linings and carriers, mm. */
const WRAP_OF_SPECIMEN_MM = 10;
const WRAP_OF_CASE_MM = 5;
const DOUBLE_CASE_LINING_MM = 25;
/** Box in box, 50 to 75 mm (conserve-o-gram-17-3); it also holds the absorbent. */
const JAR_CASE_LINING_MM = 50;
const CARRIER_MARGIN_MM = 30;
const CARRIER_PANEL_MM = 9;
const CARRIER_LINER_MM = 5;
const SLOT_EDGE_FOAM_MM = 25;
const SLOT_PADDING_MM = 5;
const SLOT_DIVIDER_MM = 6;
/** Of a specimen lying in cut foam about half of each face can bear load. */
const BEARING_SHARE_IN_CUT_FOAM = 0.5;

/** Plywood for inner cases; a thicker wall makes a light load heavy enough for its cushion. */
export const innerWallsMm = [9, 12, 18, 24] as const;

export const InnerCaseInput = z.object({
  kind: CrateKind,
  sides: Sides.meta({ title: "One specimen on its mount" }),
  massKg: MassKg.meta({ title: "Mass of one specimen", unit: "kg" }),
  count: z.number().int().min(1).max(200).default(1).meta({ title: "Specimens in the case", unit: "" }),
  wallMm: z.literal(innerWallsMm).default(9).meta({ title: "Plywood of the inner case", unit: "mm" }),
  cushionMm: BoardThicknessMm.default(50).meta({ title: "Thickness of the outer cushion", unit: "mm" }),
});
export type InnerCaseInput = z.output<typeof InnerCaseInput>;

export const InnerCase = z.object({
  sides: Sides,
  massKg: z.number().meta({ title: "Mass on the cushion", unit: "kg" }),
  bearingShare: z.number().meta({ title: "Share of a face that can bear load", unit: "" }),
  /** Wrap and tolerance between this load and its cushion, on each face. */
  wrapMm: z.number().meta({ title: "Wrap", unit: "mm" }),
});
export type InnerCase = z.infer<typeof InnerCase> & CushionLoad;

/** The two large sides of a sheet lie in the plane, whichever way it was measured. */
function flatSides({ lengthMm, widthMm, heightMm }: Sides) {
  const [thicknessMm = 0, shortMm = 0, longMm = 0] = [lengthMm, widthMm, heightMm].sort((a, b) => a - b);
  return { thicknessMm, shortMm, longMm };
}

/** The room inside the inner case, and what its fittings weigh without the lining. */
function layInside({ kind, sides, count }: InnerCaseInput): { room: Sides; fittingsKg: number } {
  const { thicknessMm, shortMm, longMm } = flatSides(sides);
  switch (kind) {
    case "full-face-sheet-carrier": {
      const lengthMm = longMm + 2 * CARRIER_MARGIN_MM;
      const widthMm = shortMm + 2 * CARRIER_MARGIN_MM;
      const heightMm = count * (thicknessMm + 2 * (CARRIER_LINER_MM + CARRIER_PANEL_MM));
      const panels = { lengthMm, widthMm, heightMm: 2 * count * CARRIER_PANEL_MM };
      return { room: { lengthMm, widthMm, heightMm }, fittingsKg: volumeM3(panels) * PLYWOOD_KG_M3 };
    }
    case "upright-slot-case": {
      const slots = { count, thicknessMm, paddingMm: SLOT_PADDING_MM, dividerMm: SLOT_DIVIDER_MM };
      const room = {
        lengthMm: longMm + 2 * SLOT_EDGE_FOAM_MM,
        widthMm: slotCaseDepthMm(slots),
        heightMm: shortMm + 2 * SLOT_EDGE_FOAM_MM,
      };
      const dividers = { ...room, widthMm: (count + 1) * SLOT_DIVIDER_MM };
      return { room, fittingsKg: volumeM3(dividers) * PLYWOOD_KG_M3 };
    }
    default: {
      const lining = kind === "jar-case" ? JAR_CASE_LINING_MM : DOUBLE_CASE_LINING_MM;
      const row = { ...sides, lengthMm: sides.lengthMm * count };
      return { room: growSides(row, WRAP_OF_SPECIMEN_MM + lining), fittingsKg: 0 };
    }
  }
}

/** @returns the load that the outer cushion carries */
export function layInnerCase(input: InnerCaseInput): InnerCase {
  const specimensKg = input.massKg * input.count;
  if (input.kind === "single-case") {
    return {
      sides: { ...input.sides, lengthMm: input.sides.lengthMm * input.count },
      massKg: specimensKg,
      bearingShare: BEARING_SHARE_IN_CUT_FOAM,
      wrapMm: WRAP_OF_SPECIMEN_MM,
    };
  }
  const { room, fittingsKg } = layInside(input);
  const leastMm = Math.ceil(kerstenSideMm(input.cushionMm));
  const outside = growSides(room, input.wallMm);
  const sides: Sides = {
    lengthMm: Math.max(leastMm, Math.ceil(outside.lengthMm)),
    widthMm: Math.max(leastMm, Math.ceil(outside.widthMm)),
    heightMm: Math.max(leastMm, Math.ceil(outside.heightMm)),
  };
  const inside = growSides(sides, -input.wallMm);
  const shellKg = (volumeM3(sides) - volumeM3(inside)) * PLYWOOD_KG_M3;
  const filledM3 = volumeM3(input.sides) * input.count + fittingsKg / PLYWOOD_KG_M3;
  const liningKg = Math.max(0, volumeM3(inside) - filledM3) * LINING_KG_M3;
  return {
    sides,
    massKg: specimensKg + fittingsKg + shellKg + liningKg,
    bearingShare: 1,
    wrapMm: WRAP_OF_CASE_MM,
  };
}

export const innerCase = working({
  id: "inner-case",
  title: "Inner case",
  about: "What lies on the cushion: the specimen itself, or the inner case, carriers or slots around it.",
  input: InnerCaseInput,
  output: InnerCase,
  sources: [
    cite("conserve-o-gram-17-3", "box in box, 50 to 75 mm all round"),
    cite("cci-six-steps", "step 5, table 7: double case, negative mount with voids"),
    cite("densities", "plywood 600, polyethylene foam 35 kg/m³"),
    cite("practice", "wrap, lining, carriers, slots"),
  ],
  cautions: [
    "Many small points of contact are forbidden: carry mount or base, leave hollows around free parts.",
  ],
  compute(input, note) {
    const load = layInnerCase(input);
    note("kind of crate", input.kind);
    if (input.kind !== "single-case") note("plywood of the inner case", input.wallMm, "mm");
    note("length on the cushion", load.sides.lengthMm, "mm");
    note("width on the cushion", load.sides.widthMm, "mm");
    note("height on the cushion", load.sides.heightMm, "mm");
    note("mass on the cushion", load.massKg, "kg", `${input.count} × ${input.massKg} kg and what holds it`);
    note("share of a face that can bear load", load.bearingShare);
    return load;
  },
});
