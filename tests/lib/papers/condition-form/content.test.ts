import { expect, test } from "vitest";
import {
  ConditionFormContent,
  conditionFormContent,
  conditionFormSubjects,
} from "#lib/papers/condition-form/content.ts";
import { someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 4, crates: 2 });
const content = conditionFormContent(paperCase, "", someHead());

test("a condition form reads back as it was written, with the last check of each specimen", () => {
  expect(ConditionFormContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
  expect(content.specimens.map(({ check }) => check?.marks.length ?? null)).toEqual([1, 1, 1, null]);
});

test("a mark that was gone already is not looked for again", () => {
  const [first] = paperCase.specimens;
  if (!first?.check) throw new RangeError("There is a check.");
  const [mark] = first.check.findings;
  if (!mark) throw new RangeError("There is a mark.");
  const seen = {
    ...first,
    check: { ...first.check, findings: [mark, { ...mark, severity: "none" }] },
  };
  const { specimens } = conditionFormContent({ ...paperCase, specimens: [seen] }, "", someHead());
  expect(specimens[0]?.check?.marks).toEqual([mark]);
});

test("what is no longer on the loan has no form, and without specimens there is none", () => {
  const off = paperCase.specimens.map((one) => ({ ...one, isLive: false }));
  expect(conditionFormSubjects(paperCase)).toEqual([""]);
  expect(conditionFormSubjects({ ...paperCase, specimens: off })).toEqual([]);
});
