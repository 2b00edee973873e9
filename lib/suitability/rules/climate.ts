/**
 * The venue's air and light against the limits of a specimen, by the environment
 * room: E1 for temperature and humidity, L1 for illuminance, the year's light and
 * ultraviolet, L2 for the light of the year still to be had. A figure that the venue has not stated is attend. A report older
 * than two years says what was, so nothing that rests on it is clear.
 */
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import type { ClimateComparison, ClimateQuantity } from "#lib/environment/venue-climate.ts";
import { compareVenueClimate } from "#lib/environment/venue-climate.ts";
import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";

/** A facility report serves two years, or until something changes (common practice, no source). */
export const REPORT_SERVES_DAYS = 730;

const lightQuantities: readonly ClimateQuantity[] = [
  "illuminanceLx",
  "lightLxHoursPerYear",
  "uvMicrowattPerLumen",
];

/** Days on which the lights are on, at most; null where the venue has not said. */
export function displayDays({
  startsOn,
  endsOn,
  venue,
}: Pick<RequestFacts, "startsOn" | "endsOn"> & {
  venue: Pick<RequestFacts["venue"], "daysOpenPerWeek">;
}): number | null {
  if (venue.daysOpenPerWeek === null) return null;
  return Math.ceil((daysBetween(startsOn, endsOn) * venue.daysOpenPerWeek) / 7);
}

/** Each quantity's word in the codes of facts, and what a reader multiplies it by: humidity is told in percent. */
const told: Record<ClimateQuantity, { code: string; times: number }> = {
  temperatureC: { code: "temperature", times: 1 },
  temperatureChange24hK: { code: "temperature-change", times: 1 },
  humidity: { code: "humidity", times: 100 },
  humidityChange24h: { code: "humidity-change", times: 100 },
  illuminanceLx: { code: "illuminance", times: 1 },
  lightLxHoursPerYear: { code: "light-of-year", times: 1 },
  uvMicrowattPerLumen: { code: "ultraviolet", times: 1 },
};

function verdictOn(comparison: ClimateComparison): Verdict {
  const { quantity, outcome, reason, stated, clearWithin, barBeyond } = comparison;
  const { code, times } = told[quantity];
  const figure = (value: number | null | undefined) =>
    value === null || value === undefined ? null : Math.round(value * times * 100) / 100;
  const parameters = {
    quantity,
    statedLow: figure(stated.low),
    statedHigh: figure(stated.high),
    clearLow: figure(clearWithin?.low),
    clearHigh: figure(clearWithin?.high),
    barLow: figure(barBeyond?.low),
    barHigh: figure(barBeyond?.high),
  };
  const fact = `climate.${code}-${reason}`;
  if (outcome === "clear") return { outcome, fact, parameters };
  if (reason === "not-stated") return { outcome, fact, parameters, wayOut: "way.state-venue" };
  return {
    outcome,
    fact,
    parameters,
    wayOut: lightQuantities.includes(quantity) ? "way.less-light" : "way.case-or-other-room",
  };
}

/** Facts that were stated without a report count from their day. */
const servesWithoutVersion = (reportedOn: DateText | null, today: DateText) =>
  reportedOn !== null && addDays(reportedOn, REPORT_SERVES_DAYS) >= today;

/** How old the facility report is; a recent one adds nothing. */
function judgeReport({ venue, today }: RequestFacts): Verdict | null {
  const { reportedOn, reportServesUntil } = venue;
  if (reportServesUntil ? reportServesUntil > today : servesWithoutVersion(reportedOn, today)) return null;
  return {
    outcome: "attend",
    fact: reportedOn === null ? "climate.no-report" : "climate.old-report",
    parameters: { venue: venue.name, reportedOn },
    wayOut: "way.state-venue",
  };
}

/** What is left of the year's light when a fifth of it remains is worth a look (common practice, no source). */
const LEFT_SHARE = 0.2;

/** L2: what a specimen has taken within the year against what it may take in one. */
export function judgeLightLeft(spent: number | null, yearly: number): Verdict {
  if (spent === null) return { outcome: "attend", fact: "light.spent-not-known", wayOut: "way.state-light" };
  const left = Math.max(0, Math.round(yearly - spent));
  const parameters = { left, spent: Math.round(spent), yearly: Math.round(yearly) };
  if (left === 0) return { outcome: "bar", fact: "light.none-left", parameters, wayOut: "way.rest-in-dark" };
  return left < LEFT_SHARE * yearly
    ? { outcome: "attend", fact: "light.little-left", parameters, wayOut: "way.less-light" }
    : { outcome: "clear", fact: "light.left", parameters };
}

export function judgeClimate({ specimen, spentLxHours }: SpecimenCase, request: RequestFacts): Finding[] {
  const { venue } = request;
  const limits = limitsOfSpecimen(specimen);
  const comparisons = compareVenueClimate(
    { ...venue, lightHoursPerDay: venue.hoursOpenPerDay, displayDays: displayDays(request) },
    limits,
    spentLxHours,
  );
  const ofClimate = findingsFor(specimen.id, "climate");
  const ofLight = findingsFor(specimen.id, "light");
  const findings = comparisons.map((comparison) =>
    lightQuantities.includes(comparison.quantity)
      ? ofLight("L1", verdictOn(comparison))
      : ofClimate("E1", verdictOn(comparison)),
  );
  findings.push(ofLight("L2", judgeLightLeft(spentLxHours, limits.lightLxHoursPerYear.max)));
  const report = judgeReport(request);
  return report === null ? findings : [...findings, ofClimate("E1", report)];
}
