/**
 * From what height the packed crate must be expected to fall. The heavier it is,
 * the less high it is lifted; the rougher the carrier, the higher. Which table
 * counts follows from the carrier: an escorted specialist is measured by ISTA 1A,
 * mixed hands by ISTA 2A, and where nobody watches (freight, parcels) by the
 * larger of ISTA 2A and the table of handling types. Never below 200 mm. A crate that
 * would be too light for the row of its own mass with the foam of that row is designed
 * for a higher one, and the working says so.
 *
 * Invariants: never higher for a heavier crate, never lower for a rougher carrier.
 */
import { z } from "zod";
import { CarrierClass, DropHeightMm, MassKg } from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

/** Below this no carrier is trusted; also the last row of ISTA 1A. */
export const LOWEST_DROP_MM = 200;

/**
 * ISTA 1A and 2A: packaged mass in kg from (inclusive) to the next row (exclusive).
 * The tables end at 68 kg; above it the procedures go over to inclined impacts at
 * 1.7 m/s, as from v²/2g = 147 mm, so the last row is kept.
 */
const istaRows = [
  { fromKg: 0, ista1aMm: 760, ista2aMm: 970 },
  { fromKg: 10, ista1aMm: 610, ista2aMm: 810 },
  { fromKg: 19, ista1aMm: 460, ista2aMm: 660 },
  { fromKg: 28, ista1aMm: 310, ista2aMm: 510 },
  { fromKg: 45, ista1aMm: 200, ista2aMm: 310 },
] as const;

/** MIL-HDBK-304 (from memory): gross mass in kg up to and including. */
const handlingRows = [
  { toKg: 9, dropMm: 1070, handling: "one person throwing" },
  { toKg: 23, dropMm: 910, handling: "one person carrying" },
  { toKg: 113, dropMm: 760, handling: "two persons carrying" },
  { toKg: 227, dropMm: 610, handling: "light equipment" },
  { toKg: 454, dropMm: 460, handling: "light equipment" },
  { toKg: Number.POSITIVE_INFINITY, dropMm: 300, handling: "heavy equipment" },
] as const;

function requireMass(massKg: number): void {
  if (!(massKg > 0 && massKg < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`mass of a package must be above 0 kg, not ${massKg}`);
  }
}

function istaRow(massKg: number) {
  requireMass(massKg);
  return istaRows.findLast((row) => massKg >= row.fromKg) ?? istaRows[0];
}

/** @source ista-1a-2a, procedure 1A  @returns mm */
export function ista1aDropMm(massKg: number): number {
  return istaRow(massKg).ista1aMm;
}

/** @source ista-1a-2a, procedure 2A  @returns mm */
export function ista2aDropMm(massKg: number): number {
  return istaRow(massKg).ista2aMm;
}

/** @source mil-hdbk-304, table of handling types  @returns mm */
export function handlingTypeDropMm(massKg: number): number {
  requireMass(massKg);
  return handlingRows.find((row) => massKg <= row.toKg)?.dropMm ?? LOWEST_DROP_MM;
}

export const dropTables = ["ista-1a", "ista-2a", "larger-of-ista-2a-and-handling-type"] as const;

/** Ranking of the carriers: cci-six-steps, step 2, table 3. The choice of table is common practice. */
const tableOfCarrier: Record<CarrierClass, (typeof dropTables)[number]> = {
  "specialist-door-to-door": "ista-1a",
  "specialist-with-air": "ista-2a",
  "mixed-carriers": "ista-2a",
  "commercial-freight": "larger-of-ista-2a-and-handling-type",
  "parcel-or-courier": "larger-of-ista-2a-and-handling-type",
};

const dropByTable: Record<(typeof dropTables)[number], (massKg: number) => number> = {
  "ista-1a": ista1aDropMm,
  "ista-2a": ista2aDropMm,
  "larger-of-ista-2a-and-handling-type": (massKg) =>
    Math.max(ista2aDropMm(massKg), handlingTypeDropMm(massKg)),
};

/** @returns every drop height that a carrier's table can give, from the lowest up, in mm */
export function dropHeightsOfCarrierMm(carrierClass: CarrierClass): number[] {
  const masses = [...istaRows.map((row) => row.fromKg), ...handlingRows.map((row) => row.toKg)]
    .filter((massKg) => massKg < Number.POSITIVE_INFINITY)
    .flatMap((massKg) => [massKg, massKg + 0.001])
    .filter((massKg) => massKg > 0);
  return [...new Set(masses.map((grossMassKg) => dropHeightMm(carrierClass, grossMassKg)))].sort(
    (a, b) => a - b,
  );
}

/** @returns mm, at least {@link LOWEST_DROP_MM} */
export function dropHeightMm(carrierClass: CarrierClass, grossMassKg: number): number {
  return Math.max(LOWEST_DROP_MM, dropByTable[tableOfCarrier[carrierClass]](grossMassKg));
}

const TooLight = z.object({
  dropHeightMm: DropHeightMm.meta({ title: "Designed for", unit: "mm" }),
  grossMassKg: MassKg.meta({ title: "Gross mass of that crate", unit: "kg" }),
});
export type TooLight = z.infer<typeof TooLight>;

export const dropHeight = working({
  id: "drop-height",
  title: "Drop height",
  about: "The fall that the packed crate is designed to take, from its gross mass and its carrier.",
  input: z.object({
    grossMassKg: MassKg.meta({ title: "Gross mass", unit: "kg" }),
    carrierClass: CarrierClass,
    /** Crates with less foam, designed for less, that would not be heavy enough for what they are designed for. */
    tooLight: z.array(TooLight).max(20).default([]),
  }),
  output: z.object({ dropHeightMm: DropHeightMm, table: z.enum(dropTables) }),
  sources: [
    cite("ista-1a-2a", "table of drop heights"),
    cite("mil-hdbk-304", "table of handling types"),
    cite("cci-six-steps", "step 2, table 3, ranking of carriers"),
    cite("practice", "choice of the table by carrier"),
  ],
  cautions: [
    "A package under 15 kg may be thrown or dropped high: put small ones together to 15 to 30 kg.",
    "The worst event for an upright crate is toppling, which no drop height covers.",
  ],
  compute({ grossMassKg, carrierClass, tooLight }, note) {
    const table = note("table", tableOfCarrier[carrierClass], "", `carrier: ${carrierClass}`);
    if (table === "larger-of-ista-2a-and-handling-type") {
      note("ISTA 2A", ista2aDropMm(grossMassKg), "mm", "row of the gross mass");
      note("handling type", handlingTypeDropMm(grossMassKg), "mm", "row of the gross mass");
    }
    const ofTableMm = dropHeightMm(carrierClass, grossMassKg);
    const ofRow = `row of ${grossMassKg.toFixed(1)} kg, at least ${LOWEST_DROP_MM} mm`;
    const refuted = tooLight.filter(
      (one) =>
        one.dropHeightMm >= ofTableMm && dropHeightMm(carrierClass, one.grossMassKg) > one.dropHeightMm,
    );
    if (refuted.length === 0) return { dropHeightMm: note("drop height", ofTableMm, "mm", ofRow), table };
    note("drop height of the table", ofTableMm, "mm", ofRow);
    for (const one of refuted)
      note(
        `a crate designed for ${one.dropHeightMm} mm`,
        one.grossMassKg,
        "kg",
        `too light for it: has to take ${dropHeightMm(carrierClass, one.grossMassKg)} mm`,
      );
    const heightsMm = dropHeightsOfCarrierMm(carrierClass).filter((heightMm) => heightMm >= ofTableMm);
    const heightMm = heightsMm.find((height) => refuted.every((one) => one.dropHeightMm !== height));
    const formula = "lowest that its own crate is heavy enough for";
    return { dropHeightMm: note("drop height", heightMm ?? Math.max(...heightsMm), "mm", formula), table };
  },
});
