import { describe, expect, test } from "vitest";
import {
  CheckInput,
  Finding,
  isFitTo,
  occasionNames,
  occasions,
  severities,
  severityFigure,
  severityMeanings,
} from "#lib/condition/schema.ts";

const finding = {
  markId: "0197b2f0-0000-7000-8000-000000000001",
  term: "structure.crack",
  place: "left fourth rib",
  severity: "minor",
  activity: "stable",
};
const check = {
  findings: [finding],
  verdict: { fitToShow: true, fitToHandle: false, fitToTravel: true },
  grounds: "Sound, one old crack.",
  checkedBy: "R. Example",
};

describe("a finding", () => {
  test("parsing a parsed finding changes nothing", () => {
    const once = Finding.parse({
      ...finding,
      picturePoint: { x: 0.5, y: 0.25 },
      extentMm: 12,
      answer: "same",
    });
    expect(Finding.parse(once)).toEqual(once);
    expect(once.note).toBe("");
  });

  test.each([
    [{ markId: "7" }, "markId"],
    [{ term: "structure.catastrophe" }, "term"],
    [{ place: "  " }, "place"],
    [{ picturePoint: { x: 1.01, y: 0 } }, "picturePoint.x"],
    [{ extentMm: -1 }, "extentMm"],
    [{ extentPercent: 101 }, "extentPercent"],
    [{ severity: "bad" }, "severity"],
    [{ severity: undefined }, "severity"],
    [{ activity: undefined }, "activity"],
    [{ answer: "gone" }, "severity"],
  ])("refuses %o", (part, path) => {
    const result = Finding.safeParse({ ...finding, ...part });
    expect(result.error?.issues.map((issue) => issue.path.join("."))).toEqual([path]);
  });

  test("a mark that is gone has no severity", () =>
    expect(Finding.safeParse({ ...finding, answer: "gone", severity: "none" }).success).toBe(true));
});

describe("a check", () => {
  test("with nothing found still needs a verdict and its grounds", () => {
    expect(CheckInput.safeParse({ ...check, findings: [] }).success).toBe(true);
    expect(CheckInput.safeParse({ ...check, grounds: " " }).success).toBe(false);
    expect(CheckInput.safeParse({ ...check, verdict: undefined }).success).toBe(false);
    expect(CheckInput.safeParse({ ...check, verdict: { fitToShow: true } }).success).toBe(false);
    expect(CheckInput.safeParse({ ...check, checkedBy: "" }).success).toBe(false);
  });

  test("names one mark once", () => {
    const result = CheckInput.safeParse({
      ...check,
      findings: [finding, { ...finding, term: "surface.dust" }],
    });
    expect(result.error?.issues.map((issue) => issue.path)).toEqual([["findings", 1, "markId"]]);
  });

  test("may have a witness", () =>
    expect(CheckInput.parse({ ...check, witness: " M. Example " }).witness).toBe("M. Example"));
});

test("severities rise from 0 to 4 and each has a meaning", () => {
  expect(severities.map(severityFigure)).toEqual([0, 1, 2, 3, 4]);
  expect(new Set(severities.map((severity) => severityMeanings[severity])).size).toBe(5);
});

test("every occasion has a name", () =>
  expect(new Set(occasions.map((occasion) => occasionNames[occasion])).size).toBe(occasions.length));

test("a verdict speaks of each use by itself", () => {
  expect(isFitTo("show", check.verdict)).toBe(true);
  expect(isFitTo("handle", check.verdict)).toBe(false);
  expect(isFitTo("travel", check.verdict)).toBe(true);
});
