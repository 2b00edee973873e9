import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { strokes, washes } from "#lib/specimens/drawing/plate.ts";

const css = readFileSync(
  new URL("../../../../app/_parts/specimen-drawing.module.css", import.meta.url),
  "utf8",
);
const light = css.slice(0, css.indexOf("@media screen"));
const dark = css.slice(css.indexOf("@media screen"), css.indexOf(".drawing path"));
const rule = (name: string) => css.slice(css.indexOf(`.drawing .${name} {`)).split("}")[0] ?? "";

describe("the tones of a plate on the page", () => {
  it.each(washes)("have a colour for %s by day and by night", (wash) => {
    expect(css).toContain(`.drawing .wash-${wash} {`);
    expect(rule(`wash-${wash}`)).toContain(`fill: var(--wash-${wash});`);
    expect(light).toContain(`--wash-${wash}:`);
    if (wash !== "ink") expect(dark).toContain(`--wash-${wash}:`);
  });

  it.each(strokes)("have a colour and a width for %s", (stroke) => {
    expect(css).toContain(`.drawing .line-${stroke} {`);
    expect(rule(`line-${stroke}`)).toMatch(/stroke: var\(--[a-z-]+\);\s+stroke-width: [\d.]+;/);
  });
});
