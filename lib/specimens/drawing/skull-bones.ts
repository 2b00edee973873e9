/**
 * The skull in parts: a lower jaw, a row of lower jaws in growth, the skull of a
 * newborn, a skull whose bones are mounted apart, a temporal bone with its cavities
 * opened. Jaws and skulls face left; the temporal bone is a right one from outside.
 */
import {
  along,
  arc,
  at,
  band,
  box,
  contours,
  ellipse,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import {
  filled,
  fitSketch,
  mergeSketches,
  type Shape,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

function tooth([x, y]: Point, halfWidth: number, rise: number): Shape {
  return filled(
    "sinew",
    ring(
      [
        [x - halfWidth * 0.8, y + 2],
        [x - halfWidth, y - rise],
        [x, y - rise * 0.86],
        [x + halfWidth, y - rise],
        [x + halfWidth * 0.8, y + 2],
      ],
      0.6,
    ),
    "line",
  );
}

const jawOutline: readonly Point[] = at(`
  10,55 4,64 5,78 12,88 28,91 56,87 82,80 100,68 109,48 113,26 117,8 111,1 104,2 102,14 97,22 90,18
  87,8 82,10 80,28 84,44 78,53 58,56 30,57
`);

/** @param growth 1 in an adult, less the lower its ramus stands and the fewer teeth have come */
export function drawLowerJaw(vary: Variation, growth = 1): Sketch {
  const ramus = 0.5 + growth * 0.5;
  const outline = vary.loosen(jawOutline, 0.6).map(([x, y]): Point => {
    const up = Math.max(0, 56 - y);
    return [x + up * (1 - ramus) * 0.7, y + up * (1 - ramus)];
  });
  const places = along(at("14,56 44,57.5 78,53"), 8);
  const come = Math.round(growth * 8);
  const teeth = places.slice(0, come).map((place, index) => tooth(place, 2.6 + index * 0.36, 10));
  const germs = places
    .slice(Math.max(0, come - 2), 8)
    .filter((_, index) => growth < 1 && index < 4)
    .flatMap(([x, y]): Shape[] => [
      filled("hollow", ellipse(x, y + 13, 5.4, 6.4), "line"),
      tooth([x, y + 14], 3.2, 3.6),
    ]);
  return {
    shapes: [
      ...teeth,
      filled("bone", ring(outline, 0.8), "outline"),
      stroked("hatch", contours(outline, 4, 9, [0.95, 0.9, 0.85], [60, 56])),
      stroked("fine", smooth(at("84,56 92,64 90,74")), smooth(at("6,66 12,72 10,82"))),
      filled("hollow", ellipse(32, 74, 2), "fine"),
      ...germs,
    ],
    callouts: [
      { structure: "mental-foramen", at: [32, 74] },
      { structure: "ramus-of-mandible", at: [102, 40] },
      { structure: "mental-protuberance", at: [8, 82] },
      { structure: "body-of-mandible", at: [60, 72] },
      { structure: "incisor-teeth", at: places[0] ?? [14, 52] },
      { structure: "molar-teeth", at: places[6] ?? [70, 52] },
    ],
  };
}

/** Lower jaws from the youngest to the oldest, in their case. */
export function drawLowerJaws(vary: Variation, count: number): Sketch {
  const firstRow = Math.ceil(count / 2);
  const jaws = Array.from({ length: count }, (_, index): Sketch => {
    const growth = count === 1 ? 1 : 0.14 + (0.8 * index) / (count - 1);
    const row = index < firstRow ? 0 : 1;
    const inRow = row === 0 ? firstRow : count - firstRow;
    const place = row === 0 ? index : index - firstRow;
    const room = 300 / inRow;
    const size = 58 + 36 * (index / Math.max(count - 1, 1));
    return fitSketch(drawLowerJaw(vary, growth), {
      x: place * room + (room - size * 1.25) / 2,
      y: row * 96 + (84 - size) * 0.8,
      width: size * 1.25,
      height: size,
    });
  });
  const [tray, oldest] = [box(-8, -12, 316, 206), jaws.at(-1)];
  return {
    shapes: [
      filled("fat", tray, "outline"),
      filled("glass", box(0, -4, 300, 190), "line"),
      ...mergeSketches(...jaws).shapes,
    ],
    callouts: [
      ...(oldest?.callouts ?? []),
      { structure: "mandible", at: jaws[1]?.callouts[3]?.at ?? [150, 40] },
      { structure: "permanent-teeth", at: jaws[3]?.callouts[5]?.at ?? [80, 120] },
      { structure: "deciduous-teeth", at: jaws[2]?.callouts[4]?.at ?? [220, 50] },
    ],
  };
}

export function drawNewbornSkull(vary: Variation): Sketch {
  const vault: Point[] = vary.loosen(
    at(`
      36,74 30,56 36,34 54,16 82,6 112,4 142,12 168,30 182,54 184,78 174,98 156,112 132,120 106,118
      82,112 56,102
    `),
    0.8,
  );
  const plate = (points: string): Shape => filled("bone", ring(vary.loosen(at(points), 0.5), 0.9), "outline");
  const rays = (from: Point, ends: string): Shape =>
    stroked(
      "hatch",
      ...at(ends).map((end) => straight([[(from[0] * 2 + end[0]) / 3, (from[1] * 2 + end[1]) / 3], end])),
    );
  return {
    shapes: [
      filled("fluid", ring(vault), "line"),
      plate("38,72 33,56 39,37 55,21 76,13 84,24 82,40 77,56 70,66 54,66 44,70"),
      plate("92,22 108,10 134,14 156,26 167,40 168,54 158,72 146,86 132,88 112,84 94,80 84,70 86,50"),
      plate("172,48 178,58 179,78 170,95 156,106 142,108 146,94 158,82 168,66"),
      plate("88,80 100,83 116,89 132,94 140,100 134,112 118,112 102,108 88,100 82,90"),
      plate("64,70 76,66 81,74 80,86 72,90 66,82"),
      rays([128, 48], "96,24 130,18 160,40 158,66 130,84 92,70"),
      rays([58, 42], "40,44 54,26 76,20 78,46 62,62"),
      rays([170, 78], "174,56 176,80 160,102"),
      filled(
        "bone",
        ring(
          at(
            "44,70 36,78 33,88 27,94 25,104 31,108 30,116 44,118 60,114 70,104 84,98 82,92 68,88 66,74 56,66",
          ),
          0.9,
        ),
        "outline",
      ),
      filled("hollow", ring(at("42,76 54,69 66,75 68,90 58,97 45,94 39,86")), "outline"),
      filled("hollow", ring(at("28,98 34,94 37,102 33,108 27,106")), "line"),
      filled("bone", ring(at("64,92 80,92 98,97 97,102 80,99 66,98"), 0.8), "line"),
      filled(
        "bone",
        ring(
          at(
            "102,98 108,97 114,102 112,114 106,130 94,139 66,143 40,141 31,133 34,124 46,126 70,126 88,122 94,112 97,102 90,96 94,92 98,94",
          ),
          0.8,
        ),
        "outline",
      ),
      stroked("line", arc(116, 106, 8, 7, 0.2, 5.6)),
      stroked("fine", ellipse(138, 46, 8, 7)),
      stroked("hatch", contours(vault, 8, 12, [0.96])),
    ],
    callouts: [
      { structure: "anterior-fontanelle", at: [86, 14] },
      { structure: "coronal-suture", at: [84, 44] },
      { structure: "sphenoidal-fontanelle", at: [82, 70] },
      { structure: "mastoid-fontanelle", at: [143, 92] },
      { structure: "posterior-fontanelle", at: [170, 44] },
      { structure: "parietal-tuber", at: [138, 46] },
      { structure: "squamous-suture", at: [116, 86] },
      { structure: "bony-orbit", at: [54, 84] },
      { structure: "mandible", at: [62, 134] },
    ],
  };
}

/** Each bone at a distance from its neighbours, held on a rod and wires. */
export function drawSkullApart(vary: Variation): Sketch {
  const bone = (points: string, dx: number, dy: number): Shape =>
    filled(
      "bone",
      ring(
        vary.loosen(at(points), 0.4).map(([x, y]): Point => [x + dx, y + dy]),
        0.9,
      ),
      "outline",
    );
  const wire = (from: Point, to: Point): Shape => stroked("hatch", straight([from, to]));
  const spots = at("40,20 104,-16 186,60 118,70 76,78 46,92 20,76 52,128 24,66 70,166");
  return {
    shapes: [
      ...spots.map((spot) => wire([104, 96], spot)),
      filled("glass", band(at("104,96 104,150 104,210"), 1.6), "line"),
      filled("fat", box(58, 210, 92, 9), "outline"),
      bone("40,62 34,44 42,26 62,10 82,3 84,16 80,28 86,42 80,54 66,58 52,56", -14, -10),
      bone("86,3 122,4 146,14 146,34 152,48 146,62 134,72 120,60 96,54 88,52 90,42 85,28 88,16", 2, -24),
      bone("150,18 168,38 172,64 164,86 150,98 140,92 146,76 150,62 157,48 150,34", 18, 0),
      bone("98,76 106,64 124,60 138,70 140,82 134,90 136,106 126,122 118,112 114,98 100,96", 6, -4),
      bone("66,92 80,90 84,104 74,112 64,104", 0, 0),
      bone("76,62 88,58 94,66 94,82 86,94 80,84", -8, -8),
      bone("60,82 74,80 80,90 72,100 58,102 54,92", -18, -8),
      bone("36,92 50,88 60,98 74,104 76,114 70,124 44,127 28,124 30,112", -14, 4),
      bone("28,76 36,72 40,84 34,92 26,90", -22, -16),
      bone("44,78 52,76 56,86 48,92 42,88", -16, -14),
      ...along(at("20,127 54,128"), 7).map((place) => tooth([place[0], place[1] + 6], 2.4, 4)),
      bone(
        "104,98 112,92 117,99 111,118 106,138 96,150 72,158 50,166 34,167 27,158 29,146 36,142 60,142 80,138 88,126 90,112 86,102 93,98 99,106",
        4,
        26,
      ),
      ...along(at("36,168 76,162"), 7).map((place) => tooth([place[0], place[1] + 1], 2.4, 6)),
      stroked(
        "hatch",
        smooth(at("54,4 40,18 32,34")),
        smooth(at("130,-14 142,2 146,20")),
        smooth(at("180,40 184,62 176,82")),
      ),
      filled("hollow", ellipse(123, 96, 3, 2.6), "line"),
    ],
    callouts: [
      { structure: "frontal-bone", at: [40, 20] },
      { structure: "parietal-bone", at: [120, 2] },
      { structure: "occipital-bone", at: [180, 62] },
      { structure: "temporal-bone", at: [126, 76] },
      { structure: "sphenoid-bone", at: [78, 72] },
      { structure: "ethmoid-bone", at: [74, 100] },
      { structure: "zygomatic-bone", at: [48, 84] },
      { structure: "maxilla", at: [36, 112] },
      { structure: "nasal-bone", at: [10, 66] },
      { structure: "lacrimal-bone", at: [32, 70] },
      { structure: "mandible", at: [84, 178] },
    ],
  };
}

/** Facing right; behind the canal of the ear a window is cut to the ossicles, the cochlea and the canals. */
export function drawTemporalBone(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      14,70 18,44 34,22 62,8 94,6 122,18 138,40 144,60 160,66 186,70 206,76 205,84 184,82 158,80 140,84
      132,96 120,100 104,104 96,120 82,146 68,158 52,154 42,134 30,114 18,94
    `),
    0.8,
  );
  return {
    shapes: [
      filled("bone", band(at("112,98 110,122 102,152"), [5, 3.4, 1]), "outline"),
      filled("bone", ring(outline, 0.9), "outline"),
      stroked(
        "hatch",
        ...at("26,44 46,22 76,14 108,22 130,44").map((end) =>
          straight([[84 + (end[0] - 84) * 0.72, 70 + (end[1] - 70) * 0.72], end]),
        ),
        smooth(at("30,110 42,130 54,148")),
        smooth(at("36,104 50,128 60,148")),
      ),
      filled(
        "hollow",
        ring(at("34,82 52,66 82,60 112,64 128,78 122,96 100,102 84,114 68,128 52,118 38,102")),
        "outline",
      ),
      stroked(
        "fine",
        ...at("46,90 54,102 62,114 50,80 60,92 70,106 58,78").map(([x, y]) => ellipse(x, y, 4.4, 3.8)),
      ),
      filled("nerve", roundBand(at("70,74 74,86 72,104 74,122"), 2.2), "line"),
      stroked(
        "line",
        arc(78, 74, 11, 8, 2.4, 6.6),
        arc(74, 82, 7, 11, 1.2, 5.4),
        arc(84, 82, 11, 5.4, -0.6, 3.2),
      ),
      stroked(
        "outline",
        arc(110, 80, 9, 9, -1, 4.9),
        arc(110, 80, 5.4, 5.4, -0.4, 5),
        arc(110, 80, 2.2, 2.2, 0, 4.4),
      ),
      filled("bone", roundBand(at("94,70 94,78 91,90"), [3.2, 2, 1.2]), "line"),
      filled("bone", roundBand(at("87,72 85,80 90,87"), [3, 2, 1]), "line"),
      stroked("line", ring(at("90,88 98,86 98,92")), straight(at("99,85 99,93"))),
      stroked("fine", smooth(at("112,90 124,98 138,102"))),
      filled("hollow", ellipse(120, 92, 2.6, 2), "line"),
    ],
    callouts: [
      { structure: "cochlea", at: [110, 80] },
      { structure: "stapes", at: [97, 89] },
      { structure: "malleus", at: [94, 71] },
      { structure: "incus", at: [86, 74] },
      { structure: "lateral-semicircular-canal", at: [84, 87] },
      { structure: "anterior-semicircular-canal", at: [78, 66] },
      { structure: "facial-canal", at: [73, 108] },
      { structure: "mastoid-air-cells", at: [54, 102] },
      { structure: "styloid-process-of-temporal-bone", at: [108, 130] },
    ],
  };
}
