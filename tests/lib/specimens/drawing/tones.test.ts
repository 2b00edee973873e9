import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { strokes, washes } from "#lib/specimens/drawing/plate.ts";
import { darkPalette, lightPalette, strokeWidths } from "#lib/specimens/drawing/svg.ts";

const css = readFileSync(
  new URL("../../../../app/_parts/specimen-drawing.module.css", import.meta.url),
  "utf8",
);
const dark = css.slice(css.indexOf("@media screen"), css.indexOf(".drawing path"));

describe("the tones of a plate on the page", () => {
  it("has a rule for every wash and stroke, as wide as in a picture of its own", () => {
    for (const wash of washes) expect(css).toContain(`.drawing .wash-${wash} {`);
    for (const stroke of strokes) {
      const rule = css.slice(css.indexOf(`.drawing .line-${stroke} {`));
      expect(rule).toContain(`stroke-width: ${strokeWidths[stroke]};`);
    }
  });

  it.each(washes.filter((wash) => wash !== "paper" && wash !== "ink"))(
    "washes %s with the colours of the stored pictures",
    (wash) => {
      expect(css).toContain(`--wash-${wash}: ${lightPalette.washes[wash].toLowerCase()};`);
      expect(dark).toContain(`--wash-${wash}: ${darkPalette.washes[wash].toLowerCase()};`);
    },
  );
});
