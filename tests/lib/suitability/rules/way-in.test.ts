import { describe, expect, test } from "vitest";
import type { Passage } from "#lib/people/schema.ts";
import { judgeFloor, judgeWayIn, rememberingPlanMaker } from "#lib/suitability/rules/way-in.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const aDoor = (widthMm: number, heightMm: number): Passage => ({
  kind: "door",
  name: "Lab door",
  widthMm,
  heightMm,
  depthMm: null,
  secondWidthMm: null,
  loadKg: null,
  slopePercent: null,
});
const through = (...passages: Passage[]) => aRequestFact({ venue: aVenueFact({ passages }) });
const aBody = aSpecimenCase({
  specimen: { kind: "whole body", massKg: 80, size: { lengthMm: 1900, widthMm: 800, heightMm: 700 } },
});

test("an organ's crate passes a wide door", () => {
  const findings = judgeWayIn(aSpecimenCase(), through(aDoor(1600, 2400)));
  expect(findings.map(({ rule, outcome }) => [rule, outcome])).toEqual([
    ["W1", "clear"],
    ["W2", "clear"],
    ["W3", "clear"],
  ]);
});

test("a body's crate is barred by a door of 900 mm, with what it needs and what there is", () => {
  const [way] = judgeWayIn(aBody, through(aDoor(900, 2100)));
  expect(way).toMatchObject({
    outcome: "bar",
    fact: "way-in.too-narrow",
    parameters: { passage: "Lab door", check: "door width", available: 900, unit: "mm" },
    wayOut: "way.other-way-in",
  });
  expect(Number(way?.parameters.needed)).toBeGreaterThan(900);
});

test("the same crate passes a door that is wide enough", () => {
  expect(judgeWayIn(aBody, through(aDoor(1400, 2100)))[0]).toMatchObject({
    outcome: "clear",
    fact: "way-in.passes",
  });
});

test("a lift of unknown depth is attend", () => {
  const lift: Passage = { ...aDoor(1200, 2200), kind: "lift", name: "Lift A" };
  expect(judgeWayIn(aSpecimenCase(), through(lift))[0]).toMatchObject({
    outcome: "attend",
    fact: "way-in.not-measured",
  });
});

describe("a ramp", () => {
  const ramp = (slopePercent: number | null): Passage => ({
    ...aDoor(1600, 20_000),
    kind: "ramp",
    name: "Yard ramp",
    slopePercent,
  });
  const judged = (slopePercent: number | null) => judgeWayIn(aSpecimenCase(), through(ramp(slopePercent)))[0];
  test("whose slope nobody has stated is attend, and stating it clears it", () => {
    expect(judged(null)).toMatchObject({
      outcome: "attend",
      fact: "way-in.slope-not-known",
      parameters: { passage: "Yard ramp" },
      wayOut: "way.measure-slope",
    });
    expect(judged(5)).toMatchObject({ outcome: "clear", fact: "way-in.passes" });
  });
  test("that is steep wants more hands, whatever the crate measures", () => {
    expect(judged(15)).toMatchObject({
      outcome: "attend",
      fact: "way-in.steep",
      parameters: { slopePercent: 15, gentlePercent: 8.3 },
      wayOut: "way.more-hands",
    });
  });
});

test("a way in that nobody has described is attend", () => {
  expect(judgeWayIn(aSpecimenCase(), through())[0]).toMatchObject({
    outcome: "attend",
    fact: "way-in.no-passages",
  });
});

test("a specimen that nobody has measured or weighed is attend", () => {
  for (const specimen of [{ size: null }, { massKg: null }])
    expect(judgeWayIn(aSpecimenCase({ specimen }), through(aDoor(900, 2100)))).toMatchObject([
      { outcome: "attend", fact: "way-in.size-not-known" },
    ]);
});

test("what no crate of the tables takes is attend", () => {
  const specimen = { size: { lengthMm: 9_000, widthMm: 200, heightMm: 200 } };
  expect(judgeWayIn(aSpecimenCase({ specimen }), through(aDoor(900, 2100)))).toMatchObject([
    { outcome: "attend", fact: "way-in.beyond-tables", wayOut: "way.design-crate" },
  ]);
});

test("alike sheets are planned once", () => {
  let asked = 0;
  const makePlan = rememberingPlanMaker();
  const counting: typeof makePlan = (question) => {
    const before = asked;
    const plan = makePlan(question);
    asked = before + 1;
    return plan;
  };
  const first = judgeWayIn(aSpecimenCase(), through(aDoor(900, 2100)), counting);
  const second = judgeWayIn(
    aSpecimenCase({ specimen: { id: "01920000-0000-7000-8000-000000000102" } }),
    through(aDoor(900, 2100)),
    counting,
  );
  expect(asked).toBe(2);
  expect(second.map(({ fact, parameters }) => [fact, parameters])).toEqual(
    first.map(({ fact, parameters }) => [fact, parameters]),
  );
});

// A base of 1 m × 0.5 m: 100 kg press with 200 kg/m², four fifths of 250.
const aCrate = (grossMassKg: number) => ({
  outer: { lengthMm: 1_000, widthMm: 500, heightMm: 600 },
  grossMassKg,
});

test.each([
  ["is light, whatever nobody knows of the floor", 100, null, "clear", "way-in.floor-light"],
  ["is heavy, on a floor that nobody knows", 101, null, "attend", "way-in.floor-not-known"],
  ["presses with four fifths of what the floor bears", 100, 250, "clear", "way-in.floor-bears"],
  ["presses with more than that", 101, 250, "attend", "way-in.floor-near"],
  ["presses with more than the floor bears", 126, 250, "bar", "way-in.floor-too-weak"],
] as const)("a crate that %s", (_what, mass, floor, outcome, fact) => {
  expect(judgeFloor(aCrate(mass), floor)).toMatchObject({ outcome, fact });
});
