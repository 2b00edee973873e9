import { describe, expect, it } from "vitest";
import {
  drawLowerJaw,
  drawLowerJaws,
  drawNewbornSkull,
  drawSkullApart,
  drawTemporalBone,
} from "#lib/specimens/drawing/skull-bones.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates } from "./looking.ts";

describePlates("the skull in parts", {
  "a lower jaw": (vary) => drawLowerJaw(vary),
  "five lower jaws": (vary) => drawLowerJaws(vary, 5),
  "two lower jaws": (vary) => drawLowerJaws(vary, 2),
  drawNewbornSkull,
  drawSkullApart,
  drawTemporalBone,
});

describe("lower jaws in growth", () => {
  it("get more teeth and fewer germs", () => {
    const teeth = (growth: number) =>
      drawLowerJaw(variation("AN 1"), growth).shapes.filter(({ fill }) => fill === "sinew").length;
    const germs = (growth: number) =>
      drawLowerJaw(variation("AN 1"), growth).shapes.filter(({ fill }) => fill === "hollow").length;
    expect(teeth(1)).toBe(8);
    expect(germs(0.2)).toBeGreaterThan(germs(0.9));
    expect(germs(1)).toBe(1);
  });
});
