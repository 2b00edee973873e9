import { expect, test } from "vitest";
import { sizeWithThickness } from "#lib/specimens/sheet-size.ts";

const size = (lengthMm: number, widthMm: number, heightMm: number) => ({ lengthMm, widthMm, heightMm });

test.each([
  ["a sheet lying flat", size(420, 300, 4), 3.5, size(420, 300, 3.5)],
  ["a sheet standing on edge", size(420, 4, 300), 3.5, size(420, 3.5, 300)],
  ["a thickness in whole millimetres", size(260, 215, 5), 5, size(260, 215, 5)],
  ["a sheet measured in its frame", size(440, 320, 12), 3.5, size(440, 320, 12)],
  ["what is no sheet", size(150, 120, 110), null, size(150, 120, 110)],
  ["a cube, whose height is told", size(4, 4, 4), 3.5, size(4, 4, 3.5)],
] as const)("%s", (_name, recorded, thicknessMm, told) => {
  expect(sizeWithThickness(recorded, thicknessMm)).toEqual(told);
});

test("a sheet that nobody measured has no size, whatever its thickness", () => {
  expect(sizeWithThickness(null, 3.5)).toBeNull();
});

test("the record itself is left as it was", () => {
  const recorded = size(420, 300, 4);
  sizeWithThickness(recorded, 3.5);
  expect(recorded.heightMm).toBe(4);
});
