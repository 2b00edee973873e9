/**
 * The foot of a horse, sawn along its middle: cannon bone, the bones of the digit,
 * the hoof, and the tendons before and behind.
 */
import { longBone } from "#lib/specimens/drawing/forms.ts";
import { at, beside, contours, type Point, ring, roundBand, smooth } from "#lib/specimens/drawing/pen.ts";
import { filled, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function drawEquineFoot(vary: Variation): Sketch {
  const skin: Point[] = vary.loosen(
    at(`
      86,0 84,40 82,76 74,98 64,122 56,140 112,152 128,146 130,124 132,100 128,70 126,36 126,0
    `),
    0.8,
  );
  const hoof: Point[] = at("56,138 36,172 18,202 120,204 134,186 134,162 126,146 100,146");
  return {
    shapes: [
      filled("tissue", ring(skin, 0.9), "outline"),
      filled("fat", ring(hoof, 0.7), "outline"),
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
      filled("deep", ring(at("62,196 118,196 128,182 118,174 84,186")), "line"),
      ...longBone([105, 2], [102, 86], 8, 1.5),
      filled("bone", ring(at("92,84 102,80 112,84 110,98 92,130 76,126 80,112"), 0.9), "line"),
      filled("bone", ring(at("76,130 92,132 92,140 82,160 62,156 66,144"), 0.9), "line"),
      filled("bone", ring(at("62,160 82,163 96,176 84,182 40,196 34,192"), 0.8), "line"),
      filled("bone", ring(at("112,88 121,86 124,98 114,104")), "line"),
      filled("bone", ring(at("86,164 98,162 101,170 92,174")), "line"),
      filled("paper", roundBand(at("90,2 90,50 88,88 72,124 62,152"), [2.6, 2.4, 2.2, 2, 2.4]), "line"),
      filled(
        "paper",
        roundBand(at("116,2 119,50 127,92 112,126 98,156 88,184"), [2.6, 2.6, 2.6, 2.8, 3, 2]),
        "line",
      ),
      filled("paper", roundBand(at("122,2 124,50 131,88 118,122 98,142"), [2, 2, 2.2, 2.4, 1.4]), "line"),
      stroked("hatch", smooth(beside(at("116,10 119,50 127,90"), 0.8))),
      stroked("artery", smooth(at("112,2 114,60 122,110 108,140 102,168"))),
      stroked("nerve", smooth(at("109,2 111,56 118,112 104,140 98,158"))),
    ],
    callouts: [
      { text: "os metacarpale III", at: [104, 40] },
      { text: "phalanx proximalis", at: [94, 106] },
      { text: "phalanx media", at: [78, 146] },
      { text: "phalanx distalis", at: [64, 178] },
      { text: "os sesamoideum", at: [118, 95] },
      { text: "ungula", at: [34, 186] },
    ],
  };
}
