/** Words for the terms of an agreement on the screen: what is set for a loan, and what an amendment changes. */
import type { CourierReason } from "#lib/agreements/courier.ts";

const courierReasonWords: Record<CourierReason, string> = {
  "whole body": "a whole body travels",
  "large jar": "a jar holds more than the house's figure",
  "breaks easily": "a specimen breaks easily in its pose",
  "replacement cost": "a replacement cost is above the house's figure",
  "few loans before": "the borrower has fewer loans behind it than the house asks for",
  "change of vehicle": "the way changes vehicle",
};

const reasonsInWords = (reasons: readonly CourierReason[]) =>
  reasons.map((reason) => courierReasonWords[reason]).join("; ");

export const agreementTermsWords = {
  refusals: {
    "clause.out-of-range": "This number is outside what the clause takes.",
    "clause.not-offered": "The clause does not offer this.",
    "clause.too-long": "Up to 400 letters go into a clause.",
    "clause.no-parameter": "No clause has such a parameter.",
    "agreement.one-language-twice": "Choose two different languages, or one.",
  },
  languages: { en: "English", de: "German", fr: "French" },
  languagesOf: (names: readonly string[]) =>
    names.length === 1 ? `${names[0]}` : `${names[0]} (rules) and ${names[1]}`,
  language: "Languages",
  ruling: "Language that rules",
  second: "Second language, beside it",
  noSecond: "none",
  set: "Languages and clauses",
  setHint:
    "Every clause that applies to this loan, with what it leaves open. What is left as it is has the standard of the centre.",
  clause: (number: number, heading: string) => `${number} ${heading}`,
  own: "differs from the standard",
  standard: (value: string) => `Standard: ${value}`,
  range: (least: number, most: number) => `${least} to ${most}`,
  courierReasons: (reasons: readonly CourierReason[]) => `proposed because ${reasonsInWords(reasons)}`,
  courierProposed: (reasons: readonly CourierReason[]) =>
    `Clause 32: a courier who travels is proposed, because ${reasonsInWords(reasons)}. Ask first whether the journey is needed; by video or none can be set instead.`,
  courierFigures: "Figures of lending",
  ownTerms: "Differs from the standard terms",
  allStandard: "Nothing in the clauses differs from the standard terms.",
  amends: (number: number, version: number) => `Amendment ${number}, of version ${version}`,
  wouldAmend: (number: number, version: number) =>
    `A new version would be amendment ${number}, of version ${version}, which has been signed. It would change:`,
  nothingDiffers: "Nothing differs from that version.",
  differences: "What the amendment changes",
  here: "In this agreement",
  standardHead: "Standard",
  what: "What",
  before: "Before",
  after: "Now",
  signedStay: "Signatures under an earlier version stay under its text.",
} as const;
