/**
 * A transverse sheet of the trunk at a level, 0 at the root of the neck and 1 at
 * the top of the thighs, seen from below: the front is at the top of the plate and
 * the body's right at its left. Organs come, grow and go with the level, so that a
 * series turns like the pages of an atlas; the seed is the series', so all its sheets
 * are of one body.
 */
import { spongyBone } from "#lib/specimens/drawing/forms.ts";
import { drawThighSection } from "#lib/specimens/drawing/limb-section.ts";
import {
  at,
  beside,
  bothHalves,
  ellipse,
  ellipsePoints,
  mirrored,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import {
  type Callout,
  filled,
  mergeSketches,
  moveSketch,
  type Shape,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import { belly, chest, type TrunkPart } from "#lib/specimens/drawing/trunk-organs.ts";
import {
  backMuscles,
  type Ground,
  girthAt,
  loins,
  presence,
  ribs,
  shoulders,
  vertebra,
  wallOutline,
} from "#lib/specimens/drawing/trunk-wall.ts";
import { type Variation, variation } from "#lib/specimens/drawing/variation.ts";

function pelvis(ground: Ground): TrunkPart {
  const { level, halfWidth, halfDepth, vary } = ground;
  const shapes: Shape[] = [];
  const callouts: Callout[] = [];
  const gluteal = presence(level, 0.77, 1.12);
  const ilium = presence(level, 0.72, 0.91);
  for (const side of [1, -1]) {
    const put = (points: readonly Point[]): Point[] => (side > 0 ? [...points] : mirrored(points));
    if (gluteal > 0) {
      const muscle = put([
        [halfWidth * 0.1, halfDepth * 0.62],
        [halfWidth * 0.4, halfDepth * 0.3],
        [halfWidth * 0.78, halfDepth * 0.1],
        [halfWidth * 0.8, halfDepth * 0.4],
        [halfWidth * 0.5, halfDepth * (0.6 + gluteal * 0.2)],
        [halfWidth * 0.16, halfDepth * 0.82],
      ]);
      shapes.push(
        filled("muscle", ring(muscle), "line"),
        stroked(
          "hatch",
          ...[0.3, 0.5, 0.7].map((share) =>
            smooth([
              [halfWidth * 0.2 * side, halfDepth * (0.58 + share * 0.3)],
              [halfWidth * 0.5 * side, halfDepth * (0.3 + share * 0.42)],
              [halfWidth * 0.74 * side, halfDepth * (0.1 + share * 0.4)],
            ]),
          ),
        ),
      );
    }
    if (ilium > 0) {
      const open = Math.min(1, (level - 0.72) / 0.08);
      const bar = put([
        [halfWidth * 0.3, halfDepth * 0.46],
        [halfWidth * 0.5, halfDepth * 0.2],
        [halfWidth * 0.68, -halfDepth * 0.16 * open],
        [halfWidth * 0.74, -halfDepth * 0.42 * open],
      ]);
      shapes.push(
        filled("bone", roundBand(bar, [3.4, 4.6, 4, 5.4]), "line"),
        stroked("stipple", smooth(beside(bar, 1))),
      );
    }
  }
  const heads = presence(level, 0.87, 0.965);
  if (heads > 0) {
    for (const side of [1, -1]) {
      const cx = halfWidth * 0.56 * side;
      shapes.push(
        ...spongyBone(ellipsePoints(cx + 22 * side, 8, 9, 12), vary, 8),
        filled(
          "bone",
          roundBand(
            [
              [cx - 14 * side, -12],
              [cx - 18 * side, 2],
              [cx - 12 * side, 16],
            ],
            [4, 5, 4],
          ),
          "line",
        ),
        ...spongyBone(ellipsePoints(cx, 1, 13 * heads, 13 * heads), vary, 12),
      );
    }
    callouts.push({ structure: "head-of-femur", at: [halfWidth * 0.56, 1] });
  }
  const bladder = presence(level, 0.853, 0.945);
  if (bladder > 0) {
    shapes.push(
      filled(
        "muscle",
        ring(
          bothHalves([
            [0, -halfDepth * 0.5],
            [20 * bladder, -halfDepth * 0.42],
            [24 * bladder, -halfDepth * 0.14],
            [12 * bladder, halfDepth * 0.04],
            [0, halfDepth * 0.04],
          ]),
        ),
        "outline",
      ),
      filled(
        "fluid",
        ring(
          bothHalves([
            [0, -halfDepth * 0.44],
            [15 * bladder, -halfDepth * 0.37],
            [18 * bladder, -halfDepth * 0.16],
            [9 * bladder, -halfDepth * 0.04],
            [0, -halfDepth * 0.04],
          ]),
        ),
        "fine",
      ),
    );
    callouts.push({ structure: "urinary-bladder", at: [-10, -halfDepth * 0.24] });
  }
  if (level > 0.84 && level < 0.985) {
    shapes.push(
      filled("muscle", ellipse(0, halfDepth * 0.36, 12, 9), "line"),
      filled("hollow", ellipse(0, halfDepth * 0.36, 6.6, 4), "fine"),
    );
    callouts.push({ structure: "rectum", at: [4, halfDepth * 0.36] });
  }
  const pubis = presence(level, 0.915, 0.975);
  if (pubis > 0)
    for (const side of [1, -1])
      shapes.push(
        filled(
          "bone",
          roundBand(
            [
              [3 * side, -halfDepth * 0.6],
              [18 * side, -halfDepth * 0.52],
              [34 * side, -halfDepth * 0.26],
            ],
            [4, 5, 3.6],
          ),
          "line",
        ),
      );
  return { shapes, callouts };
}

function greatVessels({ level, halfDepth }: Ground): TrunkPart {
  const shapes: Shape[] = [];
  const callouts: Callout[] = [];
  const vessel = (x: number, y: number, size: number, tone: "artery" | "vein"): void => {
    shapes.push(filled(tone, ellipse(x, y, size, size * 0.94), "line"));
  };
  if (level < 0.185) {
    for (const [x, y] of at("-16,-12 10,-12 19,-6")) vessel(x, y + level * 10, 3.4, "artery");
    for (const [x, y] of at("-24,-16 22,-18")) vessel(x, y, 4.4, "vein");
  } else if (level < 0.22) {
    shapes.push(filled("artery", roundBand(at("-10,-20 2,-18 12,-8 15,6"), [8, 8, 8, 8]), "line"));
    vessel(-22, -14, 6, "vein");
    callouts.push(
      { structure: "arch-of-aorta", at: [6, -14] },
      { structure: "superior-vena-cava", at: [-22, -14] },
    );
  } else if (level < 0.27) {
    vessel(-8, -20, 9, "artery");
    vessel(-23, -14, 6, "vein");
    shapes.push(filled("vein", roundBand(at("4,-24 10,-14 0,-6 -14,-4"), [7, 7, 6, 4]), "line"));
    callouts.push(
      { structure: "ascending-aorta", at: [-9, -22] },
      { structure: "superior-vena-cava", at: [-24, -15] },
      { structure: "pulmonary-trunk", at: [7, -18] },
    );
  }
  if (level >= 0.22 && level < 0.735) {
    const shift = Math.max(0, 1 - Math.max(0, level - 0.3) / 0.25);
    const y = halfDepth * 0.34 - (13 + level * 8);
    const x = 4 + shift * 12;
    vessel(x, y + shift * 8, 7.6 - level * 2, "artery");
    callouts.push({
      structure: level < 0.53 ? "thoracic-aorta" : "abdominal-aorta",
      at: [x, y + shift * 8],
    });
    if (level > 0.43) {
      vessel(-12, y + 1, 7, "vein");
      callouts.push({ structure: "inferior-vena-cava", at: [-12, y + 1] });
    }
  }
  if (level >= 0.735) {
    const part = (level - 0.735) / 0.265;
    for (const side of [1, -1]) {
      const x = (8 + part * 46) * side;
      const y = halfDepth * 0.1 - part * halfDepth * 0.62;
      vessel(x, y, 4.4, "artery");
      vessel(x - 8 * side, y + 4, 5, "vein");
    }
    const place = { at: [8 + part * 46, halfDepth * 0.1 - part * halfDepth * 0.62] } as const;
    const structure =
      level < 0.79 ? "common-iliac-artery" : level < 0.88 ? "external-iliac-artery" : "femoral-artery";
    callouts.push({ structure, ...place });
  }
  return { shapes, callouts };
}

/** What lies in the wall at a level. */
function namesOfWall({ level, halfWidth, halfDepth }: Ground): Callout[] {
  const size = 11 + level * 8;
  const y = halfDepth * 0.34;
  const spine =
    level < 0.02
      ? "cervical-vertebrae"
      : level < 0.555
        ? "thoracic-vertebrae"
        : level < 0.8
          ? "lumbar-vertebrae"
          : "sacrum";
  const rows: readonly (readonly [structure: string, from: number, to: number, at: Point])[] = [
    [spine, -1, 0.92, [0, level > 0.8 ? y + 4 : y - 2]],
    ["head-of-humerus", -1, 0.08, [-halfWidth * 0.78, 0]],
    ["pectoralis-major", 0.02, 0.19, [halfWidth * 0.45, -halfDepth * 0.72]],
    ["erector-spinae", 0.02, 0.83, [-size * 1.9, halfDepth * 0.7]],
    ["psoas-major", 0.58, 0.7, [26 + level * 8, halfDepth * 0.26]],
    ["ilium", 0.79, 0.9, [-halfWidth * 0.5, halfDepth * 0.2]],
    ["gluteus-maximus", 0.8, 1, [halfWidth * 0.5, halfDepth * 0.42]],
  ];
  return rows.flatMap(([structure, from, to, at]) =>
    level >= from && level <= to ? [{ structure, at }] : [],
  );
}

/** Below this level the sheet is of two thighs, no longer of one trunk. */
const thighsFrom = 0.965;

function drawThighPair(vary: Variation, share: number): Sketch {
  const seed = vary.whole(0, 1_000_000);
  const one = drawThighSection(variation(`thigh ${seed}`), share * 0.1);
  const apart = 62;
  return mergeSketches(
    moveSketch(one, ([x, y]) => [x - apart, y]),
    moveSketch({ shapes: one.shapes, callouts: [] }, ([x, y]) => [apart - x, y]),
  );
}

/** @param level 0 at the root of the neck, 1 at the top of the thighs; held inside that span */
export function drawTrunkSection(vary: Variation, level: number): Sketch {
  const held = Math.min(Math.max(level, 0), 1);
  if (held > thighsFrom) return drawThighPair(vary, (held - thighsFrom) / (1 - thighsFrom));
  const build = vary.within(0.94, 1.06);
  const fat = vary.within(0.055, 0.1);
  const girth = girthAt(held);
  const ground: Ground = {
    level: held,
    halfWidth: girth.halfWidth * build,
    halfDepth: girth.halfDepth,
    vary,
  };
  const { halfWidth, halfDepth } = ground;
  const cleft = held > 0.84 ? 4 + (held - 0.84) * 90 : 4;
  const front = held > 0.55 ? 2 : 0;
  const skin = wallOutline(halfWidth, halfDepth, cleft, front);
  const wall = wallOutline(
    halfWidth * (1 - fat),
    halfDepth * (1 - fat * 1.3),
    Math.max(0, cleft - 2),
    Math.max(0, front - 2),
  );
  const inner = wallOutline(halfWidth * 0.79, halfDepth * 0.77, halfDepth * 0.5, 0);
  const parts = [chest(ground), belly(ground), pelvis(ground), greatVessels(ground)];
  const [chestPart, bellyPart, pelvisPart, vesselPart] = parts;
  const thorax = held < 0.5;
  const cavity: Shape[] =
    held > 0.12 && held < 0.93 ? [filled(thorax ? "hollow" : "fat", ring(inner), "line")] : [];
  return {
    shapes: [
      filled("fat", ring(skin), "outline"),
      filled("muscle", ring(wall), "line"),
      ...shoulders(ground),
      ...cavity,
      ...backMuscles(ground),
      ...ribs(ground),
      ...(held < 0.53 ? (chestPart?.shapes ?? []) : []),
      ...loins(ground),
      ...(bellyPart?.shapes ?? []),
      ...vertebra(ground),
      ...(pelvisPart?.shapes ?? []),
      ...(vesselPart?.shapes ?? []),
    ],
    callouts: [
      ...(held < 0.5 ? (chestPart?.callouts ?? []) : []),
      ...(bellyPart?.callouts ?? []),
      ...(pelvisPart?.callouts ?? []),
      ...(vesselPart?.callouts ?? []),
      ...namesOfWall(ground),
    ],
  };
}
