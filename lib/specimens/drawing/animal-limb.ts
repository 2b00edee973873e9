/**
 * The foot of a horse, its toe to the left: sawn along its middle, or whole from the
 * outer side with bones, tendons and hoof dissected. Both are left ones.
 */
import { longBone } from "#lib/specimens/drawing/forms.ts";
import {
  at,
  beside,
  contours,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

const hoof: readonly Point[] = at("56,138 36,172 18,202 120,204 134,186 134,162 126,146 100,146");

function wallOfHoof(): Shape[] {
  return [
    stroked(
      "hatch",
      contours(hoof, 0, 2, [0.93, 0.87]),
      ...[0, 1, 2].map((row) =>
        smooth([
          [46 + row * 4, 158 + row * 6],
          [34 + row * 4, 180 + row * 5],
          [26 + row * 4, 198],
        ]),
      ),
    ),
  ];
}

const boneCallouts: readonly Callout[] = [
  { structure: "long-pastern-bone", at: [94, 106] },
  { structure: "short-pastern-bone", at: [78, 146] },
  { structure: "coffin-bone", at: [64, 178] },
];

/** Cut below the cannon bone's lower third, as a sheet of the digit shows it. */
export function drawEquineDigitSection(vary: Variation): Sketch {
  const skin: Point[] = vary.loosen(
    at("84,44 82,76 74,98 64,122 56,140 112,152 128,146 130,124 132,100 128,72 126,44"),
    0.8,
  );
  return {
    shapes: [
      filled("tissue", ring(skin, 0.9), "outline"),
      filled("fat", ring(hoof, 0.7), "outline"),
      ...wallOfHoof(),
      filled("deep", ring(at("62,196 118,196 128,182 118,174 84,186")), "line"),
      filled("bone", ring(at("96,44 95,66 90,80 96,90 106,92 114,86 116,76 112,66 112,44"), 0.9), "line"),
      filled("bone", ring(at("92,84 102,93 112,90 110,98 92,130 76,126 80,112"), 0.9), "line"),
      filled("bone", ring(at("76,130 92,132 92,140 82,160 62,156 66,144"), 0.9), "line"),
      filled("bone", ring(at("62,160 82,163 96,176 84,182 40,196 34,192"), 0.8), "line"),
      filled("bone", ring(at("114,88 122,86 125,98 115,104")), "line"),
      filled("bone", ring(at("86,164 98,162 101,170 92,174")), "line"),
      stroked(
        "hatch",
        smooth(at("102,48 102,74")),
        smooth(at("100,100 86,120")),
        smooth(at("82,140 74,152")),
        smooth(at("76,170 52,186")),
      ),
      filled("sinew", roundBand(at("90,44 89,72 86,92 72,124 62,152"), [2.4, 2.4, 2.2, 2, 2.4]), "line"),
      filled(
        "sinew",
        roundBand(at("118,44 121,66 128,92 112,126 98,156 88,184"), [2.6, 2.6, 2.6, 2.8, 3, 2]),
        "line",
      ),
      filled("sinew", roundBand(at("124,44 126,66 132,88 118,122 98,142"), [2, 2, 2.2, 2.4, 1.4]), "line"),
      filled("fluid", roundBand(at("98,176 102,170 104,162"), 1.6), "fine"),
      stroked("artery", smooth(at("114,46 117,70 122,110 108,140 102,168"))),
    ],
    callouts: [
      ...boneCallouts,
      { structure: "fetlock-joint", at: [104, 93] },
      { structure: "navicular-bone-of-horse", at: [94, 168] },
      { structure: "navicular-bursa", at: [102, 171] },
      { structure: "hoof-wall", at: [32, 186] },
      { structure: "digital-cushion", at: [112, 188] },
      { structure: "sole-of-hoof", at: [60, 202] },
    ],
  };
}

export function drawEquineFoot(vary: Variation): Sketch {
  return {
    shapes: [
      filled(
        "tissue",
        ring(
          vary.loosen(
            at(
              "88,-30 84,0 84,40 82,76 74,98 64,122 56,140 112,152 130,146 134,122 136,98 130,70 128,30 128,-30",
            ),
            0.6,
          ),
          0.9,
        ),
        "outline",
      ),
      ...longBone([102, -28], [102, 84], 10, 1.35),
      ...longBone([116, -26], [114, 56], 2.6, 1.6),
      filled("bone", ring(at("86,86 102,82 116,86 112,100 94,130 76,126 80,112"), 0.9), "outline"),
      filled("bone", ring(at("112,84 122,80 128,90 124,100 114,100")), "line"),
      filled("bone", ring(at("74,130 96,132 96,142 86,154 60,152 66,142"), 0.9), "outline"),
      stroked("hatch", smooth(at("96,96 84,120")), smooth(at("104,92 94,118")), smooth(at("80,136 72,148"))),
      filled("sinew", roundBand(at("90,-28 89,40 86,84 76,116 62,146"), [3, 2.6, 2.6, 3, 4]), "line"),
      filled("sinew", roundBand(at("120,-28 120,30 122,62 118,84"), [3, 3, 3, 4]), "line"),
      filled("sinew", roundBand(at("118,86 100,104 84,118"), [3, 2.6, 2]), "line"),
      filled(
        "sinew",
        roundBand(at("128,-28 128,40 132,84 124,112 112,140"), [3.6, 3.4, 3.6, 3.8, 3.4]),
        "line",
      ),
      stroked(
        "hatch",
        smooth(beside(at("128,-20 128,40 132,84"), 1)),
        smooth(beside(at("120,-20 120,30 122,60"), 0.8)),
      ),
      filled("fat", ring(vary.loosen(at("112,142 130,140 138,152 136,166 116,162 104,154"), 0.6)), "line"),
      filled("fat", ring(hoof, 0.7), "outline"),
      ...wallOfHoof(),
      stroked("line", smooth(at("54,144 80,152 110,154 134,160"))),
      stroked(
        "hatch",
        ...[0, 1, 2, 3].map((row) =>
          smooth([
            [48 - row * 6, 156 + row * 11],
            [84 - row * 2, 164 + row * 9],
            [130, 172 + row * 7],
          ]),
        ),
      ),
      stroked("artery", smooth(at("113,-28 112,40 118,80 108,112 100,142"))),
      stroked("vein", smooth(at("110,-28 109,40 112,76 102,110 94,140"))),
      stroked(
        "nerve",
        smooth(at("124,-28 124,50 126,86 114,116 106,146")),
        smooth(at("122,84 104,110 84,136")),
      ),
      stroked("line", straight(at("30,202 118,204"))),
    ],
    callouts: [
      { structure: "cannon-bone", at: [100, 20] },
      { structure: "splint-bones", at: [115, 10] },
      { structure: "suspensory-ligament-of-fetlock", at: [121, 44] },
      { structure: "proximal-sesamoid-bones-of-horse", at: [120, 92] },
      ...boneCallouts.slice(0, 2),
      { structure: "coronary-border-of-hoof", at: [70, 150] },
      { structure: "hoof-wall", at: [50, 184] },
      { structure: "hoof-cartilage", at: [126, 152] },
    ],
  };
}
