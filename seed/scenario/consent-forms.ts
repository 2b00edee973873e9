/**
 * The forms of consent of the scenario: what each grants and refuses, and the
 * words in which a donor is written down. Sex, decade of age and month of death
 * stand here only so that a test can hold them against the specimens.
 */
import type { Answer, ConsentInput, Scope } from "#lib/provenance/schema.ts";
import { scopes } from "#lib/provenance/schema.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import type { Day } from "#seed/scenario/shape.ts";

type Limits = {
  audience: ConsentInput["audience"];
  territoriesAllowed: string[];
  territoriesRefused: string[];
  validUntil: Day | null;
  reviewDue: Day | null;
  nonCommercialOnly: boolean;
  identifiable: boolean;
  disposition: ConsentInput["disposition"];
  dispositionDue: Day | null;
};
export type ScenarioConsent = Limits &
  Pick<ConsentInput, "basis" | "formVersion" | "signedOn" | "witnessCount" | "evidencePlace" | "answers"> & {
    verified: Day | null;
    withdrawn: { received: Day; effective: Day } | null;
  };

/** What the sealed record holds; every name is invented. */
export type SealedPerson = {
  fullName: string;
  bornOn: string;
  diedOn: string;
  kin: string;
  documentPlace: string;
};

export type ScenarioDonor = {
  sex: "female" | "male" | "unknown";
  ageBand: SpecimenInput["ageBand"];
  /** "YYYY-MM"; empty where it is not known. */
  died: string;
  consent: ScenarioConsent | null;
  sealed: SealedPerson | null;
};

export function answered(all: Answer, ...exceptions: [Answer, ...Scope[]][]): ConsentInput["answers"] {
  const answers = Object.fromEntries(scopes.map((scope) => [scope, all])) as ConsentInput["answers"];
  for (const [answer, ...some] of exceptions) for (const scope of some) answers[scope] = answer;
  return answers;
}

/** Everything but what few forms ask for. */
export const full = answered(
  "granted",
  ["refused", "sampling", "commercial use of likeness"],
  ["not asked", "mass media"],
);
export const teachingOnly = answered("refused", [
  "granted",
  "professional teaching",
  "handling by learners",
  "lending to others",
  "export",
  "long-term retention",
  "pictures, internal",
  "research",
]);
export const notHandled = answered("granted", [
  "refused",
  "handling by learners",
  "commercial use of likeness",
  "sampling",
]);
export const notForMoney = answered(
  "granted",
  ["refused", "public display, paid", "commercial use of likeness", "mass media"],
  ["not asked", "sampling"],
);
export const noPictures = answered("granted", [
  "refused",
  "pictures, professional publication",
  "pictures and models, openly online",
  "mass media",
  "casting and scanning",
]);
export const oldBundle = answered("unknown", ["granted", "professional teaching", "long-term retention"]);
/** A form from before lending was asked about. */
export const lendingNotAsked = answered("not asked", [
  "granted",
  "professional teaching",
  "handling by learners",
  "research",
  "long-term retention",
]);

const openLimits: Limits = {
  audience: "anyone",
  territoriesAllowed: [],
  territoriesRefused: [],
  validUntil: null,
  reviewDue: null,
  nonCommercialOnly: true,
  identifiable: false,
  disposition: "retain indefinitely",
  dispositionDue: null,
};

type Paper = Pick<ScenarioConsent, "signedOn" | "evidencePlace"> &
  Partial<Omit<ScenarioConsent, "answers" | "signedOn" | "evidencePlace">>;

export function consent(answers: ConsentInput["answers"], paper: Paper): ScenarioConsent {
  return {
    ...openLimits,
    basis: "donor in life",
    formVersion: "Form 4, 2008",
    witnessCount: 2,
    verified: -1_410,
    withdrawn: null,
    answers,
    ...paper,
  };
}

/** A form of before 2008, signed in life. */
export function earlierConsent(answers: ConsentInput["answers"], paper: Paper): ScenarioConsent {
  return consent(answers, { formVersion: "Form 2, 2001", witnessCount: 1, ...paper });
}

export const file = (number: number) => `Donor archive, cabinet 2, file ${number}`;

export function person(
  fullName: string,
  bornOn: string,
  diedOn: string,
  kin: string,
  documentPlace: string,
): SealedPerson {
  return { fullName, bornOn, diedOn, kin, documentPlace };
}

export function donor(
  sex: ScenarioDonor["sex"],
  ageBand: ScenarioDonor["ageBand"],
  died: string,
  consentGiven: ScenarioConsent | null,
  sealed: SealedPerson | null = null,
): ScenarioDonor {
  return { sex, ageBand, died, consent: consentGiven, sealed };
}
