/** What is still missing before the close, and what of it holds the file open. */
import { expect, test } from "vitest";
import { hasSentence } from "#app/_words/sentences.ts";
import { type ClosingFacts, DischargeInput, stillMissing } from "#lib/loans/closing.ts";
import { newId } from "#lib/platform/identity.ts";

const line = (said: Partial<ClosingFacts["lines"][number]> = {}): ClosingFacts["lines"][number] => ({
  accessionNumber: "AN 1",
  state: "checked in",
  occasions: ["out", "arrival", "departure", "home"],
  ...said,
});
const facts = (said: Partial<ClosingFacts> = {}): ClosingFacts => ({
  lines: [line(), line({ accessionNumber: "AN 2" })],
  customs: { countries: ["NO"], isDischarged: true },
  openClaims: [],
  money: { isStated: true, openMinor: 0, currency: "EUR" },
  airNotRecorded: null,
  ...said,
});

test("nothing is missing of a file that is whole, also where nothing was agreed and no border lay on the way", () => {
  expect(stillMissing(facts())).toEqual([]);
  expect(stillMissing(facts({ customs: null, money: null }))).toEqual([]);
});

test.each([
  [
    "a specimen at home that nobody checked in",
    { lines: [line({ state: "resting at home" })] },
    "bar",
    "close.not-checked-in",
  ],
  [
    "a specimen that is missing",
    { lines: [line(), line({ state: "missing" })] },
    "bar",
    "close.not-checked-in",
  ],
  [
    "a border without its discharge",
    { customs: { countries: ["NO", "SE"], isDischarged: false } },
    "bar",
    "close.not-discharged",
  ],
  [
    "an open claim",
    { openClaims: [{ number: "L 1 C1", accessionNumber: "AN 1" }] },
    "attend",
    "close.claim-open",
  ],
  [
    "no cost statement",
    { money: { isStated: false, openMinor: 0, currency: "EUR" } },
    "attend",
    "close.no-statement",
  ],
  [
    "a bill that is not paid",
    { money: { isStated: true, openMinor: 1, currency: "EUR" } },
    "attend",
    "close.not-paid",
  ],
  [
    "money to be paid back",
    { money: { isStated: true, openMinor: -1, currency: "EUR" } },
    "attend",
    "close.owed-back",
  ],
  [
    "no check on arrival",
    { lines: [line({ occasions: ["out", "departure", "home"] })] },
    "attend",
    "close.no-check-arrival",
  ],
  [
    "no check before the way home",
    { lines: [line({ occasions: ["out", "arrival", "home"] })] },
    "attend",
    "close.no-check-departure",
  ],
  [
    "no record of the air",
    { airNotRecorded: { venue: "Hall", from: "2027-01-01", until: "2027-02-01" } },
    "attend",
    "close.no-climate-record",
  ],
] as const)("%s is named", (_what, said, outcome, code) => {
  expect(stillMissing(facts(said))).toMatchObject([{ outcome, code }]);
  expect(hasSentence(code)).toBe(true);
});

test("many specimens of one kind are one entry with their number", () => {
  const many = Array.from({ length: 300 }, (_one, at) =>
    line({ accessionNumber: `AN ${at}`, state: "resting at home", occasions: [] }),
  );
  expect(
    stillMissing(facts({ lines: many })).map(({ code, parameters }) => [code, parameters.specimens]),
  ).toEqual([
    ["close.not-checked-in", 300],
    ["close.no-check-arrival", 300],
    ["close.no-check-departure", 300],
  ]);
});

test.each([["office"], ["reference"]])("a discharge names its %s", (field) => {
  const whole = {
    loanId: newId(),
    dischargedOn: "2027-03-01",
    office: "Harbour",
    reference: "T 1",
    note: "",
  };
  expect(DischargeInput.safeParse(whole).success).toBe(true);
  expect(DischargeInput.safeParse({ ...whole, [field]: " " }).success).toBe(false);
});
