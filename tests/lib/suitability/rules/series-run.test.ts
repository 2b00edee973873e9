import fc from "fast-check";
import { expect, test } from "vitest";
import { gapsInRun, judgeSeriesRun } from "#lib/suitability/rules/series-run.ts";
import { aSpecimenCase } from "#tests/support/loan-cases.ts";

const seriesId = "01920000-0000-7000-8000-0000000000a0";
const sheet = (numberInSeries: number, numbersOfSeries: number[] | null = [1, 2, 3, 5, 6]) =>
  aSpecimenCase({ specimen: { seriesId, numberInSeries }, numbersOfSeries });

test.each([
  ["a run without gaps is clear", [1, 2, 3], "clear", "use.whole-run"],
  ["a number that the series does not hold is no gap", [3, 5], "clear", "use.whole-run"],
  ["one sheet is a run", [5], "clear", "use.whole-run"],
  ["a sheet left behind is attend", [1, 3], "attend", "use.gaps-in-run"],
] as const)("%s", (_what, numbers, outcome, fact) => {
  const all = numbers.map((number) => sheet(number));
  for (const one of all) expect(judgeSeriesRun(one, all)).toMatchObject([{ rule: "U6", outcome, fact }]);
});

test("a series of which nobody knows the numbers is attend, and what is no sheet is not judged", () => {
  const unknown = sheet(1, null);
  expect(judgeSeriesRun(unknown, [unknown])).toMatchObject([
    { outcome: "attend", fact: "use.run-not-known" },
  ]);
  expect(judgeSeriesRun(aSpecimenCase(), [aSpecimenCase(), sheet(2)])).toEqual([]);
});

test("what is lent, what stays and what the series lacks make up the whole run", () => {
  const some = fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 20 });
  fc.assert(
    fc.property(some, some, (lent, others) => {
      const { first, last, left, absent } = gapsInRun(lent, [...new Set([...lent, ...others])]);
      expect(lent.length + left.length + absent.length).toBe(last - first + 1);
    }),
  );
});
