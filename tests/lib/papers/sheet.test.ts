import { expect, test } from "vitest";
import type { Emphasis } from "#lib/papers/blocks.ts";
import { baselineOf, bodyHeightPt, bodyWidthPt, emphasised, inks, sheet, styles } from "#lib/papers/sheet.ts";

test("the sheet is A4 and the text keeps clear of head, foot and edges", () => {
  expect((sheet.widthPt / 72) * 25.4).toBeCloseTo(210, 1);
  expect((sheet.heightPt / 72) * 25.4).toBeCloseTo(297, 1);
  expect(bodyWidthPt).toBeGreaterThan(450);
  expect(sheet.headRulePt).toBeLessThan(sheet.topPt);
  expect(sheet.footRulePt).toBeGreaterThan(sheet.bottomPt);
  expect(bodyHeightPt).toBe(sheet.bottomPt - sheet.topPt);
});

test.each<[Emphasis, Partial<ReturnType<typeof emphasised>>]>([
  ["strong", { face: "sans bold" }],
  ["latin", { face: "serif italic" }],
  ["code", { face: "mono" }],
  ["quiet", { face: "sans", ink: "quiet" }],
  ["small", { face: "sans", ink: "quiet" }],
  ["small latin", { face: "serif italic", ink: "quiet" }],
])("%s changes the letters and never the distance of the lines", (emphasis, expected) => {
  const style = emphasised(styles.body, emphasis);
  expect(style).toMatchObject(expected);
  expect(style.leadingPt).toBe(styles.body.leadingPt);
  expect(style.sizePt).toBeLessThanOrEqual(styles.body.sizePt);
});

test("without emphasis a style is itself, and strong serif stays serif", () => {
  expect(emphasised(styles.body, undefined)).toBe(styles.body);
  expect(emphasised(styles.heading, "strong").face).toBe("serif bold");
});

test("letters stand inside their line", () => {
  for (const style of Object.values(styles)) {
    const baseline = baselineOf(style);
    expect(baseline - style.sizePt * 0.76).toBeGreaterThanOrEqual(0);
    expect(baseline + style.sizePt * 0.24).toBeLessThanOrEqual(style.leadingPt);
  }
});

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function contrastToWhite(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((from) => {
    const share = Number.parseInt(hex.slice(from, from + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05);
}

test.each(["ink", "quiet", "accent"] as const)("%s is read on white paper", (ink) => {
  expect(contrastToWhite(inks[ink])).toBeGreaterThan(4.5);
});
