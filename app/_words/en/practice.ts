/** Words of the figures by which the house lends, in English. */
import { formatNumber } from "#app/_words/format.ts";
import type { PracticeName, PracticeUnit } from "#lib/people/practice.ts";

const units: Record<Exclude<PracticeUnit, "currency">, string> = {
  days: "days",
  millilitres: "ml",
  loans: "loans",
};

export const practiceWords = {
  title: "Figures of lending",
  about:
    "Rules of suitability and the steps of a loan count with these figures. What the house leaves empty stays at the default.",
  hint: (figure: string, source: string, standing: string) =>
    `Left empty, ${figure}: ${source} (${standing}).`,
  caption: "Figures by which the house lends",
  figure: "Figure",
  value: "Value",
  valueOf: (figure: number, unit: PracticeUnit, currency: string) =>
    `${formatNumber(figure)} ${unit === "currency" ? currency : units[unit]}`,
  basis: "Basis",
  own: "set by the house",
  names: {
    noticeTeachingDays: "Notice for teaching in the country",
    noticeNationalDays: "Notice for other loans in the country",
    noticeAbroadDays: "Notice for loans abroad",
    usualLoanDays: "Usual length of a course or a show, at most",
    usualResearchDays: "Usual length for research and pictures, at most",
    holdDays: "Days of a request are held for",
    bufferSmallDays: "Kept free before and after, for what one person carries",
    bufferCrateDays: "Kept free before and after, for what travels in a crate of its own",
    bufferBodyDays: "Kept free before and after, for a whole body",
    restSmallDays: "Rest of what one person carries",
    restCrateDays: "Rest of what travels in a crate of its own",
    restBodyDays: "Rest of a whole body",
    consentMarginDays: "Consent that outlasts the return-by by",
    dispositionMarginDays: "Return-by before what is owed back by",
    extensionNoticeDays: "An extension is asked for before the end by",
    recallNoticeDays: "Notice of a recall for the house's own need",
    courierCost: "Courier proposed above a replacement cost of one specimen; 0 for never",
    courierJarMl: "Courier proposed for a jar that holds more than, in ml; 0 for never",
    courierLoans: "Courier proposed for a borrower with fewer loans in three years than",
  } satisfies Record<PracticeName, string>,
} as const;
