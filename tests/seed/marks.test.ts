/** Every mark of the scenario that has a place on the picture lies on the drawing of its specimen. */
import { describe, expect, test } from "vitest";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import { plateHeight, plateWidth } from "#lib/specimens/drawing/plate.ts";
import { collection, histories } from "#seed/scenario/collection.ts";
import { loans } from "#seed/scenario/loans.ts";
import { checksOfSheet, seriesOfSheets, sheetName, sheetNumbers } from "#seed/scenario/series.ts";
import type { Mark } from "#seed/scenario/shape.ts";
import { requestOfSheet, requestOfSpecimen } from "#tests/support/demo-drawings.ts";
import { liesOnDrawing, linesOf } from "#tests/support/on-drawing.ts";

/** Marks that lie beside the drawing, each with its place. */
function stray(drawing: ReturnType<typeof drawSpecimen>, marks: Readonly<Record<string, Mark>>): string[] {
  return Object.entries(marks).flatMap(([key, { place, x, y }]) =>
    x === undefined || y === undefined || liesOnDrawing(drawing, [x * plateWidth, y * plateHeight])
      ? []
      : [`${key} (${place}) at ${x}, ${y}`],
  );
}

/** The marks that loans have added to those of the house's own checks. */
function marksOfLoans(accessionNumber: string): Record<string, Mark> {
  const looks = loans.flatMap(({ story }) => [story.checkedOut, story.unpacked, story.checkedHome]);
  return Object.assign(
    {},
    ...looks.map((look) => {
      const said = look?.looks?.[accessionNumber];
      return typeof said === "object" ? said.newMarks : {};
    }),
  );
}

describe("a mark of the scenario", () => {
  test.each(collection.map((one) => [one.record.accessionNumber, one] as const))(
    "of %s lies on its drawing",
    (number, specimen) => {
      expect(
        stray(drawSpecimen(requestOfSpecimen(specimen)), {
          ...histories[number]?.marks,
          ...marksOfLoans(number),
        }),
      ).toEqual([]);
    },
  );

  test("of a sheet lies on its drawing", () => {
    const beside = Object.values(seriesOfSheets).flatMap((series) =>
      sheetNumbers(series).flatMap((number) => {
        const drawing = drawSpecimen(requestOfSheet(series, number));
        return stray(drawing, checksOfSheet(series, number).marks).map(
          (fault) => `${sheetName(series, number)}: ${fault}`,
        );
      }),
    );
    expect(beside).toEqual([]);
  });
});

describe("being on a drawing", () => {
  const square = { d: "M10 10L30 10L30 30L10 30Z", fill: "tissue", stroke: null } as const;
  const line = { d: "M100 10C100 20 100 20 100 30", fill: null, stroke: "artery" } as const;
  const drawing = { width: 320, height: 240, shapes: [square, line], labels: [] };

  test.each([
    ["inside what is filled", [20, 20], true],
    ["beside it", [40, 20], false],
    ["on a line", [102, 20], true],
    ["away from the line", [110, 20], false],
  ] as const)("%s", (_what, place, on) => expect(liesOnDrawing(drawing, place)).toBe(on));

  test("paper is no part of a specimen", () => {
    const paper = { ...square, fill: "paper" } as const;
    expect(liesOnDrawing({ ...drawing, shapes: [paper] }, [20, 20])).toBe(false);
  });

  test("a curve is followed to its end", () => expect(linesOf(line.d)[0]?.at(-1)).toEqual([100, 30]));
});
