import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  CrateLabelContent,
  commonTemperatures,
  crateLabelContent,
  marksOf,
} from "#lib/papers/crate-label/content.ts";
import { firstCrate, secondCrate, someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 5, crates: 2 });
const [first, second] = [firstCrate, secondCrate].map((subject) =>
  crateLabelContent(paperCase, subject, someHead()),
);

test("a label reads back as it was written, and names nothing of what is inside", () => {
  expect(CrateLabelContent.parse(JSON.parse(JSON.stringify(first)))).toEqual(first);
  expect(JSON.stringify(first)).not.toMatch(/AN 2004|Heart|Liver|Winter course|A 001/);
});

describe("marks", () => {
  test("say either how much may stand on a crate or that nothing may", () => {
    expect(first?.marks).toContain("stacking limit");
    expect(first?.stackingLimitKg).toBe(118);
    expect(second?.marks).toContain("do not stack");
    expect(second?.stackingLimitKg).toBeNull();
    for (const label of [first, second])
      expect(
        label?.marks.filter((mark) => mark === "do not stack" || mark === "stacking limit"),
      ).toHaveLength(1);
  });

  test("of a crate that may stand on any side ask for no side up", () => {
    const marks = marksOf({ orientation: "any-side", handling: "one-person", lidLoadKg: 0 }, null);
    expect(marks).not.toContain("this way up");
    expect(marks).not.toContain("do not roll");
    expect(marks).not.toContain("sling here");
    expect(marks).not.toContain("temperature limits");
    expect(marks).toEqual(expect.arrayContaining(["fragile", "keep dry", "no hand hooks"]));
  });
});

describe("temperatures of a label", () => {
  test("are those that all contents bear; none in common are none", () => {
    expect(commonTemperatures([{ low: 5, high: 30 }, null, { low: 8, high: 35 }])).toEqual({
      low: 8,
      high: 30,
    });
    expect(
      commonTemperatures([
        { low: 5, high: 10 },
        { low: 12, high: 35 },
      ]),
    ).toBeNull();
    expect(commonTemperatures([null])).toBeNull();
  });

  test("are never outside what one of them bears", () => {
    const band = fc
      .tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 1, max: 40 }))
      .map(([low, span]) => ({ low, high: low + span }));
    fc.assert(
      fc.property(fc.array(band, { minLength: 1 }), (bands) => {
        const common = commonTemperatures(bands);
        for (const { low, high } of common === null ? [] : bands) {
          expect(common?.low).toBeGreaterThanOrEqual(low);
          expect(common?.high).toBeLessThanOrEqual(high);
        }
      }),
    );
  });
});
