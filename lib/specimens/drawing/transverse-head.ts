/**
 * Transverse sheets of the head from the crown (0) to the neck (1), seen from below:
 * cortex, ventricles, eyes and cerebellum, tongue and jaw, larynx.
 */
import { sulcus } from "#lib/specimens/drawing/brain.ts";
import { spongyBone } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  bothHalves,
  drawnIn,
  ellipse,
  ellipsePoints,
  mirrored,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import { presence } from "#lib/specimens/drawing/trunk-wall.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** @param level 0 at the crown, 1 in the neck */
export function drawTransverseHead(vary: Variation, level: number): Sketch {
  const dome = Math.min(1, 0.45 + level * 2.4);
  const low = Math.max(0, (level - 0.62) / 0.38);
  const wide = 62 * dome * (1 - low * 0.22);
  const long = 78 * dome * (1 - low * 0.12);
  const skin = bothHalves(
    ellipsePoints(0, 0, wide, long, 0, 13, -Math.PI / 2, Math.PI / 2).map(
      ([x, y], index): Point => [
        index === 0 || index === 12 ? 0 : x,
        y - (level > 0.5 && level < 0.9 && index < 2 ? 8 * presence(level, 0.5, 0.76) : 0),
      ],
    ),
  );
  const shapes: Shape[] = [filled("tissue", ring(skin), "outline")];
  const callouts: Callout[] = [];
  if (level < 0.68) {
    const brain = drawnIn(
      skin.map(([x, y]): Point => [x, Math.max(y, -long * (level > 0.4 ? 0.9 : 1))]),
      0.86,
      [0, 0],
    );
    shapes.push(
      filled("bone", ring(drawnIn(brain, 1.08, [0, 0])), "line"),
      filled("organ", ring(brain), "outline"),
    );
    const rays = Array.from({ length: 22 }, (_, index): Path => {
      const turn = (2 * Math.PI * (index + 0.5)) / 22 + level * 1.1;
      const at = (share: number): Point => [
        Math.cos(turn) * wide * 0.86 * share,
        Math.sin(turn) * long * 0.86 * share,
      ];
      return sulcus(vary, [at(0.99), at(vary.within(0.6, 0.76))], 2);
    });
    shapes.push(
      stroked(
        "line",
        smooth([
          [0, -long * 0.84],
          [0, level < 0.3 ? long * 0.84 : -long * 0.4],
        ]),
        ...rays,
      ),
    );
    callouts.push(
      { structure: "cerebral-cortex", at: [wide * 0.6, -long * 0.4] },
      { structure: "longitudinal-cerebral-fissure", at: [0, -long * 0.7] },
    );
    if (level > 0.2 && level < 0.46) {
      for (const side of [1, -1]) {
        const mirror = (points: readonly Point[]): Point[] => (side > 0 ? [...points] : mirrored(points));
        shapes.push(
          filled(
            "hollow",
            ring(mirror(at("3,-22 12,-30 15,-24 7,-10 4,4 10,16 22,28 24,40 16,36 6,20 3,8"))),
            "line",
          ),
          filled("deep", ring(mirror(at("8,-6 18,-18 24,-6 20,12 12,16 7,6"))), "fine"),
          filled("deep", ring(mirror(at("22,-16 30,-6 28,8 24,4"))), "fine"),
        );
      }
      callouts.push(
        { structure: "lateral-ventricle", at: [20, 34] },
        { structure: "thalamus", at: [-12, 6] },
      );
    }
    if (level >= 0.46) {
      const cerebellum = bothHalves(at("0,16 16,14 36,22 42,42 28,60 8,64 0,58"));
      shapes.push(
        filled("hollow", ring(bothHalves(at("0,-26 18,-22 30,-4 26,12 0,14"))), "fine"),
        filled("tissue", ellipse(0, 4, 13, 11), "line"),
        filled("deep", ring(cerebellum), "outline"),
        ...[1, -1].map((side) =>
          stroked(
            "fine",
            ...[0.35, 0.6, 0.85].map((f) => arc(6 * side, 40, 32 * f * side, 19 * f, -1.2, 1.2)),
          ),
        ),
      );
      callouts.push({ structure: "cerebellum", at: [24, 46] }, { structure: "pons", at: [-4, 4] });
    }
  }
  const eyes = presence(level, 0.5, 0.69);
  if (eyes > 0) {
    for (const side of [1, -1])
      shapes.push(
        filled(
          "fat",
          ring(at("8,-54 24,-68 40,-58 30,-40 12,-30").map(([x = 0, y = 0]): Point => [x * side, y])),
          "line",
        ),
        filled("sinew", ellipse(25 * side, -57, 11.5 * eyes), "outline"),
        filled("hollow", ellipse(26 * side, -65, 4, 3), "fine"),
        stroked(
          "nerve",
          smooth([
            [23 * side, -47],
            [16 * side, -38],
            [6 * side, -26],
          ]),
        ),
      );
    shapes.push(filled("hollow", ring(bothHalves(at("0,-78 6,-72 7,-50 5,-36 0,-34"))), "line"));
    callouts.push(
      { structure: "eyeball", at: [-28, -58] },
      { structure: "optic-nerve", at: [17, -39] },
      { structure: "nasal-cavity", at: [3, -54] },
      { structure: "temporal-lobe", at: [wide * 0.62, -6] },
      { structure: "cerebellar-hemisphere", at: [-24, 46] },
    );
  }
  if (level >= 0.68) {
    const jaw: Point[] = [
      [wide * 0.86, 0],
      [wide * 0.8, -long * 0.4],
      [wide * 0.46, -long * 0.78],
      [0, -long * 0.9],
      [-wide * 0.46, -long * 0.78],
      [-wide * 0.8, -long * 0.4],
      [-wide * 0.86, 0],
    ];
    const mouth = level < 0.9;
    shapes.push(
      ...(mouth
        ? [
            filled("bone", roundBand(jaw, [3, 4, 4.6, 5, 4.6, 4, 3]), "line"),
            filled(
              "muscle",
              ring(
                bothHalves([
                  [0, -long * 0.78],
                  [wide * 0.36, -long * 0.62],
                  [wide * 0.42, -long * 0.24],
                  [wide * 0.2, -long * 0.06],
                  [0, -long * 0.04],
                ]),
              ),
              "outline",
            ),
            stroked(
              "hatch",
              ...[-0.2, -0.1, 0, 0.1, 0.2].map((x) =>
                smooth([
                  [wide * x, -long * 0.1],
                  [wide * x * 1.6, -long * 0.6],
                ]),
              ),
            ),
          ]
        : [
            filled(
              "glass",
              ring(
                bothHalves([
                  [0, -long * 0.66],
                  [18, -long * 0.5],
                  [24, -long * 0.16],
                  [0, -long * 0.1],
                ]),
              ),
              "line",
            ),
            filled("hollow", ellipse(0, -long * 0.36, 8, 12), "line"),
          ]),
      filled("hollow", ellipse(0, long * 0.02, 13, 4.6), "line"),
      ...[1, -1].flatMap((side): Shape[] => [
        filled(
          "muscle",
          ring(
            [
              [wide * 0.9, -4],
              [wide * 0.62, -long * 0.34],
              [wide * 0.56, 6],
              [wide * 0.7, 20],
            ].map(([x = 0, y = 0]): Point => [x * side, y]),
          ),
          "line",
        ),
        filled("artery", ellipse(28 * side, 8, 3.4), "line"),
        filled("vein", ellipse(35 * side, 14, 4.4), "line"),
        filled(
          "deep",
          ring(
            [
              [10, long * 0.4],
              [40, long * 0.36],
              [38, long * 0.74],
              [8, long * 0.84],
            ].map(([x = 0, y = 0]): Point => [x * side, y]),
          ),
          "line",
        ),
      ]),
      ...spongyBone(
        bothHalves([
          [0, long * 0.1],
          [12, long * 0.12],
          [15, long * 0.26],
          [0, long * 0.34],
        ]),
        vary,
        12,
      ),
      filled("paper", ellipse(0, long * 0.42, 9, 6), "line"),
      filled("nerve", ellipse(0, long * 0.42, 5, 3.4), "fine"),
    );
    callouts.push(
      mouth ? { structure: "tongue", at: [6, -long * 0.4] } : { structure: "larynx", at: [6, -long * 0.36] },
      { structure: "internal-carotid-artery", at: [28, 8] },
      { structure: "spinal-cord", at: [-2, long * 0.42] },
    );
  }
  return { shapes, callouts };
}
