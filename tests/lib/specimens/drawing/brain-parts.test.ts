import { describe, expect, it } from "vitest";
import {
  drawBrainstem,
  drawCoronalBrain,
  drawHemisphereFibres,
  drawHemisphereInside,
} from "#lib/specimens/drawing/brain-parts.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("parts of the brain", {
  drawHemisphereInside,
  drawHemisphereFibres,
  drawBrainstem,
  drawCoronalBrain,
});

describe("a hemisphere from its inner side", () => {
  it("has neither brainstem nor cerebellum", () => {
    const names = namedBy(drawHemisphereInside(variation("AN 1")));
    expect(names).toContain("corpus-callosum");
    expect(names).not.toContain("pons");
    expect(names).not.toContain("cerebellum");
  });
});
