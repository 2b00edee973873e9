import { expect, test } from "vitest";
import { planDefaults } from "#lib/loans/plan-defaults.ts";
import { type PlanSources, planFactsOf } from "#lib/loans/plan-facts.ts";

const sources = (said: Partial<PlanSources> = {}): PlanSources => ({
  today: "2027-03-10",
  opensOn: "2027-06-16",
  startsOn: "2027-06-01",
  endsOn: "2027-09-01",
  purpose: "exhibition",
  lenderCountry: "FI",
  venueCountry: "DK",
  keptFrom: null,
  days: planDefaults,
  stageOut: null,
  crates: [],
  hasJars: false,
  heaviestSpecimenKg: 4,
  kept: [],
  permits: { asked: false, settled: false },
  gates: new Map(),
  submittedOn: null,
  acceptedOn: null,
  signedOn: null,
  handedOverOn: null,
  arrivedOn: null,
  openedOn: null,
  hasLeft: false,
  stoodAtVenue: false,
  ...said,
});
const done = (said: Partial<PlanSources>) => [...planFactsOf(sources(said)).done.keys()].sort();

test.each<[string, Partial<PlanSources>, string[]]>([
  ["a new slip has nothing behind it", {}, []],
  [
    "what was submitted and accepted",
    { submittedOn: "2027-01-01", acceptedOn: "2027-01-20" },
    ["decision", "request"],
  ],
  [
    "gates that hold",
    {
      gates: new Map([
        ["cover", true],
        ["condition", true],
        ["crates", false],
      ]),
    },
    ["certificate", "condition out", "indemnity form"],
  ],
  ["crates that are planned", { crates: [{ grossMassKg: 20 }] }, ["crate order"]],
  ["permits that are settled", { permits: { asked: true, settled: true } }, ["permits"]],
  [
    "a mark by hand",
    { kept: [{ step: "indemnity form", plannedOn: null, doneOn: "2027-02-01" }] },
    ["indemnity form"],
  ],
  [
    "a step of which this program knows nothing",
    { kept: [{ step: "ribbon", plannedOn: "2027-02-01", doneOn: "2027-02-01" }] },
    [],
  ],
])("%s", (_what, said, steps) => {
  expect(done(said)).toEqual(steps);
});

test("what has left the house has every step before it behind it", () => {
  const facts = planFactsOf(sources({ hasLeft: true, handedOverOn: "2027-06-03" }));
  expect(facts.done.get("depart")).toEqual({ on: "2027-06-03", byHand: false });
  for (const step of ["request", "permits", "agreement", "pack"] as const)
    expect(facts.done.has(step), step).toBe(true);
  expect(facts.done.has("arrive")).toBe(false);
});

test("the opening is behind it when its day has come and the specimens stood there", () => {
  expect(done({ stoodAtVenue: true, today: "2027-06-16" })).toEqual(["install", "opening"]);
  expect(done({ stoodAtVenue: true, today: "2027-06-15" })).toEqual([]);
});

test("which steps a loan has follows from what it is for and where it goes", () => {
  expect(planFactsOf(sources()).leftOut).toEqual([]);
  expect(planFactsOf(sources({ purpose: "teaching", venueCountry: "FI" })).leftOut).toEqual([
    "indemnity form",
    "permits",
  ]);
  expect(
    planFactsOf(sources({ venueCountry: "FI", permits: { asked: true, settled: false } })).leftOut,
  ).toEqual([]);
});

test("jars rest two days, and so does what is heavy", () => {
  expect(planFactsOf(sources({ hasJars: true })).restDays).toBe(2);
  expect(planFactsOf(sources({ crates: [{ grossMassKg: 320 }] })).restDays).toBe(2);
  expect(planFactsOf(sources()).restDays).toBe(1);
});

test("a moved day and a planned transport are kept apart", () => {
  const facts = planFactsOf(
    sources({
      kept: [{ step: "agreement", plannedOn: "2027-04-01", doneOn: null }],
      stageOut: { departsOn: "2027-06-03", arrivesOn: "2027-06-07" },
    }),
  );
  expect([...facts.moved]).toEqual([["agreement", "2027-04-01"]]);
  expect(facts.stated).toEqual({ depart: "2027-06-03", arrive: "2027-06-07" });
});
