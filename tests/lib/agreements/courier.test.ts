/** What speaks for a courier, each reason by itself and to its last unit. */
import { expect, test } from "vitest";
import { type CourierCase, courierReasons, reasonsForCourier } from "#lib/agreements/courier.ts";
import { practiceOf } from "#lib/people/practice.ts";
import type { LentSpecimen } from "#lib/suitability/rules/case.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const plain: Partial<LentSpecimen> = {
  kind: "organ",
  preparation: "silicone-impregnated",
  partsAtRisk: "",
  replacementCost: null,
};
const known = { ...aRequestFact().borrower, record: { loans: 3, late: 0, damaged: 0 } };
const reasons = (specimen: Partial<LentSpecimen> = {}, said: Partial<CourierCase> = {}) =>
  reasonsForCourier({
    request: aRequestFact({ borrower: known }),
    subjects: [aSpecimenCase({ specimen: { ...aSpecimenCase().specimen, ...plain, ...specimen } })],
    currency: "EUR",
    parameters: {},
    ...said,
  });
const cost = (minor: number, currency = "EUR"): LentSpecimen["replacementCost"] =>
  ({
    minor,
    currency,
    basis: "made anew",
    on: "2026-01-01",
    by: "The curator",
  }) as unknown as LentSpecimen["replacementCost"];
const jar = (freeFluidMl: number) => ({ legal: { ...aSpecimenCase().specimen.legal, freeFluidMl } });

test("a compact organ for a borrower who is known needs none", () => {
  expect(reasons()).toEqual([]);
});

test.each([
  ["whole body", { kind: "whole body" }],
  ["large jar", jar(5_001)],
  ["breaks easily", { partsAtRisk: "The free end of the nerve." }],
  ["breaks easily", { preparation: "mounted skeleton" }],
  ["breaks easily", { preparation: "corrosion cast" }],
  ["replacement cost", { replacementCost: cost(5_000_001) }],
] as const)("%s speaks for a courier", (reason, specimen) => {
  expect(reasons(specimen as Partial<LentSpecimen>)).toEqual([reason]);
});

test.each([
  ["a jar of just five litres", jar(5_000)],
  ["a cost that is just the figure", { replacementCost: cost(5_000_000) }],
  ["a cost in another currency, which is not compared", { replacementCost: cost(9_000_000, "NOK") }],
])("%s does not", (_what, specimen) => {
  expect(reasons(specimen)).toEqual([]);
});

test("a first loan and a change of vehicle speak for one", () => {
  const first = aRequestFact({ borrower: { ...known, record: { loans: 0, late: 0, damaged: 0 } } });
  expect(reasons({}, { request: first })).toEqual(["few loans before"]);
  for (const parameters of [{ transportMode: "road and air" }, { transshipment: "with consent" }])
    expect(reasons({}, { parameters })).toEqual(["change of vehicle"]);
  expect(reasons({}, { parameters: { transportMode: "road", transshipment: "none" } })).toEqual([]);
});

test("the figures are the centre's, in its currency, and one of nothing leaves its reason out", () => {
  const own = (figures: Parameters<typeof practiceOf>[0], minor: number, currency = "EUR") =>
    reasons(
      { replacementCost: cost(minor, currency), ...jar(20_000) },
      { request: aRequestFact({ borrower: known, practice: practiceOf(figures) }), currency },
    );
  expect(own({ courierCost: 100, courierJarMl: 0 }, 10_001)).toEqual(["replacement cost"]);
  expect(own({ courierCost: 100, courierJarMl: 0 }, 10_000)).toEqual([]);
  expect(own({ courierCost: 100, courierJarMl: 0 }, 101, "JPY")).toEqual(["replacement cost"]);
  expect(own({ courierCost: 0, courierJarMl: 0, courierLoans: 0 }, 9_000_000)).toEqual([]);
  expect(own({ courierLoans: 4, courierCost: 0, courierJarMl: 20_000 }, 1)).toEqual(["few loans before"]);
});

test("reasons come in one order", () => {
  const all = reasons({ kind: "whole body", partsAtRisk: "Fingers.", ...jar(6_000) });
  expect(all).toEqual(courierReasons.filter((reason) => all.includes(reason)));
  expect(all).toHaveLength(3);
});
