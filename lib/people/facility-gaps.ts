/**
 * What nobody has stated about a venue, and how a paper of an authority stands on
 * a day. A lender cannot take a fact that is missing for a good one, so each is
 * worth a question before the next loan.
 */
import type { Licence, VenueFacts } from "#lib/people/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";

/** The facts that a lender asks for, in the order of the form. */
export const facilityFacts = [
  "temperatureLowC",
  "temperatureHighC",
  "temperatureSwing24hK",
  "humidityLow",
  "humidityHigh",
  "humiditySwing24h",
  "illuminanceLx",
  "uvMicrowattPerLumen",
  "hoursOpenPerDay",
  "daysOpenPerWeek",
  "supervisedRoom",
  "restrictedView",
  "spillProvision",
  "fireDetection",
  "nightGuard",
] as const satisfies readonly (keyof VenueFacts)[];
export type FacilityFact = (typeof facilityFacts)[number];

/** The facts that nobody stated; the way in counts as one, and is missing while no passage is known. */
export function unstatedFacts(venue: Omit<VenueFacts, "id">): (FacilityFact | "passages")[] {
  return [
    ...facilityFacts.filter((fact) => venue[fact] === null),
    ...(venue.passages.length === 0 ? (["passages"] as const) : []),
  ];
}

export const paperStates = ["valid", "not yet valid", "lapsed", "no end stated"] as const;
export type PaperState = (typeof paperStates)[number];

/** A licence or permit is valid through the day it names as its last. */
export function paperStateOn(
  { validFrom, validUntil }: Pick<Licence, "validFrom" | "validUntil">,
  day: DateText,
): PaperState {
  if (validUntil !== null && validUntil < day) return "lapsed";
  if (validFrom !== null && validFrom > day) return "not yet valid";
  return validUntil === null ? "no end stated" : "valid";
}
