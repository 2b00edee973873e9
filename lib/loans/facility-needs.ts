/**
 * What the specimens of a loan need of the venue, held against its facility report:
 * only what deviates is told. What the report has not answered is "not known", and
 * never taken for good. Common practice, no source, where no rule of suitability
 * names the same need.
 */
import { groupLimits } from "#lib/environment/group-limits.ts";
import {
  limitsOfSpecimen,
  type PreparedSpecimen,
  preparationCodeOf,
} from "#lib/environment/specimen-limits.ts";
import { type ClimateComparison, compareVenueClimate } from "#lib/environment/venue-climate.ts";
import type { FacilityAnswers } from "#lib/people/facility-report.ts";
import type { VenueFacts } from "#lib/people/schema.ts";

export const facilityNeeds = [
  "spill provision",
  "ventilation",
  "no source of ignition",
  "jars held upright",
  "nothing discarded",
  "pictures not free",
  "picture rule kept",
  "route for complaints",
  "seen by those meant to",
  "notice before the room",
  "case or barrier",
  "supervised room",
  "rules for handling",
  "gloves and wipes",
  "fire detection",
  "watched when closed",
  "pests watched",
  "no pipes above",
  "no works planned",
  "room for empty crates",
  "trained handlers",
] as const;
export type FacilityNeed = (typeof facilityNeeds)[number];

export type NeedySpecimen = PreparedSpecimen & { accessionNumber: string; human: boolean };
export type LoanUse = { handled: boolean; publicShow: boolean };

export type FacilityDeviation = {
  need: FacilityNeed;
  state: "lacking" | "not known";
  /** Accession numbers; empty where the whole loan needs it. */
  specimens: string[];
};

type Stated = boolean | null;
const not = (stated: Stated): Stated => (stated === null ? null : !stated);
/** Either of two suffices. */
const either = (one: Stated, other: Stated): Stated =>
  one === true || other === true ? true : one === null || other === null ? null : false;

function statedOf(answers: FacilityAnswers): Record<FacilityNeed, Stated> {
  const { fluids, respect, display, teaching, security, handling } = answers;
  const { picturePolicy } = respect;
  return {
    "spill provision": fluids.spillProvision,
    ventilation: fluids.ventilated,
    "no source of ignition": fluids.ignitionKeptOut,
    "jars held upright": fluids.jarsHeld,
    "nothing discarded": respect.nothingDiscarded,
    "pictures not free": picturePolicy === null ? null : picturePolicy !== "free",
    "picture rule kept": respect.pictureRuleKept,
    // A route is stated or it is not; nobody states that there is none.
    "route for complaints": respect.complaintRoute === null ? null : true,
    "seen by those meant to": display.restrictedView,
    "notice before the room": display.contentNotice,
    "case or barrier": either(display.lockedCases, display.barriers),
    "supervised room": answers.staff.supervisedRoom,
    "rules for handling": teaching.handlingRules,
    "gloves and wipes": teaching.glovesAndWipes,
    "fire detection": answers.fire.fireDetection,
    "watched when closed": either(security.nightGuard, security.intruderAlarm),
    "pests watched": answers.pests.pestsWatched,
    "no pipes above": not(answers.water.pipesAbove),
    "no works planned": not(answers.building.worksPlanned),
    "room for empty crates": answers.storage.emptyCratesKept,
    "trained handlers": handling.trainedHandlers === null ? null : handling.trainedHandlers >= 2,
  };
}

/** Which specimens need what; a need of none of them is left out. */
function neededBy(specimens: readonly NeedySpecimen[], use: LoanUse): Map<FacilityNeed, string[]> {
  const needs = new Map<FacilityNeed, string[]>();
  const need = (wanted: boolean, of: readonly NeedySpecimen[] | "all", ...which: FacilityNeed[]) => {
    if (!wanted || of.length === 0) return;
    for (const one of which)
      needs.set(one, of === "all" ? [] : of.map(({ accessionNumber }) => accessionNumber));
  };
  const jars = specimens.filter(({ preparation }) => preparation === "fluid-preserved");
  const spirit = jars.filter((jar) => preparationCodeOf(jar) === "alcohol-jar");
  const human = specimens.filter((specimen) => specimen.human);
  need(true, jars, "spill provision", "ventilation", "jars held upright");
  need(true, spirit, "no source of ignition");
  need(true, human, "nothing discarded", "pictures not free", "picture rule kept", "route for complaints");
  need(use.publicShow, human, "seen by those meant to", "notice before the room");
  need(use.publicShow, "all", "case or barrier");
  need(use.handled, "all", "rules for handling", "gloves and wipes");
  need(
    true,
    "all",
    "supervised room",
    "fire detection",
    "watched when closed",
    "pests watched",
    "no pipes above",
    "no works planned",
    "room for empty crates",
    "trained handlers",
  );
  return needs;
}

/** In the order of the list above; nothing where the loan has no specimens. */
export function facilityDeviations(
  specimens: readonly NeedySpecimen[],
  use: LoanUse,
  answers: FacilityAnswers,
): FacilityDeviation[] {
  if (specimens.length === 0) return [];
  const needed = neededBy(specimens, use);
  const stated = statedOf(answers);
  return facilityNeeds.flatMap((need): FacilityDeviation[] => {
    const by = needed.get(need);
    if (by === undefined || stated[need] === true) return [];
    return [{ need, state: stated[need] === null ? "not known" : "lacking", specimens: by }];
  });
}

/** Climate and light of the venue that leave what the specimens bear together. */
export function climateDeviations(
  specimens: readonly PreparedSpecimen[],
  venue: Pick<
    VenueFacts,
    | "temperatureLowC"
    | "temperatureHighC"
    | "temperatureSwing24hK"
    | "humidityLow"
    | "humidityHigh"
    | "humiditySwing24h"
    | "illuminanceLx"
    | "uvMicrowattPerLumen"
    | "hoursOpenPerDay"
  >,
  displayDays: number | null,
): ClimateComparison[] {
  if (specimens.length === 0) return [];
  const members = specimens.map((one, at) => ({ id: String(at), limits: limitsOfSpecimen(one) }));
  const stated = { ...venue, lightHoursPerDay: venue.hoursOpenPerDay, displayDays };
  return compareVenueClimate(stated, groupLimits(members).limits).filter(
    ({ outcome }) => outcome !== "clear",
  );
}
