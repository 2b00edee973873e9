/**
 * Figures by which the house lends that are its own to set: notice, length of loans,
 * rest, the days that a consent or a day owed must leave, and from when on a courier is
 * proposed. Each has a default with where it comes from; what the centre leaves out
 * stays at it. All are whole numbers of their unit.
 */
import { z } from "zod";
import { type Standing, standings } from "#lib/workings/standing.ts";

export const practiceNames = [
  "noticeTeachingDays",
  "noticeNationalDays",
  "noticeAbroadDays",
  "usualLoanDays",
  "usualResearchDays",
  "holdDays",
  "bufferSmallDays",
  "bufferCrateDays",
  "bufferBodyDays",
  "restSmallDays",
  "restCrateDays",
  "restBodyDays",
  "consentMarginDays",
  "dispositionMarginDays",
  "extensionNoticeDays",
  "recallNoticeDays",
  "courierCost",
  "courierJarMl",
  "courierLoans",
] as const;
export type PracticeName = (typeof practiceNames)[number];
export type PracticeFigures = Readonly<Record<PracticeName, number>>;

const [read, , practice, derived] = standings;

export const practiceUnits = ["days", "currency", "millilitres", "loans"] as const;
export type PracticeUnit = (typeof practiceUnits)[number];

/** No figure in days is longer than a year. */
export const mostPracticeDays = 366;

const most: Readonly<Record<PracticeUnit, number>> = {
  days: mostPracticeDays,
  currency: 100_000_000,
  millilitres: 1_000_000,
  loans: 20,
};

/** Of figures that are no days: what they count. Whole units of the centre's currency, for one specimen. */
const otherUnits: Readonly<Partial<Record<PracticeName, PracticeUnit>>> = {
  courierCost: "currency",
  courierJarMl: "millilitres",
  courierLoans: "loans",
};
export const unitOfPractice = (name: PracticeName): PracticeUnit => otherUnits[name] ?? "days";

/** @source per row */
export const practiceDefaults: Readonly<
  Record<PracticeName, { figure: number; standing: Standing; source: string }>
> = {
  noticeTeachingDays: { figure: 42, standing: practice, source: "six weeks for teaching without a crate" },
  noticeNationalDays: {
    figure: 182,
    standing: read,
    source: "a note on lead times of 2021: six months in the country",
  },
  noticeAbroadDays: {
    figure: 274,
    standing: read,
    source: "a note on lead times of 2021: nine months abroad",
  },
  usualLoanDays: { figure: 366, standing: practice, source: "a year before a review" },
  usualResearchDays: { figure: 184, standing: practice, source: "half a year for research" },
  holdDays: { figure: 14, standing: practice, source: "days are held while a request is decided" },
  bufferSmallDays: { figure: 14, standing: derived, source: "before and after, for what one person carries" },
  bufferCrateDays: { figure: 30, standing: derived, source: "before and after, for what travels in a crate" },
  bufferBodyDays: { figure: 60, standing: derived, source: "before and after, for a whole body" },
  restSmallDays: { figure: 14, standing: derived, source: "what one person carries" },
  restCrateDays: { figure: 30, standing: derived, source: "what travels in a crate of its own" },
  restBodyDays: { figure: 60, standing: derived, source: "a whole body" },
  consentMarginDays: { figure: 30, standing: derived, source: "a consent outlasts the return-by" },
  dispositionMarginDays: { figure: 60, standing: derived, source: "before what is owed back" },
  extensionNoticeDays: { figure: 30, standing: practice, source: "a policy's floor is 14 days" },
  recallNoticeDays: {
    figure: 30,
    standing: read,
    source: "loan policy of a natural history collection, for its own need",
  },
  courierCost: { figure: 50_000, standing: practice, source: "replacement cost of one specimen above it" },
  courierJarMl: { figure: 5_000, standing: practice, source: "a jar of more than five litres" },
  courierLoans: { figure: 1, standing: practice, source: "a borrower with no loan behind it" },
};

export const defaultPractice = Object.fromEntries(
  practiceNames.map((name) => [name, practiceDefaults[name].figure]),
) as PracticeFigures;

const figureOf = (unit: PracticeUnit) =>
  z
    .number()
    .int()
    .min(0)
    .max(most[unit])
    .meta(unit === "days" ? { title: "Days", unit: "d" } : { title: "Figure", unit });
type Figure = ReturnType<typeof figureOf>;

/** What the centre has set of them. */
export const PracticeInput = z
  .object(
    Object.fromEntries(practiceNames.map((name) => [name, figureOf(unitOfPractice(name))])) as Record<
      PracticeName,
      Figure
    >,
  )
  .partial();
export type PracticeInput = z.infer<typeof PracticeInput>;

/** The figures that count: the centre's own, and the defaults for what it left out. */
export function practiceOf(set: PracticeInput | undefined): PracticeFigures {
  const own = Object.entries(set ?? {}).filter(([, figure]) => figure !== undefined);
  return { ...defaultPractice, ...Object.fromEntries(own) };
}
