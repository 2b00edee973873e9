/** The code as an independent reader sees it. */
import jsqr from "jsqr";
import { describe, expect, test } from "vitest";
import { codeDrawing, codeFigure, quietModules } from "#lib/papers/check-code.ts";
import { pointsOf, type VectorDrawing } from "#lib/papers/drawing.ts";

const address = "https://lending.example.org/paper/abcdefghijklmnopqrstuvwxyz";

/** The drawing in pixels, drawn rectangle by rectangle. */
function pixelsOf(
  { width, paths }: VectorDrawing,
  perModule: number,
): { data: Uint8ClampedArray; side: number } {
  const side = width * perModule;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const { steps, fill } of paths) {
    const points = pointsOf(steps);
    for (let at = 0; at < points.length; at += 4) {
      const [[left, top] = [0, 0], , [right, bottom] = [0, 0]] = points.slice(at, at + 4);
      for (let y = top * perModule; y < bottom * perModule; y += 1)
        for (let x = left * perModule; x < right * perModule; x += 1)
          data.fill(fill === "black" ? 0 : 255, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { data, side };
}

describe("a code", () => {
  test.each([address, `https://a.example/paper/${"Az09-_".repeat(8)}`])(
    "of %s is read as it was written",
    (text) => {
      const { data, side } = pixelsOf(codeDrawing(text), 4);
      expect(jsqr(data, side, side)?.data).toBe(text);
    },
  );

  test("has four modules of white on every side", () => {
    const { width, paths } = codeDrawing(address);
    const points = pointsOf(paths.find(({ fill }) => fill === "black")?.steps ?? []).flat();
    expect(quietModules).toBe(4);
    expect(Math.min(...points)).toBe(4);
    expect(Math.max(...points)).toBe(width - 4);
  });

  test("is a square figure that says what it is", () => {
    expect(codeFigure(address, 90, "QR code")).toMatchObject({
      widthPt: 90,
      heightPt: 90,
      alternative: "QR code",
    });
  });
});
