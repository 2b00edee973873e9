/**
 * The human skeleton standing, from the front, on its stand; the arms hang with
 * the palms forward, as in the position of reference.
 */

import { drawPelvis, ribCage } from "#lib/specimens/drawing/bones.ts";
import { longBone } from "#lib/specimens/drawing/forms.ts";
import { drawSkullFront } from "#lib/specimens/drawing/head.ts";
import { at, band, ellipse, mirrored, type Point, ring, straight } from "#lib/specimens/drawing/pen.ts";
import {
  bothSides,
  filled,
  finer,
  fitSketch,
  type Shape,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

function handBones(): Shape[] {
  const rays: readonly (readonly [number, number])[] = at("-4.5,20 -1.5,23 1.5,24 4.2,20");
  return [
    filled("bone", ring(at("58,178 66,178 68,186 60,187")), "fine"),
    ...rays.flatMap(([lean, length], index): Shape[] => {
      const x = 61 + index * 2.4;
      const end: Point = [x + lean + 1.5, 188 + length];
      const knuckle: Point = [x + lean * 0.4 + 0.5, 188 + length * 0.45];
      return [
        filled("bone", band([[x, 187], knuckle], 1), "fine"),
        filled("bone", band([[knuckle[0], knuckle[1] + 0.8], end], 0.9), "fine"),
      ];
    }),
    filled("bone", band(at("60,184 54,196"), 1), "fine"),
  ];
}

function footBones(): Shape[] {
  return [
    filled("bone", ring(at("12,370 22,369 25,378 20,383 12,381")), "line"),
    ...[0, 1, 2, 3, 4].map(
      (index): Shape =>
        filled(
          "bone",
          band(
            [
              [13 + index * 2.4, 381],
              [11 + index * 4.3, 395 - index * 1.2],
            ],
            1.2,
          ),
          "fine",
        ),
    ),
  ];
}

export function drawSkeleton(vary: Variation): Sketch {
  const skull = fitSketch(finer(drawSkullFront(vary)), { x: -17, y: 0, width: 34, height: 48 });
  const ribs = fitSketch(finer({ shapes: ribCage(vary), callouts: [] }), {
    x: -36,
    y: 62,
    width: 72,
    height: 88,
  });
  const pelvis = fitSketch(finer(drawPelvis(vary)), { x: -34, y: 164, width: 68, height: 48 });
  const neck = Array.from(
    { length: 6 },
    (_, index): Shape =>
      filled(
        "bone",
        ring(
          [
            [-4, 45 + index * 4],
            [4, 45 + index * 4],
            [4, 48.4 + index * 4],
            [-4, 48.4 + index * 4],
          ],
          0.5,
        ),
        "fine",
      ),
  );
  const loins = Array.from(
    { length: 5 },
    (_, index): Shape =>
      filled(
        "bone",
        ring(
          [
            [-5.6, 138 + index * 7.4],
            [5.6, 138 + index * 7.4],
            [5.4, 144 + index * 7.4],
            [-5.4, 144 + index * 7.4],
          ],
          0.5,
        ),
        "line",
      ),
  );
  const limbs = bothSides(
    finer({
      callouts: [],
      shapes: [
        filled("bone", ring(at("40,70 44,74 38,96 28,84 33,72")), "fine"),
        ...longBone([44, 73], [52, 125], 2.3, 1.9),
        ...longBone([54, 128], [66, 177], 1.5, 1.7),
        ...longBone([50, 128], [60, 177], 1.7, 1.8),
        ...handBones(),
        ...longBone([30, 196], [19, 282], 3.2, 1.9),
        ...longBone([24, 293], [22, 368], 1.4, 1.8),
        ...longBone([17, 292], [16, 369], 2.9, 1.9),
        filled("bone", ellipse(19, 286, 4.6, 5), "line"),
        filled("bone", ellipse(29, 193, 5, 5), "line"),
        ...footBones(),
      ],
    }).shapes,
  );
  const collar: Point[] = at("6,66 18,64 30,66 43,69");
  const stand: Shape[] = [
    stroked("fine", straight(at("0,212 0,398"))),
    filled("glass", ring(at("-40,400 40,400 44,406 -44,406"), 0.4), "fine"),
  ];
  return {
    shapes: [
      ...stand,
      ...neck,
      ...loins,
      ...ribs.shapes,
      filled("bone", band(collar, 1.8), "line"),
      filled("bone", band(mirrored(collar), 1.8), "line"),
      ...pelvis.shapes,
      ...skull.shapes,
      ...limbs,
    ],
    callouts: [
      { structure: "clavicle", at: [-26, 65] },
      { structure: "humerus", at: [48, 100] },
      { structure: "vertebral-column", at: [-2, 152] },
      { structure: "radius", at: [-60, 150] },
      { structure: "femur", at: [25, 240] },
      { structure: "tibia", at: [-17, 330] },
      { structure: "skull", at: [8, 12] },
      { structure: "sternum", at: [-1, 96] },
    ],
  };
}
