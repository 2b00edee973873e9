import { expect, test } from "vitest";
import type { Finding as CheckFinding } from "#lib/condition/schema.ts";
import { findingTerms } from "#lib/condition/terms.ts";
import { judgeCheck, usesAsked } from "#lib/suitability/rules/condition.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const fit = { fitToShow: true, fitToHandle: true, fitToTravel: true };
const mark = (said: Partial<CheckFinding>): CheckFinding => ({
  markId: "01920000-0000-4000-8000-000000000201",
  term: findingTerms[0],
  place: "upper third",
  severity: "minor",
  activity: "stable",
  note: "",
  ...said,
});
const checked = (said: Partial<NonNullable<Parameters<typeof aSpecimenCase>[0]>["latestCheck"]> = {}) =>
  aSpecimenCase({ latestCheck: { findings: [], verdict: fit, checkedOn: "2026-10-01", ...said } });

test.each([
  ["nothing found is clear", checked(), "C1", "clear", "condition.grade"],
  [
    "a grade C wants the conservator",
    checked({ findings: [mark({ severity: "moderate" })] }),
    "C1",
    "attend",
    "condition.grade-poor",
  ],
  [
    "a grade D does not go out",
    checked({ findings: [mark({ severity: "severe" })] }),
    "C1",
    "bar",
    "condition.grade-not-acceptable",
  ],
  ["a check of this year is recent", checked(), "C2", "clear", "condition.recent"],
  [
    "a check of more than 12 months ago is attend",
    checked({ checkedOn: "2025-11-24" }),
    "C2",
    "attend",
    "condition.too-old",
  ],
  [
    "a specimen unfit to travel is a bar",
    checked({ verdict: { ...fit, fitToTravel: false } }),
    "C3",
    "bar",
    "condition.unfit",
  ],
  [
    "unfit to handle does not matter for viewing",
    checked({ verdict: { ...fit, fitToHandle: false } }),
    "C3",
    "clear",
    "condition.fit",
  ],
  [
    "an activity nobody has judged is attend",
    checked({ findings: [mark({ severity: "trace", activity: "unknown" })] }),
    "C4",
    "attend",
    "condition.unknown-activity",
  ],
] as const)("%s", (_what, subject, rule, outcome, fact) => {
  const found = judgeCheck(subject, aRequestFact()).find((finding) => finding.rule === rule);
  expect(found).toMatchObject({ group: "condition", outcome, fact });
});

const signedOff = aRequestFact({ conservator: { decidedOn: "2026-11-20", conditions: "On its side." } });
const gradeOf = (severity: CheckFinding["severity"], request = signedOff) =>
  judgeCheck(checked({ findings: [mark({ severity })] }), request).find(({ rule }) => rule === "C1");

test("the conservator's word makes a grade C clear, and says when it was given", () => {
  expect(gradeOf("moderate")).toMatchObject({
    outcome: "clear",
    fact: "condition.grade-signed-off",
    parameters: { grade: "C", signedOffOn: "2026-11-20" },
    wayOut: "",
  });
});

test("the conservator's word lifts no grade D, and a good grade does not speak of it", () => {
  expect(gradeOf("severe")).toMatchObject({ outcome: "bar", fact: "condition.grade-not-acceptable" });
  expect(gradeOf("trace")).toMatchObject({ outcome: "clear", fact: "condition.grade" });
  expect(gradeOf("moderate", aRequestFact())).toMatchObject({ outcome: "attend" });
});

test("the conservator's word does not stand for an examination", () => {
  const subject = checked({ findings: [mark({ severity: "minor", activity: "unknown" })] });
  const outcomes = judgeCheck(subject, signedOff).map(({ rule, outcome }) => `${rule} ${outcome}`);
  expect(outcomes).toContain("C1 clear");
  expect(outcomes).toContain("C4 attend");
});

test("unfit to handle is a bar for teaching with handling", () => {
  const subject = checked({ verdict: { ...fit, fitToHandle: false } });
  const found = judgeCheck(subject, aRequestFact({ teachingUse: "handling" })).find(
    ({ rule }) => rule === "C3",
  );
  expect(found).toMatchObject({ outcome: "bar", parameters: { unfitTo: "handle" } });
});

test("a specimen that was never checked is attend", () => {
  expect(judgeCheck(aSpecimenCase({ latestCheck: null }), aRequestFact())).toMatchObject([
    { outcome: "attend", fact: "condition.never-checked", wayOut: "way.check-again" },
  ]);
});

test("every use travels", () => {
  for (const purpose of ["teaching", "exhibition", "research", "picture-taking"] as const)
    expect(usesAsked({ purpose, teachingUse: "handling" })).toContain("travel");
});
