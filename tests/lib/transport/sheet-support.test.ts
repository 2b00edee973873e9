import fc from "fast-check";
import { expect, test } from "vitest";
import { sheetBendingStressMpa, sheetSupport, slotCaseDepthMm } from "#lib/transport/sheet-support.ts";

test("a thick sheet stands in slots, a thin one lies on its full face", () => {
  expect(sheetSupport({ thicknessMm: 5, spanMm: 380, peakG: 40 }).support).toBe("upright-in-slots");
  expect(sheetSupport({ thicknessMm: 1, spanMm: 380, peakG: 40 }).support).toBe("full-face");
});

test("the greatest span is where stress and strength meet", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 20, noNaN: true }),
      fc.double({ min: 50, max: 1500, noNaN: true }),
      fc.integer({ min: 10, max: 100 }),
      (thicknessMm, spanMm, peakG) => {
        const found = sheetSupport({ thicknessMm, spanMm, peakG });
        expect(sheetBendingStressMpa(peakG, found.greatestSpanMm, thicknessMm, 1200)).toBeCloseTo(20, 6);
        expect(found.support === "upright-in-slots").toBe(spanMm <= found.greatestSpanMm * (1 + 1e-12));
      },
    ),
  );
});

test("half the span gives a quarter of the stress, half the thickness twice", () => {
  const whole = sheetBendingStressMpa(40, 380, 3, 1200);
  expect(sheetBendingStressMpa(40, 190, 3, 1200)).toBeCloseTo(whole / 4, 9);
  expect(sheetBendingStressMpa(40, 380, 1.5, 1200)).toBeCloseTo(whole * 2, 9);
});

test("the curator's design strength decides", () => {
  const sheet = { thicknessMm: 3, spanMm: 380, peakG: 40 };
  expect(sheetSupport({ ...sheet, designStrengthMpa: 17.1 }).support).toBe("upright-in-slots");
  expect(sheetSupport({ ...sheet, designStrengthMpa: 16.9 }).support).toBe("full-face");
});

test("every further sheet deepens the slot case by sheet, padding and divider", () => {
  const slots = { thicknessMm: 3, paddingMm: 5, dividerMm: 6 };
  expect(slotCaseDepthMm({ count: 1, ...slots })).toBe(25);
  expect(slotCaseDepthMm({ count: 2, ...slots })).toBe(25 + 19);
});

test("no sheets, half a sheet, or a sheet without thickness are out of range", () => {
  expect(() => slotCaseDepthMm({ count: 0, thicknessMm: 3, paddingMm: 5, dividerMm: 6 })).toThrow(RangeError);
  expect(() => slotCaseDepthMm({ count: 1.5, thicknessMm: 3, paddingMm: 5, dividerMm: 6 })).toThrow(
    RangeError,
  );
  expect(() => sheetBendingStressMpa(40, 380, 0, 1200)).toThrow(RangeError);
});
