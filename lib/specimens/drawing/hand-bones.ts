/**
 * The bones of a right hand from the palm, fingers upwards: cleaned bones on wire,
 * or the wrist with its ligaments, where the bones beyond the metacarpus are only
 * hinted at.
 */
import { longBone } from "#lib/specimens/drawing/forms.ts";
import { at, ellipse, type Path, type Point, ring, roundBand, smooth } from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

const carpus: Record<string, readonly Point[]> = {
  "scaphoid-bone": at("13,187 21,181 28,185 25,195 16,200 8,196"),
  "lunate-bone": at("7,197 13,201 10,208 0,209 -5,203 0,197"),
  "triquetral-bone": at("-7,198 -1,202 -4,209 -13,208 -20,200 -15,194"),
  "trapezium-bone": at("23,170 32,172 36,181 29,186 21,181"),
  "trapezoid-bone": at("12,170 20,170 21,179 14,184 10,177"),
  "capitate-bone": at("-2,169 8,168 11,178 11,189 5,195 -3,191 -5,181"),
  "hamate-bone": at("-19,175 -6,171 -5,181 -4,191 -11,197 -18,187"),
};

/** Metacarpals and phalanges of each ray from its base outwards, thumb first. */
const rays: readonly (readonly Point[])[] = [
  at("36,176 58,142 62,138 78,115 80,112 92,95"),
  at("15,166 23,113 24,107 30,72 31,68 33,45 33.4,41 34.5,27"),
  at("3,165 4.5,107 5,101 6.4,62 6.6,58 7.4,31 7.5,27 8,11"),
  at("-9,168 -14,114 -15,108 -21,72 -21.6,68 -25,43 -25.6,39 -28,24"),
  at("-18,172 -29,125 -31,119 -40,92 -41.4,88 -47,71 -48,67 -52,54"),
];
const halfWidths = [4, 3.3, 2.8, 2.4] as const;

function bonesOfRay(joints: readonly Point[], from: number, to: number): [Point, Point, number][] {
  return Array.from({ length: Math.min(to, joints.length / 2) - from }, (_, index) => {
    const bone = from + index;
    const last = bone * 2 + 2 === joints.length ? 3 : bone;
    return [joints[bone * 2] ?? [0, 0], joints[bone * 2 + 1] ?? [0, 0], halfWidths[last] ?? 3];
  });
}

function wrist(vary: Variation): Shape[] {
  return [
    ...Object.values(carpus).map((outline) => filled("bone", ring(vary.loosen(outline, 0.5)), "line")),
    filled("bone", ring(at("-15,178 -9,177 -8,184 -13,187 -17,183"), 0.9), "line"),
    filled("bone", ellipse(-15, 203, 5, 5.4), "line"),
    stroked("hatch", smooth(at("-12,200 -11.6,204 -14,207")), smooth(at("20,186 23,190 20,195"))),
    stroked("hatch", smooth(at("7,174 8,182 6,189")), smooth(at("29,175 31,179 29,183"))),
  ];
}

const carpalCallouts: readonly Callout[] = [
  { structure: "scaphoid-bone", at: [20, 190] },
  { structure: "lunate-bone", at: [4, 203] },
  { structure: "pisiform-bone", at: [-15, 203] },
  { structure: "hook-of-hamate", at: [-12, 182] },
  { structure: "trapezium-bone", at: [30, 178] },
  { structure: "capitate-bone", at: [3, 180] },
];

export function drawHandBones(vary: Variation): Sketch {
  const spread = vary.within(-1, 1);
  const bones = rays.flatMap((joints, ray) =>
    bonesOfRay(joints, 0, 4).flatMap(([from, to, width]) =>
      longBone(from, [to[0] + spread * (2 - ray) * 0.4, to[1]], width, 1.7),
    ),
  );
  return {
    shapes: [...bones, ...wrist(vary)],
    callouts: [
      { structure: "first-metacarpal-bone", at: [48, 158] },
      { structure: "third-metacarpal-bone", at: [4, 136] },
      { structure: "distal-phalanx-of-hand", at: [8, 18] },
      { structure: "proximal-phalanx-of-hand", at: [-19, 88] },
      { structure: "fifth-metacarpal-bone", at: [-24, 148] },
      ...carpalCallouts,
    ],
  };
}

function ligament(line: readonly Point[], halfWidth: number): Shape[] {
  const strands = [-0.5, 0, 0.5].map(
    (share): Path =>
      smooth(line.map(([x, y]): Point => [x + share * halfWidth, y + share * halfWidth * 0.7])),
  );
  return [filled("sinew", roundBand(line, halfWidth), "line"), stroked("hatch", ...strands)];
}

export function drawWristLigaments(vary: Variation): Sketch {
  const metacarpus = rays.flatMap((joints) =>
    bonesOfRay(joints, 0, 1).flatMap(([from, to, width]) => longBone(from, to, width, 1.7)),
  );
  const fingers = rays.flatMap((joints) =>
    bonesOfRay(joints, 1, 2).map(([from, to, width]) => stroked("hidden", roundBand([from, to], width))),
  );
  const heads: Point[] = at("22,118 4,112 -14,119 -28,129");
  const transverse = heads.slice(1).map((to, index): Point[] => [heads[index] ?? to, to]);
  return {
    shapes: [
      ...fingers,
      filled(
        "bone",
        ring(at("29,204 30,198 22,202 12,205 2,211 -1,216 4,226 7,244 25,244 28,226"), 0.9),
        "line",
      ),
      filled("bone", ring(at("-4,215 -12,213 -19,208 -22,213 -19,224 -16,244 -4,244 -3,226"), 0.9), "line"),
      filled("bone", ellipse(16, 244, 9, 2.4), "line"),
      filled("bone", ellipse(-10, 244, 6, 2), "line"),
      filled("glass", ring(at("0,214 -8,211 -17,207 -11,205 0,209")), "fine"),
      ...metacarpus,
      ...wrist(vary),
      ...ligament(at("26,207 16,203 5,204"), 2),
      ...ligament(at("25,203 15,193 5,186"), 2),
      ...ligament(at("2,184 -3,194 -8,202"), 1.6),
      ...ligament(at("5,183 14,187 20,190"), 1.6),
      ...ligament(at("-15,200 -14,192 -13,185"), 1.8),
      ...ligament(at("-18,201 -22,188 -20,176"), 1.8),
      ...ligament(at("29,202 31,194 31,186"), 1.8),
      ...transverse.flatMap((line) => ligament(line, 3)),
    ],
    callouts: [
      { structure: "palmar-radiocarpal-ligament", at: [16, 203] },
      { structure: "deep-transverse-metacarpal-ligament", at: [-5, 115] },
      { structure: "pisohamate-ligament", at: [-14, 192] },
      { structure: "radiate-carpal-ligament", at: [14, 187] },
      { structure: "articular-disc-of-distal-radio-ulnar-joint", at: [-8, 209] },
      { structure: "radius", at: [16, 230] },
      { structure: "ulna", at: [-11, 230] },
      ...carpalCallouts,
    ],
  };
}
