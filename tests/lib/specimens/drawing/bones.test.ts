import { describe, expect, it } from "vitest";
import {
  drawFemur,
  drawPelvis,
  drawRibCage,
  drawScapula,
  drawVertebra,
} from "#lib/specimens/drawing/bones.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

const plates = { drawVertebra, drawFemur, drawScapula, drawPelvis, drawRibCage };

describe("single bones", () => {
  it.each(Object.entries(plates))("%s lies inside the view box under every seed", (_, draw) => {
    for (const drawing of drawnUnderSeeds(draw)) {
      expect(drawing.shapes.length).toBeGreaterThan(3);
      expect(strayPoints(drawing)).toEqual([]);
    }
  });

  it.each(Object.entries(plates))("%s is the same for one seed and another for another", (_, draw) => {
    const once = drawnUnderSeeds(draw).map(textOf);
    expect(drawnUnderSeeds(draw).map(textOf)).toEqual(once);
    expect(new Set(once).size).toBe(once.length);
  });

  it("tells its plates apart", () => {
    const texts = Object.values(plates).map((draw) => textOf(drawnUnderSeeds(draw)[0] ?? neverDrawn()));
    expect(new Set(texts).size).toBe(texts.length);
  });
});

function neverDrawn(): never {
  throw new Error("nothing was drawn");
}
