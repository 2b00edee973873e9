/** The plan counted back from the opening, and what a moved day does to what follows. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  backwardPlan,
  earliestDelivery,
  leastDays,
  movePlan,
  type PlanFacts,
} from "#lib/loans/backward-plan.ts";
import { type PlanStepName, planDefaults, planScopes, planSteps } from "#lib/loans/plan-defaults.ts";
import { addDays } from "#lib/platform/dates.ts";

const facts = (said: Partial<PlanFacts> = {}): PlanFacts => ({
  today: "2026-06-01",
  opensOn: "2027-06-16",
  startsOn: "2027-06-01",
  endsOn: "2027-10-01",
  keptFrom: null,
  scope: "international",
  lenderCountry: "FI",
  venueCountry: "DK",
  restDays: 1,
  days: planDefaults,
  leftOut: [],
  stated: { depart: null, arrive: null },
  moved: new Map(),
  done: new Map(),
  ...said,
});
const days = (said: Partial<PlanFacts> = {}) =>
  Object.fromEntries(backwardPlan(facts(said)).rows.map((row) => [row.step, row.lastDay]));
const codes = (move: ReturnType<typeof movePlan>) => move.conflicts.map(({ code }) => code);

test("an international loan with a crate that opens on Wednesday 16 June 2027, three days on the road", () => {
  expect(days()).toEqual({
    request: "2026-09-19",
    decision: "2027-02-16",
    "indemnity form": "2027-03-06",
    permits: "2027-04-20",
    "crate order": "2027-04-17",
    agreement: "2027-05-05",
    certificate: "2027-05-21",
    "condition out": "2027-05-29",
    pack: "2027-06-01",
    depart: "2027-06-04",
    arrive: "2027-06-07",
    "open crates": "2027-06-08",
    install: "2027-06-11",
    opening: "2027-06-16",
  });
});

test("what rests two days arrives a day sooner, and not on a Sunday", () => {
  expect(days({ restDays: 2 }).arrive).toBe("2027-06-04");
});

test("without an opening day the plan is counted from the delivery and has no opening", () => {
  const plan = days({ opensOn: null, startsOn: "2027-06-01" });
  expect(plan).toMatchObject({ arrive: "2027-06-01", depart: "2027-05-28", request: "2026-09-04" });
  expect(Object.keys(plan)).not.toContain("opening");
});

test("a step that is past and not done is a bar by itself; one that is near is attend; one that is done is clear", () => {
  const rows = (today: string, done: PlanFacts["done"] = new Map()) =>
    backwardPlan(facts({ today, done })).rows.find(({ step }) => step === "certificate");
  expect(rows("2027-05-22")).toMatchObject({ outcome: "bar", daysLeft: -1 });
  expect(rows("2027-05-21")?.outcome).toBe("attend");
  expect(rows("2027-05-06")?.outcome).toBe("clear");
  expect(rows("2027-05-22", new Map([["certificate", { on: "2027-05-02", byHand: false }]]))?.outcome).toBe(
    "clear",
  );
});

describe("moving a date", () => {
  test("later, and what follows is put off as far as it must be", () => {
    const { changed, conflicts } = movePlan(facts(), "depart", "2027-06-08");
    expect(conflicts).toEqual([]);
    expect(changed).toContainEqual({ step: "arrive", from: "2027-06-07", to: "2027-06-11" });
    expect(changed).toContainEqual({ step: "open crates", from: "2027-06-08", to: "2027-06-14" });
    expect(changed).toContainEqual({ step: "install", from: "2027-06-11", to: "2027-06-14" });
    expect(changed.map(({ step }) => step)).not.toContain("opening");
  });
  test("so late that the opening cannot be kept, and it says so", () => {
    const { conflicts } = movePlan(facts(), "depart", "2027-06-14");
    expect(conflicts).toEqual([
      {
        code: "plan.too-late-for",
        step: "opening",
        parameters: { before: "install", needed: "2027-06-18", day: "2027-06-16" },
      },
    ]);
  });
  test("so early that a paper would be late already", () => {
    const today = "2027-04-20";
    const done = new Map<PlanStepName, { on: string; byHand: boolean }>(
      (["request", "decision", "indemnity form", "permits", "crate order"] as const).map((step) => [
        step,
        { on: "2027-01-01", byHand: false },
      ]),
    );
    expect(movePlan(facts({ today, done }), "depart", "2027-05-10").conflicts).toEqual([
      { code: "plan.would-be-past", step: "agreement", parameters: { day: "2027-04-10" } },
    ]);
  });
  test("an opening that slips by nine days takes the plan with it", () => {
    const { changed, conflicts } = movePlan(facts(), "opening", "2027-06-25");
    expect(conflicts).toEqual([]);
    expect(changed).toContainEqual({ step: "install", from: "2027-06-11", to: "2027-06-20" });
    expect(changed).toContainEqual({ step: "request", from: "2026-09-19", to: "2026-09-28" });
  });
  test.each<[string, Partial<PlanFacts>, PlanStepName, string, string]>([
    ["before today", {}, "agreement", "2026-05-31", "plan.day-past"],
    [
      "of what is done",
      { done: new Map([["agreement", { on: null, byHand: true }]]) },
      "agreement",
      "2027-03-01",
      "plan.done-already",
    ],
    ["to a Sunday", {}, "depart", "2027-06-06", "plan.no-travel-day"],
    ["to a holiday of the place", {}, "arrive", "2027-05-17", "plan.no-travel-day"],
    [
      "of a planned transport",
      { stated: { depart: "2027-06-04", arrive: "2027-06-07" } },
      "depart",
      "2027-06-03",
      "plan.day-of-transport",
    ],
    ["of the opening after the loan", {}, "opening", "2027-10-01", "plan.opening-outside-loan"],
    [
      "of a step that the loan does not have",
      { leftOut: ["permits"] },
      "permits",
      "2027-03-01",
      "plan.not-a-step",
    ],
    [
      "to before the days that are kept",
      { keptFrom: "2027-06-01" },
      "depart",
      "2027-05-28",
      "plan.before-kept-days",
    ],
  ])("%s is refused", (_what, said, step, to, code) => {
    expect(codes(movePlan(facts(said), step, to))).toEqual([code]);
  });
  test("a step cannot be set before what comes before it is moved", () => {
    const moved = new Map<PlanStepName, string>([["condition out", "2027-06-03"]]);
    expect(codes(movePlan(facts({ moved }), "pack", "2027-06-01"))).toEqual(["plan.follows-later"]);
  });
});

test("what was late on the way puts off the opening of the crates", () => {
  const done = new Map<PlanStepName, { on: string; byHand: boolean }>([
    ["depart", { on: "2027-06-09", byHand: false }],
  ]);
  expect(days({ done })).toMatchObject({ arrive: "2027-06-14", "open crates": "2027-06-15" });
});

// ------------------------------------------------------------------- properties

const anyFacts = fc
  .record({
    shift: fc.integer({ min: 0, max: 900 }),
    scope: fc.constantFrom(...planScopes),
    restDays: fc.integer({ min: 1, max: 2 }),
    hasOpening: fc.boolean(),
    venueCountry: fc.constantFrom("FI", "DK", "DE", "US"),
    moved: fc.array(
      fc.tuple(
        fc.constantFrom(...planSteps.filter((step) => step !== "opening")),
        fc.integer({ min: -400, max: 30 }),
      ),
      { maxLength: 4 },
    ),
  })
  .map(({ shift, hasOpening, moved, ...said }) => {
    const startsOn = addDays("2026-06-01", shift);
    return facts({
      ...said,
      startsOn,
      opensOn: hasOpening ? addDays(startsOn, 20) : null,
      endsOn: addDays(startsOn, 200),
      moved: new Map(moved.map(([step, days]) => [step, addDays(startsOn, days)])),
    });
  });
const follows: [PlanStepName, PlanStepName][] = [
  ["request", "decision"],
  ["decision", "agreement"],
  ["decision", "permits"],
  ["condition out", "pack"],
  ["crate order", "pack"],
  ["agreement", "depart"],
  ["certificate", "depart"],
  ["indemnity form", "depart"],
  ["permits", "depart"],
  ["pack", "depart"],
  ["depart", "arrive"],
  ["arrive", "open crates"],
  ["open crates", "install"],
];

test("whatever was moved, no step is before what comes before it", () => {
  fc.assert(
    fc.property(anyFacts, (any) => {
      const dates = new Map(backwardPlan(any).rows.map((row) => [row.step, row.lastDay]));
      for (const [before, after] of follows) {
        const [first, second] = [dates.get(before), dates.get(after)];
        if (first === undefined || second === undefined) continue;
        expect(
          addDays(first, leastDays(before, any)) <= second,
          `${before} ${first}, ${after} ${second}`,
        ).toBe(true);
      }
    }),
  );
});

test("moving a step later makes no other step earlier", () => {
  fc.assert(
    fc.property(
      anyFacts,
      fc.constantFrom(...planSteps.filter((step) => step !== "opening")),
      fc.integer({ min: -300, max: 30 }),
      fc.integer({ min: 0, max: 60 }),
      (any, step, at, by) => {
        const plan = (day: number) =>
          backwardPlan({ ...any, moved: new Map([...any.moved, [step, addDays(any.startsOn, day)]]) }).rows;
        const later = new Map(plan(at + by).map((row) => [row.step, row.lastDay]));
        for (const row of plan(at)) expect((later.get(row.step) ?? "") >= row.lastDay, row.step).toBe(true);
      },
    ),
  );
});

test("a later opening makes no step earlier", () => {
  fc.assert(
    fc.property(anyFacts, fc.integer({ min: 0, max: 60 }), (any, by) => {
      if (any.opensOn === null) return;
      const later = new Map(
        backwardPlan({ ...any, opensOn: addDays(any.opensOn, by) }).rows.map((row) => [
          row.step,
          row.lastDay,
        ]),
      );
      for (const row of backwardPlan(any).rows)
        expect((later.get(row.step) ?? "") >= row.lastDay, row.step).toBe(true);
    }),
  );
});

test("the earliest day of delivery leaves nothing past, and a travel day sooner would", () => {
  const { opensOn: _o, startsOn: _s, endsOn: _e, moved: _m, stated: _t, keptFrom: _k, ...asked } = facts();
  const found = earliestDelivery(asked);
  const outcomes = (startsOn: string) =>
    backwardPlan(facts({ opensOn: null, startsOn })).rows.filter((row) => row.outcome === "bar").length;
  expect(outcomes(found)).toBe(0);
  expect(outcomes(addDays(found, -4))).toBeGreaterThan(0);
});
