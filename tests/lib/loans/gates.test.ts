import { describe, expect, test } from "vitest";
import { allHold, gateNames, type ReleaseFacts, releaseGates } from "#lib/loans/gates.ts";
import { finding } from "#lib/suitability/rules/case.ts";

const one = "01920000-0000-7000-8000-000000000101";
const two = "01920000-0000-7000-8000-000000000102";
const check = { checkedOn: "2027-02-10", isForThisLoanOut: true, grade: "A", fitToTravel: true };
const kept = { startsOn: "2027-02-15", endsOn: "2027-07-15" };
const clear = (id: string) => finding(id, "P2", "permits", { outcome: "clear", fact: "permits.no-border" });

const ready = (said: Partial<ReleaseFacts> = {}): ReleaseFacts => ({
  today: "2027-02-20",
  lines: [
    { specimenId: one, accessionNumber: "AN 1", isPacked: true },
    { specimenId: two, accessionNumber: "AN 2", isPacked: true },
  ],
  agreement: { version: 2, signedByLender: true, signedByBorrower: true, schedule: ["AN 1", "AN 2"] },
  covers: [
    {
      amount: { minor: 3_000, currency: "EUR" },
      startsAt: "2027-02-20T00:00:00Z",
      endsAt: "2027-07-16T00:00:00Z",
      coversTransit: true,
      territories: ["NO"],
    },
  ],
  stretches: [
    { from: "2027-02-20T00:00:00Z", to: "2027-07-15T00:00:00Z", isTransit: true, territories: ["NO"] },
  ],
  costs: { minor: 3_000, currency: "EUR", currencies: ["EUR"], unknown: 0 },
  findings: [clear(one), clear(two)],
  payment: { version: 2, openMinor: 0, currency: "EUR", putOff: null },
  checks: new Map([
    [one, check],
    [two, check],
  ]),
  isSignedOff: false,
  crates: [{ code: "L 1/1", state: "sealed", specimenIds: [one, two] }],
  stageOut: { carrier: "Carrier", departsOn: "2027-02-20", arrivesOn: "2027-02-22" },
  booked: new Map([
    [one, kept],
    [two, kept],
  ]),
  ...said,
});
const failing = (facts: ReleaseFacts) => releaseGates(facts).filter((gate) => !gate.holds);

test("a loan that is ready holds at every gate, in their order", () => {
  const gates = releaseGates(ready());
  expect(gates.map((gate) => gate.gate)).toEqual([...gateNames]);
  expect(allHold(gates)).toBe(true);
  for (const gate of gates) expect(gate.facts.length).toBeGreaterThan(0);
});

const agreement = { version: 2, signedByLender: true, signedByBorrower: true, schedule: ["AN 1", "AN 2"] };
const [fullCover] = ready().covers;
const crate = { code: "L 1/1", state: "sealed", specimenIds: [one, two] } as const;

test.each([
  ["no agreement", { agreement: null }, "signed", "gate.no-agreement"],
  [
    "a signature of the lender missing",
    { agreement: { ...agreement, signedByLender: false } },
    "signed",
    "gate.not-signed",
  ],
  [
    "a signature of the borrower missing",
    { agreement: { ...agreement, signedByBorrower: false } },
    "signed",
    "gate.not-signed",
  ],
  [
    "a specimen that the agreement does not name",
    { agreement: { ...agreement, schedule: ["AN 1"] } },
    "signed",
    "gate.other-schedule",
  ],
  [
    "a specimen that the agreement names and the loan does not",
    { agreement: { ...agreement, schedule: ["AN 1", "AN 2", "AN 3"] } },
    "signed",
    "gate.other-schedule",
  ],
  ["no cover", { covers: [] }, "cover", "gate.cover-no-cover"],
  [
    "cover that starts an hour late",
    { covers: [{ ...fullCover, startsAt: "2027-02-20T01:00:00Z" }] },
    "cover",
    "gate.cover-no-cover",
  ],
  [
    "cover without transit",
    { covers: [{ ...fullCover, coversTransit: false }] },
    "cover",
    "gate.cover-not-on-the-road",
  ],
  [
    "cover that is too low",
    { covers: [{ ...fullCover, amount: { minor: 2_999, currency: "EUR" } }] },
    "cover",
    "gate.cover-too-low",
  ],
  [
    "a replacement cost that nobody knows",
    { costs: { minor: 1, currency: "EUR", currencies: ["EUR"], unknown: 1 } },
    "cover",
    "gate.cost-not-known",
  ],
  [
    "an agreed sum that is not all paid",
    { payment: { version: 2, openMinor: 1, currency: "EUR", putOff: null } },
    "paid",
    "gate.not-paid",
  ],
  [
    "a permit that bars",
    {
      findings: [
        clear(one),
        finding(two, "CI1", "permits", {
          outcome: "bar",
          fact: "law.species-not-known",
          wayOut: "way.species-paper",
        }),
      ],
    },
    "permits",
    "law.species-not-known",
  ],
  ["no check for going out", { checks: new Map([[one, check]]) }, "condition", "gate.no-check-out"],
  [
    "a check for something else",
    {
      checks: new Map([
        [one, check],
        [two, { ...check, isForThisLoanOut: false }],
      ]),
    },
    "condition",
    "gate.no-check-out",
  ],
  [
    "a check of 31 days ago",
    {
      checks: new Map([
        [one, check],
        [two, { ...check, checkedOn: "2027-01-20" }],
      ]),
    },
    "condition",
    "gate.check-too-old",
  ],
  [
    "a specimen that may not travel",
    {
      checks: new Map([
        [one, check],
        [two, { ...check, fitToTravel: false }],
      ]),
    },
    "condition",
    "gate.not-fit-to-travel",
  ],
  [
    "a specimen of grade D",
    {
      checks: new Map([
        [one, check],
        [two, { ...check, grade: "D" }],
      ]),
    },
    "condition",
    "gate.grade-not-acceptable",
  ],
  [
    "a specimen of grade C that nobody signed off",
    {
      checks: new Map([
        [one, check],
        [two, { ...check, grade: "C" }],
      ]),
    },
    "condition",
    "gate.grade-not-signed-off",
  ],
  [
    "a specimen of grade D, although it was signed off",
    {
      isSignedOff: true,
      checks: new Map([
        [one, check],
        [two, { ...check, grade: "D" }],
      ]),
    },
    "condition",
    "gate.grade-not-acceptable",
  ],
  [
    "a country on the way that a donor refused",
    {
      findings: [
        clear(one),
        clear(two),
        finding(one, "G5", "consent", {
          outcome: "bar",
          fact: "consent.transit-refused",
          wayOut: "way.other-route",
        }),
      ],
    },
    "nothing barred",
    "consent.transit-refused",
  ],
  [
    "a bar of consent",
    {
      findings: [
        clear(one),
        clear(two),
        finding(one, "G3", "consent", {
          outcome: "bar",
          fact: "consent.withdrawn",
          wayOut: "way.donor-officer-only",
        }),
      ],
    },
    "nothing barred",
    "consent.withdrawn",
  ],
  [
    "a specimen that is still away on another loan",
    {
      findings: [
        clear(two),
        finding(one, "B3", "free", { outcome: "attend", fact: "free.away", wayOut: "way.watch-return" }),
      ],
    },
    "nothing barred",
    "free.away",
  ],
  ["a specimen that no rule judged", { findings: [clear(one)] }, "nothing barred", "gate.not-judged"],
  ["a specimen in no crate", { crates: [{ ...crate, specimenIds: [one] }] }, "crates", "gate.in-no-crate"],
  [
    "a specimen in two crates",
    { crates: [crate, { ...crate, code: "L 1/2", specimenIds: [two] }] },
    "crates",
    "gate.in-two-crates",
  ],
  [
    "a specimen that is not packed",
    {
      lines: [
        { specimenId: one, accessionNumber: "AN 1", isPacked: true },
        { specimenId: two, accessionNumber: "AN 2", isPacked: false },
      ],
    },
    "crates",
    "gate.not-packed",
  ],
  ["a crate that is not sealed", { crates: [{ ...crate, state: "packed" }] }, "crates", "gate.not-sealed"],
  [
    "a crate that holds something else",
    { crates: [{ ...crate, specimenIds: [one, two, "other"] }] },
    "crates",
    "gate.holds-others",
  ],
  ["no carrier", { stageOut: null }, "carrier", "gate.no-carrier"],
  ["a specimen for which no days are kept", { booked: new Map([[one, kept]]) }, "booked", "gate.not-kept"],
  [
    "a specimen that is kept from tomorrow on",
    {
      booked: new Map([
        [one, kept],
        [two, { ...kept, startsOn: "2027-02-21" }],
      ]),
    },
    "booked",
    "gate.kept-later",
  ],
  [
    "days that end while it is still on its way out",
    {
      booked: new Map([
        [one, { ...kept, endsOn: "2027-02-22" }],
        [two, kept],
      ]),
    },
    "booked",
    "gate.kept-until",
  ],
] as [string, Partial<ReleaseFacts>, string, string][])(
  "%s holds the loan back",
  (_what, said, gate, code) => {
    const gates = failing(ready(said));
    expect(gates.map((one) => one.gate)).toEqual([gate]);
    expect(
      gates[0]?.facts.map((fact) => (fact.code === "gate.finding" ? fact.parameters.fact : fact.code)),
    ).toContain(code);
  },
);

describe("the permits gate", () => {
  test("holds with what wants attention told", () => {
    const attend = finding(one, "P2", "permits", {
      outcome: "attend",
      fact: "law.border-not-known",
      wayOut: "way.ask-authority-border",
    });
    const gate = releaseGates(ready({ findings: [attend, clear(two)] })).find(
      ({ gate }) => gate === "permits",
    );
    expect(gate).toMatchObject({
      holds: true,
      facts: [
        { parameters: { open: 1 } },
        { code: "gate.finding", parameters: { fact: "law.border-not-known", specimen: "AN 1" } },
      ],
    });
  });
});

test("without a specimen nothing is released", () => {
  expect(allHold(releaseGates(ready({ lines: [] })))).toBe(false);
  expect(allHold([])).toBe(false);
});

test("a check of 30 days ago still serves", () => {
  const checks = new Map([
    [one, { ...check, checkedOn: "2027-01-21" }],
    [two, check],
  ]);
  expect(failing(ready({ checks }))).toEqual([]);
});

test("a grade C goes out with the conservator's word", () => {
  const checks = new Map([
    [one, check],
    [two, { ...check, grade: "C" }],
  ]);
  expect(allHold(releaseGates(ready({ checks, isSignedOff: true })))).toBe(true);
});

test("it may leave on the first of its days and not on the day before", () => {
  const booked = new Map([
    [one, kept],
    [two, { ...kept, startsOn: "2027-02-18" }],
  ]);
  expect(failing(ready({ booked, today: "2027-02-17" })).map(({ gate }) => gate)).toEqual(["booked"]);
  const gates = releaseGates(ready({ booked, today: "2027-02-18" }));
  expect(gates.find(({ gate }) => gate === "booked")).toEqual({
    gate: "booked",
    holds: true,
    facts: [{ code: "gate.kept", parameters: { from: "2027-02-18", until: "2027-07-14" } }],
  });
});

test.each([
  ["nothing is agreed", null, "gate.nothing-to-pay"],
  ["all is paid", { version: 2, openMinor: 0, currency: "EUR", putOff: null }, "gate.paid"],
  ["more is paid", { version: 2, openMinor: -5, currency: "EUR", putOff: null }, "gate.paid"],
  [
    "the house has put it off",
    { version: 2, openMinor: 5, currency: "EUR", putOff: { by: "A. Manager", until: "2027-03-01" } },
    "gate.payment-put-off",
  ],
])("money holds nothing back where %s", (_what, payment, code) => {
  expect(releaseGates(ready({ payment })).find(({ gate }) => gate === "paid")).toMatchObject({
    holds: true,
    facts: [{ code }],
  });
});
