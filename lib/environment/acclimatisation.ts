/**
 * How long a closed crate rests in the room before it is opened. Two rules, the
 * longer counts: the custom (24 hours; 48 for a large difference, a heavy crate
 * or jars, and for whatever of these is not known) and the dew point (the
 * coldest surface inside must stand 1 K above the dew point of the room, warming
 * as first order towards the room). In a room too damp for the second rule no
 * rest helps: the state says so, and the hours are those of the custom.
 *
 *   room  ────────────────────────────
 *   dew point + 1 K  ─ ─ ─ ─ ╳ ─ ─ ─ ─   ╳ opening is free of condensation
 *   coldest surface  ╱‾‾‾‾‾‾‾
 *                    0       t
 */
import { z } from "zod";
import { dewPointC } from "#lib/environment/air.ts";
import { Humidity, TemperatureC } from "#lib/environment/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

const customaryHours = 24;
const longerHours = 48;
const largeDifferenceK = 15;
const heavyCrateKg = 200;
const marginOverDewPointK = 1;

export const restReasons = [
  "large-difference",
  "difference-not-known",
  "heavy",
  "mass-not-known",
  "jars",
  "jars-not-known",
] as const;
export type RestReason = (typeof restReasons)[number];

/** Where the dew-point rule stands. */
export const dewPointStates = ["free-at-once", "waits", "too-damp", "not-known"] as const;
export type DewPointState = (typeof dewPointStates)[number];

/** What is known of a crate and its room; null is not known. */
export const RestFacts = z.object({
  outsideC: TemperatureC.nullable()
    .default(null)
    .meta({ title: "Temperature outside on arrival", unit: "°C" }),
  roomC: TemperatureC.nullable().default(null).meta({ title: "Temperature of the room", unit: "°C" }),
  roomHumidity: Humidity.min(0.01)
    .nullable()
    .default(null)
    .meta({ title: "Relative humidity of the room", unit: "fraction of saturation" }),
  coldestInsideC: TemperatureC.nullable().default(null).meta({
    title: "Coldest surface inside the crate; the outside stands in when it is not known",
    unit: "°C",
  }),
  halfTimeHours: z
    .number()
    .positive()
    .max(1000)
    .nullable()
    .default(null)
    .meta({ title: "Half-time of the crate's warming", unit: "h" }),
  massKg: z
    .number()
    .positive()
    .max(100_000)
    .nullable()
    .default(null)
    .meta({ title: "Gross mass", unit: "kg" }),
  hasJars: z.boolean().nullable().default(null).meta({ title: "Holds jars with fluid" }),
});
export type RestFacts = z.infer<typeof RestFacts>;

function reasonsForLongerRest(facts: RestFacts): RestReason[] {
  const reasons: RestReason[] = [];
  if (facts.outsideC === null || facts.roomC === null) reasons.push("difference-not-known");
  else if (Math.abs(facts.outsideC - facts.roomC) >= largeDifferenceK) reasons.push("large-difference");
  if (facts.massKg === null) reasons.push("mass-not-known");
  else if (facts.massKg > heavyCrateKg) reasons.push("heavy");
  if (facts.hasJars === null) reasons.push("jars-not-known");
  else if (facts.hasJars) reasons.push("jars");
  return reasons;
}

function restByDewPoint(
  roomC: number,
  coldestC: number,
  openableFromC: number,
  halfTimeHours: number | null,
): { state: DewPointState; hours: number | null } {
  if (coldestC >= openableFromC) return { state: "free-at-once", hours: 0 };
  if (roomC <= openableFromC) return { state: "too-damp", hours: null };
  if (halfTimeHours === null) return { state: "not-known", hours: null };
  return {
    state: "waits",
    hours: halfTimeHours * Math.log2((roomC - coldestC) / (roomC - openableFromC)),
  };
}

export const acclimatisation = working({
  id: "acclimatisation",
  title: "Rest before opening",
  about: "How many hours a closed crate rests in the room before it is opened.",
  input: RestFacts,
  output: z.object({
    hours: z.number().meta({ title: "Closed rest", unit: "h" }),
    customaryHours: z.number().meta({ title: "Rest by custom", unit: "h" }),
    reasons: z.array(z.enum(restReasons)).meta({ title: "Why longer than 24 h" }),
    dewPointState: z.enum(dewPointStates).meta({ title: "Dew-point rule" }),
    dewPointHours: z.number().nullable().meta({ title: "Rest by the dew point", unit: "h" }),
    dewPointC: z.number().nullable().meta({ title: "Dew point of the room", unit: "°C" }),
    withinOneKelvinHours: z
      .number()
      .nullable()
      .meta({ title: "Time until the inside is within 1 K of the room", unit: "h" }),
  }),
  sources: [
    cite("opening-rest", "24 h; 48 h from 15 K, above 200 kg, or with jars"),
    cite("opening-dew-point", "t = t½ · log2((room − coldest) / (room − (dew point + 1 K)))"),
    cite("ashrae-psychrometrics", "dew point"),
  ],
  cautions: [
    "What is not known counts as the case that needs the longer rest.",
    "In a room too damp no rest is enough: dry the room or open elsewhere.",
    "A crate that is warmer than the room may hold damp air: condensation then forms on its own walls.",
  ],
  compute(facts, note) {
    const reasons = reasonsForLongerRest(facts);
    if (facts.outsideC !== null && facts.roomC !== null) {
      note("Difference", Math.abs(facts.outsideC - facts.roomC), "K", "|outside − room|");
    }
    const custom = note("Rest by custom", reasons.length === 0 ? customaryHours : longerHours, "h");

    const coldestC = facts.coldestInsideC ?? facts.outsideC;
    let dewPoint: number | null = null;
    let byDewPoint: { state: DewPointState; hours: number | null } = { state: "not-known", hours: null };
    let withinOneKelvinHours: number | null = null;
    if (facts.roomC !== null && facts.roomHumidity !== null) {
      dewPoint = note(
        "Dew point of the room",
        dewPointC(facts.roomC, facts.roomHumidity),
        "°C",
        "p_ws(t_d) = φ · p_ws(t)",
      );
      const openableFromC = note("Openable from", dewPoint + marginOverDewPointK, "°C", "dew point + 1 K");
      if (coldestC !== null) {
        byDewPoint = restByDewPoint(facts.roomC, coldestC, openableFromC, facts.halfTimeHours);
        if (byDewPoint.hours !== null) {
          note(
            "Rest by the dew point",
            byDewPoint.hours,
            "h",
            "t½ · log2((room − coldest) / (room − (dew point + 1 K)))",
          );
        }
      }
    }
    if (facts.roomC !== null && coldestC !== null && facts.halfTimeHours !== null) {
      const difference = Math.max(1, Math.abs(facts.roomC - coldestC));
      withinOneKelvinHours = note(
        "Within 1 K of the room",
        facts.halfTimeHours * Math.log2(difference),
        "h",
        "t½ · log2(|room − coldest| / 1 K)",
      );
    }
    note("Dew-point rule", byDewPoint.state);
    const hours = note("Closed rest", Math.max(custom, byDewPoint.hours ?? 0), "h", "the longer of the two");
    return {
      hours,
      customaryHours: custom,
      reasons,
      dewPointState: byDewPoint.state,
      dewPointHours: byDewPoint.hours,
      dewPointC: dewPoint,
      withinOneKelvinHours,
    };
  },
});

const Moment = z.iso.datetime({ offset: true });

export type OpeningTime = {
  /** ISO 8601 in UTC. */
  notBefore: string;
  hours: number;
  reasons: RestReason[];
  dewPointState: DewPointState;
};

/**
 * The moment before which the crate stays closed, rounded up to the whole minute.
 * @param arrivedAtIso moment of arrival in the room, with its offset
 * @throws {RangeError} when the moment is not ISO 8601 with an offset
 */
export function notBefore(arrivedAtIso: string, facts: z.input<typeof RestFacts>): OpeningTime {
  if (!Moment.safeParse(arrivedAtIso).success) {
    throw new RangeError("The arrival must be a moment in ISO 8601 with an offset.");
  }
  const { hours, reasons, dewPointState } = acclimatisation(facts);
  const minuteMs = 60_000;
  const opens = Math.ceil((Date.parse(arrivedAtIso) + hours * 60 * minuteMs) / minuteMs) * minuteMs;
  return { notBefore: new Date(opens).toISOString(), hours, reasons, dewPointState };
}
