/**
 * A facility report: what a venue says of itself, whole, as one version. Every
 * answer may be "not known", which is null. The plain facts that the rules read of
 * a venue follow from the newest version, so that each fact is stated once. A
 * version counts for some months, or until the next one.
 */
import { z } from "zod";
import {
  type FacilitySection,
  facilityQuestions,
  facilitySections,
  type Question,
  type SectionAnswers,
} from "#lib/people/facility-questions.ts";
import { Licence, Passage, type VenueFacts } from "#lib/people/schema.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { Share } from "#lib/platform/share.ts";

/** A report counts this long where the centre has set nothing else (common practice, no source). */
export const reportMonths = 24;

/** A licence with who answers for it. */
export const ReportedLicence = Licence.extend({
  responsiblePerson: z.string().trim().max(120).default(""),
});
export type ReportedLicence = z.infer<typeof ReportedLicence>;

export type FacilityAnswers = SectionAnswers & { passages: Passage[]; licences: ReportedLicence[] };

function answerSchema(question: Question): z.ZodType {
  switch (question.kind) {
    case "yes or no":
      return z.boolean().nullable();
    case "text":
      return z
        .string()
        .trim()
        .max(question.most)
        .nullable()
        .transform((said) => (said === "" ? null : said));
    case "choice":
      return z.enum(question.of as readonly [string, ...string[]]).nullable();
    case "share":
      return Share.nullable();
    case "number": {
      const value = z.number().min(question.least).max(question.most);
      return (question.whole ? value.int() : value).nullable();
    }
  }
}

function sectionSchema(section: FacilitySection) {
  const shape = Object.entries(facilityQuestions[section]).map(
    ([name, question]) => [name, answerSchema(question).default(null)] as const,
  );
  return z.object(Object.fromEntries(shape)).prefault({});
}

/** An order that two figures have to stand in, where both are known. */
const pairs = [
  ["temperatureLowC", "temperatureHighC"],
  ["humidityLow", "humidityHigh"],
] as const;

/** What an earlier list of questions left out is not known. */
export const FacilityAnswers = z
  .object({
    ...Object.fromEntries(facilitySections.map((section) => [section, sectionSchema(section)])),
    passages: z.array(Passage).max(30).default([]),
    licences: z.array(ReportedLicence).max(20).default([]),
  })
  .check((context) => {
    const answers = context.value as FacilityAnswers;
    const issue = (path: (string | number)[], message: string) =>
      context.issues.push({ code: "custom", input: context.value, path, message });
    for (const [low, high] of pairs) {
      const [least, greatest] = [answers.climate[low], answers.climate[high]];
      if (least !== null && greatest !== null && least > greatest)
        issue(["climate", high], "venue.low-above-high");
    }
    answers.licences.forEach(({ kind, number }, at) => {
      if (answers.licences.findIndex((other) => other.kind === kind && other.number === number) < at)
        issue(["licences", at, "number"], "facility.licence-twice");
    });
  }) as unknown as z.ZodType<FacilityAnswers, FacilityAnswersInput>;

/** As it is typed or stored: questions may be left out. */
export type FacilityAnswersInput = {
  [Section in FacilitySection]?: Partial<SectionAnswers[Section]>;
} & { passages?: Passage[]; licences?: z.input<typeof ReportedLicence>[] };

export const FileFacilityReportInput = z.object({
  venueId: Id,
  /** The version that this one was written from; 0 for the first. */
  follows: z.number().int().min(0).max(100_000),
  reportedOn: DateText,
  /** Whose word it is. */
  reportedBy: z.string().trim().min(1).max(120),
  answers: FacilityAnswers,
});

/** The plain facts of a venue that a report states. */
export type ReportedFacts = Pick<
  VenueFacts,
  | "floorLoadKgPerM2"
  | "temperatureLowC"
  | "temperatureHighC"
  | "temperatureSwing24hK"
  | "humidityLow"
  | "humidityHigh"
  | "humiditySwing24h"
  | "illuminanceLx"
  | "uvMicrowattPerLumen"
  | "hoursOpenPerDay"
  | "daysOpenPerWeek"
  | "supervisedRoom"
  | "restrictedView"
  | "spillProvision"
  | "fireDetection"
  | "nightGuard"
>;

/** The facts that rules read, as a report states them. */
export function factsOfReport(answers: FacilityAnswers): ReportedFacts {
  const { climate, light } = answers;
  return {
    floorLoadKgPerM2: answers.building.floorLoadKgPerM2,
    temperatureLowC: climate.temperatureLowC,
    temperatureHighC: climate.temperatureHighC,
    temperatureSwing24hK: climate.temperatureSwing24hK,
    humidityLow: climate.humidityLow,
    humidityHigh: climate.humidityHigh,
    humiditySwing24h: climate.humiditySwing24h,
    illuminanceLx: light.illuminanceLx,
    uvMicrowattPerLumen: light.uvMicrowattPerLumen,
    hoursOpenPerDay: light.hoursOpenPerDay,
    daysOpenPerWeek: light.daysOpenPerWeek,
    supervisedRoom: answers.staff.supervisedRoom,
    restrictedView: answers.display.restrictedView,
    spillProvision: answers.fluids.spillProvision,
    fireDetection: answers.fire.fireDetection,
    nightGuard: answers.security.nightGuard,
  };
}

/** The answers that a venue's plain facts give already, so that a first report asks nothing twice. */
export function answersFromFacts(
  venue: ReportedFacts & Pick<VenueFacts, "passages" | "licences">,
): FacilityAnswers {
  const { passages, licences } = venue;
  return FacilityAnswers.parse({
    building: { floorLoadKgPerM2: venue.floorLoadKgPerM2 },
    climate: {
      temperatureLowC: venue.temperatureLowC,
      temperatureHighC: venue.temperatureHighC,
      temperatureSwing24hK: venue.temperatureSwing24hK,
      humidityLow: venue.humidityLow,
      humidityHigh: venue.humidityHigh,
      humiditySwing24h: venue.humiditySwing24h,
    },
    light: {
      illuminanceLx: venue.illuminanceLx,
      uvMicrowattPerLumen: venue.uvMicrowattPerLumen,
      hoursOpenPerDay: venue.hoursOpenPerDay,
      daysOpenPerWeek: venue.daysOpenPerWeek,
    },
    staff: { supervisedRoom: venue.supervisedRoom },
    display: { restrictedView: venue.restrictedView },
    fluids: { spillProvision: venue.spillProvision },
    fire: { fireDetection: venue.fireDetection },
    security: { nightGuard: venue.nightGuard },
    passages,
    licences,
  });
}

/** The same day of a later month, or that month's last day. */
export function monthsLater(day: DateText, months: number): DateText {
  const date = new Date(`${day}T00:00:00.000Z`);
  const wanted = date.getUTCDate();
  date.setUTCDate(1);
  date.setUTCMonth(date.getUTCMonth() + months);
  const last = new Date(Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + 1, 0)).getUTCDate();
  date.setUTCDate(Math.min(wanted, last));
  return date.toISOString().slice(0, 10);
}

/** How many questions of a section are answered, of how many. */
export function answeredIn(answers: FacilityAnswers, section: FacilitySection) {
  const all = Object.values(answers[section]);
  return { answered: all.filter((answer) => answer !== null).length, asked: all.length };
}
