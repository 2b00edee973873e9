import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ConditionCase,
  type ConditionWayOut,
  findingScore,
  type Grade,
  gradeOf,
  gradeOfScore,
  grades,
  gradeWords,
  itemScore,
  judgeCondition,
  judgeRecency,
  servesUntil,
} from "#lib/condition/grade.ts";
import { type Activity, activities, type Finding, type Severity, severities } from "#lib/condition/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

const found = (severity: Severity, activity: Activity = "stable"): Finding => ({
  markId: "0197b2f0-0000-7000-8000-000000000001",
  term: "structure.crack",
  place: "base",
  severity,
  activity,
  note: "",
});
const fit = { fitToShow: true, fitToHandle: true, fitToTravel: true };

function judged(rule: string, part: Partial<ConditionCase> & { findings?: Finding[] }) {
  const { findings = [], ...rest } = part;
  const rulings = judgeCondition({
    check: { findings, verdict: fit },
    direction: "out",
    uses: ["show", "travel"],
    signedOff: false,
    ...rest,
  });
  return rulings.find((one) => one.rule === `condition.${rule}`);
}

// Common practice, no source: severity 0–4, activity 1, 1.25, 1.5; A to 1, B to 2, C to 3.5, D above.
describe("score and grade", () => {
  test.each<[Severity, Activity, number, Grade]>([
    ["none", "active", 0, "A"],
    ["trace", "stable", 1, "A"],
    ["trace", "unknown", 1.25, "B"],
    ["trace", "active", 1.5, "B"],
    ["minor", "stable", 2, "B"],
    ["minor", "unknown", 2.5, "C"],
    ["minor", "active", 3, "C"],
    ["moderate", "stable", 3, "C"],
    ["moderate", "unknown", 3.75, "D"],
    ["moderate", "active", 4.5, "D"],
    ["severe", "stable", 4, "D"],
    ["severe", "active", 6, "D"],
  ])("%s and %s scores %d, grade %s", (severity, activity, score, grade) => {
    expect(findingScore(found(severity, activity))).toBe(score);
    expect(gradeOf([found(severity, activity)])).toBe(grade);
  });

  test("the end of a grade belongs to it", () => {
    expect([1, 2, 3.5, 6].map(gradeOfScore)).toEqual([...grades]);
    expect([1.01, 2.01, 3.51].map(gradeOfScore)).toEqual(["B", "C", "D"]);
  });

  test("nothing found is good", () => expect(gradeWords[gradeOf([])]).toBe("good"));

  test.each([-0.1, 6.1, Number.NaN])("a score of %d is refused", (score) =>
    expect(() => gradeOfScore(score)).toThrow(RangeError),
  );

  test("one more finding never lowers the score, and slight ones never hide a grave one", () => {
    const finding = fc
      .record({ severity: fc.constantFrom(...severities), activity: fc.constantFrom(...activities) })
      .map(({ severity, activity }) => found(severity, activity));
    fc.assert(
      fc.property(fc.array(finding), finding, (findings, added) => {
        const score = itemScore([...findings, added]);
        expect(score).toBe(Math.max(itemScore(findings), findingScore(added)));
        expect(score).toBeLessThanOrEqual(6);
      }),
    );
  });
});

describe("what a grade means for a loan", () => {
  test.each<[Severity, "out" | "home", boolean, Outcome, ConditionWayOut]>([
    ["trace", "out", false, "clear", "none-needed"],
    ["minor", "out", false, "clear", "none-needed"],
    ["moderate", "out", false, "attend", "conservator-sign-off"],
    ["moderate", "out", true, "clear", "none-needed"],
    ["severe", "out", false, "bar", "treat-or-withdraw"],
    ["severe", "out", true, "bar", "treat-or-withdraw"],
    ["moderate", "home", false, "attend", "precautions-for-return"],
    ["severe", "home", false, "attend", "precautions-for-return"],
    ["severe", "home", true, "clear", "none-needed"],
  ])("%s, %s, signed off %s: %s", (severity, direction, signedOff, outcome, wayOut) => {
    expect(judged("grade", { findings: [found(severity)], direction, signedOff })).toMatchObject({
      outcome,
      wayOut,
    });
  });

  test("an unknown activity asks for an examination, unless nothing is left of the mark", () => {
    expect(judged("activity", { findings: [found("trace", "unknown")] })).toMatchObject({
      outcome: "attend",
      facts: { unknown: 1 },
      wayOut: "examine",
    });
    expect(judged("activity", { findings: [found("none", "unknown")] })).toMatchObject({ outcome: "clear" });
  });

  test("a verdict against a use that the loan asks for is a bar outward and attend homeward", () => {
    const check = { findings: [], verdict: { ...fit, fitToHandle: false } };
    expect(judged("verdict", { check })).toMatchObject({ outcome: "clear" });
    expect(judged("verdict", { check, uses: ["handle", "travel"] })).toMatchObject({
      outcome: "bar",
      facts: { unfitTo: "handle" },
    });
    expect(judged("verdict", { check, uses: ["handle"], direction: "home" })).toMatchObject({
      outcome: "attend",
    });
  });

  test("without any check nothing is known, which is attend", () =>
    expect(judgeCondition({ check: null, direction: "out", uses: [], signedOff: true })).toMatchObject([
      { outcome: "attend", wayOut: "check-again" },
    ]));

  test("nothing ever bars the way home", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...severities), fc.constantFrom(...activities))),
        fc.tuple(fc.boolean(), fc.boolean(), fc.boolean()),
        fc.boolean(),
        (list, [fitToShow, fitToHandle, fitToTravel], signedOff) => {
          const rulings = judgeCondition({
            check: {
              findings: list.map(([severity, activity]) => found(severity, activity)),
              verdict: { fitToShow, fitToHandle, fitToTravel },
            },
            direction: "home",
            uses: ["show", "handle", "travel"],
            signedOff,
          });
          expect(rulings.map((one) => one.outcome)).not.toContain("bar");
        },
      ),
    );
    expect(judgeRecency(null, "2026-03-01", "packing", "home").outcome).toBe("attend");
  });
});

// Common practice, no source: 30 days for packing, 12 months for approval.
describe("how long a check serves", () => {
  test.each([
    ["2026-01-30", "packing", "2026-03-01"],
    ["2024-02-01", "packing", "2024-03-02"],
    ["2025-03-15", "approval", "2026-03-15"],
    ["2024-02-29", "approval", "2025-02-28"],
    ["2025-12-31", "approval", "2026-12-31"],
  ] as const)("one of %s for %s until %s", (checkedOn, purpose, until) =>
    expect(servesUntil(checkedOn, purpose)).toBe(until),
  );

  test.each<[string | null, string, "packing" | "approval", "out" | "home", Outcome]>([
    ["2026-01-30", "2026-03-01", "packing", "out", "clear"],
    ["2026-01-30", "2026-03-02", "packing", "out", "bar"],
    ["2026-01-30", "2026-03-02", "packing", "home", "attend"],
    ["2026-01-30", "2027-01-30", "approval", "out", "clear"],
    ["2026-01-30", "2027-01-31", "approval", "out", "attend"],
    [null, "2026-03-01", "packing", "out", "bar"],
    [null, "2026-03-01", "approval", "out", "attend"],
    ["2026-03-02", "2026-03-01", "packing", "out", "bar"],
    ["2026-03-01", "2026-03-01", "packing", "out", "clear"],
  ])("%s on %s for %s, %s: %s", (checkedOn, today, purpose, direction, outcome) =>
    expect(judgeRecency(checkedOn, today, purpose, direction).outcome).toBe(outcome),
  );

  test.each(["2026-02-30", "2026-2-3", "today", ""])("refuses the day %j", (day) => {
    expect(() => judgeRecency(day, "2026-03-01", "packing")).toThrow(RangeError);
    expect(() => judgeRecency("2026-03-01", day, "packing")).toThrow(RangeError);
  });
});
