/**
 * A transverse sheet high in the right thigh, seen from below. Muscles lie round the
 * bone in their compartments, each a little smaller towards the knee.
 */
import { ellipse, ellipsePoints, type Point, ring, straight } from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

type Wedge = readonly [structure: string, from: number, to: number, inner: number, outer: number];

const wedges: readonly Wedge[] = [
  ["vastus-medialis", -2.2, -1.1, 0.28, 0.86],
  ["rectus-femoris", -1.05, -0.55, 0.62, 0.87],
  ["vastus-intermedius", -1.1, -0.3, 0.26, 0.6],
  ["vastus-lateralis", -0.5, 0.5, 0.3, 0.87],
  ["biceps-femoris", 0.6, 1.2, 0.34, 0.86],
  ["semitendinosus", 1.25, 1.8, 0.46, 0.87],
  ["semimembranosus", 1.85, 2.35, 0.42, 0.86],
  ["adductor-magnus", 2.4, 3.25, 0.28, 0.84],
  ["gracilis", 3.3, 3.65, 0.56, 0.87],
  ["sartorius", -2.65, -2.25, 0.58, 0.88],
];

function muscle([, from, to, inner, outer]: Wedge, girth: number, vary: Variation) {
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

const vessels: readonly (readonly [
  structure: string,
  x: number,
  y: number,
  size: number,
  tone: "artery" | "vein" | "nerve",
])[] = [
  ["femoral-artery", -0.5, -0.24, 3.4, "artery"],
  ["femoral-vein", -0.42, -0.14, 3.8, "vein"],
  ["saphenous-nerve", -0.58, -0.16, 2, "nerve"],
  ["sciatic-nerve", 0.14, 0.36, 4, "nerve"],
  ["great-saphenous-vein", -0.88, 0.06, 2.2, "vein"],
];

/** @param level 0 at the top of the thigh, 1 above the knee */
export function drawThighSection(vary: Variation, level: number): Sketch {
  const girth = 58 - level * 12;
  const skin = vary.loosen(ellipsePoints(0, 0, girth, girth * 0.98, 0, 18), 0.9);
  const muscles = wedges.map((wedge) => ({ structure: wedge[0], ...muscle(wedge, girth, vary) }));
  const bone: Shape[] = [
    filled("bone", ring(ellipsePoints(0, -girth * 0.02, girth * 0.22, girth * 0.22, 0, 10)), "outline"),
    filled("fat", ellipse(0, -girth * 0.02, girth * 0.12), "fine"),
  ];
  return {
    shapes: [
      filled("fat", ring(skin), "outline"),
      filled("tissue", ellipse(0, 0, girth * 0.9, girth * 0.89), "fine"),
      ...muscles.flatMap((each) => each.shapes),
      ...bone,
      ...vessels.map(([, x, y, size, tone]) =>
        filled(tone, ellipse(x * girth, y * girth, size * (girth / 50)), "fine"),
      ),
    ],
    callouts: [
      { structure: "femur", at: [0, 0] },
      ...vessels.map(([structure, x, y]) => ({ structure, at: [x * girth, y * girth] as const })),
      ...muscles.map(({ structure, middle }) => ({ structure, at: middle })),
    ],
  };
}
