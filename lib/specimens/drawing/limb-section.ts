/**
 * A transverse sheet of the thigh or the leg, at a level from 0 (top) to 1. Muscles
 * lie round the bone in their compartments, each a little smaller towards the ends.
 */
import { spongyBone } from "#lib/specimens/drawing/forms.ts";
import { ellipse, ellipsePoints, type Point, ring, straight } from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

type Wedge = readonly [from: number, to: number, inner: number, outer: number, name: string];

const thigh: readonly Wedge[] = [
  [-2.2, -1.1, 0.28, 0.86, "m. vastus medialis"],
  [-1.05, -0.55, 0.62, 0.87, "m. rectus femoris"],
  [-1.1, -0.3, 0.26, 0.6, "m. vastus intermedius"],
  [-0.5, 0.5, 0.3, 0.87, "m. vastus lateralis"],
  [0.6, 1.2, 0.34, 0.86, "m. biceps femoris"],
  [1.25, 1.8, 0.46, 0.87, "m. semitendinosus"],
  [1.85, 2.35, 0.42, 0.86, "m. semimembranosus"],
  [2.4, 3.25, 0.28, 0.84, "m. adductor magnus"],
  [3.3, 3.65, 0.56, 0.87, "m. gracilis"],
  [-2.65, -2.25, 0.58, 0.88, "m. sartorius"],
];

const leg: readonly Wedge[] = [
  [-1.5, -0.75, 0.36, 0.84, "m. tibialis anterior"],
  [-0.7, -0.25, 0.42, 0.85, "m. extensor digitorum longus"],
  [-0.2, 0.3, 0.66, 0.87, "m. fibularis longus"],
  [0.35, 1.3, 0.62, 0.88, "m. gastrocnemius"],
  [1.35, 2.3, 0.62, 0.88, "m. gastrocnemius"],
  [0.5, 2.2, 0.34, 0.58, "m. soleus"],
  [2.35, 2.85, 0.4, 0.7, "m. flexor digitorum longus"],
];

function muscle(wedge: Wedge, girth: number, vary: Variation): { shapes: Shape[]; middle: Point } {
  const [from, to, inner, outer] = wedge;
  const at = (turn: number, share: number): Point => [
    Math.cos(turn) * girth * share,
    Math.sin(turn) * girth * share,
  ];
  const steps = 5;
  const far = Array.from({ length: steps }, (_, index) =>
    at(from + ((to - from) * index) / (steps - 1), outer * vary.within(0.98, 1)),
  );
  const near = Array.from({ length: steps }, (_, index) =>
    at(to - ((to - from) * index) / (steps - 1), inner * vary.within(0.97, 1.03)),
  );
  const bundles = Array.from({ length: 3 }, (_, index) => {
    const turn = from + ((to - from) * (index + 1)) / 4;
    return straight([
      at(turn, inner + (outer - inner) * 0.25),
      at(turn + vary.within(-0.05, 0.05), inner + (outer - inner) * 0.72),
    ]);
  });
  return {
    shapes: [filled("muscle", ring([...far, ...near], 0.7), "line"), stroked("hatch", ...bundles)],
    middle: at((from + to) / 2, (inner + outer) / 2),
  };
}

export function drawLimbSection(vary: Variation, level: number): Sketch {
  const below = level > 0.55;
  const girth = below ? 46 - (level - 0.55) * 34 : 58 - level * 20;
  const skin = vary.loosen(ellipsePoints(0, 0, girth, girth * 0.98, 0, 18), 0.9);
  const muscles = (below ? leg : thigh).map((wedge) => ({ name: wedge[4], ...muscle(wedge, girth, vary) }));
  const bones: Shape[] = below
    ? [
        ...spongyBone(
          ellipsePoints(-girth * 0.3, -girth * 0.36, girth * 0.26, girth * 0.22, 0.6, 9),
          vary,
          16,
        ),
        ...spongyBone(ellipsePoints(girth * 0.42, girth * 0.1, girth * 0.12, girth * 0.11, 0.3, 8), vary, 5),
      ]
    : [
        filled("bone", ring(ellipsePoints(0, -girth * 0.02, girth * 0.22, girth * 0.22, 0, 10)), "outline"),
        filled("fat", ellipse(0, -girth * 0.02, girth * 0.12), "fine"),
      ];
  const vessels: readonly (readonly [number, number, number, "artery" | "vein" | "nerve"])[] = below
    ? [
        [0.06, 0.24, 2.6, "artery"],
        [0.16, 0.26, 2.4, "vein"],
        [0.1, 0.34, 2.6, "nerve"],
        [0.24, -0.3, 1.8, "artery"],
        [-0.7, 0.5, 2, "vein"],
      ]
    : [
        [-0.5, -0.24, 3.4, "artery"],
        [-0.42, -0.14, 3.8, "vein"],
        [-0.58, -0.16, 2, "nerve"],
        [0.14, 0.36, 4, "nerve"],
        [-0.88, 0.06, 2.2, "vein"],
      ];
  const callouts: Callout[] = [
    {
      text: below ? "a. tibialis posterior" : "a. femoralis",
      at: [(vessels[0]?.[0] ?? 0) * girth, (vessels[0]?.[1] ?? 0) * girth],
    },
    { text: below ? "tibia" : "femur", at: below ? [-girth * 0.3, -girth * 0.36] : [0, 0] },
    ...muscles
      .filter((_, index) => index === 0 || index === 3 || index === (below ? 5 : 4))
      .map((each) => ({ text: each.name, at: each.middle })),
  ];
  return {
    shapes: [
      filled("fat", ring(skin), "outline"),
      filled("tissue", ellipse(0, 0, girth * 0.9, girth * 0.89), "fine"),
      ...muscles.flatMap((each) => each.shapes),
      ...bones,
      ...vessels.map(([x, y, size, tone]) =>
        filled(tone, ellipse(x * girth, y * girth, size * (girth / 50)), "fine"),
      ),
    ],
    callouts,
  };
}
