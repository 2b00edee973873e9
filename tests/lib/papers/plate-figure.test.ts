import { expect, test } from "vitest";
import { isPicture, pointsOf } from "#lib/papers/drawing.ts";
import { plateFigure } from "#lib/papers/plate-figure.ts";
import { someCase } from "#tests/lib/papers/paper-cases.ts";

const drawings = someCase({ specimens: 2, crates: 1 }).specimens.map(({ drawing }) => drawing);

test("a drawing stands inside its figure, in inks that a copier keeps", () => {
  for (const drawing of drawings) {
    const { image, heightPt } = plateFigure(drawing, 42, "Schematic drawing");
    if (isPicture(image)) throw new RangeError("This is no drawing.");
    expect(heightPt).toBe(42);
    expect(image.paths.length).toBeGreaterThan(3);
    for (const [x, y] of image.paths.flatMap(({ steps }) => pointsOf(steps))) {
      expect(x).toBeGreaterThanOrEqual(-1);
      expect(x).toBeLessThanOrEqual(image.width + 1);
      expect(y).toBeGreaterThanOrEqual(-1);
      expect(y).toBeLessThanOrEqual(image.height + 1);
    }
    for (const { fill } of image.paths) expect([undefined, "ink", "shade", "white"]).toContain(fill);
  }
});

test("the same request gives the same figure, another one another", () => {
  const [heart, liver] = drawings;
  if (!heart || !liver) throw new RangeError("There are two drawings.");
  expect(plateFigure(heart, 42, "x")).toEqual(plateFigure(heart, 42, "x"));
  expect(plateFigure(heart, 42, "x")).not.toEqual(plateFigure(liver, 42, "x"));
});
