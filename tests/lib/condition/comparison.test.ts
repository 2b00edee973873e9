import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareChecks, type MarkChange, markChanges, saysWhatChanged } from "#lib/condition/comparison.ts";
import { activities, type Finding, severities } from "#lib/condition/schema.ts";

const mark = (markId: string, part: Partial<Finding> = {}): Finding => ({
  markId,
  term: "structure.crack",
  place: "left fourth rib",
  severity: "minor",
  activity: "stable",
  note: "",
  ...part,
});

function changeOf(before: Partial<Finding> | null, after: Partial<Finding> | null) {
  const { marks } = compareChecks(
    { findings: before ? [mark("one", before)] : [] },
    { findings: after ? [mark("one", after)] : [] },
  );
  return marks[0];
}

describe("one mark in two checks", () => {
  test.each<[string, Partial<Finding> | null, Partial<Finding> | null, MarkChange | undefined]>([
    ["only later", null, {}, "new"],
    ["only earlier", {}, null, "not-looked-at"],
    ["later not visible", {}, { answer: "not-visible" }, "not-looked-at"],
    ["unchanged", {}, {}, "same"],
    ["a higher severity", {}, { severity: "moderate" }, "worse"],
    ["a lower severity", {}, { severity: "trace" }, "better"],
    ["no severity left", {}, { severity: "none" }, "gone"],
    ["come back", { severity: "none" }, { severity: "trace" }, "worse"],
    ["gone and still gone", { severity: "none" }, { severity: "none" }, "same"],
    ["gone and not mentioned again", { severity: "none" }, null, undefined],
    ["never there", null, { severity: "none" }, undefined],
    ["1 mm longer", { extentMm: 5 }, { extentMm: 6 }, "same"],
    ["1.1 mm longer", { extentMm: 5 }, { extentMm: 6.1 }, "worse"],
    ["1.1 mm shorter", { extentMm: 6.1 }, { extentMm: 5 }, "better"],
    ["10.1 against 9.1 mm", { extentMm: 9.1 }, { extentMm: 10.1 }, "same"],
    ["a tenth longer", { extentMm: 90 }, { extentMm: 100 }, "same"],
    ["more than a tenth longer", { extentMm: 89 }, { extentMm: 100 }, "worse"],
    ["1 % of the area more", { extentPercent: 2 }, { extentPercent: 3 }, "same"],
    ["3 % of the area more", { extentPercent: 2 }, { extentPercent: 5 }, "worse"],
    [
      "longer but on less area",
      { extentMm: 5, extentPercent: 20 },
      { extentMm: 9, extentPercent: 10 },
      "worse",
    ],
    ["an extent on one side only", { extentMm: 5 }, { extentPercent: 20 }, "same"],
    ["milder though longer", { extentMm: 5 }, { extentMm: 20, severity: "trace" }, "better"],
    ["graver though shorter", { extentMm: 20 }, { extentMm: 5, severity: "severe" }, "worse"],
  ])("%s", (_what, before, after, change) => expect(changeOf(before, after)?.change).toBe(change));

  test("says whether an extent could be compared", () => {
    expect(changeOf({ extentMm: 5 }, { extentMm: 5 })?.extentCompared).toBe(true);
    expect(changeOf({ extentMm: 5 }, {})?.extentCompared).toBe(false);
  });

  test("says that it became active", () => {
    expect(changeOf({}, { activity: "active" })).toMatchObject({ change: "same", becameActive: true });
    expect(changeOf({ activity: "active" }, { activity: "active" })?.becameActive).toBe(false);
  });

  // What the examiner answers, what the figures say, what counts, and whether the answer says otherwise still.
  test.each<[string, Partial<Finding>, Partial<Finding>, MarkChange, MarkChange, boolean]>([
    ["worse by the eye alone", {}, { answer: "worse" }, "same", "worse", false],
    ["better by the eye alone", {}, { answer: "better" }, "same", "better", false],
    [
      "worse with a longer extent",
      { extentMm: 5 },
      { extentMm: 9, answer: "worse" },
      "worse",
      "worse",
      false,
    ],
    ["worse though shorter", { extentMm: 9 }, { extentMm: 5, answer: "worse" }, "better", "worse", false],
    ["better though graver", {}, { severity: "severe", answer: "better" }, "worse", "better", false],
    ["the same though graver", {}, { severity: "severe", answer: "same" }, "worse", "worse", true],
    ["graver, and said to be so", {}, { severity: "severe", answer: "worse" }, "worse", "worse", false],
    ["graver, and nothing said", {}, { severity: "severe" }, "worse", "worse", false],
    ["gone, whatever was said", {}, { severity: "none", answer: "better" }, "gone", "gone", true],
    ["not visible", {}, { answer: "not-visible" }, "not-looked-at", "not-looked-at", false],
  ])("%s", (_what, before, after, measured, change, answerDiffers) =>
    expect(changeOf(before, after)).toMatchObject({ measured, change, answerDiffers }),
  );

  test("what was not there before is new, whatever was answered", () =>
    expect(changeOf(null, { answer: "worse" })).toMatchObject({
      change: "new",
      measured: "new",
      answerDiffers: true,
    }));

  test("a stricter tolerance may be given", () => {
    const { marks } = compareChecks(
      { findings: [mark("one", { extentMm: 5 })] },
      { findings: [mark("one", { extentMm: 5.3 })] },
      { mm: 0.2, percentOfArea: 1, share: 0.01 },
    );
    expect(marks[0]?.change).toBe("worse");
  });
});

describe("an answer of worse or better", () => {
  const before = mark("one", { extentMm: 5 });
  test.each<[string, Partial<Finding>, boolean]>([
    ["nothing", {}, false],
    ["an extent that is not measured again", { extentMm: undefined }, false],
    ["a note of blanks", { note: "  " }, false],
    ["another severity", { severity: "trace" }, true],
    ["another extent", { extentMm: 5.5 }, true],
    ["an extent in the other unit", { extentMm: undefined, extentPercent: 3 }, true],
    ["that it became active", { activity: "active" }, true],
    ["a note", { note: "The edge is sharper." }, true],
  ] as [string, Partial<Finding>, boolean][])("is told by %s: %o, %s", (_what, part, told) =>
    expect(saysWhatChanged(before, { ...before, ...part })).toBe(told),
  );
});

describe("the whole comparison", () => {
  const earlier = {
    findings: [
      mark("crack", { extentMm: 10 }),
      mark("dust", { term: "surface.dust" }),
      mark("scratch", { severity: "trace" }),
      mark("stain"),
    ],
  };
  const later = {
    findings: [
      mark("tip", { severity: "moderate" }),
      mark("scratch", { severity: "moderate" }),
      mark("dust", { term: "surface.dust", severity: "none" }),
      mark("crack", { extentMm: 14 }),
    ],
  };
  const result = compareChecks(earlier, later);

  test("keeps the order of the earlier check and ends with what is new", () =>
    expect(result.marks.map(({ markId, change }) => [markId, change])).toEqual([
      ["crack", "worse"],
      ["dust", "gone"],
      ["scratch", "worse"],
      ["stain", "not-looked-at"],
      ["tip", "new"],
    ]));

  test("counts", () =>
    expect(result.totals).toEqual({ new: 1, worse: 2, same: 0, better: 0, gone: 1, "not-looked-at": 1 }));

  test("names the worst: severity first, then how far it rose", () =>
    expect(result.worst?.markId).toBe("tip"));

  test("asks for a review, and says that a mark was not looked at", () =>
    expect(result).toMatchObject({ needsReview: true, complete: false }));

  test("of a check with itself is the same throughout", () => {
    const same = compareChecks(earlier, earlier);
    expect(same).toMatchObject({ worst: null, needsReview: false, complete: true });
    expect(same.totals.same).toBe(4);
  });

  test("the examiner's word alone asks for a review, and is counted", () => {
    const said = compareChecks(
      { findings: [mark("a"), mark("b")] },
      { findings: [mark("a", { answer: "worse" }), mark("b", { answer: "better" })] },
    );
    expect(said).toMatchObject({ needsReview: true, totals: { worse: 1, better: 1, same: 0 } });
    expect(said.worst?.markId).toBe("a");
  });

  test("a severity that rose asks for a review though it was said to be better", () =>
    expect(
      compareChecks(
        { findings: [mark("a")] },
        { findings: [mark("a", { severity: "severe", answer: "better" })] },
      ),
    ).toMatchObject({ needsReview: true, totals: { better: 1 } }));

  test("a longer crack of the same severity is worse without forcing a review", () => {
    const longer = compareChecks(
      { findings: [mark("a", { extentMm: 5 })] },
      { findings: [mark("a", { extentMm: 9 })] },
    );
    expect(longer).toMatchObject({ needsReview: false, totals: { worse: 1 } });
    expect(longer.worst?.markId).toBe("a");
  });
});

describe("whatever was found", () => {
  const findings = fc.uniqueArray(
    fc.record({
      markId: fc.constantFrom("a", "b", "c", "d", "e"),
      severity: fc.constantFrom(...severities),
      activity: fc.constantFrom(...activities),
      extentMm: fc.option(fc.double({ min: 0, max: 200, noNaN: true }), { nil: undefined }),
    }),
    { selector: (one) => one.markId, maxLength: 5 },
  );
  const check = findings.map((list) => ({
    findings: list.map(({ extentMm, ...one }) =>
      mark(one.markId, extentMm === undefined ? one : { ...one, extentMm }),
    ),
  }));
  const mirrored: Partial<Record<MarkChange, MarkChange[]>> = {
    same: ["same"],
    worse: ["better", "gone"],
    better: ["worse"],
    gone: ["worse"],
    new: ["not-looked-at"],
    "not-looked-at": ["new"],
  };

  test("every mark with a severity appears exactly once and is counted once", () => {
    fc.assert(
      fc.property(check, check, (earlier, later) => {
        const { marks, totals } = compareChecks(earlier, later);
        const present = [...earlier.findings, ...later.findings].filter((one) => one.severity !== "none");
        const ids = marks.map(({ markId }) => markId);
        expect(new Set(ids).size).toBe(ids.length);
        for (const { markId } of present) expect(ids).toContain(markId);
        expect(markChanges.reduce((sum, change) => sum + totals[change], 0)).toBe(marks.length);
      }),
    );
  });

  test("read backwards each change is its opposite", () => {
    fc.assert(
      fc.property(check, check, (earlier, later) => {
        const forwards = compareChecks(earlier, later).marks;
        const backwards = new Map(compareChecks(later, earlier).marks.map((one) => [one.markId, one.change]));
        for (const { markId, change } of forwards) expect(mirrored[change]).toContain(backwards.get(markId));
      }),
    );
  });

  test("the worst is one of the new or worse marks, and there is one when any is", () => {
    fc.assert(
      fc.property(check, check, (earlier, later) => {
        const { marks, worst } = compareChecks(earlier, later);
        const declined = marks.filter(({ change }) => change === "new" || change === "worse");
        if (declined.length === 0) expect(worst).toBeNull();
        else expect(declined).toContain(worst);
      }),
    );
  });
});
