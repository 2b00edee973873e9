/**
 * The upper limb from the front, laid with the shoulder to the left, and the hand
 * alone. Drawn as a right limb; the plate mirrors it for a left one. Vessels and
 * nerves run where they run: the median nerve crosses the brachial artery, the
 * ulnar nerve goes behind the medial epicondyle.
 */
import { across, belly, digit } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  at,
  beside,
  between,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import {
  type Callout,
  filled,
  type Shape,
  type Sketch,
  stroked,
  turnSketch,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** Fingers as place of the base, direction, length and half width, from the little finger to the index. */
function fingers(
  vary: Variation,
  spread: number,
): { base: Point; angle: number; length: number; half: number }[] {
  const rows: readonly (readonly [number, number, number, number, number])[] = [
    [550, -28, -0.14, 58, 7.2],
    [557, -10, -0.07, 74, 7.8],
    [559, 7, 0.02, 82, 8],
    [555, 24, 0.11, 73, 8],
  ];
  return rows.map(([x, y, angle, length, half]) => ({
    base: [x, y] as const,
    angle: angle * spread + vary.within(-0.03, 0.03),
    length: length * vary.within(0.97, 1.03),
    half,
  }));
}

export function handOutline(
  vary: Variation,
  spread: number,
): { outline: Point[]; digits: ReturnType<typeof fingers> } {
  const digits = fingers(vary, spread);
  const thumb = digit([512, 34], 0.72, 66, 9.5);
  return {
    digits,
    outline: [
      [470, -22],
      [488, -30],
      [516, -36],
      [538, -36],
      ...digits.flatMap((finger, index) => {
        const points = digit(finger.base, finger.angle, finger.length, finger.half);
        const web: Point = [finger.base[0] + 3, finger.base[1] + 8.5];
        return index === digits.length - 1 ? points : [...points, web];
      }),
      [546, 33],
      [536, 36],
      ...thumb.slice(1, -2),
      [500, 41],
      [482, 31],
      [470, 24],
    ],
  };
}

function creases(digits: ReturnType<typeof fingers>): Shape {
  return stroked(
    "fine",
    ...digits.flatMap((finger) =>
      [0.08, 0.42, 0.72].map((share) =>
        across(
          [
            finger.base[0] + Math.cos(finger.angle) * finger.length * share,
            finger.base[1] + Math.sin(finger.angle) * finger.length * share,
          ],
          finger.angle,
          finger.half * 0.7,
        ),
      ),
    ),
  );
}

/** Vessels and nerves of the palm, shared by the limb and the hand. */
function palm(digits: ReturnType<typeof fingers>): Shape[] {
  const arch: Point[] = at("470,-10 498,-16 524,-14 536,0 532,16 514,24 490,22 470,15");
  const tip = (index: number, share: number): Point => {
    const finger = digits[index];
    if (finger === undefined) return [560, 0];
    return [
      finger.base[0] + Math.cos(finger.angle) * finger.length * share,
      finger.base[1] + Math.sin(finger.angle) * finger.length * share,
    ];
  };
  return [
    stroked(
      "artery",
      smooth(arch),
      ...[0, 1, 2, 3].map((index) =>
        smooth([
          [526, -12 + index * 7],
          between([530, -10 + index * 8], tip(index, 0.1), 0.6),
          tip(index, 0.78),
        ]),
      ),
    ),
    stroked(
      "nerve",
      smooth([[470, 2], [496, 4], [514, 10], tip(2, 0.05), tip(2, 0.66)]),
      smooth([[496, 4], [520, 20], tip(3, 0.05), tip(3, 0.66)]),
      smooth(at("496,6 508,30 536,58 552,72")),
      smooth([[470, -17], [496, -24], [524, -26], tip(0, 0.06), tip(0, 0.66)]),
      smooth([[500, -24], [530, -20], tip(1, 0.05), tip(1, 0.6)]),
    ),
  ];
}

/** The palm of a right hand, fingers upwards. */
export function drawPalm(vary: Variation): Sketch {
  const { outline, digits } = handOutline(vary, vary.within(1, 1.5));
  const wrist: Point[] = at("446,26 443,2 446,-22");
  const shapes: Shape[] = [
    filled("tissue", ring([...outline, ...wrist], 0.9), "outline"),
    ...belly(at("478,22 498,24 520,30 538,44 548,58"), [6, 12, 13, 9, 3]),
    ...belly(along(at("476,-22 500,-27 528,-27 545,-26"), 5), [4, 7, 8, 6, 3]),
    creases(digits),
    stroked(
      "line",
      ...[1, 2, 3].map((index) => {
        const finger = digits[index];
        const end: Point = finger === undefined ? [560, 0] : finger.base;
        return smooth([[450, -8 + index * 5], [490, -6 + index * 4], end]);
      }),
    ),
    stroked("hidden", straight(at("474,-20 474,24")), straight(at("486,-24 486,28"))),
    ...palm(digits),
    stroked("artery", smooth(at("446,17 470,15")), smooth(at("446,-14 470,-10"))),
    stroked("nerve", smooth(at("446,4 470,2")), smooth(at("446,-19 470,-17"))),
  ];
  const callouts: Callout[] = [
    { structure: "superficial-palmar-arch", at: [534, -4] },
    { structure: "median-nerve", at: [466, 2] },
    { structure: "ulnar-nerve", at: [470, -17] },
    { structure: "abductor-pollicis-brevis", at: [520, 30] },
    { structure: "flexor-retinaculum-of-hand", at: [480, 0] },
    { structure: "abductor-digiti-minimi-of-hand", at: [520, -28] },
    { structure: "lumbricals-of-hand", at: [540, 10] },
    { structure: "superficial-branch-of-ulnar-nerve", at: [500, -24] },
    { structure: "recurrent-branch-of-median-nerve", at: [508, 28] },
  ];
  return turnSketch({ shapes, callouts }, -Math.PI / 2 + vary.within(-0.06, 0.06));
}

export function drawUpperLimb(vary: Variation): Sketch {
  return turnSketch(limb(vary), vary.within(0.3, 0.5));
}

/** The limb with the shoulder blade, the collar bone and the plexus above them. */
export function drawUpperLimbWithGirdle(vary: Variation): Sketch {
  const { shapes, callouts } = limb(vary);
  const roots = at("-122,-92 -134,-72 -140,-52 -140,-32 -134,-14");
  const cords = at("-20,-30 -20,-22 -20,-14");
  const girdle: Shape[] = [
    filled("bone", ring(at("-8,56 -20,30 -44,-6 -86,-36 -104,-20 -108,10 -92,44 -60,60 -30,66")), "outline"),
    ...belly(at("-100,-4 -62,8 -26,24 10,30"), [22, 26, 18, 8]),
    filled("muscle", ring(at("-14,56 -8,72 26,80 66,68 84,48 40,46 6,44")), "line"),
    ...belly(at("-66,-10 -38,4 -12,30"), [13, 9, 4]),
    filled("bone", roundBand(at("8,60 -30,68 -76,50 -128,54"), [8, 6, 6, 8]), "outline"),
    ...roots.map((root, index) =>
      filled(
        "nerve",
        roundBand(
          [
            root,
            [-92, -50 + index * 9],
            [-60, -34 + index * 4],
            cords[Math.min(Math.floor(index / 2), 2)] ?? root,
            [8, -30 + index * 4],
          ],
          [3.4, 3.2, 3, 2.6, 2],
        ),
        "line",
      ),
    ),
    filled("artery", roundBand(at("-128,-10 -88,-16 -44,-24 0,-28"), [4.4, 4.2, 4, 3.4]), "line"),
  ];
  return turnSketch(
    {
      shapes: [...girdle.slice(0, 1), ...shapes, ...girdle.slice(1)],
      callouts: [
        { structure: "roots-of-brachial-plexus", at: [-130, -70] },
        { structure: "superior-trunk-of-brachial-plexus", at: [-78, -42] },
        { structure: "axillary-artery", at: [-60, -21] },
        { structure: "clavicle", at: [-76, 50] },
        { structure: "subscapularis", at: [-62, 4] },
        { structure: "pectoralis-minor", at: [-40, 6] },
        ...callouts,
      ],
    },
    0.36,
  );
}

function limb(vary: Variation): Sketch {
  const bulk = vary.within(0.92, 1.1);
  const ulnarEdge: Point[] = at(
    "0,-50 60,-50 120,-45 180,-39 230,-35 260,-38 300,-42 350,-36 410,-28 452,-22",
  );
  const radialEdge: Point[] = at("452,22 410,27 350,37 305,45 268,40 228,38 170,48 110,60 52,68 4,58");
  const widen = (point: Point): Point => [point[0], point[1] * bulk];
  const { outline: hand, digits } = handOutline(vary, 1);
  const outline = [...ulnarEdge.map(widen), ...hand, ...radialEdge.map(widen)];
  const cut: Point[] = at("4,58 -10,32 -13,4 -9,-28 0,-50");
  const artery: Point[] = at("-6,-26 60,-30 130,-26 200,-16 262,-6 284,-2");
  const radial: Point[] = at("284,-2 320,12 380,18 440,16 470,15");
  const ulnar: Point[] = at("284,-2 320,-14 380,-18 440,-13 470,-10");
  const high = vary.chance(0.3) ? 60 : 0;
  const median: Point[] = [
    [-6, -18],
    [70 + high, -22],
    [150, -18],
    [220, -22],
    [270, -12],
    [330, 0],
    [400, 2],
    [470, 2],
  ];
  const ulnarNerve: Point[] = at("-6,-34 70,-40 150,-40 220,-36 258,-34 300,-30 380,-24 470,-17");
  const vein: Point[] = at("40,30 120,36 190,30 250,22 300,26 380,26 452,14");
  const shapes: Shape[] = [
    filled("tissue", ring([...outline, [-10, 32], [-13, 4], [-9, -28]], 0.9), "outline"),
    ...belly(at("8,26 50,38 105,32 150,18"), [15 * bulk, 20 * bulk, 13, 3]),
    ...belly(at("30,0 90,6 150,8 210,8 262,6"), [6, 17 * bulk, 21 * bulk, 15, 4]),
    ...belly(at("264,24 300,30 350,24 410,17"), [8, 12 * bulk, 9, 3]),
    ...belly(at("262,-26 300,-26 350,-18 410,-10"), [9, 13 * bulk, 10, 3]),
    ...belly(at("270,0 310,4 360,6 420,6"), [7, 12, 10, 3]),
    stroked(
      "line",
      ...[-12, -4, 4].map((offset) =>
        smooth([
          [410, offset],
          [470, offset * 0.7],
          [520, offset * 1.4],
        ]),
      ),
    ),
    ...belly(at("478,24 498,26 518,32 534,44"), [4, 10, 9, 3]),
    creases(digits),
    stroked("fine", smooth(cut)),
    stroked("vein", smooth(vary.loosen(vein, 3)), smooth(at("250,22 262,-8 240,-30 150,-34 40,-38 -4,-40"))),
    stroked(
      "artery",
      smooth(artery),
      smooth(radial),
      smooth(ulnar),
      smooth(at("30,-28 60,-10 110,14")),
      smooth(at("120,-27 170,-32 228,-30")),
    ),
    ...palm(digits),
    stroked("nerve", smooth(median), smooth(ulnarNerve), smooth(at("-6,-10 40,-6 90,12 130,34"))),
    stroked("outline", smooth(ulnarEdge.slice(0, 2).map(widen))),
    stroked(
      "hatch",
      smooth(beside(radialEdge.map(widen), -5)),
      smooth(beside(ulnarEdge.slice(4).map(widen), -3.5)),
    ),
  ];
  const callouts: Callout[] = [
    { structure: "biceps-brachii", at: [140, 10] },
    { structure: "brachial-artery", at: [200, -16] },
    { structure: "median-nerve", at: [350, 1] },
    { structure: "ulnar-nerve", at: [300, -30] },
    { structure: "radial-artery", at: [400, 18] },
    { structure: "musculocutaneous-nerve", at: [90, 12] },
    { structure: "superficial-palmar-arch", at: [532, 8] },
    { structure: "basilic-vein", at: [200, -34] },
  ];
  return { shapes, callouts };
}
