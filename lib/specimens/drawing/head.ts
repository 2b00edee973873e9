/**
 * The head from the left side as a dissection, the skull from the side and from
 * the front, and the profile that the head's sections share.
 */
import { belly } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  arc,
  at,
  bothHalves,
  contours,
  ellipse,
  ellipsePoints,
  mirrored,
  type Path,
  type Point,
  ring,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** Facing left: from the crown forward over the face, the front of the neck, its back, the occiput. */
export const profile: readonly Point[] = at(`
  104,4 74,7 48,20 33,42 29,60 30,70 26,80 17,94 11,103 13,109 23,112 21,118 17,123 22,129 18,135
  22,141 20,150 24,160 36,166 56,164 74,163 82,172 82,194 80,220 118,226 158,220 152,196 152,174
  164,150 178,124 184,92 178,56 158,24 132,9
`);

function vesselsOfFace(vary: Variation): Shape[] {
  return [
    stroked("vein", smooth(at("116,222 112,190 108,168")), smooth(at("52,154 44,130 36,108 34,92"))),
    stroked(
      "artery",
      smooth(at("104,222 102,190 106,166 112,140 114,112 108,84 94,60 78,44")),
      smooth(vary.loosen(at("103,180 80,166 58,152 48,136 40,116 35,98"), 1.2)),
      smooth(at("110,90 124,66 138,46 148,34")),
      smooth(at("104,174 130,162 150,138 162,112")),
      smooth(at("52,142 38,132 27,128")),
      smooth(at("40,116 30,114 26,113")),
      smooth(at("112,128 90,120 66,112")),
    ),
  ];
}

export function drawHead(vary: Variation): Sketch {
  const outline = vary.loosen(profile, 0.9);
  const trunk: Point = [112, 128];
  const rays: Point[][] = [
    [trunk, [98, 106], [80, 82], [62, 66]],
    [trunk, [90, 116], [64, 100], [48, 88]],
    [trunk, [86, 124], [60, 116], [38, 112]],
    [trunk, [88, 132], [62, 136], [40, 138]],
    [trunk, [98, 146], [78, 156], [50, 158]],
    [trunk, [106, 152], [100, 176], [92, 200]],
  ];
  return {
    shapes: [
      filled("tissue", ring(outline, 0.9), "outline"),
      ...belly(at("88,118 88,84 92,56 106,32"), [9, 24, 34, 20], "muscle"),
      ...belly(at("70,104 80,128 88,156"), [8, 15, 9], "muscle"),
      ...belly(at("128,132 120,164 106,196 96,220"), [9, 13, 13, 9], "muscle"),
      ...belly(at("150,148 148,180 150,220"), [10, 12, 9], "muscle"),
      filled("muscle", ring(ellipsePoints(45, 76, 17, 13, -0.1, 12)), "line"),
      stroked("fine", arc(45, 76, 12.5, 9.5, 0, 5.9), arc(45, 76, 8.5, 6, 0, 5.9)),
      filled("sinew", ring(at("35,76 44,71 53,76 44,80"), 0.8), "line"),
      filled("hollow", ellipse(42, 75.5, 2.8), "line"),
      filled("muscle", ring(at("16,122 24,117 36,121 42,128 34,135 22,137 16,134 22,129"), 0.8), "line"),
      stroked("fine", smooth(at("24,121 36,128 26,134"))),
      stroked(
        "line",
        smooth(at("22,129 32,128")),
        smooth(at("13,108 20,106 23,101")),
        arc(21, 103, 6, 6, -0.6, 1.4),
      ),
      filled("fat", ring(at("104,112 116,108 124,122 120,142 110,154 100,146 98,128")), "line"),
      stroked(
        "fine",
        ...Array.from(
          { length: 8 },
          (): Path => arc(110 + vary.within(-7, 7), 130 + vary.within(-14, 14), 4, 3, 0.2, 2.6),
        ),
      ),
      ...vesselsOfFace(vary),
      stroked("nerve", ...rays.map((ray) => smooth(vary.loosen(ray, 1)))),
      filled("tissue", ring(at("122,96 130,86 140,90 140,104 134,114 130,124 123,122 124,110")), "outline"),
      stroked(
        "line",
        smooth(at("126,98 132,92 136,98 132,108 128,116")),
        smooth(at("125,108 129,104 130,110")),
      ),
      stroked("hatch", contours(outline, 28, 32, [0.975, 0.95, 0.925], [104, 110])),
    ],
    callouts: [
      { structure: "temporalis", at: [96, 62] },
      { structure: "facial-nerve", at: [84, 124] },
      { structure: "parotid-gland", at: [112, 142] },
      { structure: "masseter", at: [80, 140] },
      { structure: "facial-artery", at: [50, 140] },
      { structure: "sternocleidomastoid", at: [118, 176] },
    ],
  };
}

export function drawSkullSide(vary: Variation): Sketch {
  const vault: Point[] = vary.loosen(
    at(`
      40,62 34,44 42,26 62,10 92,2 122,4 150,16 168,38 172,64 164,86 150,98 136,102 122,108 110,106
      92,104 70,100 52,88
    `),
    0.8,
  );
  const jaw: Point[] = at(`
    104,98 112,92 117,99 111,118 106,138 96,150 72,158 50,166 34,167 27,158 29,146 36,142 60,142
    80,138 88,126 90,112 86,102 93,98 99,106
  `);
  const teeth = (count: number, from: Point, to: Point, length: number): Shape[] =>
    along([from, to], count).map((point, index): Shape => {
      const wide = 1.9 + index * 0.34;
      return filled(
        "sinew",
        ring(
          [
            [point[0] - wide, point[1]],
            [point[0] + wide, point[1]],
            [point[0] + wide * 0.86, point[1] + length],
            [point[0] - wide * 0.86, point[1] + length],
          ],
          0.5,
        ),
        "fine",
      );
    });
  return {
    shapes: [
      filled("bone", ring(jaw), "outline"),
      stroked("hatch", contours(jaw, 4, 8, [0.95, 0.9], [70, 120])),
      filled("bone", ring(vault), "outline"),
      filled(
        "bone",
        ring(
          at(`
            44,60 36,68 32,80 26,92 22,101 28,107 25,118 27,128 40,130 62,128 74,124 80,114 86,100 96,92
            92,80 76,76 70,62 56,56
          `),
          0.9,
        ),
        "outline",
      ),
      filled("hollow", ring(at("44,66 56,60 68,66 70,78 60,86 48,84 42,76")), "outline"),
      filled("hollow", ring(at("27,94 36,90 40,100 34,110 27,108")), "line"),
      ...teeth(7, [30, 127], [71, 124], 8),
      ...teeth(7, [31, 136], [72, 134], 8),
      filled("bone", ring(at("66,84 82,86 104,90 118,92 118,97 102,97 82,98 70,98 62,92"), 0.8), "line"),
      filled("bone", ring(at("118,100 128,98 132,108 124,122 117,114")), "line"),
      filled("hollow", ellipse(119, 100, 3.4, 3), "line"),
      stroked(
        "line",
        smooth(at("82,3 84,16 80,28 86,42 80,54")),
        smooth(vary.loosen(at("146,14 146,34 152,48 146,62 142,78 132,86"), 1.2)),
        smooth(at("78,54 92,50 112,52 128,62 134,78 130,92")),
        smooth(at("80,56 76,70 84,84")),
      ),
      stroked(
        "hatch",
        contours(vault, 6, 10, [0.955, 0.91, 0.865], [104, 60]),
        smooth(at("66,42 90,34 122,38 140,56")),
        smooth(at("150,84 158,74 162,60")),
      ),
      stroked(
        "fine",
        smooth(at("46,58 58,54 70,58")),
        smooth(at("72,106 78,112")),
        smooth(at("98,112 96,128")),
      ),
      filled("hollow", ellipse(48, 150, 1.8), "fine"),
    ],
    callouts: [
      { structure: "parietal-bone", at: [116, 24] },
      { structure: "frontal-bone", at: [52, 34] },
      { structure: "bony-orbit", at: [54, 74] },
      { structure: "zygomatic-arch", at: [94, 94] },
      { structure: "mandible", at: [84, 146] },
      { structure: "occipital-bone", at: [160, 72] },
    ],
  };
}

export function drawSkullFront(vary: Variation): Sketch {
  const vault = bothHalves(at("0,2 26,4 48,18 58,42 56,64 50,74 54,84 50,96 42,104 34,122 22,130 0,132"));
  const jaw = bothHalves(at("0,146 24,144 36,132 44,104 49,108 46,136 38,156 22,170 10,175 0,174"));
  const tilt = vary.within(-1, 1);
  const orbit: Point[] = at("12,66 24,60 38,62 42,74 36,86 24,90 14,84 10,74");
  const sides = (points: readonly Point[], wash: "hollow" | "bone", stroke: "outline" | "line"): Shape[] => [
    filled(wash, ring(points), stroke),
    filled(wash, ring(mirrored(points)), stroke),
  ];
  return {
    shapes: [
      filled("bone", ring(jaw, 0.9), "outline"),
      filled("bone", ring(vault, 0.9), "outline"),
      stroked(
        "hatch",
        contours(vault, 2, 6, [0.95, 0.9, 0.85], [0, 60]),
        contours(vault, 17, 20, [0.95, 0.9], [0, 60]),
      ),
      ...sides(orbit, "hollow", "outline"),
      filled("hollow", ring(bothHalves(at("0,84 6,92 10,104 7,109 2,107 0,108")), 0.9), "outline"),
      stroked(
        "line",
        smooth([
          [0 + tilt, 84],
          [tilt, 106],
        ]),
      ),
      ...sides(at("42,82 52,80 53,92 44,100 34,100 30,94 38,90"), "bone", "line"),
      ...Array.from({ length: 10 }, (_, index): Shape[] => {
        const x = -20 + index * 4.4;
        return [
          filled(
            "sinew",
            ring(
              [
                [x - 1.9, 128],
                [x + 1.9, 128],
                [x + 1.7, 137],
                [x - 1.7, 137],
              ],
              0.5,
            ),
            "fine",
          ),
          filled(
            "sinew",
            ring(
              [
                [x - 1.7, 138],
                [x + 1.7, 138],
                [x + 1.9, 147],
                [x - 1.9, 147],
              ],
              0.5,
            ),
            "fine",
          ),
        ];
      }).flat(),
      stroked(
        "fine",
        smooth(at("-26,52 -14,54 0,60 14,54 26,52")),
        smooth(at("-3,66 0,76 3,66")),
        smooth(at("-10,162 0,158 10,162")),
      ),
      stroked("line", smooth(at("54,44 46,54 48,66")), smooth(at("-54,44 -46,54 -48,66"))),
      filled("hollow", ellipse(22, 98, 1.6), "fine"),
      filled("hollow", ellipse(-22, 98, 1.6), "fine"),
      filled("hollow", ellipse(20, 160, 1.6), "fine"),
      filled("hollow", ellipse(-20, 160, 1.6), "fine"),
      stroked("hatch", straight(at("36,118 40,108")), straight(at("-36,118 -40,108"))),
    ],
    callouts: [
      { structure: "frontal-bone", at: [-14, 34] },
      { structure: "bony-orbit", at: [28, 74] },
      { structure: "piriform-aperture", at: [-3, 98] },
      { structure: "zygomatic-bone", at: [46, 90] },
      { structure: "mandible", at: [26, 158] },
    ],
  };
}
