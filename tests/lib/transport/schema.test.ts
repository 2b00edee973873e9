import { expect, test } from "vitest";
import { growSides, Passage, Sides, volumeM3 } from "#lib/transport/schema.ts";

test("growing and shrinking by the same amount gives the sides back", () => {
  const sides = { lengthMm: 600, widthMm: 400, heightMm: 300 };
  expect(growSides(sides, 10)).toEqual({ lengthMm: 620, widthMm: 420, heightMm: 320 });
  expect(growSides(growSides(sides, 10), -10)).toEqual(sides);
  expect(volumeM3(sides)).toBeCloseTo(0.072, 12);
});

test("parsing a parsed passage changes nothing", () => {
  const lift = { kind: "lift", name: " goods lift ", doorWidthMm: 1100, ratedMassKg: 1275 };
  const once = Passage.parse(lift);
  expect(once.name).toBe("goods lift");
  expect(Passage.parse(once)).toEqual(once);
});

test.each([
  { lengthMm: Number.NaN, widthMm: 1, heightMm: 1 },
  { lengthMm: Number.POSITIVE_INFINITY, widthMm: 1, heightMm: 1 },
  { lengthMm: -1, widthMm: 1, heightMm: 1 },
  { lengthMm: "600", widthMm: 1, heightMm: 1 },
  { lengthMm: 1e9, widthMm: 1, heightMm: 1 },
])("sides %j are refused", (sides) => {
  expect(Sides.safeParse(sides).success).toBe(false);
});

test("a passage of an unknown kind is refused", () => {
  expect(Passage.safeParse({ kind: "window", clearWidthMm: 900 }).success).toBe(false);
});
