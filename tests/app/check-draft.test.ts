/** What a check form becomes: the record, or a sentence at each field that is not right. */
import { describe, expect, test } from "vitest";
import {
  type CheckForms,
  type DraftFinding,
  draftOf,
  emptyDraft,
  faultsOfIssues,
  readCheck,
} from "#app/_parts/check-draft.ts";
import type { Finding } from "#lib/condition/schema.ts";

const specimenId = "0198c2a0-0000-7000-8000-000000000001";
const finding: Finding = {
  markId: "0198c2a0-0000-4000-8000-000000000002",
  term: "structure.crack",
  place: "left fourth rib",
  picturePoint: { x: 0.2, y: 0.3 },
  extentMm: 5,
  severity: "minor",
  activity: "stable",
  note: "seen in raking light",
};
const earlier = [{ number: 2, words: "crack, left fourth rib", finding }];

const formsWith = (part: Partial<CheckForms> = {}): CheckForms => ({
  about: {
    specimenId,
    loanId: null,
    today: "2026-03-10",
    occasions: [
      { occasion: "periodic", from: "2026-03-01", tooSoon: "Not before the check of 1 March." },
      { occasion: "incident", from: "2026-03-05", tooSoon: "Not before 5 March." },
    ],
  },
  earlier: [],
  old: [],
  fresh: [],
  firstNew: 3,
  ...part,
});
const answered = (part: Partial<DraftFinding>) =>
  formsWith({ earlier, old: [{ ...draftOf({ finding }), ...part }] });
const added = (part: Partial<DraftFinding>) =>
  formsWith({
    fresh: [
      {
        ...emptyDraft("0198c2a0-0000-4000-8000-000000000003", { x: 0.5, y: 0.5 }),
        term: "surface.dust",
        place: "base",
        severity: "trace",
        activity: "unknown",
        ...part,
      },
    ],
  });

function fieldsWith(part: Record<string, string> = {}): FormData {
  const fields = new FormData();
  const all = {
    fitToShow: "yes",
    fitToHandle: "no",
    fitToTravel: "yes",
    occasion: "periodic",
    checkedOn: "2026-03-10",
    checkedBy: "K. N.",
    grounds: "Looked at on all sides.",
    ...part,
  };
  for (const [name, value] of Object.entries(all)) if (value !== "") fields.set(name, value);
  return fields;
}

const faultsIn = (forms: CheckForms, fields = fieldsWith()) => {
  const read = readCheck(forms, fields);
  return "faults" in read ? read.faults : [];
};
const findingsIn = (forms: CheckForms) => {
  const read = readCheck(forms, fieldsWith());
  return "record" in read ? read.record.check.findings : read.faults;
};

describe("nothing is chosen beforehand", () => {
  test("a fresh form asks for every choice, each by its name", () => {
    const forms = formsWith({ earlier, old: [draftOf({ finding })] });
    const empty = { fitToShow: "", fitToHandle: "", fitToTravel: "", occasion: "" };
    expect(faultsIn(forms, fieldsWith(empty)).map(({ name, label }) => [name, label])).toEqual([
      ["finding-2-answer", "2. Now it is"],
      ["fitToShow", "Fit to show"],
      ["fitToHandle", "Fit to handle"],
      ["fitToTravel", "Fit to travel"],
      ["occasion", "Occasion"],
    ]);
  });

  test("a new finding asks for its word, its place, severity and activity", () => {
    const forms = added({ term: "", place: " ", severity: "", activity: "" });
    expect(faultsIn(forms).map(({ name }) => name)).toEqual([
      "finding-3-term",
      "finding-3-place",
      "finding-3-severity",
      "finding-3-activity",
    ]);
  });

  test("worse asks anew for what was known, and takes nothing over", () => {
    expect(faultsIn(answered({ answer: "worse" })).map(({ name }) => name)).toEqual([
      "finding-2-severity",
      "finding-2-activity",
    ]);
    expect(findingsIn(answered({ answer: "worse", severity: "severe", activity: "active" }))).toEqual([
      {
        markId: finding.markId,
        term: finding.term,
        place: finding.place,
        picturePoint: finding.picturePoint,
        severity: "severe",
        activity: "active",
        answer: "worse",
        note: "",
      },
    ]);
  });
});

describe("an earlier finding", () => {
  test.each(["same", "not-visible"] as const)("that is %s stays as it was", (answer) =>
    expect(findingsIn(answered({ answer, severity: "severe" }))).toEqual([{ ...finding, answer }]),
  );

  test("that is gone has no severity and no extent", () =>
    expect(findingsIn(answered({ answer: "gone" }))).toMatchObject([
      { answer: "gone", severity: "none", note: "" },
    ]));

  test.each([
    ["worse", "Say what is worse: severity, extent, or a note."],
    ["better", "Say what is better: severity, extent, or a note."],
  ])("that is %s and measures the same asks what is", (answer, message) => {
    const unchanged = { answer, severity: "minor", activity: "stable", extentMm: "5" };
    expect(faultsIn(answered(unchanged))).toMatchObject([{ name: "finding-2-severity", message }]);
    for (const said of [{ note: "The edge is sharper." }, { extentMm: "7" }, { activity: "active" }])
      expect(faultsIn(answered({ ...unchanged, ...said }))).toEqual([]);
  });
});

describe("an extent", () => {
  test.each([
    ["extentMm", "-1", "Between 0 and 10\u202f000 mm."],
    ["extentMm", "10001", "Between 0 and 10\u202f000 mm."],
    ["extentPercent", "120", "Between 0 and 100 % of the area."],
    ["extentPercent", "-0,5", "Between 0 and 100 % of the area."],
  ])("of %s %s is refused at its field, in its own unit", (field, typed, message) =>
    expect(faultsIn(added({ [field]: typed }))).toMatchObject([{ name: `finding-3-${field}`, message }]),
  );

  test("that is no number says so", () =>
    expect(faultsIn(added({ extentMm: "about 5" }))).toMatchObject([
      { name: "finding-3-extentMm", label: "3. Extent, mm", message: expect.stringContaining("number") },
    ]));

  test("may be left out, and may be typed with a comma", () => {
    expect(findingsIn(added({}))).toMatchObject([{ term: "surface.dust" }]);
    expect(findingsIn(added({ extentPercent: "2,5" }))).toMatchObject([{ extentPercent: 2.5 }]);
  });
});

describe("the day", () => {
  test.each([
    ["periodic", "2026-03-10", null],
    ["periodic", "2026-03-01", null],
    ["periodic", "2026-02-28", "Not before the check of 1 March."],
    ["incident", "2026-03-04", "Not before 5 March."],
    ["periodic", "2026-03-11", "A check is recorded on the day it was made or later, not before."],
  ])("%s on %s is answered at its field: %s", (occasion, checkedOn, message) =>
    expect(faultsIn(formsWith(), fieldsWith({ occasion, checkedOn }))).toEqual(
      message === null ? [] : [{ name: "checkedOn", label: "Checked on", message }],
    ),
  );

  test("that is missing is asked for once", () =>
    expect(faultsIn(formsWith(), fieldsWith({ checkedOn: "" })).map(({ name }) => name)).toEqual([
      "checkedOn",
    ]));
});

test("who looked and the grounds are asked for by name", () =>
  expect(faultsIn(formsWith(), fieldsWith({ checkedBy: "", grounds: "" }))).toEqual([
    { name: "grounds", label: "Grounds", message: "State the grounds of the verdict." },
    { name: "checkedBy", label: "Who looked", message: "Name who looked." },
  ]));

test("what the server says of a field finds its way to it", () => {
  const forms = { ...answered({ answer: "same" }), fresh: added({}).fresh };
  expect(
    faultsOfIssues(forms, [
      { path: "check.findings.0.severity", message: "one" },
      { path: "check.findings.1.place", message: "two" },
      { path: "check.grounds", message: "three" },
      { path: "checkedOn", message: "four" },
      { path: "loanId", message: "five" },
    ]),
  ).toEqual([
    { name: "finding-2-severity", label: "2. Severity", message: "one" },
    { name: "finding-3-place", label: "3. Where", message: "two" },
    { name: "grounds", label: "Grounds", message: "three" },
    { name: "checkedOn", label: "Checked on", message: "four" },
  ]);
});
