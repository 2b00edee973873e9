import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alignOnDecimal } from "#app/_parts/decimal.ts";

describe("figures of a column aligned on the decimal", () => {
  it("keeps open what a shorter fraction lacks", () => {
    expect(alignOnDecimal(["12.5", "3", "104.25", null, ""])).toEqual([
      { text: "12.5", open: "0" },
      { text: "3", open: ".00" },
      { text: "104.25", open: "" },
      null,
      null,
    ]);
  });

  it("reads signs, thin spaces between thousands and a unit behind", () => {
    expect(alignOnDecimal(["−1\u202f200.5 mm", "18\u202f400 mm"])).toEqual([
      { text: "−1\u202f200.5 mm", open: "" },
      { text: "18\u202f400 mm", open: ".0" },
    ]);
  });

  it("gives every figure of a column the same number of places", () => {
    const figure = fc
      .tuple(fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: 0, max: 4 }))
      .map(([value, digits]) => (value / 10 ** digits).toFixed(digits));
    fc.assert(
      fc.property(fc.array(figure, { minLength: 1 }), (figures) => {
        const places = alignOnDecimal(figures).map((each) => {
          const shown = `${each?.text}${each?.open}`;
          return shown.includes(".") ? shown.length - shown.indexOf(".") : 0;
        });
        expect(new Set(places).size).toBe(1);
      }),
    );
  });
});
