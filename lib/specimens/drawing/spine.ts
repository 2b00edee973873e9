/** The vertebral column on its stand with the pelvis and the thigh bones, from the front. */
import { drawFemur, drawPelvis } from "#lib/specimens/drawing/bones.ts";
import { band, box, mirrored, type Point, ring } from "#lib/specimens/drawing/pen.ts";
import {
  bothSides,
  type Callout,
  filled,
  finer,
  fitSketch,
  type Shape,
  type Sketch,
  turnSketch,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** Vertebrae from the first cervical to the last lumbar: middle, half width, half height, reach of the processes. */
function vertebrae(): { y: number; half: number; high: number; reach: number }[] {
  let y = 6;
  return Array.from({ length: 24 }, (_, index) => {
    const high = index < 7 ? 2.6 : index < 19 ? 3.3 + (index - 7) * 0.09 : 4.9;
    const half = index < 7 ? 7.4 + index * 0.3 : 8 + (index - 7) * 0.36;
    const reach = index === 0 ? 17 : index < 7 ? 13 + index * 0.5 : index < 19 ? 21 - (index - 7) * 0.3 : 24;
    const middle = y + high;
    y += high * 2 + (index < 7 ? 1.1 : index < 19 ? 1.3 : 2.2);
    return { y: middle, half, high, reach };
  });
}

export function drawSpineWithPelvis(vary: Variation): Sketch {
  const column = vertebrae();
  const bones = column.flatMap(({ y, half, high, reach }, index): Shape[] => {
    const lift = index < 7 ? 0 : index < 19 ? -2 : -0.6;
    const process: Point[] = [
      [half * 0.6, y],
      [reach * 0.8, y + lift],
      [reach, y + lift],
    ];
    const body: Point[] = [
      [-half, y - high],
      [half, y - high],
      [half * 0.9, y],
      [half, y + high],
      [-half, y + high],
      [-half * 0.9, y],
    ];
    return [
      filled("bone", band(process, [2, 1.5, 2.1]), "fine"),
      filled("bone", band(mirrored(process), [2, 1.5, 2.1]), "fine"),
      filled("bone", ring(body, 0.7), "line"),
    ];
  });
  const last = column[23]?.y ?? 200;
  const pelvis = fitSketch(finer(drawPelvis(vary)), { x: -70, y: last - 4, width: 140, height: 100 });
  const thigh = fitSketch(finer(turnSketch(drawFemur(vary), Math.PI / 2)), {
    x: -82,
    y: last + 52,
    width: 42,
    height: 170,
  });
  const callouts: Callout[] = [
    { structure: "atlas", at: [10, 8] },
    { structure: "cervical-vertebrae", at: [-4, 26] },
    { structure: "thoracic-vertebrae", at: [4, 90] },
    { structure: "lumbar-vertebrae", at: [-6, 170] },
  ];
  return {
    shapes: [
      filled("glass", box(-0.8, 0, 1.6, last + 226), "fine"),
      filled("glass", box(-34, last + 226, 68, 6), "line"),
      ...bothSides(thigh.shapes),
      ...bones,
      ...pelvis.shapes,
    ],
    callouts: [...callouts, ...pelvis.callouts, { structure: "femur", at: [62, last + 140] }],
  };
}
