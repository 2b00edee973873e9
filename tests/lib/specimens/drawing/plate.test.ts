import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { box, ellipse } from "#lib/specimens/drawing/pen.ts";
import {
  bothSides,
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
  shortName,
  stroked,
  turnSketch,
} from "#lib/specimens/drawing/plate.ts";
import { strayPoints } from "./looking.ts";

const sketch = (width: number, height: number, structures: readonly string[] = []): Sketch => ({
  shapes: [
    filled("organ", box(0, 0, width, height), "outline"),
    stroked("hatch", ellipse(width / 2, height / 2, width / 3, height / 3)),
  ],
  callouts: structures.map((structure, index) => ({
    structure,
    at: [(width * (index + 1)) / (structures.length + 1), height / 2],
  })),
});
const named = (...latin: string[]) => new Map(latin.map((name) => [name, name] as const));

describe("setting a sketch on its plate", () => {
  it("brings any sketch inside the view box, whatever its size and its names", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 1, max: 3000 }),
        fc.array(fc.string({ minLength: 1, maxLength: 40 }), { maxLength: 12 }),
        (width, height, names) => {
          const drawing = setOnPlate(sketch(width, height, names), named(...names));
          expect(strayPoints(drawing)).toEqual([]);
          expect(drawing.labels.length).toBeLessThanOrEqual(7);
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
      const { labels } = setOnPlate(sketch(width, height, names), named(...names));
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

  it("names what is recorded, once, and nothing else", () => {
    const heart = sketch(100, 100, ["heart", "aorta", "aorta"]);
    const texts = (names: ReadonlyMap<string, string> | null) =>
      setOnPlate(heart, names).labels.map(({ text }) => text);
    expect(texts(new Map([["aorta", "aorta"]]))).toEqual(["aorta"]);
    expect(texts(new Map([["lung", "pulmo"]]))).toEqual([]);
    expect(texts(new Map([["heart", ""]]))).toEqual([]);
    expect(texts(null)).toEqual([]);
  });

  it("leaves out a name that would press the drawing together", () => {
    const long = "ligamentum sacrospinale dorsale longissimum";
    expect(
      setOnPlate(
        sketch(100, 100, ["a", "b"]),
        new Map([
          ["a", long],
          ["b", "cor"],
        ]),
      ).labels,
    ).toHaveLength(1);
  });

  it.each([
    ["arteria radialis", "a. radialis"],
    ["nervi cervicales", "nn. cervicales"],
    ["ligamentum", "ligamentum"],
    ["os scaphoideum", "os scaphoideum"],
  ])("shortens %s to %s", (latin, short) => expect(shortName(latin)).toBe(short));

  it("fits without distortion, into the middle", () => {
    expect(boundsOf(fitSketch(sketch(100, 50), { x: 0, y: 0, width: 200, height: 200 }).shapes)).toEqual({
      x: 0,
      y: 50,
      width: 200,
      height: 100,
    });
    expect(boundsOf([])).toEqual({ x: 0, y: 0, width: 0, height: 0 });
  });

  it("has both sides alike", () => {
    const { x, width } = boundsOf(bothSides([filled("bone", box(3, 0, 7, 4))]));
    expect([x, width]).toEqual([-10, 20]);
  });

  it("mirrors, turns, merges and thins a sketch", () => {
    expect(boundsOf(mirrorSketch(sketch(10, 5)).shapes).x).toBe(-10);
    const turned = boundsOf(turnSketch(sketch(10, 4), Math.PI / 2).shapes);
    expect(turned.width).toBeCloseTo(4, 9);
    expect(turned.height).toBeCloseTo(10, 9);
    expect(
      mergeSketches(sketch(1, 1, ["a"]), sketch(2, 2, ["b"])).callouts.map((each) => each.structure),
    ).toEqual(["a", "b"]);
    expect(finer(sketch(1, 1)).shapes[0]?.stroke).toBe("line");
  });
});
