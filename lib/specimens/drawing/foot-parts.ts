/**
 * The foot in two other ways, a right one from its inner side: sawn along its length
 * into a sheet, and as a cast of its arteries alone, the foot only hinted at.
 */
import { spongyBone } from "#lib/specimens/drawing/forms.ts";
import { at, beside, dots, type Point, ring, roundBand, smooth } from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

const outline: readonly Point[] = at(`
  148,0 150,34 146,60 130,80 98,98 60,114 30,126 8,134 0,143 4,152 22,156 50,154 74,148 104,144 134,148
  164,158 192,162 212,154 221,136 215,112 208,84 207,44 209,0
`);

export function drawFootSection(vary: Variation): Sketch {
  const bone = (points: string, grains: number): Shape[] =>
    spongyBone(vary.loosen(at(points), 0.4), vary, grains);
  return {
    shapes: [
      filled("fat", ring(vary.loosen(outline, 0.5), 0.9), "outline"),
      filled("muscle", ring(at("150,2 152,36 150,60 144,78 152,80 158,50 158,2")), "fine"),
      filled("muscle", ring(at("190,2 186,40 188,80 196,90 199,50 198,2")), "line"),
      ...bone("160,0 161,40 157,66 154,78 170,75 188,82 187,60 184,36 186,0", 22),
      ...bone("141,97 150,84 170,79 190,86 194,98 184,106 168,104 154,112 142,110", 18),
      ...bone("160,116 172,108 190,109 210,118 216,136 208,152 194,155 178,146 164,132", 26),
      ...bone("124,100 138,98 140,112 134,122 124,120", 9),
      ...bone("100,110 120,102 121,122 108,130", 9),
      ...bone("40,134 62,124 98,112 105,130 74,138 48,145", 18),
      ...bone("18,138 36,135 40,145 24,149", 6),
      ...bone("6,142 15,139 18,148 10,150", 3),
      filled("hollow", ring(at("150,112 164,106 160,116 152,116")), "line"),
      stroked("line", smooth(at("152,80 170,77 190,84")), smooth(at("160,114 174,106 190,107"))),
      filled("sinew", roundBand(at("203,2 204,60 208,100 213,122"), [2.4, 2.6, 2.4, 3]), "line"),
      stroked("hatch", smooth(beside(at("203,10 204,60 208,100"), 0.8))),
      filled("sinew", roundBand(at("196,157 160,151 120,138 80,143 44,150"), [3, 2.4, 2, 2, 1.4]), "line"),
      filled("muscle", roundBand(at("182,150 150,144 120,133 92,136"), [4, 5.4, 4, 2]), "line"),
      filled("muscle", roundBand(at("172,140 152,134 134,128"), [3, 4, 3]), "line"),
      filled("sinew", roundBand(at("168,134 150,128 132,125"), 1.8), "line"),
      filled("sinew", roundBand(at("188,98 194,108 172,112 150,124 118,134 60,144"), 1.4), "line"),
      stroked("stipple", dots(at("200,156 206,150 212,142 216,134 196,158 150,152 100,142 60,150"))),
      stroked("artery", smooth(at("154,10 154,50 148,78"))),
    ],
    callouts: [
      { structure: "tibia", at: [172, 36] },
      { structure: "talus", at: [164, 94] },
      { structure: "calcaneus", at: [192, 132] },
      { structure: "navicular-bone", at: [131, 108] },
      { structure: "medial-cuneiform-bone", at: [110, 116] },
      { structure: "first-metatarsal-bone", at: [70, 130] },
      { structure: "calcaneal-tendon", at: [204, 60] },
      { structure: "plantar-aponeurosis", at: [120, 139] },
      { structure: "tarsal-sinus", at: [157, 112] },
    ],
  };
}

export function drawFootArteries(vary: Variation): Sketch {
  const stem = (points: string, widths: readonly number[]): Shape =>
    filled("artery", roundBand(vary.loosen(at(points), 0.7), widths), "artery-twig");
  const toes = [0, 1, 2, 3, 4].map((toe): Point[] => [
    [84 + toe * 4, 116 + toe * 3],
    [58 + toe * 5, 126 + toe * 3.4],
    [30 + toe * 7, 134 + toe * 3],
    [8 + toe * 9, 141 + toe * 2.2],
  ]);
  const soleward = [0, 1, 2, 3].map((toe): Point[] => [
    [84 + toe * 5, 138],
    [60 + toe * 6, 143 + toe],
    [34 + toe * 8, 147 + toe * 0.8],
    [14 + toe * 10, 149 + toe * 0.6],
  ]);
  const callouts: Callout[] = [
    { structure: "anterior-tibial-artery", at: [153, 30] },
    { structure: "dorsalis-pedis-artery", at: [130, 86] },
    { structure: "arcuate-artery-of-foot", at: [86, 116] },
    { structure: "posterior-tibial-artery", at: [195, 50] },
    { structure: "medial-plantar-artery", at: [126, 132] },
    { structure: "lateral-plantar-artery", at: [140, 148] },
    { structure: "deep-plantar-arch", at: [90, 132] },
    { structure: "calcaneal-anastomosis", at: [206, 136] },
  ];
  return {
    shapes: [
      stroked("hidden", ring(outline, 0.9)),
      stroked(
        "artery-twig",
        ...at("216,124 218,140 210,152 198,156 188,150").map(([x, y]) =>
          smooth(
            vary.loosen(
              [
                [194, 112],
                [(194 + x) / 2 + 4, (112 + y) / 2],
                [x, y],
              ],
              1.6,
            ),
          ),
        ),
        ...toes.flatMap((line) =>
          line.slice(1).map(([x, y]) =>
            smooth([
              [x, y],
              [x - 7, y - 5],
              [x - 12, y - 4],
            ]),
          ),
        ),
        ...at("148,70 140,84 118,98 104,104").map(([x, y]) =>
          smooth([
            [x, y],
            [x + 2, y + 10],
            [x + 9, y + 18],
          ]),
        ),
        ...at("150,146 130,140 112,136").map(([x, y]) =>
          smooth([
            [x, y],
            [x - 4, y + 7],
            [x - 12, y + 9],
          ]),
        ),
        smooth(at("172,6 176,40 180,70 188,92")),
      ),
      stroked(
        "artery",
        ...toes.map((line) => smooth(vary.loosen(line, 0.8))),
        ...soleward.map((line) => smooth(vary.loosen(line, 0.8))),
        smooth(at("132,92 124,104 112,112")),
        smooth(at("92,112 92,122 92,132")),
      ),
      stem("94,110 88,116 90,124 98,130", [1.8, 1.6, 1.4, 1.2]),
      stem("154,0 154,40 148,68 134,86 112,100 84,116", [3.4, 3.2, 3, 2.8, 2.4, 1.8]),
      stem("196,0 196,50 194,92 188,112 170,132", [3.6, 3.4, 3.2, 3, 2.6]),
      stem("172,130 148,130 124,132 96,138 66,144", [2.2, 2, 1.8, 1.6, 1]),
      stem("172,131 152,147 124,146 100,138 86,130 92,124", [2.6, 2.4, 2.2, 2, 1.8, 1.4]),
    ],
    callouts,
  };
}
