import fc from "fast-check";
import { expect, test } from "vitest";
import { type CrateQuestion, crateQuestionOf } from "#lib/suitability/crate-case.ts";
import { crateGroups, SHEETS_PER_CRATE } from "#lib/suitability/crate-groups.ts";
import type { LentSpecimen } from "#lib/suitability/rules/case.ts";
import { aLentSpecimen } from "#tests/support/loan-cases.ts";

const sheet = (number: number, said: Partial<LentSpecimen> = {}) =>
  aLentSpecimen({
    id: `sheet-${said.seriesId ?? "a"}-${number}`,
    kind: "sheet",
    preparation: "epoxy sheet",
    size: { lengthMm: 420, widthMm: 320, heightMm: 6 },
    massKg: 0.9,
    seriesId: "a",
    numberInSeries: number,
    sheetThicknessMm: 4,
    ...said,
  });
const ask = (specimen: LentSpecimen) => ({
  specimen,
  question: crateQuestionOf(specimen, {
    passages: [],
    carrierClass: "specialist-door-to-door",
    count: 1,
  }) as CrateQuestion,
});
const numbers = (specimens: readonly LentSpecimen[]) => specimens.map(({ numberInSeries }) => numberInSeries);

test("sheets of a series share crates in the order of their numbers", () => {
  const sheets = Array.from({ length: 23 }, (_, index) => ask(sheet(23 - index)));
  const groups = crateGroups(sheets);
  expect(groups.map(({ specimens }) => numbers(specimens))).toEqual([
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
    [11, 12, 13, 14, 15, 16, 17, 18, 19, 20],
    [21, 22, 23],
  ]);
  expect(groups.map(({ question }) => question.count)).toEqual([10, 10, 3]);
});

test("sheets of two series, or of two sizes, do not share a crate", () => {
  const groups = crateGroups([
    ask(sheet(1)),
    ask(sheet(2, { seriesId: "b" })),
    ask(sheet(3, { size: { lengthMm: 600, widthMm: 400, heightMm: 6 } })),
  ]);
  expect(groups).toHaveLength(3);
});

test("everything else has a crate of its own", () => {
  const groups = crateGroups([ask(aLentSpecimen({ id: "1" })), ask(aLentSpecimen({ id: "2" }))]);
  expect(groups.map(({ specimens }) => specimens.length)).toEqual([1, 1]);
});

test("nothing is lost and nothing is twice", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(fc.constantFrom("a", "b", null), fc.nat(60)), { selector: String }),
      (drawn) => {
        const asked = drawn.map(([seriesId, number]) =>
          ask(sheet(number, { seriesId, id: `${seriesId}-${number}` })),
        );
        const packed = crateGroups(asked).flatMap(({ specimens }) => specimens.map(({ id }) => id));
        expect([...packed].sort()).toEqual(asked.map(({ specimen }) => specimen.id).sort());
        expect(crateGroups(asked).every(({ specimens }) => specimens.length <= SHEETS_PER_CRATE)).toBe(true);
      },
    ),
  );
});
