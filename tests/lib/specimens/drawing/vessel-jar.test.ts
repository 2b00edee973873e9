import { describe, expect, it } from "vitest";
import { boundsOf } from "#lib/specimens/drawing/plate.ts";
import { drawHeart } from "#lib/specimens/drawing/thorax-organs.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { centred, drawClosedBox, drawInJar, drawInPane } from "#lib/specimens/drawing/vessel-jar.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

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

  it("gives every sheet of a series the same pane", () => {
    const pane = boundsOf(drawInPane({ shapes: [], callouts: [] }, 150, 82).shapes);
    expect(pane).toEqual({ x: -150, y: -82, width: 300, height: 164 });
  });

  it("centres a sketch on the origin", () => {
    const bounds = boundsOf(centred(heart()).shapes);
    expect(bounds.x + bounds.width / 2).toBeCloseTo(0, 9);
    expect(bounds.y + bounds.height / 2).toBeCloseTo(0, 9);
  });

  it("draws a closed box inside the view box, another for each seed", () => {
    const drawings = drawnUnderSeeds(drawClosedBox);
    for (const drawing of drawings) expect(strayPoints(drawing)).toEqual([]);
    expect(new Set(drawings.map(textOf)).size).toBe(drawings.length);
  });
});
