import { describe, expect, test } from "vitest";
import {
  clauseParameters,
  faultOfParameter,
  isSetParameter,
  parameterNames,
  parameterOf,
  standardOf,
} from "#lib/agreements/clauses/parameters.ts";
import { facts } from "#tests/support/clause-samples.ts";

test.each(parameterNames)("the standard of %s is one that may be set, and says where it is from", (name) => {
  const parameter = parameterOf(name);
  if (!isSetParameter(parameter)) return expect(parameter.kind).toMatch(/^fact /);
  expect(faultOfParameter(parameter, standardOf(parameter, facts))).toBeNull();
  expect(["read", "from memory", "common practice, no source", "derived here"]).toContain(
    parameter.basis.standing,
  );
  if (parameter.basis.standing === "read") expect(parameter.basis.title).not.toBe("");
});

/** Defaults of the trade that the centre begins from, with the source of each. */
describe("published standards", () => {
  test.each([
    ["recallDays", 30, "Loan policy of a natural history collection: 30 days for own need"],
    ["revaluationMonths", 12, "Loan terms of a library: longer than 12 months"],
    ["incidentDays", 2, "Loan form of a collection network: 2 working days in writing"],
    ["incidentReportDays", 10, "Loan form of a collection network: 10 working days in full"],
    ["immunityMonths", 3, "Government indemnity scheme: three months before cover"],
    ["crateLowC", 16, "Green protocol 2023: 16–25 °C"],
    ["crateHighC", 25, "Green protocol 2023: 16–25 °C"],
    ["crateHumidityLowPercent", 40, "Green protocol 2023: 40–60 %"],
    ["crateHumidityHighPercent", 60, "Green protocol 2023: 40–60 %"],
  ] as const)("%s is %i (%s)", (name, standard, _source) => {
    const parameter = clauseParameters[name];
    expect(standardOf(parameter, facts)).toBe(standard);
    expect(parameter.basis.standing).toBe("read");
  });
});

test.each([
  ["a light specimen rests a day", {}, 24],
  ["a jar rests two days", { hasJars: true }, 48],
  ["a specimen above 200 kg rests two days", { heaviestKg: 201 }, 48],
] as const)("%s", (_what, said, hours) => {
  expect(standardOf(clauseParameters.restHours, { ...facts, ...said })).toBe(hours);
});

test("a courier travels where there is a reason, and an exhibition lasts a year at most", () => {
  expect(standardOf(clauseParameters.courier, { ...facts, hasCourierReason: true })).toBe("travels");
  expect(standardOf(clauseParameters.courier, facts)).toBe("by video");
  expect(standardOf(clauseParameters.loanMaxMonths, { ...facts, isExhibition: true })).toBe(12);
});

test.each([
  ["recallDays", 367, "clause.out-of-range"],
  ["recallDays", -1, "clause.out-of-range"],
  ["recallDays", 1.5, "clause.out-of-range"],
  ["recallDays", Number.NaN, "clause.out-of-range"],
  ["recallDays", "30", "clause.out-of-range"],
  ["courier", "flies", "clause.not-offered"],
  ["creditLine", "x".repeat(401), "clause.too-long"],
  ["creditLine", 3, "clause.too-long"],
  ["recallDays", 0, null],
  ["courier", "none", null],
  ["creditLine", "", null],
] as const)("%s set to %s is answered %s", (name, value, fault) => {
  expect(faultOfParameter(clauseParameters[name], value)).toBe(fault);
});
