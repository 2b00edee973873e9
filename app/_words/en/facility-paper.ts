/** What the questions of a facility report are called on paper, in English: the words of the form. */
import {
  facilityChoiceWords,
  facilityQuestionWords,
  facilitySectionWords,
} from "#app/_words/en/facility-questions.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import type { FacilityLabels } from "#lib/papers/facility-paper/document.ts";

export const facilityPaperLabels: FacilityLabels = {
  name: "Facility report",
  overline: "{institution}",
  reported: "Version {version}, reported on {day} by {name}; counts until {until}",
  confidential: "Confidential: for the lender's decision and for nobody else.",
  sections: facilitySectionWords,
  questions: facilityQuestionWords,
  choices: facilityChoiceWords,
  yes: "yes",
  no: "no",
  notKnown: "not known",
  answered: "{answered} of {asked} answered.",
  wayIn: "The way in",
  passage: [words.passageName, words.kind, words.widthMm, words.heightMm, words.depthMm, words.loadKg],
  passageKinds: words.passageKinds,
  thenWidth: "{first}, then {second}",
  licences: words.licences,
  licence: [words.licence, words.number, words.authority, "Responsible person", words.validUntil],
  licenceKinds: words.licenceKinds,
  none: "None is stated.",
  hash: "SHA-256:",
};

export const facilityPaperWords = {
  asPdf: "As PDF",
  readAs: (version: number, size: string) => `Facility report, version ${version}, ${size}`,
} as const;
