/** What a condition form says by itself; one value of this type for each language. */
import type { Activity, Answer, Occasion, Severity } from "#lib/condition/schema.ts";
import type { FindingTerm } from "#lib/condition/terms.ts";

/** What can be said of a mark that was seen before. */
export const formAnswers = ["same", "better", "worse", "gone", "not-visible"] as const satisfies Answer[];
export type FormAnswer = (typeof formAnswers)[number];

/** Words with {names} are filled by `fill`. */
export type ConditionWords = {
  name: string;
  about: string;
  occasion: string;
  occasionLead: string;
  occasions: Readonly<Record<Occasion, string>>;
  place: string;
  day: string;
  light: string;
  temperature: string;
  humidity: string;
  howTo: string;
  howToRows: readonly { term: string; text: string }[];
  specimens: string;
  /** {number} of {of}, {accessionNumber}. */
  specimen: string;
  crate: string;
  lastCheck: string;
  noCheck: string;
  noMarks: string;
  mark: string;
  found: string;
  before: string;
  now: string;
  answers: Readonly<Record<FormAnswer, string>>;
  box: string;
  terms: Readonly<Record<FindingTerm, string>>;
  severities: Readonly<Record<Severity, string>>;
  activities: Readonly<Record<Activity, string>>;
  percentOfArea: string;
  newWhat: string;
  newWhere: string;
  newSize: string;
  newSeverity: string;
  lookedAt: string;
  lookedAtOn: string;
  pictures: string;
  signatures: string;
  signed: string;
  forLender: string;
  forBorrower: string;
  signature: string;
  personName: string;
  time: string;
};
