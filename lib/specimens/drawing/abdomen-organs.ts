/**
 * Organs of the belly and the pelvis as they are shown one by one: liver, stomach,
 * kidney whole and halved, spleen, pancreas with duodenum, the large bowel, uterus.
 */
import { mass, pouchedTube, reachInside, tube } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  arc,
  at,
  band,
  contours,
  dots,
  ellipse,
  ellipsePoints,
  mirrored,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function drawLiver(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      6,64 8,40 24,20 52,8 84,6 112,12 134,18 160,18 190,26 212,40 206,50 184,60 160,72 138,88 122,98
      108,116 86,134 60,146 36,146 18,130 8,98
    `),
    1.6,
  );
  return {
    shapes: [
      filled("duct", ring(at("92,120 104,122 112,138 106,154 94,154 88,138")), "outline"),
      ...mass(outline, "organ", 13, 19, [0.95, 0.9, 0.85, 0.8]),
      stroked("hatch", contours(outline, 2, 6, [0.93, 0.87])),
      filled("tissue", ring(at("126,14 136,18 140,46 134,84 126,98 130,60 128,34")), "line"),
      ...tube(at("128,92 130,104 126,118"), 2.6, "nerve"),
      ...tube(at("78,10 76,0 78,-10"), 9, "vein"),
      stroked(
        "fine",
        smooth(at("24,22 48,12 84,12 118,20")),
        smooth(at("36,96 52,108 66,128")),
        smooth(at("150,36 168,42 182,50")),
      ),
    ],
    callouts: [
      { text: "lobus dexter", at: [56, 70] },
      { text: "lobus sinister", at: [168, 46] },
      { text: "lig. falciforme", at: [134, 50] },
      { text: "vesica biliaris", at: [100, 140] },
      { text: "v. cava inferior", at: [78, -4] },
    ],
  };
}

export function drawStomach(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      88,34 98,14 122,4 146,12 160,36 162,68 154,102 136,132 108,152 78,158 54,150 40,136 30,138
      24,130 34,116 52,120 74,122 92,112 102,92 102,66 96,48
    `),
    1.2,
  );
  return {
    shapes: [
      ...tube(at("66,-16 74,10 90,40"), [8, 8, 9], "tissue"),
      filled("tissue", band(at("34,128 12,122 -6,134 -10,160 0,186"), [9, 10, 10, 10, 9]), "outline"),
      ...mass(outline, "organ", 5, 11, [0.95, 0.9, 0.85, 0.8]),
      stroked(
        "fine",
        ...[0, 1, 2, 3].map((lane) =>
          smooth(
            vary.loosen(
              [
                [112 + lane * 10, 20 + lane * 2],
                [120 + lane * 9, 60],
                [112 + lane * 9, 104 + lane],
                [84 + lane * 6, 134 + lane * 4],
                [56 + lane * 4, 134 + lane * 4],
              ],
              2,
            ),
          ),
        ),
      ),
      stroked(
        "artery",
        smooth(at("98,44 106,66 106,92 94,114 74,126 52,124")),
        smooth(at("166,60 160,100 140,138 108,158 76,164")),
        ...[0, 1, 2, 3].map((row) =>
          smooth([
            [106 - row * 2, 66 + row * 14],
            [118 - row * 2, 70 + row * 14],
            [126 - row * 4, 78 + row * 13],
          ]),
        ),
        ...[0, 1, 2, 3].map((row) =>
          smooth([
            [164 - row * 8, 82 + row * 18],
            [152 - row * 8, 84 + row * 16],
            [144 - row * 8, 80 + row * 16],
          ]),
        ),
      ),
      stroked("nerve", smooth(at("70,-12 82,20 98,44 108,60")), smooth(at("98,44 114,48 128,58"))),
      stroked("line", smooth(at("34,117 37,126 35,137"))),
    ],
    callouts: [
      { text: "oesophagus", at: [72, 0] },
      { text: "fundus gastricus", at: [126, 14] },
      { text: "curvatura major", at: [156, 102] },
      { text: "curvatura minor", at: [104, 84] },
      { text: "pylorus", at: [34, 127] },
      { text: "duodenum", at: [-8, 150] },
    ],
  };
}

const kidneyOutline: readonly Point[] = at(`
  64,6 84,14 98,36 104,66 102,98 92,126 74,142 54,140 42,126 40,108 46,94 48,78 44,62 38,46 40,24
  50,10
`);

export function drawKidney(vary: Variation): Sketch {
  const outline = vary.loosen(kidneyOutline, 1.2);
  return {
    shapes: [
      filled("fat", ring(vary.loosen(at("46,8 54,-8 70,-12 84,-4 78,8 62,2"), 1)), "line"),
      ...tube(at("58,84 30,96 20,130 16,178"), [8, 6, 3.6, 3.4], "nerve"),
      ...tube(at("62,76 28,70 0,72"), [4, 5, 5.6], "vein"),
      ...tube(at("62,64 30,57 0,53"), [2.4, 3.4, 3.6], "artery"),
      ...mass(outline, "organ", 1, 6, [0.93, 0.86, 0.79, 0.72]),
      stroked("fine", smooth(at("44,58 51,68 53,80 51,92 46,102")), smooth(at("47,64 56,72 57,84 52,96"))),
    ],
    callouts: [
      { text: "glandula suprarenalis", at: [66, -6] },
      { text: "a. renalis", at: [18, 56] },
      { text: "v. renalis", at: [16, 70] },
      { text: "ureter", at: [18, 140] },
      { text: "extremitas inferior", at: [76, 132] },
    ],
  };
}

export function drawKidneyHalved(vary: Variation): Sketch {
  const outline = vary.loosen(kidneyOutline, 1);
  const hilum: Point = [58, 76];
  const count = vary.whole(7, 9);
  const pyramids = Array.from(
    { length: count },
    (_, index): { tip: Point; left: Point; right: Point; top: Point } => {
      const turn = -1.85 + (3.7 * index) / (count - 1);
      const at = (share: number, angle: number): Point => {
        const reach = reachInside(hilum, angle, outline) * share;
        return [hilum[0] + Math.cos(angle) * reach, hilum[1] + Math.sin(angle) * reach];
      };
      const half = 1.3 / count;
      return {
        tip: at(0.44, turn),
        left: at(0.78, turn - half),
        right: at(0.78, turn + half),
        top: at(0.84, turn),
      };
    },
  );
  return {
    shapes: [
      ...tube(at("48,92 30,100 20,132 16,178"), [7, 6, 3.6, 3.4], "nerve"),
      ...mass(outline, "organ", 1, 7, [0.965]),
      ...pyramids.flatMap((pyramid): Shape[] => [
        filled("deep", ring([pyramid.tip, pyramid.left, pyramid.top, pyramid.right], 0.7), "line"),
        stroked(
          "hatch",
          ...[0.25, 0.5, 0.75].map((share) =>
            straight([
              pyramid.tip,
              [
                pyramid.left[0] + (pyramid.right[0] - pyramid.left[0]) * share,
                pyramid.left[1] + (pyramid.right[1] - pyramid.left[1]) * share,
              ],
            ]),
          ),
        ),
      ]),
      ...pyramids.map((pyramid) =>
        filled(
          "nerve",
          roundBand(
            [[54, 80], [(56 + pyramid.tip[0]) / 2, (79 + pyramid.tip[1]) / 2], pyramid.tip],
            [3, 1.5, 3],
          ),
          "fine",
        ),
      ),
      filled("nerve", ring(at("38,88 46,76 58,72 62,82 56,94 44,100 38,98")), "line"),
      ...tube(at("48,72 28,66 0,66"), [4, 4.6, 5], "vein"),
      ...tube(at("50,66 28,56 0,52"), [2.6, 3, 3.4], "artery"),
    ],
    callouts: [
      { text: "cortex renalis", at: [98, 62] },
      { text: "pyramis renalis", at: pyramids[1]?.top ?? [60, 30] },
      { text: "pelvis renalis", at: [48, 86] },
      { text: "a. renalis", at: [14, 54] },
      { text: "ureter", at: [18, 140] },
    ],
  };
}

export function drawSpleen(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      20,60 28,34 46,14 66,16 72,24 80,22 96,30 100,38 110,42 122,62 124,88 110,104 84,110 54,106
      32,90
    `),
    1.4,
  );
  return {
    shapes: [
      ...mass(outline, "organ", 9, 14, [0.93, 0.86, 0.79, 0.72]),
      filled("deep", ring(at("46,62 66,54 90,60 98,72 78,76 56,72")), "line"),
      ...tube(at("70,66 88,63 116,52 152,46"), [0.8, 2.6, 3, 3.4], "artery"),
      ...tube(at("66,71 86,71 116,64 152,60"), [0.8, 3.4, 4, 4.6], "vein"),
      stroked("artery", smooth(at("88,64 72,58 58,62")), smooth(at("84,66 70,66"))),
      stroked("fine", smooth(at("72,24 72,34")), smooth(at("98,36 92,44"))),
    ],
    callouts: [
      { text: "margo superior", at: [84, 24] },
      { text: "hilum splenicum", at: [60, 66] },
      { text: "a. splenica", at: [130, 50] },
      { text: "v. splenica", at: [134, 62] },
      { text: "facies diaphragmatica", at: [40, 92] },
    ],
  };
}

export function drawPancreas(vary: Variation): Sketch {
  const body: Point[] = vary.loosen(at("30,92 48,76 72,70 106,66 140,54 172,42"), 1.4);
  const lobes = along(body, 9);
  return {
    shapes: [
      ...tube(at("60,-6 56,24 44,60 28,84"), 3.6, "duct"),
      filled(
        "tissue",
        band(
          at("70,18 42,14 18,26 8,56 8,96 22,124 54,134 90,124 118,108"),
          [11, 11, 11, 11, 11, 11, 11, 10, 9],
        ),
        "outline",
      ),
      stroked(
        "fine",
        ...Array.from({ length: 12 }, (_, index) => arc(8, 44 + index * 5.4, 9, 2.4, 0.3, Math.PI - 0.3)),
      ),
      ...tube(at("88,150 86,110 88,84"), 5.4, "vein"),
      ...tube(at("100,150 98,112 96,80"), 4, "artery"),
      filled("fat", roundBand(body, [18, 21, 15, 15, 13, 8]), "outline"),
      stroked(
        "fine",
        ...lobes.flatMap((point, index) => [
          arc(point[0], point[1] - 5 + (index % 2) * 3, 7, 5, 0.3, 2.6),
          arc(point[0] + 5, point[1] + 4, 6, 4, 3.4, 5.6),
        ]),
      ),
      stroked("duct", smooth(at("14,96 40,88 72,74 106,68 140,56 168,45")), smooth(at("44,60 30,86 15,95"))),
      stroked("artery", smooth(at("78,46 98,44 116,50 132,40 150,42 170,30"))),
    ],
    callouts: [
      { text: "duodenum", at: [8, 70] },
      { text: "ductus choledochus", at: [56, 20] },
      { text: "ductus pancreaticus", at: [116, 65] },
      { text: "caput pancreatis", at: [36, 96] },
      { text: "cauda pancreatis", at: [168, 42] },
      { text: "v. mesenterica superior", at: [87, 140] },
    ],
  };
}

export function drawBowel(vary: Variation): Sketch {
  const frame: Point[] = vary.loosen(
    at(`
      22,140 18,100 18,66 24,42 44,34 70,42 96,46 120,40 138,28 154,36 160,64 158,100 154,130 140,150
      118,158 102,172 98,194
    `),
    0.8,
  );
  const loops = Array.from({ length: 5 }, (_, row): Shape[] => {
    const y = 64 + row * 18;
    const wobble = vary.within(-3, 3);
    return [
      filled(
        "tissue",
        band(
          [
            [44, y],
            [60, y - 6 + wobble],
            [80, y + 4],
            [100, y - 5 - wobble],
            [120, y + 3],
            [132, y - 2],
          ],
          7.4,
        ),
        "line",
      ),
      stroked(
        "hatch",
        smooth([
          [46, y + 3],
          [60, y - 3 + wobble],
          [80, y + 7],
          [100, y - 2 - wobble],
          [120, y + 6],
        ]),
      ),
    ];
  }).flat();
  return {
    shapes: [
      ...loops,
      ...pouchedTube(frame, 10.5, 15, "organ"),
      filled("organ", ring(ellipsePoints(22, 146, 15, 17, 0, 10)), "outline"),
      ...tube(at("20,160 12,172 16,184"), 3, "tissue"),
      ...tube(at("54,142 42,146 32,146"), 7, "tissue"),
      stroked("line", smooth(at("22,134 17,100 17,66 24,41 44,33 70,41 96,45 120,39 138,27"))),
    ],
    callouts: [
      { text: "colon ascendens", at: [18, 84] },
      { text: "colon transversum", at: [104, 40] },
      { text: "colon descendens", at: [156, 80] },
      { text: "caecum", at: [20, 148] },
      { text: "appendix vermiformis", at: [13, 176] },
      { text: "ileum", at: [120, 104] },
    ],
  };
}

export function drawUterus(vary: Variation): Sketch {
  const half: Point[] = at("0,10 18,12 31,22 30,40 20,62 14,84 13,108 0,112");
  const outline = [...half, ...mirrored(half).reverse()].filter(
    (point, index) => index < half.length || point[0] !== 0,
  );
  const tubeLine: Point[] = vary.loosen(at("28,22 48,12 72,8 94,18 104,36"), 1.4);
  const sides = (line: readonly Point[], width: number | readonly number[]): Shape[] => [
    ...tube(line, width, "organ"),
    ...tube(mirrored(line), width, "organ"),
  ];
  return {
    shapes: [
      filled("tissue", ring(at("24,22 60,14 98,30 88,60 52,80 18,84")), "fine"),
      filled("tissue", ring(mirrored(at("24,22 60,14 98,30 88,60 52,80 18,84"))), "fine"),
      filled("tissue", band(at("0,104 0,140 0,168"), [17, 21, 20]), "outline"),
      stroked("fine", ...[0, 1, 2, 3].map((row) => arc(0, 126 + row * 10, 18, 4, 0.3, Math.PI - 0.3))),
      ...sides(tubeLine, [4, 3.4, 4, 5.5, 7]),
      ...[1, -1].map((side) =>
        stroked(
          "line",
          ...[-0.5, -0.1, 0.3, 0.7].map((turn) =>
            smooth([
              [104 * side, 38],
              [(104 + 8 * Math.sin(turn * 2)) * side, 46],
              [(104 + 11 * Math.sin(turn * 2.4)) * side, 54],
            ]),
          ),
        ),
      ),
      ...[1, -1].flatMap((side): Shape[] => [
        filled("bone", ellipse(76 * side, 42, 15, 9, -0.2 * side), "outline"),
        stroked(
          "stipple",
          dots(
            Array.from({ length: 7 }, (): Point => [76 * side + vary.within(-9, 9), 42 + vary.within(-4, 4)]),
          ),
        ),
      ]),
      filled("muscle", ring(outline), "outline"),
      filled("hollow", ring(at("-16,26 0,30 16,26 6,48 3,74 4,104 -4,104 -3,74 -6,48")), "line"),
      stroked("hatch", contours(outline, 1, 5, [0.93, 0.86]), contours(outline, 9, 13, [0.93, 0.86])),
      stroked(
        "artery",
        smooth(at("60,96 34,92 24,78 29,64 30,48 36,34")),
        smooth(at("-60,96 -34,92 -24,78 -29,64 -30,48 -36,34")),
      ),
    ],
    callouts: [
      { text: "fundus uteri", at: [-8, 16] },
      { text: "tuba uterina", at: [60, 9] },
      { text: "ovarium", at: [76, 42] },
      { text: "a. uterina", at: [-30, 88] },
      { text: "cervix uteri", at: [10, 98] },
    ],
  };
}
