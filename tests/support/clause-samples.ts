/** Two values for each parameter of the clauses, so that a test can change one and look for it. */

import {
  isSetParameter,
  type ParameterName,
  parameterNames,
  parameterOf,
  type StandardFacts,
  standardOf,
} from "#lib/agreements/clauses/parameters.ts";
import type { ParameterValue } from "#lib/agreements/terms-annexes.ts";
import { defaultPractice } from "#lib/people/practice.ts";

/** What the standards of the parameters are worked out from. */
export const facts: StandardFacts = {
  lenderName: "Centre",
  lenderCity: "Port Selwyn",
  lenderEmail: "a@b.example",
  lenderEmergency: "+47 1",
  contactName: "A. Lecturer",
  contactPhone: "+47 2",
  isPaidAdmission: false,
  isExhibition: false,
  hasJars: false,
  hasCourierReason: false,
  practice: defaultPractice,
  heaviestKg: 4,
  cancellation: null,
};

type Pair = { before: ParameterValue; after: ParameterValue };

const paper = (number: string) => ({
  kind: "other",
  authority: `Office ${number}`,
  number,
  validUntil: "2031-09-08",
});

function pairOf(name: ParameterName): Pair {
  const parameter = parameterOf(name);
  if (isSetParameter(parameter)) {
    const before = standardOf(parameter, facts);
    switch (parameter.kind) {
      case "number":
        return { before, after: parameter.most - 1 };
      case "choice":
        return { before, after: parameter.options.find((option) => option !== before) ?? "" };
      default:
        return { before, after: `Words for ${name}` };
    }
  }
  switch (parameter.kind) {
    case "fact choice":
      return { before: parameter.options?.[0] ?? "", after: parameter.options?.[1] ?? "" };
    case "fact choices":
      return { before: [], after: [...(parameter.options ?? [])] };
    case "fact number":
      return { before: 3, after: 98_765 };
    case "fact day":
      return { before: "2027-03-01", after: "2031-05-06" };
    case "fact money":
      return { before: null, after: { minor: 7_654_321, currency: "EUR" } };
    case "fact country":
      return { before: "NO", after: "JP" };
    case "fact countries":
      return { before: null, after: ["JP", "BR"] };
    case "fact language":
      return { before: "en", after: "fr" };
    case "fact fluids":
      return { before: [], after: [{ name: "glycerol", percent: 61 }] };
    case "fact papers":
      return { before: [], after: [paper(`N 77 ${name}`)] };
    default:
      return { before: "Somebody", after: `Words for ${name}` };
  }
}

const pairs = parameterNames.map((name) => [name, pairOf(name)] as const);

export const sampleBefore = Object.fromEntries(pairs.map(([name, pair]) => [name, pair.before])) as Record<
  ParameterName,
  ParameterValue
>;
export const sampleAfter = Object.fromEntries(pairs.map(([name, pair]) => [name, pair.after])) as Record<
  ParameterName,
  ParameterValue
>;
