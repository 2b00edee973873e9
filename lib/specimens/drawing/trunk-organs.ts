/**
 * What lies in the chest and in the belly at a level of the trunk: each organ comes,
 * grows and goes within its own span of levels.
 */
import { spongyBone } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  bothHalves,
  drawnIn,
  ellipse,
  mirrored,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, stroked } from "#lib/specimens/drawing/plate.ts";
import { type Ground, presence } from "#lib/specimens/drawing/trunk-wall.ts";

export type TrunkPart = { shapes: Shape[]; callouts: Callout[] };

export function chest(ground: Ground): TrunkPart {
  const { level, halfWidth, halfDepth, vary } = ground;
  const shapes: Shape[] = [];
  const callouts: Callout[] = [];
  const lungs = presence(level, 0.05, 0.5);
  const dome = presence(level, 0.4, 0.64);
  const heart = presence(level, 0.22, 0.44);
  if (lungs > 0) {
    const reach = Math.min(1, 0.35 + lungs);
    const outer = halfWidth * 0.77;
    const inner = level < 0.2 ? 15 : 13 + heart * 6;
    const deep = halfDepth * 0.76 * reach;
    const crescent = level > 0.4 ? Math.min(1, (level - 0.4) / 0.09) : 0;
    const front = -deep + crescent * deep * 1.05;
    const right: Point[] = [
      [-inner, front * 0.86],
      [-outer * 0.52, front],
      [-outer * 0.9, front * 0.55],
      [-outer, 6],
      [-outer * 0.86, deep * 0.62],
      [-outer * 0.52, deep * 0.92],
      [-inner - 8, deep * 0.66],
      [-inner - 2, deep * 0.2],
    ];
    const left = mirrored(right).map(
      ([x, y]): Point => [
        x +
          (heart > 0 && y < 4
            ? heart * 24 * Math.exp(-(((y + 16) / 22) ** 2)) * (x < outer * 0.7 ? 1 : 0)
            : 0),
        y,
      ],
    );
    // The apex of a lung is small, and behind the collar bone.
    const apex = Math.min(1, 0.4 + Math.max(0, level - 0.06) * 8);
    for (const whole of [right, left]) {
      const points = drawnIn(whole, apex, [outer * (whole === right ? -0.4 : 0.4), deep * 0.2]);
      shapes.push(filled("tissue", ring(points, 0.9), "line"));
      if (apex < 1) continue;
      const spots = Array.from({ length: 8 }, (): Path => {
        const angle = vary.within(0, 6.28);
        const share = vary.within(0.15, 0.62);
        const middle: Point = [whole === right ? -outer * 0.55 : outer * 0.6, (front + deep) / 2];
        return ellipse(
          middle[0] + Math.cos(angle) * outer * 0.3 * share * 1.4,
          middle[1] + Math.sin(angle) * (deep - front) * 0.4 * share,
          vary.within(0.8, 2),
        );
      });
      shapes.push(stroked("fine", ...spots));
    }
    const fissures = stroked(
      "fine",
      smooth([
        [-outer * 0.9, halfDepth * 0.2],
        [-outer * 0.5, halfDepth * (0.1 - level * 0.4)],
        [-inner - 6, halfDepth * -0.1],
      ]),
      smooth([
        [outer * 0.92, halfDepth * 0.3],
        [outer * 0.6, halfDepth * (0.24 - level * 0.4)],
        [inner + 18, halfDepth * 0.1],
      ]),
    );
    if (apex === 1) shapes.push(fissures);
    callouts.push({ structure: "right-lung", at: [-outer * 0.6, (front + deep) / 2] });
    if (dome === 0) callouts.push({ structure: "left-lung", at: [outer * 0.72, deep * 0.3] });
  }
  if (heart > 0) {
    const y = -halfDepth * 0.22;
    const outline: Point[] = at("-26,6 -30,-12 -14,-28 10,-32 36,-22 50,-4 44,14 20,20 -6,18").map(
      ([x = 0, dy = 0]): Point => [x * heart * 1.05, y + dy * heart],
    );
    const chamber = (cx: number, cy: number, rx: number, ry: number, angle: number): Shape =>
      filled("hollow", ellipse(cx * heart, y + cy * heart, rx * heart, ry * heart, angle), "line");
    shapes.push(
      filled("muscle", ring(outline), "outline"),
      chamber(-17, -6, 8, 12, 0.2),
      chamber(2, -16, 14, 7, 0.3),
      chamber(26, 0, 13, 7, 0.5),
      chamber(3, 9, 13, 6, 0.05),
    );
    callouts.push(
      { structure: "heart", at: [12 * heart, y - 2] },
      { structure: "left-ventricle", at: [26 * heart, y] },
      { structure: "right-ventricle", at: [2 * heart, y - 16 * heart] },
      { structure: "right-atrium", at: [-17 * heart, y - 6 * heart] },
      { structure: "left-atrium", at: [3 * heart, y + 9 * heart] },
    );
  }
  const trachea = presence(level, -0.08, 0.235);
  if (trachea > 0) {
    shapes.push(filled("hollow", ring(bothHalves(at("0,-9 6.5,-6 7,1 4,5 0,5.4"))), "outline"));
    callouts.push({ structure: "trachea", at: [-4, -4] });
  } else if (level < 0.3) {
    shapes.push(
      filled("hollow", ellipse(-13, -2, 6, 4.4, -0.3), "outline"),
      filled("hollow", ellipse(14, 0, 6, 4, 0.3), "outline"),
    );
  }
  if (level > 0.3 && level < 0.4)
    shapes.push(
      filled("hollow", ellipse(-26, 4, 3, 3.6), "fine"),
      filled("hollow", ellipse(30, 6, 3, 3.6), "fine"),
    );
  if (level < 0.47)
    shapes.push(
      filled("muscle", ellipse(3, halfDepth * 0.12, 5, 3.4), "line"),
      stroked(
        "fine",
        smooth([
          [1, halfDepth * 0.12],
          [5.4, halfDepth * 0.12],
        ]),
      ),
    );
  if (level < 0.47) callouts.push({ structure: "oesophagus", at: [3, halfDepth * 0.12] });
  const sternum = presence(level, 0.09, 0.4);
  if (sternum > 0)
    shapes.push(
      ...spongyBone(
        bothHalves([
          [0, -halfDepth * 0.9],
          [16 * sternum, -halfDepth * 0.87],
          [18 * sternum, -halfDepth * 0.8],
          [0, -halfDepth * 0.78],
        ]),
        vary,
        10,
      ),
    );
  return { shapes, callouts };
}

export function belly(ground: Ground): TrunkPart {
  const { level, halfWidth, halfDepth, vary } = ground;
  const shapes: Shape[] = [];
  const callouts: Callout[] = [];
  const liver = presence(level, 0.395, 0.64);
  const stomach = presence(level, 0.42, 0.58);
  const spleen = presence(level, 0.43, 0.56);
  const kidneys = presence(level, 0.52, 0.67);
  const bowel = presence(level, 0.562, 0.885);
  const gallbladder = level > 0.555 && level < 0.622;
  if (bowel > 0) {
    const wide = halfWidth * 0.62;
    const top = -halfDepth * 0.62;
    const rows = level < 0.6 ? 2 : 3;
    for (let row = 0; row < rows; row += 1) {
      const count = 6 - row;
      for (let column = 0; column < count; column += 1) {
        const x =
          -wide +
          ((column + 0.5 + (row % 2) * 0.2) * 2 * wide) / count +
          Math.sin(level * 70 + column * 2 + row) * 4;
        const y = top + row * 17 + Math.cos(level * 60 + column * 3 + row * 2) * 3.4;
        if (liver > 0.2 && x < halfWidth * (0.05 - (level - 0.54))) continue;
        const size = (7.4 + Math.sin(level * 90 + column * 5 + row * 3) * 1.8) * Math.min(1, bowel + 0.2);
        shapes.push(
          filled("tissue", ellipse(x, y, size * 1.16, size * 0.86, Math.sin(level * 40 + column)), "line"),
          stroked("fine", arc(x, y, size * 0.6, size * 0.34, 0.4, 5.4)),
        );
      }
    }
    const loop = { at: [halfWidth * 0.1, top + 16] } as const;
    callouts.push({ structure: "jejunum", ...loop }, { structure: "ileum", ...loop });
    const sides = halfWidth * 0.72;
    if (level < 0.78) {
      if (liver < 0.5)
        shapes.push(
          filled("organ", ellipse(-sides, -2, 10, 12.4, 0.2), "line"),
          stroked("fine", arc(-sides, -2, 6.6, 8.6, 0.6, 5.2)),
        );
      shapes.push(
        filled("organ", ellipse(sides, 4, 8.4, 10.4, -0.2), "line"),
        stroked("fine", arc(sides, 4, 5.4, 7, 0.6, 5.2)),
      );
      callouts.push({ structure: "descending-colon", at: [sides, 4] });
    }
  }
  if (kidneys > 0) {
    const x = 44;
    const y = halfDepth * 0.3;
    for (const side of [1, -1]) {
      const size = kidneys * (side > 0 ? 1 : presence(level, 0.535, 0.675) || 0.01);
      if (size < 0.3) continue;
      const bean: Point[] = at("-4,-13 8,-16 17,-6 16,8 6,16 -6,11 -8,3 -1,0 -9,-5").map(
        ([dx = 0, dy = 0]): Point => [(x + dx * size) * side, y + dy * size],
      );
      shapes.push(
        filled("fat", ellipse((x + 4) * side, y, 23 * size, 21 * size), "fine"),
        filled("organ", ring(bean), "outline"),
        filled("nerve", ellipse((x - 2) * side, y, 4.6 * size, 3.4 * size), "fine"),
      );
    }
    callouts.push({ structure: "kidney", at: [x + 10, y] }, { structure: "kidney", at: [-x - 10, y] });
  }
  if (spleen > 0) {
    const points: Point[] = at("0.78,-0.1 0.84,0.2 0.7,0.55 0.48,0.68 0.56,0.42 0.64,0.14").map(
      ([x = 0, y = 0]): Point => [x * halfWidth * (0.85 + spleen * 0.13), y * halfDepth],
    );
    shapes.push(filled("deep", ring(points), "outline"));
    callouts.push({ structure: "spleen", at: points[1] ?? [0, 0] });
  }
  if (stomach > 0) {
    const points: Point[] = at(
      "0.04,-0.56 0.34,-0.7 0.62,-0.5 0.68,-0.14 0.54,0.08 0.36,-0.02 0.18,-0.26",
    ).map(
      ([x = 0, y = 0]): Point => [
        halfWidth * (0.36 + (x - 0.36) * stomach),
        halfDepth * (-0.3 + (y + 0.3) * stomach),
      ],
    );
    shapes.push(
      filled("muscle", ring(points), "outline"),
      filled(
        "hollow",
        ring(
          points.map(
            ([px, py]): Point => [
              halfWidth * 0.37 + (px - halfWidth * 0.37) * 0.78,
              -halfDepth * 0.32 + (py + halfDepth * 0.32) * 0.78,
            ],
          ),
        ),
        "fine",
      ),
    );
    const middle = { at: [halfWidth * 0.42, -halfDepth * 0.34] } as const;
    callouts.push({ structure: "stomach", ...middle }, { structure: "body-of-stomach", ...middle });
  }
  if (liver > 0) {
    const reach =
      level < 0.46 ? -0.2 + (level - 0.395) * 8.3 : level < 0.52 ? 0.34 : 0.34 - (level - 0.52) * 3.4;
    const points: Point[] = [
      [reach, -0.6],
      [-0.1, -0.74],
      [-0.5, -0.64],
      [-0.76, -0.28],
      [-0.8, 0.12],
      [-0.64, 0.5],
      [-0.36, 0.56],
      [-0.2, 0.24],
      [-0.12, -0.06],
      [0.06, -0.3],
    ].map(
      ([x = 0, y = 0]): Point => [
        halfWidth * (-0.46 + (x + 0.46) * (0.3 + 0.7 * liver)),
        halfDepth * (-0.1 + (y + 0.1) * (0.3 + 0.7 * liver)),
      ],
    );
    const wash = vary.loosen(points, 1);
    shapes.push(filled("organ", ring(wash), "outline"));
    const veins = Array.from(
      { length: 9 },
      (): Path =>
        ellipse(
          -halfWidth * vary.within(0.18, 0.64),
          halfDepth * vary.within(-0.44, 0.3),
          vary.within(1.2, 3),
          vary.within(1, 2),
        ),
    );
    shapes.push(stroked("fine", ...veins));
    if (gallbladder) shapes.push(filled("duct", ellipse(-halfWidth * 0.24, -halfDepth * 0.44, 7, 9), "line"));
    callouts.push(
      { structure: "liver", at: [-halfWidth * 0.52, -halfDepth * 0.2] },
      { structure: "right-lobe-of-liver", at: [-halfWidth * 0.52, -halfDepth * 0.2] },
    );
    if (gallbladder) callouts.push({ structure: "gallbladder", at: [-halfWidth * 0.24, -halfDepth * 0.44] });
  }
  const pancreas = presence(level, 0.525, 0.635);
  if (pancreas > 0) {
    callouts.push(
      { structure: "head-of-pancreas", at: [-20, -7] },
      { structure: "body-of-pancreas", at: [18, -14] },
    );
    shapes.push(
      filled(
        "fat",
        roundBand(at("-22,-6 -4,-14 18,-14 38,-4 54,6"), [
          7 * pancreas,
          5 * pancreas,
          5 * pancreas,
          5 * pancreas,
          3,
        ]),
        "line",
      ),
    );
  }
  return { shapes, callouts };
}
