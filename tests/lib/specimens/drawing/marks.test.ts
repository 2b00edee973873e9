import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeMarks } from "#lib/specimens/drawing/marks.ts";
import { plateHeight, plateWidth } from "#lib/specimens/drawing/plate.ts";
import { coordinates } from "./looking.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe("marks on a plate", () => {
  it("keeps every mark and its extent inside the picture", () => {
    fc.assert(
      fc.property(share, share, share, share, (x, y, width, height) => {
        const [mark] = placeMarks([{ number: 3, x, y, width, height }]);
        if (mark === undefined) throw new Error("no mark");
        expect(mark.x - mark.radius >= 0 && mark.x + mark.radius <= plateWidth).toBe(true);
        expect(mark.y - mark.radius >= 0 && mark.y + mark.radius <= plateHeight).toBe(true);
        for (const [px, py] of coordinates(mark.area ?? "")) {
          expect(px >= 0 && px <= plateWidth && py >= 0 && py <= plateHeight).toBe(true);
        }
      }),
    );
  });

  it("sets a mark at its place, and at the corner of its extent where it has one", () => {
    const [spot, area] = placeMarks([
      { number: 1, x: 0.5, y: 0.5 },
      { number: 2, x: 0.5, y: 0.5, width: 0.25, height: 0.5 },
    ]);
    expect(spot).toEqual({ number: 1, x: 160, y: 120, radius: 7.5, area: null });
    expect(area).toEqual({ number: 2, x: 200, y: 60, radius: 7.5, area: "M120 60L200 60L200 180L120 180Z" });
  });

  it.each([Number.NaN, -0.1, 1.1])("refuses a place of %s", (x) => {
    expect(() => placeMarks([{ number: 1, x, y: 0.5 }])).toThrow(RangeError);
  });
});
