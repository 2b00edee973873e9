/**
 * The wall of a trunk sheet: how broad and deep the body is at a level, and the bones
 * and muscles that lie round its cavities. All of it follows from the level and the
 * body's own variation.
 */
import { spongyBone } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  bothHalves,
  ellipse,
  ellipsePoints,
  mirrored,
  type Point,
  ring,
  roundBand,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, stroked, type Wash } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export const girths: readonly (readonly [level: number, halfWidth: number, halfDepth: number])[] = [
  [0, 120, 50],
  [0.06, 134, 56],
  [0.12, 122, 62],
  [0.2, 106, 67],
  [0.3, 101, 70],
  [0.42, 99, 71],
  [0.52, 95, 69],
  [0.62, 91, 66],
  [0.72, 99, 66],
  [0.82, 109, 69],
  [0.9, 113, 70],
  [1, 112, 64],
];

export function girthAt(level: number): { halfWidth: number; halfDepth: number } {
  for (let index = 1; index < girths.length; index += 1) {
    const low = girths[index - 1];
    const high = girths[index];
    if (low !== undefined && high !== undefined && level <= high[0]) {
      const share = (level - low[0]) / (high[0] - low[0]);
      return {
        halfWidth: low[1] + (high[1] - low[1]) * share,
        halfDepth: low[2] + (high[2] - low[2]) * share,
      };
    }
  }
  return { halfWidth: 112, halfDepth: 64 };
}

/** How far an organ is there at a level: 0 outside its span, full in the middle, with quick ends. */
export function presence(level: number, from: number, to: number): number {
  if (!(level > from && level < to)) return 0;
  return Math.sin((Math.PI * (level - from)) / (to - from)) ** 0.45;
}

export function wallOutline(halfWidth: number, halfDepth: number, groove: number, front: number): Point[] {
  return Array.from({ length: 28 }, (_, index): Point => {
    const turn = (2 * Math.PI * index) / 28;
    const cosine = Math.cos(turn);
    const sine = Math.sin(turn);
    const x = halfWidth * Math.sign(cosine) * Math.abs(cosine) ** 0.82;
    const y = halfDepth * Math.sign(sine) * Math.abs(sine) ** 0.86;
    const near = Math.exp(-((x / 11) ** 2));
    return [x, sine > 0 ? y - groove * near : y + front * near];
  });
}

export type Ground = { level: number; halfWidth: number; halfDepth: number; vary: Variation };

export function vertebra({ level, halfDepth, vary }: Ground): Shape[] {
  const y = halfDepth * 0.34;
  const size = 11 + level * 8;
  if (level > 0.8 && level < 0.93) {
    const sacrum = bothHalves([
      [0, y - 4],
      [22, y - 2],
      [40 - (level - 0.8) * 150, y + 8],
      [20, y + 22],
      [0, y + 26],
    ]);
    return [...spongyBone(sacrum, vary, 34), filled("hollow", ellipse(0, y + 13, 6, 3), "fine")];
  }
  if (level >= 0.93) return [];
  const body = bothHalves([
    [0, y - size * 0.85],
    [size * 0.8, y - size * 0.66],
    [size, y],
    [size * 0.7, y + size * 0.55],
    [0, y + size * 0.42],
  ]);
  const arch = bothHalves([
    [0, y + size * 1.12],
    [size * 0.62, y + size * 0.9],
    [size * 1.5, y + size * 0.7],
    [size * 1.72, y + size * 0.95],
    [size * 0.9, y + size * 1.4],
    [size * 0.3, y + size * 1.7],
    [size * 0.22, y + size * 2.3],
    [0, y + size * 2.45],
  ]);
  return [
    filled("bone", ring(arch), "line"),
    filled("paper", ellipse(0, y + size * 0.78, size * 0.62, size * 0.5), "line"),
    ...(level < 0.58
      ? [filled("nerve", ellipse(0, y + size * 0.78, size * 0.34, size * 0.28), "fine")]
      : [stroked("stipple", ...[-3, 0, 3].map((x) => arc(x, y + size * 0.78, 0.8, 0.8, 0, 6)))]),
    ...spongyBone(body, vary, 22),
  ];
}

export function backMuscles({ level, halfDepth }: Ground): Shape[] {
  const y = halfDepth * 0.34;
  const size = 11 + level * 8;
  if (level > 0.84) return [];
  const one: Point[] = [
    [size * 0.5, y + size * 1.75],
    [size * 1.9, y + size * 1.15],
    [size * 2.9, y + size * 1.3],
    [size * 2.7, halfDepth * 0.84],
    [size * 0.5, halfDepth * 0.88],
  ];
  const sides = [one, mirrored(one)];
  return sides.flatMap((points) => [filled("deep", ring(points, 0.8), "fine")]);
}

export function ribs({ level, halfWidth, halfDepth }: Ground): Shape[] {
  if (!(level > 0.03 && level < 0.56)) return [];
  const count = level < 0.1 ? 3 : level < 0.44 ? 5 : 3;
  const phase = (level * 43) % 1;
  const low = 0.95 - level * 0.2;
  const shapes: Shape[] = [];
  for (let index = 0; index < count; index += 1) {
    const turn = low - ((index + phase) * (low + (level < 0.44 ? 0.95 : 0.2))) / count;
    const at = (angle: number, factor: number): Point => [
      Math.cos(angle) * halfWidth * factor,
      Math.sin(angle) * halfDepth * factor,
    ];
    const line = [at(turn + 0.13, 0.86), at(turn, 0.855), at(turn - 0.13, 0.83)];
    const wash: Wash = turn < -0.62 ? "glass" : "bone";
    shapes.push(
      filled(wash, roundBand(line, [1.6, 3.4, 1.6]), "line"),
      filled(wash, roundBand(mirrored(line), [1.6, 3.4, 1.6]), "line"),
    );
  }
  return shapes;
}

export function loins({ level, halfDepth }: Ground): Shape[] {
  const psoas = presence(level, 0.56, 0.93);
  if (psoas === 0) return [];
  const drift = Math.max(0, level - 0.72) * 160;
  const y = halfDepth * 0.26 - drift * 1.3;
  return [1, -1].flatMap((side): Shape[] => [
    filled(
      "deep",
      ellipse((26 + level * 8 + drift) * side, y, 9 + psoas * 5, 8 + psoas * 5, 0.3 * side),
      "line",
    ),
  ]);
}

export function shoulders({ level, halfWidth, halfDepth, vary }: Ground): Shape[] {
  const blade = presence(level, 0.01, 0.21);
  const head = presence(level, -0.02, 0.085);
  return [1, -1].flatMap((side): Shape[] => {
    const put = (points: readonly Point[]): Point[] => (side > 0 ? [...points] : mirrored(points));
    const shapes: Shape[] = [];
    if (head > 0)
      shapes.push(
        filled("muscle", ellipse(halfWidth * 0.8 * side, 0, 19, 24), "line"),
        ...spongyBone(ellipsePoints(halfWidth * 0.78 * side, 0, 13 * head, 14 * head), vary, 14),
      );
    if (blade > 0)
      shapes.push(
        filled(
          "bone",
          roundBand(
            put([
              [halfWidth * 0.4, halfDepth * 0.68],
              [halfWidth * 0.58, halfDepth * 0.52],
              [halfWidth * (0.62 + 0.06 * head), halfDepth * 0.2],
            ]),
            [1.6, 2.6, 4],
          ),
          "line",
        ),
      );
    if (level < 0.2)
      shapes.push(
        filled(
          "muscle",
          ring(
            put([
              [16, -halfDepth * 0.8],
              [halfWidth * 0.45, -halfDepth * 0.78],
              [halfWidth * 0.72, -halfDepth * 0.46],
              [halfWidth * 0.58, -halfDepth * 0.46],
              [halfWidth * 0.34, -halfDepth * 0.64],
            ]),
          ),
          "line",
        ),
      );
    return shapes;
  });
}
