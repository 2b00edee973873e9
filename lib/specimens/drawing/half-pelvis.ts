/** Half a pelvis cut in the middle, from the cut side: a right half, its front to the left. */
import { belly, tube } from "#lib/specimens/drawing/forms.ts";
import {
  at,
  band,
  contours,
  dots,
  ellipse,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

function sacrum(): Shape[] {
  const bodies = at("168,22 182,44 190,66 193,86 191,104");
  return [
    filled(
      "bone",
      ring(at("152,10 176,2 194,30 206,62 208,96 202,118 194,130 186,128 188,112 184,84 174,56 160,34")),
      "outline",
    ),
    stroked(
      "line",
      ...bodies.map(([x, y], index) =>
        straight([
          [x - 10 + index * 0.8, y + 6],
          [x + 8, y - 2],
        ]),
      ),
    ),
    stroked(
      "stipple",
      dots(
        bodies.flatMap(([x, y]): Point[] => [
          [x, y - 6],
          [x + 5, y - 10],
          [x - 4, y - 2],
          [x + 6, y],
        ]),
      ),
    ),
  ];
}

function wall(): Shape[] {
  return [
    filled(
      "tissue",
      ring(
        at(
          "20,40 60,14 120,0 160,2 196,14 218,52 226,100 222,144 204,176 168,196 130,206 96,204 66,196 40,176 22,150 10,110 10,70",
        ),
        0.9,
      ),
      "outline",
    ),
    filled(
      "muscle",
      ring(at("30,56 70,30 130,20 158,40 176,80 182,120 150,150 110,160 70,150 44,128 30,96"), 0.9),
      "fine",
    ),
    ...sacrum(),
    filled("bone", ring(at("40,112 54,104 64,112 66,132 58,146 44,144 36,128")), "outline"),
    stroked("stipple", dots(at("46,116 54,114 50,124 58,124 44,130 54,134 48,140"))),
    stroked(
      "artery",
      smooth(at("150,18 134,40 130,66 120,84")),
      smooth(at("132,48 108,62 84,76")),
      smooth(at("131,66 146,84 156,104")),
    ),
    stroked("vein", smooth(at("156,22 140,44 136,68"))),
    stroked(
      "nerve",
      smooth(at("170,50 158,72 154,96")),
      smooth(at("176,64 162,80 154,96")),
      smooth(at("146,30 110,52 70,90")),
    ),
  ];
}

const rectum = at("176,66 174,90 176,112 168,134 158,150 160,176 164,198");

function bowelEnd(): Shape[] {
  return [
    filled("muscle", band(rectum, [9, 13, 14, 14, 11, 8, 8]), "outline"),
    filled("hollow", band(rectum, [4, 7, 8, 8, 5, 2, 1.6]), "fine"),
    stroked("line", smooth(at("163,98 172,102 176,100")), smooth(at("187,116 178,120 172,118"))),
    filled("deep", roundBand(at("148,180 150,190 152,200"), [4, 6, 4]), "line"),
    filled("deep", roundBand(at("172,180 174,190 176,198"), [4, 6, 4]), "line"),
  ];
}

function female(vary: Variation): Sketch {
  return {
    shapes: [
      ...wall(),
      ...bowelEnd(),
      filled("muscle", band(at("128,128 130,152 126,178 120,202"), [7, 7, 6, 5]), "line"),
      filled("hollow", band(at("130,128 132,152 127,178 120,202"), [2.4, 2, 1.6, 1.2]), "fine"),
      filled(
        "muscle",
        ring(
          vary.loosen(
            at("92,66 106,58 122,66 134,86 142,108 146,122 136,132 124,128 118,112 104,96 90,84"),
            0.7,
          ),
        ),
        "outline",
      ),
      filled("hollow", roundBand(at("102,76 116,90 128,108 136,124"), [4, 3.6, 1.6, 1.6]), "line"),
      filled("muscle", ring(at("66,108 84,96 104,102 118,118 120,136 106,146 84,146 70,138")), "outline"),
      filled("fluid", ring(at("74,112 86,104 100,108 111,120 112,132 102,138 84,138 76,130")), "fine"),
      ...tube(at("86,142 84,160 82,186"), [3, 2.4, 2.2], "tissue"),
      ...tube(vary.loosen(at("104,64 120,46 138,48 146,62 140,72"), 1), [3, 3, 3.4, 4.6, 6], "organ"),
      stroked(
        "line",
        ...at("136,76 141,78 146,76 150,72").map(([x, y]) =>
          smooth([
            [142, 70],
            [x, y - 2],
            [x + 1, y + 3],
          ]),
        ),
      ),
      filled("bone", ellipse(128, 66, 10, 7, 0.5), "outline"),
      stroked("stipple", dots(at("124,64 129,68 132,64 126,69"))),
      ...belly(at("96,64 76,58 54,66 40,76"), [2, 2, 2, 1.4]),
      stroked("nerve", smooth(at("146,60 132,90 116,120"))),
    ],
    callouts: [
      { structure: "uterus", at: [114, 78] },
      { structure: "ovary", at: [128, 66] },
      { structure: "uterine-tube", at: [130, 46] },
      { structure: "urinary-bladder", at: [92, 122] },
      { structure: "vagina", at: [128, 166] },
      { structure: "rectum", at: [176, 108] },
      { structure: "pubic-symphysis", at: [50, 124] },
      { structure: "sacrum", at: [196, 70] },
      { structure: "recto-uterine-pouch", at: [152, 118] },
    ],
  };
}

function male(vary: Variation): Sketch {
  return {
    shapes: [
      filled(
        "tissue",
        ring(at("10,128 2,150 -4,180 -6,208 2,218 14,214 22,196 34,178 46,166 40,136"), 0.9),
        "outline",
      ),
      filled("tissue", ring(at("34,176 52,186 56,206 46,222 28,222 18,208 22,190")), "outline"),
      ...wall(),
      ...bowelEnd(),
      filled("organ", ellipse(38, 204, 10, 14, 0.3), "line"),
      filled("deep", roundBand(at("46,194 50,204 46,216"), [2.4, 3.4, 2]), "fine"),
      filled(
        "muscle",
        ring(vary.loosen(at("68,96 88,84 112,88 128,104 130,122 116,132 92,132 74,124"), 0.7)),
        "outline",
      ),
      filled("fluid", ring(at("76,102 90,93 109,97 120,108 120,118 110,123 92,122 82,116")), "fine"),
      filled("organ", ring(at("86,134 104,132 116,138 114,152 100,160 88,152")), "outline"),
      filled("tissue", roundBand(at("116,132 126,126 134,114"), [3, 5, 4]), "line"),
      ...tube(at("110,136 122,122 124,100 104,76 70,78 44,100 34,140 34,184"), 1.7, "tissue"),
      filled("deep", ring(at("88,164 108,164 118,174 108,184 86,182 60,172 40,164 48,156 70,162")), "line"),
      ...tube(
        at("97,124 97,146 96,164 78,168 48,158 24,162 8,182 2,210"),
        [2.4, 2, 2, 2, 2, 2, 2, 2.4],
        "sinew",
      ),
      filled("deep", roundBand(at("46,152 24,154 8,172 0,204"), [4, 4.4, 4.4, 5]), "fine"),
      stroked("nerve", smooth(at("156,98 150,130 132,168 112,190"))),
    ],
    callouts: [
      { structure: "urinary-bladder", at: [100, 108] },
      { structure: "prostate", at: [106, 146] },
      { structure: "seminal-gland", at: [128, 122] },
      { structure: "ductus-deferens", at: [70, 78] },
      { structure: "bulb-of-penis", at: [100, 174] },
      { structure: "rectum", at: [176, 108] },
      { structure: "pubic-symphysis", at: [50, 124] },
      { structure: "testis", at: [36, 208] },
      { structure: "sacrum", at: [196, 70] },
    ],
  };
}

export function drawHalfPelvis(vary: Variation, sex: "female" | "male"): Sketch {
  const sketch = sex === "female" ? female(vary) : male(vary);
  const skin = at("20,40 60,14 120,0 160,2 196,14 218,52 226,100 222,144");
  return {
    ...sketch,
    shapes: [...sketch.shapes, stroked("hatch", contours(skin, 4, 7, [0.97, 0.94], [110, 100]))],
  };
}
