import { describe, expect, it } from "vitest";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import { placeMarks } from "#lib/specimens/drawing/marks.ts";
import { strokes, washes } from "#lib/specimens/drawing/plate.ts";
import { darkPalette, drawingToSvg, lightPalette } from "#lib/specimens/drawing/svg.ts";

const drawing = drawSpecimen({ kind: "organ", title: "Heart", seed: "AN 1", named: true });

describe("a drawing as a picture of its own", () => {
  it("names itself, and escapes what a title may hold", () => {
    const svg = drawingToSvg(drawing, { title: 'Heart <b> & "vessels"' });
    expect(svg).toContain("<title>Heart &lt;b&gt; &amp; &quot;vessels&quot;</title>");
    expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 240"')).toBe(true);
    expect(svg.match(/<text class="name"/g)).toHaveLength(drawing.labels.length);
  });

  it("gives every wash and stroke a rule, in both schemes", () => {
    const svg = drawingToSvg(drawing, { title: "Heart", scheme: "auto" });
    for (const wash of washes) {
      expect(svg).toContain(`.w-${wash}{fill:${lightPalette.washes[wash]}}`);
      expect(svg).toContain(`.w-${wash}{fill:${darkPalette.washes[wash]}}`);
    }
    for (const stroke of strokes) expect(svg).toContain(`.s-${stroke}{stroke:`);
    expect(drawingToSvg(drawing, { title: "Heart" })).not.toContain("prefers-color-scheme");
  });

  it("paints its ground and its marks when asked", () => {
    const svg = drawingToSvg(drawing, {
      title: "Heart",
      ground: true,
      marks: placeMarks([{ number: 7, x: 0.4, y: 0.4, width: 0.2, height: 0.2 }]),
    });
    expect(svg).toContain('<rect class="ground" width="320" height="240"/>');
    expect(svg).toContain(">7</text>");
    expect(svg).toContain('class="area"');
  });
});
