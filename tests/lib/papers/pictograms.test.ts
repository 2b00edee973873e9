import { describe, expect, test } from "vitest";
import { pointsOf } from "#lib/papers/drawing.ts";
import { drawHandlingMark, handlingMarks } from "#lib/papers/pictograms.ts";

describe.each(handlingMarks)("%s", (mark) => {
  const { width, height, paths } = drawHandlingMark(mark);

  test("keeps within its field, line widths included", () => {
    for (const { steps, stroke } of paths)
      for (const value of pointsOf(steps).flat()) {
        const half = (stroke?.width ?? 0) / 2;
        expect(value - half).toBeGreaterThanOrEqual(0);
        expect(value + half).toBeLessThanOrEqual(Math.max(width, height));
      }
  });

  test("is black on white, so that a copy still shows it", () => {
    const inks = paths.flatMap(({ fill, stroke }) => [fill, stroke?.ink]).filter(Boolean);
    expect(new Set(inks)).toEqual(new Set(["black", "white"]));
  });
});

test("no two marks are the same drawing", () => {
  expect(new Set(handlingMarks.map((mark) => JSON.stringify(drawHandlingMark(mark)))).size).toBe(
    handlingMarks.length,
  );
});
