/**
 * One lung from the side of its root, the heart with both lungs from the front, the
 * wall of the chest from within, and the diaphragm from below.
 */
import { belly, mass } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  arc,
  at,
  beside,
  bothHalves,
  ellipse,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import {
  bothSides,
  filled,
  finer,
  fitSketch,
  mirrorSketch,
  type Shape,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import { drawHeart, drawLungs } from "#lib/specimens/drawing/thorax-organs.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** The left lung lies with its front to the right of the plate, the right lung the other way. */
export function drawLung(vary: Variation, side: "left" | "right"): Sketch {
  const left = side === "left";
  const outline = vary.loosen(
    at(
      left
        ? `62,4 78,8 90,26 98,48 101,68 92,84 88,100 96,112 112,122 112,134 98,140 84,148 66,160 40,172
           18,176 8,166 6,140 8,108 14,72 26,36 42,12`
        : `62,4 78,8 92,28 102,54 108,84 112,112 113,134 104,146 84,152 62,162 38,174 18,176 8,166 6,140
           8,108 14,72 26,36 42,12`,
    ),
    0.9,
  );
  const fissures: Path[] = [
    smooth(at("20,50 34,62 46,74")),
    smooth(at("58,112 70,130 82,148")),
    ...(left ? [] : [smooth(at("64,98 84,98 110,100"))]),
  ];
  const sketch: Sketch = {
    shapes: [
      ...mass(outline, "tissue", 12, 18, [0.95, 0.9]),
      filled(
        "hollow",
        ring(left ? at("64,80 84,74 90,88 86,102 74,108 62,100") : at("68,84 82,80 86,92 78,100 68,98")),
        "fine",
      ),
      stroked("hatch", ...[0.86, 0.72].map((f) => arc(77, 91, 16 * f, 18 * f, 2.2, 4.6))),
      stroked("line", ...fissures),
      filled("sinew", ring(at("40,66 56,60 68,70 68,92 62,112 56,132 50,134 48,112 40,92")), "line"),
      filled("vein", ellipse(left ? 54 : 60, 72, 8, 7), "line"),
      filled("hollow", ellipse(left ? 50 : 49, left ? 90 : 80, 8, 8.4), "outline"),
      stroked("line", arc(left ? 50 : 49, left ? 90 : 80, 5.6, 6, 0.4, 5.9)),
      filled("artery", ellipse(62, 92, 5, 6), "line"),
      filled("artery", ellipse(55, 110, 5.4, 5), "line"),
      stroked("hatch", smooth(at("20,72 16,110 18,150")), smooth(at("26,58 23,100 25,148"))),
    ],
    callouts: left
      ? [
          { structure: "left-pulmonary-artery", at: [54, 70] },
          { structure: "left-main-bronchus", at: [50, 91] },
          { structure: "left-superior-pulmonary-vein", at: [63, 92] },
          { structure: "lingula-of-left-lung", at: [108, 130] },
          { structure: "cardiac-impression-of-lung", at: [80, 90] },
          { structure: "oblique-fissure-of-lung", at: [28, 57] },
          { structure: "apex-of-lung", at: [60, 12] },
          { structure: "pulmonary-ligament", at: [52, 128] },
        ]
      : [
          { structure: "right-pulmonary-artery", at: [60, 72] },
          { structure: "right-main-bronchus", at: [49, 80] },
          { structure: "oblique-fissure-of-lung", at: [28, 57] },
          { structure: "horizontal-fissure-of-right-lung", at: [94, 98] },
          { structure: "apex-of-lung", at: [60, 12] },
        ],
  };
  return left ? sketch : mirrorSketch(sketch);
}

export function drawHeartWithLungs(vary: Variation): Sketch {
  const lungs = drawLungs(vary);
  const heart = fitSketch(finer(drawHeart(vary)), { x: -38, y: 44, width: 84, height: 100 });
  return {
    shapes: [
      ...lungs.shapes,
      ...heart.shapes,
      stroked("nerve", smooth(at("-19,8 -26,48 -30,84 -28,126")), smooth(at("20,8 27,44 44,84 44,122"))),
    ],
    callouts: [...heart.callouts, ...lungs.callouts, { structure: "phrenic-nerve", at: [-29, 76] }],
  };
}

/** A right wall seen from the middle of the body: the breastbone at the left, the spine at the right. */
export function drawThoracicWall(vary: Variation): Sketch {
  const count = 7;
  const ribAt = (index: number): Point[] => {
    const y = 20 + index * 27;
    return [
      [20, y + 26 + index * 1.6],
      [60, y + 44],
      [110, y + 36],
      [160, y + 12],
      [204, y - 8],
      [232, y - 10],
    ];
  };
  const ribs = Array.from({ length: count }, (_, index) => vary.loosen(ribAt(index), 0.6));
  const nerves = ribs.map((rib) => smooth(beside(rib.slice(1), -9)));
  const arteries = ribs.map((rib) => smooth(beside(rib.slice(1), -7)));
  const veins = ribs.map((rib) => smooth(beside(rib.slice(1), -5.4)));
  const fibres = ribs.slice(0, -1).flatMap((rib, index): Path[] => {
    const top = along(beside(rib, -9), 21);
    const foot = along(beside(ribs[index + 1] ?? rib, 5), 21);
    return top.slice(1).map((point, step) => straight([point, foot[step] ?? point]));
  });
  return {
    shapes: [
      filled(
        "muscle",
        ring(
          at("12,34 40,20 120,30 200,8 240,2 242,100 240,190 200,200 140,222 70,236 30,232 10,200 8,120"),
          0.7,
        ),
        "outline",
      ),
      stroked("hatch", ...fibres),
      filled("bone", roundBand(at("14,36 15,110 14,180 16,206"), [9, 7, 8, 4]), "outline"),
      ...ribs.flatMap((rib): Shape[] => [
        filled("glass", roundBand(rib.slice(0, 2), [4.4, 5]), "line"),
        filled("bone", roundBand(rib.slice(1), [4.6, 5.4, 5.2, 5, 5.4]), "line"),
      ]),
      stroked("vein", ...veins),
      stroked("artery", ...arteries),
      stroked("nerve", ...nerves),
      filled("bone", roundBand(at("240,4 243,60 243,130 240,190"), 6), "line"),
      stroked(
        "line",
        ...[24, 48, 72, 96, 120, 144, 168].map((y) =>
          straight([
            [236, y],
            [249, y],
          ]),
        ),
      ),
      filled("nerve", roundBand(at("226,10 228,60 228,130 224,192"), 1.6), "fine"),
      ...ribs.map((rib): Shape => filled("nerve", ellipse(227, (rib[5]?.[1] ?? 0) + 9, 3, 4.6), "fine")),
      stroked("artery", smooth(at("32,26 33,100 34,170 42,220"))),
      stroked("vein", smooth(at("36,28 37,100 38,170 46,220"))),
    ],
    callouts: [
      { structure: "intercostal-nerve", at: [160, 76] },
      { structure: "internal-thoracic-artery", at: [33, 60] },
      { structure: "innermost-intercostal-muscle", at: [110, 120] },
      { structure: "thoracic-sympathetic-trunk", at: [228, 100] },
      { structure: "sternum", at: [14, 110] },
      { structure: "costal-cartilage", at: [44, 170] },
      { structure: "posterior-intercostal-arteries", at: [190, 118] },
    ],
  };
}

export function drawDiaphragm(vary: Variation): Sketch {
  const rim = bothHalves(
    at("0,0 40,4 84,18 118,46 132,80 124,112 96,132 62,136 34,128 26,150 18,190 6,196 0,160"),
  );
  const tendon = vary.loosen(
    at("0,40 22,34 54,44 82,70 84,92 66,92 40,78 14,74 -14,74 -40,78 -66,94 -86,92 -84,68 -54,42 -22,34"),
    0.8,
  );
  const fibres = rim.slice(1, 9).flatMap((from, index): Path[] => {
    const to = tendon[Math.min(1 + Math.round(index * 0.7), 6)] ?? [0, 60];
    return [-0.1, 0.12, 0.34].map((shift) => {
      const end = rim[index + 2] ?? from;
      const start: Point = [
        from[0] + (end[0] - from[0]) * (shift + 0.2),
        from[1] + (end[1] - from[1]) * (shift + 0.2),
      ];
      return straight([
        [start[0] * 0.97, start[1] * 0.97 + 2],
        [to[0] + (start[0] - to[0]) * 0.3, to[1] + (start[1] - to[1]) * 0.3],
      ]);
    });
  });
  return {
    shapes: [
      filled("muscle", ring(rim, 0.9), "outline"),
      ...bothSides([stroked("hatch", ...fibres)]),
      filled("sinew", ring(tendon, 0.9), "line"),
      stroked(
        "hatch",
        ...[-50, -30, 30, 50].map((x) =>
          smooth([
            [x * 0.5, 50],
            [x, 62],
            [x * 1.4, 80],
          ]),
        ),
      ),
      ...belly(at("6,84 14,110 12,150 8,190"), [4, 9, 8, 4], "deep"),
      ...belly(at("-6,84 -14,110 -12,150 -8,192"), [4, 9, 8, 4], "deep"),
      stroked(
        "outline",
        arc(40, 134, 16, 13, Math.PI + 0.2, 2 * Math.PI - 0.2),
        arc(-40, 134, 16, 13, Math.PI + 0.2, 2 * Math.PI - 0.2),
      ),
      stroked(
        "outline",
        arc(78, 134, 20, 12, Math.PI + 0.2, 2 * Math.PI - 0.2),
        arc(-78, 134, 20, 12, Math.PI + 0.2, 2 * Math.PI - 0.2),
      ),
      filled("vein", ellipse(-30, 62, 12, 9.4), "outline"),
      filled("hollow", ellipse(-30, 62, 8.4, 6), "fine"),
      filled("muscle", ellipse(9, 96, 7, 10, -0.3), "outline"),
      filled("hollow", ellipse(9, 96, 3, 5, -0.3), "fine"),
      filled("artery", ellipse(0, 134, 6.4, 7.6), "outline"),
      filled("hollow", ellipse(0, 134, 3.8, 5), "fine"),
      stroked("artery", smooth(at("5,128 30,110 62,104 92,84")), smooth(at("-5,128 -30,110 -62,106 -92,84"))),
    ],
    callouts: [
      { structure: "central-tendon-of-diaphragm", at: [50, 64] },
      { structure: "caval-opening", at: [-30, 62] },
      { structure: "oesophageal-hiatus", at: [9, 96] },
      { structure: "aortic-hiatus", at: [0, 134] },
      { structure: "right-crus-of-diaphragm", at: [-12, 160] },
      { structure: "inferior-phrenic-artery", at: [62, 104] },
      { structure: "costal-part-of-diaphragm", at: [-112, 84] },
      { structure: "medial-arcuate-ligament", at: [44, 122] },
    ],
  };
}
