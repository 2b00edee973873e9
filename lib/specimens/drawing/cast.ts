/**
 * Corrosion casts: a tree of vessels or airways grown into the shape of its organ.
 * Growth goes towards spots scattered in the organ until all are reached; a branch
 * is as thick as what it feeds asks for (its cube is the sum of its daughters' cubes).
 */
import { liesInside } from "#lib/specimens/drawing/forms.ts";
import {
  at,
  band,
  mirrored,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export const castOrgans = ["lungs", "kidney", "liver", "placenta", "heart"] as const;
export type CastOrgan = (typeof castOrgans)[number];

type Twig = { place: Point; parent: number };

const step = 3.6;
const reachedAt = 5;
/** Two twigs of one parent closer than this are the same twig. */
const sameTwig = 1.2;

/** Grows a tree from a trunk of given points into an outline. */
function grow(outline: readonly Point[], trunk: readonly Point[], vary: Variation, spots: number): Twig[] {
  const xs = outline.map((point) => point[0]);
  const ys = outline.map((point) => point[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const wanted: { place: Point; nearest: number; distance: number }[] = [];
  for (let attempt = 0; attempt < spots * 3 && wanted.length < spots; attempt += 1) {
    const place: Point = [vary.within(left, right), vary.within(top, bottom)];
    if (liesInside(place, outline)) wanted.push({ place, nearest: trunk.length - 1, distance: Infinity });
  }
  const twigs: Twig[] = trunk.map((place, index) => ({ place, parent: index - 1 }));
  const children = new Map<number, Point[]>();
  // Only the trunk's end puts out branches: what leads to it lies outside the organ or in its hilum.
  let seen = Math.max(0, trunk.length - 1);
  for (let round = 0; round < 80; round += 1) {
    for (let index = seen; index < twigs.length; index += 1) {
      const place = twigs[index]?.place ?? [0, 0];
      for (const spot of wanted) {
        const distance = Math.hypot(spot.place[0] - place[0], spot.place[1] - place[1]);
        if (distance < spot.distance) {
          spot.nearest = index;
          spot.distance = distance;
        }
      }
    }
    seen = twigs.length;
    const pulls = new Map<number, [number, number]>();
    for (const spot of wanted) {
      if (spot.distance < reachedAt) continue;
      const from = twigs[spot.nearest]?.place ?? [0, 0];
      const pull = pulls.get(spot.nearest) ?? [0, 0];
      pull[0] += (spot.place[0] - from[0]) / spot.distance;
      pull[1] += (spot.place[1] - from[1]) / spot.distance;
      pulls.set(spot.nearest, pull);
    }
    for (const [index, pull] of pulls) {
      const length = Math.hypot(pull[0], pull[1]) || 1;
      const from = twigs[index]?.place ?? [0, 0];
      const place: Point = [from[0] + (pull[0] / length) * step, from[1] + (pull[1] / length) * step];
      const siblings = children.get(index) ?? [];
      const known = siblings.some((other) => Math.hypot(other[0] - place[0], other[1] - place[1]) < sameTwig);
      if (known || !liesInside(place, outline)) continue;
      children.set(index, [...siblings, place]);
      twigs.push({ place, parent: index });
    }
    if (twigs.length === seen) break;
  }
  return twigs;
}

type Branch = { line: Point[]; widths: number[] };

/** The tree as branches, each from its fork to its tip along the thickest daughter. */
function branchesOf(twigs: readonly Twig[], tip: number): Branch[] {
  const loads = twigs.map(() => 0);
  const heir = twigs.map(() => -1);
  for (let index = twigs.length - 1; index >= 0; index -= 1) {
    if (loads[index] === 0) loads[index] = tip ** 3;
    const parent = twigs[index]?.parent ?? -1;
    if (parent < 0) continue;
    loads[parent] = (loads[parent] ?? 0) + (loads[index] ?? 0);
    const rival = heir[parent] ?? -1;
    if (rival < 0 || (loads[index] ?? 0) > (loads[rival] ?? 0)) heir[parent] = index;
  }
  const branches: Branch[] = [];
  twigs.forEach((twig, start) => {
    if (twig.parent >= 0 && heir[twig.parent] === start) return;
    const fork = twigs[twig.parent];
    const line: Point[] = fork === undefined ? [] : [fork.place];
    const widths: number[] = fork === undefined ? [] : [Math.cbrt(loads[start] ?? 0)];
    for (let index = start; index >= 0; index = heir[index] ?? -1) {
      line.push(twigs[index]?.place ?? [0, 0]);
      widths.push(Math.cbrt(loads[index] ?? 0));
    }
    if (line.length > 1) branches.push({ line, widths });
  });
  return branches;
}

/** Half the width of the finest twig; what is little thicker is drawn as a line. */
const fineTip = 0.62;

type CastWash = "artery" | "vein" | "nerve" | "duct";

/** Twigs as lines, stems as bands over them; the thickest lie on top. */
function treeShapes(twigs: readonly Twig[], wash: CastWash, tip: number): Shape[] {
  const branches = branchesOf(twigs, tip).sort((a, b) => (a.widths[0] ?? 0) - (b.widths[0] ?? 0));
  const thickness = (branch: Branch): number => branch.widths[0] ?? 0;
  const twig = branches.filter((branch) => thickness(branch) < fineTip * 1.5);
  const bough = branches.filter(
    (branch) => thickness(branch) >= fineTip * 1.5 && thickness(branch) < fineTip * 2.1,
  );
  const stems = branches.filter((branch) => thickness(branch) >= fineTip * 2.1);
  const lineOf = (branch: Branch): Path => smooth(branch.line);
  return [
    stroked(`${wash}-twig`, ...twig.map(lineOf)),
    stroked(wash, ...bough.map(lineOf)),
    ...stems.map((branch) => filled(wash, roundBand(branch.line, branch.widths), `${wash}-twig`)),
  ];
}

const lung: readonly Point[] = at(
  "16,66 20,40 34,26 52,30 68,56 80,96 86,140 82,164 60,158 34,146 20,140 14,104",
);
const kidney: readonly Point[] = at(
  "20,-64 44,-58 60,-32 66,2 60,38 42,62 20,66 6,52 6,34 14,14 14,-12 4,-34 6,-54",
);
const liver: readonly Point[] = at(`
  -78,-10 -72,-42 -44,-58 -6,-58 30,-50 66,-46 92,-30 80,-14 48,0 22,20 0,48 -30,62 -58,58 -76,30
`);
const heart: readonly Point[] = at("-40,-40 -16,-48 14,-46 40,-32 54,0 48,34 26,58 2,50 -30,26 -50,-6");

function castOf(
  parts: readonly {
    outline: readonly Point[];
    trunk: readonly Point[];
    wash: CastWash;
    spots: number;
    tip?: number;
  }[],
  vary: Variation,
  tip: number,
): Shape[] {
  const shells = parts.slice(0, 1).map((part) => stroked("hidden", ring(part.outline)));
  return [
    ...shells,
    ...parts.flatMap((part) =>
      treeShapes(grow(part.outline, part.trunk, vary, part.spots), part.wash, part.tip ?? tip),
    ),
  ];
}

/** @param withArteries with the pulmonary arteries beside the bronchi */
export function drawCast(vary: Variation, organ: CastOrgan, withArteries = false): Sketch {
  const line = (from: Point, to: Point, count: number): Point[] =>
    Array.from(
      { length: count },
      (_, index): Point => [
        from[0] + ((to[0] - from[0]) * index) / (count - 1),
        from[1] + ((to[1] - from[1]) * index) / (count - 1),
      ],
    );
  if (organ === "lungs") {
    const windpipe: Shape = filled("duct", band(at("0,-10 0,30 0,66"), [5, 4.6, 4.4]), "duct");
    const sides = [1, -1].map((side) => {
      const outline = side > 0 ? lung : mirrored(lung);
      return castOf(
        [
          ...(withArteries
            ? [
                {
                  outline,
                  trunk: line([side > 0 ? 4 : -2, 58], [26 * side, 80], 5),
                  wash: "vein" as const,
                  spots: 240,
                },
              ]
            : []),
          {
            outline,
            trunk: line([0, 62], [24 * side, 88], 5),
            wash: "duct" as const,
            spots: withArteries ? 300 : 420,
          },
        ],
        vary,
        fineTip,
      );
    });
    const pulmonaryTrunk = withArteries
      ? [filled("vein", roundBand(at("14,120 12,92 2,74"), [5.6, 5.4, 4.6]), "vein-twig")]
      : [];
    const callouts: Callout[] = [
      { structure: "trachea", at: [-3, 10] },
      { structure: "right-main-bronchus", at: [-12, 76] },
      { structure: "left-main-bronchus", at: [12, 76] },
      ...(withArteries
        ? ([
            { structure: "pulmonary-trunk", at: [13, 108] },
            { structure: "right-pulmonary-artery", at: [-16, 72] },
          ] as const)
        : []),
    ];
    return { shapes: [...sides.flat(), windpipe, ...pulmonaryTrunk], callouts };
  }
  if (organ === "kidney") {
    return {
      shapes: castOf(
        [
          { outline: kidney, trunk: line([-44, 10], [22, 8], 12), wash: "vein", spots: 240 },
          { outline: kidney, trunk: line([-44, -6], [22, -2], 12), wash: "artery", spots: 285 },
          {
            outline: at("8,-40 34,-34 44,0 34,38 8,40 14,10"),
            trunk: [...line([-26, 88], [-14, 40], 8), ...line([-8, 30], [16, 12], 5)],
            wash: "nerve",
            spots: 30,
            tip: 1.3,
          },
        ],
        vary,
        fineTip,
      ),
      callouts: [
        { structure: "renal-artery", at: [-36, -6] },
        { structure: "renal-vein", at: [-30, 10] },
        { structure: "ureter", at: [-20, 64] },
      ],
    };
  }
  if (organ === "liver") {
    return {
      shapes: castOf(
        [
          { outline: liver, trunk: line([4, 86], [-4, 10], 14), wash: "vein", spots: 345 },
          { outline: liver, trunk: line([14, 86], [4, 12], 14), wash: "artery", spots: 180 },
          { outline: liver, trunk: line([-6, 86], [-8, 14], 14), wash: "duct", spots: 135 },
        ],
        vary,
        fineTip,
      ),
      callouts: [
        { structure: "hepatic-portal-vein", at: [2, 70] },
        { structure: "proper-hepatic-artery", at: [12, 74] },
        { structure: "common-hepatic-duct", at: [-6, 66] },
      ],
    };
  }
  if (organ === "heart") {
    return {
      shapes: castOf(
        [
          {
            outline: heart,
            trunk: at("-4,-70 2,-56 10,-42 18,-24"),
            wash: "artery",
            spots: 225,
          },
          {
            outline: heart,
            trunk: at("-8,-70 -14,-54 -24,-36 -32,-14"),
            wash: "artery",
            spots: 180,
          },
          {
            outline: heart,
            trunk: at("-30,44 -14,30 4,18"),
            wash: "vein",
            spots: 135,
          },
        ],
        vary,
        fineTip,
      ),
      callouts: [
        { structure: "left-coronary-artery", at: [6, -50] },
        { structure: "right-coronary-artery", at: [-18, -46] },
        { structure: "coronary-sinus", at: [-22, 38] },
      ],
    };
  }
  const disc: Point[] = Array.from({ length: 16 }, (_, index): Point => {
    const turn = (2 * Math.PI * index) / 16;
    const girth = 72 * vary.within(0.93, 1.05);
    return [Math.cos(turn) * girth, Math.sin(turn) * girth * 0.9];
  });
  return {
    shapes: castOf(
      [
        { outline: disc, trunk: line([8, 0], [-6, 4], 3), wash: "vein", spots: 345 },
        { outline: disc, trunk: line([6, -4], [-2, -6], 3), wash: "artery", spots: 300 },
      ],
      vary,
      fineTip,
    ),
    callouts: [
      { structure: "umbilical-vein", at: [4, 2] },
      { structure: "umbilical-artery", at: [-2, -6] },
    ],
  };
}
