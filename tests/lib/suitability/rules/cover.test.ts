import { expect, test } from "vitest";
import { coverInSight, judgeCover, judgeSum, sumOfCosts } from "#lib/suitability/rules/cover.ts";
import { aLentSpecimen, aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const cost = (minor: number, currency = "EUR") =>
  aSpecimenCase({
    specimen: {
      replacementCost: {
        minor,
        currency,
        basis: "preparation cost",
        statedOn: "2026-05-01",
        statedBy: "Collection",
      },
    },
  });
const without = aSpecimenCase({ specimen: { replacementCost: null } });
const certificate = (minor: number) => ({
  amount: { minor, currency: "EUR" },
  startsAt: "2027-01-01T00:00:00Z",
  endsAt: "2028-01-01T00:00:00Z",
  coversTransit: true,
  territories: ["NO"],
});

test("costs of one currency add up", () => {
  expect(sumOfCosts([cost(100), cost(250)])).toEqual({
    minor: 350,
    currency: "EUR",
    currencies: ["EUR"],
    unknown: 0,
  });
});

test("costs of two currencies have no sum in one", () => {
  expect(sumOfCosts([cost(100), cost(250, "NOK")])).toMatchObject({
    currency: null,
    currencies: ["EUR", "NOK"],
  });
});

const days = { startsOn: "2027-03-01", endsOn: "2027-07-01" };

test("a certificate counts before what the borrower states", () => {
  const stated = { minor: 900, currency: "EUR" };
  expect(coverInSight({ covers: [certificate(300)], statedCover: stated, ...days })).toEqual({
    amount: { minor: 300, currency: "EUR" },
    isCertified: true,
  });
  expect(coverInSight({ covers: [], statedCover: stated, ...days })).toEqual({
    amount: stated,
    isCertified: false,
  });
  expect(coverInSight({ covers: [], statedCover: null, ...days })).toBeNull();
});

test.each([
  ["two that run together add up", [certificate(100), certificate(300)], 400],
  [
    "one after the other, the lower one counts",
    [
      { ...certificate(300), endsAt: "2027-05-01T00:00:00Z" },
      { ...certificate(200), startsAt: "2027-05-01T00:00:00Z" },
    ],
    200,
  ],
  [
    "where a second joins late, what there is before it counts",
    [certificate(300), { ...certificate(500), startsAt: "2027-05-01T00:00:00Z" }],
    300,
  ],
  [
    "one that ended before the loan adds nothing",
    [certificate(300), { ...certificate(500), endsAt: "2027-02-01T00:00:00Z" }],
    300,
  ],
  [
    "one of another currency adds nothing",
    [certificate(300), { ...certificate(500), amount: { minor: 9_000, currency: "NOK" } }],
    300,
  ],
])("of several certificates %s", (_what, covers, minor) => {
  expect(coverInSight({ covers, statedCover: null, ...days }, "EUR")).toEqual({
    amount: { minor, currency: "EUR" },
    isCertified: true,
  });
});

const euros = (minor: number, isCertified = false) => ({ amount: { minor, currency: "EUR" }, isCertified });

test.each([
  ["cover for the sum is clear", [cost(100), cost(200)], euros(300), "clear", "cover.stated"],
  ["a certificate for the sum is clear", [cost(300)], euros(300, true), "clear", "cover.certified"],
  ["a cent less is a bar", [cost(100), cost(200)], euros(299), "bar", "cover.too-low"],
  ["no cover stated is attend", [cost(100)], null, "attend", "cover.not-stated"],
  ["another currency is attend", [cost(100, "NOK")], euros(10_000), "attend", "cover.other-currency"],
  [
    "an unknown cost makes the sum attend",
    [cost(100), without],
    euros(10_000),
    "attend",
    "cover.sum-not-known",
  ],
  ["known costs alone can be too high", [cost(100), without], euros(99), "bar", "cover.too-low"],
] as const)("%s", (_what, subjects, inSight, outcome, fact) => {
  expect(judgeSum(sumOfCosts(subjects), inSight)).toMatchObject({ outcome, fact });
});

test.each([
  [
    "a cost that nobody stated is attend",
    aLentSpecimen({ replacementCost: null }),
    "V1",
    "attend",
    "cover.cost-not-known",
  ],
  ["a cost of this year is clear", aLentSpecimen(), "V1", "clear", "cover.cost-stated"],
  [
    "a cost of more than 12 months ago is attend",
    aLentSpecimen({
      replacementCost: {
        minor: 1,
        currency: "EUR",
        basis: "cost to replace",
        statedOn: "2025-11-24",
        statedBy: "x",
      },
    }),
    "V2",
    "attend",
    "cover.cost-old",
  ],
] as const)("%s", (_what, specimen, rule, outcome, fact) => {
  const subject = { ...aSpecimenCase(), specimen };
  expect(judgeCover(subject, aRequestFact(), [subject])[0]).toMatchObject({ rule, outcome, fact });
});
