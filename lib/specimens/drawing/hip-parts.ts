/** Where the limb joins the trunk: the right buttock from behind, the left groin from the front. */
import { belly } from "#lib/specimens/drawing/forms.ts";
import { at, ellipse, ring, roundBand, smooth } from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** The sacrum is at the left, the great muscle of the buttock turned aside at the right. */
export function drawGlutealRegion(vary: Variation): Sketch {
  return {
    shapes: [
      filled(
        "tissue",
        ring(
          vary.loosen(
            at("12,24 40,8 84,2 132,16 168,44 192,90 198,140 190,200 40,206 30,170 18,120 8,70"),
            0.8,
          ),
          0.9,
        ),
        "outline",
      ),
      filled("bone", ring(at("10,28 40,34 46,62 38,92 26,110 14,90")), "line"),
      ...[46, 62, 78].map((y): Shape => filled("hollow", ellipse(26, y, 2.4, 2), "fine")),
      ...belly(at("52,16 100,20 138,56 164,106"), [8, 30, 26, 8]),
      ...belly(at("42,66 84,82 128,98 162,112"), [12, 12, 7, 3], "deep"),
      ...belly(at("46,112 90,116 130,118 162,116"), [5, 5, 4, 2.4]),
      ...belly(at("44,122 90,126 130,127 162,122"), [6, 6, 4.6, 2.4], "deep"),
      ...belly(at("48,134 90,136 130,136 162,128"), [5, 5, 4, 2.4]),
      ...belly(at("70,154 104,154 140,152 164,146"), [13, 15, 14, 10]),
      filled("bone", ring(at("156,98 172,96 184,108 184,134 176,154 162,150 156,124")), "outline"),
      filled("bone", ring(at("44,140 62,138 72,150 68,166 52,170 42,158")), "outline"),
      filled("sinew", roundBand(at("30,100 42,120 52,142"), [6, 4, 5]), "line"),
      filled("sinew", roundBand(at("34,94 46,104 58,114"), [4, 3, 2.4]), "line"),
      filled("nerve", roundBand(at("72,96 84,112 96,140 104,176 108,206"), [5, 6, 6, 5.4, 5]), "outline"),
      filled("nerve", roundBand(at("94,84 104,106 110,140 116,176 122,206"), [2.6, 3.4, 3.4, 3, 3]), "line"),
      stroked(
        "nerve",
        smooth(at("68,98 74,126 84,166 88,206")),
        smooth(at("64,92 90,62 128,60")),
        smooth(at("60,100 52,112 58,132 66,140")),
      ),
      stroked(
        "artery",
        smooth(at("58,70 80,52 112,44 140,62")),
        smooth(at("70,54 66,40 72,26")),
        smooth(at("66,102 92,104 118,126")),
        smooth(at("58,104 50,116 60,134")),
      ),
      ...belly(vary.loosen(at("196,70 214,104 216,150 196,196"), 1), [10, 26, 28, 10]),
      stroked("hatch", smooth(at("186,86 190,130 184,180"))),
    ],
    callouts: [
      { structure: "gluteus-medius", at: [104, 30] },
      { structure: "piriformis", at: [96, 84] },
      { structure: "sciatic-nerve", at: [92, 130] },
      { structure: "common-fibular-nerve", at: [108, 130] },
      { structure: "pudendal-nerve", at: [54, 116] },
      { structure: "superior-gluteal-artery", at: [80, 52] },
      { structure: "gluteus-maximus", at: [208, 130] },
      { structure: "quadratus-femoris", at: [136, 154] },
      { structure: "ischial-tuberosity", at: [56, 156] },
      { structure: "greater-trochanter", at: [172, 124] },
    ],
  };
}

/** The middle of the body is at the left. */
export function drawGroin(vary: Variation): Sketch {
  return {
    shapes: [
      filled(
        "tissue",
        ring(
          vary.loosen(
            at("6,10 60,2 140,4 206,10 222,40 216,100 210,170 150,184 70,186 18,176 4,120 2,60"),
            0.8,
          ),
          0.8,
        ),
        "outline",
      ),
      ...belly(at("26,8 28,60 34,110 40,136"), [18, 18, 15, 8]),
      stroked("line", smooth(at("12,40 44,42")), smooth(at("14,80 46,82"))),
      filled("muscle", ring(at("56,8 130,8 196,20 206,50 160,76 110,106 70,124 54,112 52,60")), "line"),
      stroked(
        "hatch",
        ...[0, 1, 2, 3, 4, 5, 6].map((lane) =>
          smooth([
            [194 - lane * 8, 26 + lane * 7],
            [130 - lane * 6, 26 + lane * 11],
            [58, 22 + lane * 13],
          ]),
        ),
      ),
      filled("deep", ring(at("88,88 120,70 160,58 176,66 140,86 100,108")), "line"),
      stroked(
        "hatch",
        ...[0, 1, 2].map((lane) =>
          smooth([
            [164 - lane * 6, 64 + lane * 4],
            [130 - lane * 4, 74 + lane * 5],
            [94, 92 + lane * 5],
          ]),
        ),
      ),
      filled("sinew", roundBand(at("208,54 150,94 96,128 48,150"), [4, 4.6, 4.6, 6]), "outline"),
      stroked("hatch", smooth(at("200,60 150,96 100,128 56,148"))),
      filled("muscle", ring(at("70,152 120,128 176,98 206,92 204,168 150,180 76,182")), "line"),
      filled("artery", roundBand(at("128,114 126,140 122,182"), 6), "line"),
      filled("vein", roundBand(at("110,124 108,146 104,183"), 7), "line"),
      filled("nerve", roundBand(at("150,102 152,130 150,178"), 3.4), "line"),
      stroked("artery", smooth(at("126,112 108,96 86,70 64,40"))),
      filled(
        "organ",
        roundBand(at("146,76 118,92 92,112 70,134 58,156 54,188"), [3, 5, 6, 6.4, 7, 7]),
        "outline",
      ),
      stroked(
        "hatch",
        smooth(at("118,95 92,115 72,136 60,158 57,184")),
        smooth(at("118,89 90,110 67,132 54,156 51,184")),
      ),
      filled("hollow", ellipse(147, 76, 5, 3.4, -0.4), "line"),
      stroked("outline", smooth(at("86,108 72,116 58,136 54,148")), smooth(at("100,118 86,132 74,144"))),
      filled(
        "sinew",
        ring(vary.loosen(at("120,62 170,36 214,40 236,66 232,96 204,80 160,78"), 0.8), 0.9),
        "outline",
      ),
      stroked(
        "hatch",
        ...[0, 1, 2].map((lane) =>
          smooth([
            [136, 62 + lane * 5],
            [180, 46 + lane * 9],
            [226, 66 + lane * 9],
          ]),
        ),
      ),
      stroked(
        "nerve",
        smooth(at("200,26 150,44 104,72 76,104 66,130")),
        smooth(at("196,16 140,24 84,44 52,66")),
      ),
    ],
    callouts: [
      { structure: "external-oblique-aponeurosis", at: [200, 60] },
      { structure: "inguinal-ligament", at: [150, 94] },
      { structure: "spermatic-cord", at: [60, 154] },
      { structure: "superficial-inguinal-ring", at: [68, 122] },
      { structure: "deep-inguinal-ring", at: [147, 76] },
      { structure: "internal-oblique", at: [110, 30] },
      { structure: "ilio-inguinal-nerve", at: [104, 72] },
      { structure: "inferior-epigastric-artery", at: [88, 72] },
      { structure: "rectus-abdominis", at: [26, 60] },
      { structure: "femoral-artery", at: [124, 160] },
    ],
  };
}
