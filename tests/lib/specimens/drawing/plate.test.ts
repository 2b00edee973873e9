import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { box, ellipse } from "#lib/specimens/drawing/pen.ts";
import {
  boundsOf,
  filled,
  finer,
  fitSketch,
  labelWidth,
  mergeSketches,
  mirrorSketch,
  plateHeight,
  plateWidth,
  type Sketch,
  setOnPlate,
  stroked,
  turnSketch,
} from "#lib/specimens/drawing/plate.ts";
import { strayPoints } from "./looking.ts";

const sketch = (width: number, height: number, names: readonly string[] = []): Sketch => ({
  shapes: [
    filled("organ", box(0, 0, width, height), "outline"),
    stroked("hatch", ellipse(width / 2, height / 2, width / 3, height / 3)),
  ],
  callouts: names.map((text, index) => ({
    text,
    at: [(width * (index + 1)) / (names.length + 1), height / 2],
  })),
});

describe("setting a sketch on its plate", () => {
  it("brings any sketch inside the view box, whatever its size and its names", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 1, max: 3000 }),
        fc.array(fc.string({ minLength: 1, maxLength: 24 }), { maxLength: 6 }),
        (width, height, names) => {
          const drawing = setOnPlate(sketch(width, height, names), true);
          expect(strayPoints(drawing)).toEqual([]);
          expect(drawing.labels).toHaveLength(names.length);
        },
      ),
    );
  });

  it("keeps names inside the plate and apart from one another", () => {
    const names = ["arteria brachialis", "nervus medianus", "nervus ulnaris", "vena basilica"];
    for (const [width, height] of [
      [300, 80],
      [100, 160],
      [160, 160],
    ] as const) {
      const { labels } = setOnPlate(sketch(width, height, names), true);
      const spans = labels.map((label) => {
        const wide = labelWidth(label.text);
        return {
          left: label.anchor === "start" ? label.x : label.x - wide,
          right: label.anchor === "start" ? label.x + wide : label.x,
          y: label.y,
        };
      });
      for (const span of spans) {
        expect(span.left).toBeGreaterThanOrEqual(0);
        expect(span.right).toBeLessThanOrEqual(plateWidth);
        expect(span.y).toBeLessThan(plateHeight);
      }
      for (const [index, one] of spans.entries()) {
        for (const other of spans.slice(index + 1)) {
          const sameLine = Math.abs(one.y - other.y) < 10;
          expect(sameLine && one.left < other.right && other.left < one.right).toBe(false);
        }
      }
    }
  });

  it("leaves names and shading out of a small picture", () => {
    const drawing = setOnPlate(sketch(40, 30, ["cor"]), true, true);
    expect(drawing.labels).toEqual([]);
    expect(drawing.shapes.map((shape) => shape.stroke)).toEqual(["outline"]);
    expect(drawing.shapes[0]?.d).not.toContain(".");
  });

  it("fits without distortion, into the middle", () => {
    expect(boundsOf(fitSketch(sketch(100, 50), { x: 0, y: 0, width: 200, height: 200 }).shapes)).toEqual({
      x: 0,
      y: 50,
      width: 200,
      height: 100,
    });
    expect(boundsOf([])).toEqual({ x: 0, y: 0, width: 0, height: 0 });
  });

  it("mirrors, turns, merges and thins a sketch", () => {
    expect(boundsOf(mirrorSketch(sketch(10, 5)).shapes).x).toBe(-10);
    const turned = boundsOf(turnSketch(sketch(10, 4), Math.PI / 2).shapes);
    expect(turned.width).toBeCloseTo(4, 9);
    expect(turned.height).toBeCloseTo(10, 9);
    expect(mergeSketches(sketch(1, 1, ["a"]), sketch(2, 2, ["b"])).callouts.map((each) => each.text)).toEqual(
      ["a", "b"],
    );
    expect(finer(sketch(1, 1)).shapes[0]?.stroke).toBe("line");
  });
});
