import { describe, expect, it } from "vitest";
import { box } from "#lib/specimens/drawing/pen.ts";
import { boundsOf, filled } from "#lib/specimens/drawing/plate.ts";
import { drawHeart } from "#lib/specimens/drawing/thorax-organs.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { centred, drawInJar, drawInPane } from "#lib/specimens/drawing/vessel-jar.ts";

const heart = () => drawHeart(variation("AN 1"));

describe("what a specimen is kept in", () => {
  it("holds the specimen inside the jar's glass", () => {
    const jar = drawInJar(variation("jar"), centred(heart()));
    const glass = boundsOf(jar.shapes.slice(0, 1));
    for (const shape of jar.shapes.filter((each) => each.fill === "organ")) {
      const organ = boundsOf([shape]);
      expect(organ.x).toBeGreaterThan(glass.x);
      expect(organ.x + organ.width).toBeLessThan(glass.x + glass.width);
      expect(organ.y + organ.height).toBeLessThan(glass.y + glass.height);
    }
  });

  it("is as high or as broad as what it holds", () => {
    const proportion = (width: number, height: number) => {
      const content = { shapes: [filled("organ", box(0, 0, width, height))], callouts: [] };
      const glass = boundsOf(drawInJar(variation("jar"), content).shapes.slice(0, 1));
      return glass.width / glass.height;
    };
    expect(proportion(100, 20)).toBeGreaterThan(1);
    expect(proportion(40, 50)).toBeLessThan(1);
    expect(proportion(10, 100)).toBeLessThan(0.5);
  });

  it("gives every sheet of a series the same pane", () => {
    const pane = boundsOf(drawInPane({ shapes: [], callouts: [] }, 150, 82).shapes);
    expect(pane).toEqual({ x: -150, y: -82, width: 300, height: 164 });
  });

  it("centres a sketch on the origin", () => {
    const bounds = boundsOf(centred(heart()).shapes);
    expect(bounds.x + bounds.width / 2).toBeCloseTo(0, 9);
    expect(bounds.y + bounds.height / 2).toBeCloseTo(0, 9);
  });
});
