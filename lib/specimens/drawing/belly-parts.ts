/**
 * Organs of the belly laid open or together: a stomach opened along its greater
 * curvature, the caecum with its appendix, the liver from below, the upper organs
 * round the coeliac trunk, and the kidneys with ureters and bladder.
 */
import { mass, pouchedTube, tube } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  arc,
  at,
  band,
  bothHalves,
  ellipse,
  mirrored,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** Its front wall is turned up, so that the folds of the lining lie open; the lesser curvature stays whole. */
export function drawStomachOpened(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      92,30 104,8 130,-4 160,2 180,26 186,64 180,104 160,140 128,164 90,174 56,166 34,148 18,150 8,138
      14,122 34,120 54,116 76,104 90,84 96,58
    `),
    1,
  );
  const rim = outline.map(([x, y]): Point => [x + (112 - x) * 0.07, y + (86 - y) * 0.07]);
  const folds = Array.from({ length: 7 }, (_, lane): Path => {
    const out = 0.12 + lane * 0.13;
    const spine = at("104,26 110,60 104,92 84,116 56,130 26,136");
    const far = at("150,14 172,66 156,124 112,156 62,152 26,138");
    const line = spine.map(([x, y], index): Point => {
      const [fx, fy] = far[index] ?? [x, y];
      return [x + (fx - x) * out, y + (fy - y) * out];
    });
    return smooth(vary.loosen(along(line, 11), 1.9));
  });
  return {
    shapes: [
      ...tube(at("66,-20 76,8 96,40"), [8, 8, 9], "tissue"),
      filled("tissue", band(at("18,136 2,132 -14,146 -16,170"), [10, 11, 11, 10]), "outline"),
      filled("muscle", ring(outline), "outline"),
      filled("organ", ring(rim), "line"),
      stroked("line", ...folds.filter((_, lane) => lane % 2 === 0)),
      stroked("fine", ...folds.filter((_, lane) => lane % 2 === 1)),
      stroked("hatch", ...folds.map((fold) => fold.map((part) => part))),
      stroked("outline", smooth(at("12,128 18,138 14,148"))),
      stroked("line", smooth(at("92,40 98,60 92,86 78,106 54,118 34,122"))),
    ],
    callouts: [
      { structure: "cardia-of-stomach", at: [94, 36] },
      { structure: "fundus-of-stomach", at: [142, 10] },
      { structure: "gastric-folds", at: [140, 90] },
      { structure: "lesser-curvature-of-stomach", at: [95, 76] },
      { structure: "pyloric-antrum", at: [46, 138] },
      { structure: "pyloric-sphincter", at: [14, 138] },
      { structure: "abdominal-part-of-oesophagus", at: [72, -4] },
      { structure: "superior-part-of-duodenum", at: [-12, 152] },
    ],
  };
}

export function drawCaecum(vary: Variation): Sketch {
  const spine = vary.loosen(at("40,0 38,40 34,80 36,120"), 0.8);
  return {
    shapes: [
      filled("fat", ring(at("70,124 96,116 112,132 96,164 74,178 62,160 56,138")), "fine"),
      ...tube(at("128,86 104,98 78,100 58,100"), [13, 12, 11, 9], "tissue"),
      ...pouchedTube(spine, 33, 4, "organ", true),
      filled(
        "organ",
        ring(at("0,112 6,104 36,112 68,104 76,118 72,148 54,166 28,168 8,150"), 0.9),
        "outline",
      ),
      stroked(
        "fine",
        smooth(at("4,130 14,136 22,132")),
        smooth(at("72,134 62,140 54,136")),
        smooth(at("28,164 32,154 38,150")),
      ),
      stroked(
        "line",
        smooth(at("34,2 33,40 30,80 34,120 44,158")),
        smooth(at("40,2 39,40 36,80 40,120 50,156")),
      ),
      filled("hollow", ring(at("40,90 56,86 66,96 62,110 48,114 38,104")), "line"),
      filled("tissue", roundBand(at("44,98 54,96 62,100"), 4), "line"),
      stroked("outline", straight(at("46,98 60,99"))),
      ...tube(
        vary.loosen(at("48,154 60,170 82,172 98,182 92,204 78,214"), 1),
        [6, 5.6, 5, 5, 5, 4.6],
        "tissue",
      ),
      stroked(
        "artery",
        smooth(at("112,70 104,90 96,124 90,160 88,176")),
        smooth(at("95,130 84,150 70,166")),
        smooth(at("92,150 98,166 98,178")),
      ),
      filled("hollow", ellipse(40, 0, 26, 6), "outline"),
    ],
    callouts: [
      { structure: "caecum", at: [20, 140] },
      { structure: "vermiform-appendix", at: [98, 190] },
      { structure: "terminal-ileum", at: [110, 94] },
      { structure: "ileal-papilla", at: [52, 98] },
      { structure: "meso-appendix", at: [88, 132] },
      { structure: "appendicular-artery", at: [91, 156] },
      { structure: "free-taenia", at: [33, 62] },
      { structure: "ascending-colon", at: [54, 30] },
    ],
  };
}

/** Seen from below and behind: the right lobe at the right of the plate. */
export function drawLiverBelow(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      4,60 14,40 36,30 64,28 84,22 108,10 140,4 176,10 204,30 216,60 214,96 198,126 168,146 136,152
      112,146 92,138 72,122 40,104 16,84
    `),
    1,
  );
  return {
    shapes: [
      ...mass(outline, "organ", 8, 13, [0.95, 0.9]),
      filled("tissue", ring(at("118,16 146,8 178,16 196,38 184,54 156,44 128,36")), "line"),
      filled("organ", ring(at("86,30 102,24 108,44 106,66 94,74 82,64 80,44")), "line"),
      filled("organ", ring(at("86,92 104,86 116,96 118,118 112,140 96,136 84,116")), "line"),
      ...tube(at("112,4 116,24 114,52"), [11, 11, 10], "vein"),
      stroked("line", smooth(at("80,22 78,46 82,70 76,92 78,120"))),
      filled("fat", ring(at("72,78 96,76 126,74 132,84 118,90 92,92 74,88")), "line"),
      ...tube(at("104,70 104,84 92,82 76,80"), [5, 5, 4, 3], "vein"),
      ...tube(at("106,84 122,80 134,78"), [5, 4, 3], "vein"),
      ...tube(at("98,66 98,80 88,76 74,76"), [2.4, 2.4, 2, 1.6], "artery"),
      ...tube(at("99,80 114,75 130,73"), [2.2, 2, 1.6], "artery"),
      filled("duct", ring(at("124,96 138,94 146,108 146,132 138,156 124,162 116,150 116,118")), "outline"),
      stroked("hatch", smooth(at("138,104 140,126 134,146")), smooth(at("142,110 142,128 137,142"))),
      ...tube(at("128,98 122,90 112,92 110,78 110,64"), [3.4, 2.6, 2.4, 2.8, 2.8], "duct"),
      stroked("artery", smooth(at("118,78 126,88 134,98"))),
      filled("sinew", roundBand(at("80,92 80,112 84,138 80,152"), [2.6, 3, 3.4, 3]), "line"),
      stroked("fine", smooth(at("150,70 176,72 196,86")), smooth(at("24,58 46,62 62,72"))),
    ],
    callouts: [
      { structure: "inferior-vena-cava", at: [114, 20] },
      { structure: "caudate-lobe-of-liver", at: [92, 50] },
      { structure: "quadrate-lobe-of-liver", at: [102, 112] },
      { structure: "gallbladder", at: [134, 136] },
      { structure: "right-lobe-of-liver", at: [188, 100] },
      { structure: "left-lobe-of-liver", at: [36, 74] },
      { structure: "hepatic-portal-vein", at: [104, 74] },
      { structure: "round-ligament-of-liver", at: [81, 140] },
      { structure: "bare-area-of-liver", at: [164, 30] },
    ],
  };
}

/** The stomach is turned up, so that the trunk and its branches lie free above the pancreas. */
export function drawUpperAbdomen(vary: Variation): Sketch {
  const stomach = vary.loosen(
    at(`
      112,40 116,18 134,6 160,10 178,30 180,56 164,74 136,80 104,78 78,82 58,90 44,84 42,70 56,62
      80,60 100,58
    `),
    1,
  );
  const pancreas = vary.loosen(at("48,146 66,132 92,126 126,120 160,110 192,98"), 1);
  return {
    shapes: [
      filled("deep", ring(at("188,62 206,56 220,72 222,98 210,118 196,112 190,92")), "outline"),
      filled(
        "tissue",
        band(at("48,78 28,86 20,110 20,146 32,172 62,180 96,174"), [10, 11, 11, 11, 11, 11, 9]),
        "outline",
      ),
      ...tube(at("78,208 80,172 82,148 92,128"), [7, 7, 7, 6], "vein"),
      ...tube(at("94,208 98,176 104,150 108,124"), [4.6, 4.6, 4.8, 5], "artery"),
      filled("fat", roundBand(pancreas, [18, 19, 13, 12, 11, 7]), "outline"),
      stroked(
        "fine",
        ...along(pancreas, 10).flatMap(([x, y], index) => [
          arc(x, y - 4 + (index % 2) * 3, 6, 4, 0.3, 2.6),
          arc(x + 4, y + 4, 5, 3.4, 3.4, 5.6),
        ]),
      ),
      stroked("duct", smooth(at("26,152 50,144 92,126 130,119 184,101"))),
      ...tube(at("86,124 76,110 62,100"), [6, 5, 4], "vein"),
      ...tube(at("90,128 126,110 164,100 200,90"), [4, 4, 4, 3], "vein"),
      ...mass(stomach, "organ", 4, 9, [0.94, 0.88]),
      ...tube(at("110,14 112,26 116,40"), 6.4, "tissue"),
      stroked(
        "artery",
        smooth(at("62,92 92,90 132,90 166,84 188,66")),
        ...at("92,90 116,91 140,90 164,85").map(([x, y]) =>
          smooth([
            [x, y],
            [x + 3, y - 10],
            [x + 6, y - 16],
          ]),
        ),
      ),
      ...tube(at("112,116 110,106"), [7, 6], "artery"),
      ...tube(at("110,108 130,96 150,106 172,92 200,84"), [4.4, 4, 4, 3.6, 2.6], "artery"),
      ...tube(at("108,108 92,104 74,108 62,112"), [4.4, 4, 3.6, 3], "artery"),
      ...tube(at("110,106 106,92 108,70 112,54"), [3.4, 3, 2.6, 1.6], "artery"),
      stroked(
        "artery",
        smooth(at("72,108 62,120 58,138 50,158")),
        smooth(at("74,108 64,98 62,92")),
        smooth(at("66,111 54,106 44,110")),
      ),
      stroked(
        "artery",
        ...at("190,70 186,50 178,34").map(([x, y], index) =>
          smooth([
            [200, 84],
            [196 - index * 2, 74 - index * 8],
            [x - 12, y],
          ]),
        ),
      ),
      filled("artery", ellipse(111, 118, 7, 5), "outline"),
    ],
    callouts: [
      { structure: "coeliac-trunk", at: [111, 116] },
      { structure: "splenic-artery", at: [150, 106] },
      { structure: "common-hepatic-artery", at: [90, 104] },
      { structure: "left-gastric-artery", at: [107, 88] },
      { structure: "stomach", at: [150, 40] },
      { structure: "spleen", at: [212, 84] },
      { structure: "duodenum", at: [20, 130] },
      { structure: "head-of-pancreas", at: [52, 148] },
      { structure: "hepatic-portal-vein", at: [74, 110] },
    ],
  };
}

const kidney: readonly Point[] = at("46,2 60,6 70,22 73,44 68,66 54,76 42,68 40,54 46,42 44,30 37,20 38,8");

/** @param male with the prostate and the seminal glands below the bladder */
export function drawUrinarySystem(vary: Variation, male: boolean): Sketch {
  const one = vary.loosen(kidney, 0.6);
  const other = mirrored(vary.loosen(kidney, 0.6)).map(([x, y]): Point => [x, y + 7]);
  const ureter = vary.loosen(at("42,44 34,66 30,104 34,138 28,166 16,178"), 0.8);
  return {
    shapes: [
      ...tube(at("-9,-14 -9,60 -9,122"), 6.4, "vein"),
      ...tube(at("-9,122 -24,142 -38,158"), [5, 4.6, 4.4], "vein"),
      ...tube(at("7,-14 7,60 6,118"), 6, "artery"),
      ...tube(at("-9,34 14,30 42,36"), [3.6, 3.6, 4], "vein"),
      ...tube(at("-12,44 -26,44 -42,46"), [3.6, 3.6, 4], "vein"),
      ...tube(at("9,24 26,26 44,30"), [2.6, 2.4, 2.4], "artery"),
      ...tube(at("5,30 -20,34 -44,38"), [2.6, 2.4, 2.4], "artery"),
      ...tube(at("6,116 20,138 36,158"), [4.4, 4, 3.8], "artery"),
      ...tube(at("6,116 -10,136 -24,158"), [4.4, 4, 3.8], "artery"),
      stroked(
        "artery",
        smooth(at("10,70 22,96 26,130 40,160")),
        smooth(at("4,70 -20,96 -28,130 -40,160")),
        smooth(at("8,88 18,104 20,122")),
      ),
      filled("fat", ring(at("34,4 36,-8 48,-14 60,-8 62,2 50,0")), "line"),
      filled("fat", ring(at("-36,10 -40,-2 -50,-10 -60,0 -62,10 -50,6")), "line"),
      ...mass(one, "organ", 1, 5, [0.92, 0.84]),
      ...mass(other, "organ", 1, 5, [0.92, 0.84]),
      filled("nerve", ring(at("44,38 50,34 52,44 46,54 41,48")), "line"),
      filled("nerve", ring(at("-44,45 -50,41 -52,51 -46,61 -41,55")), "line"),
      ...tube(ureter, [3.4, 2.6, 2.2, 2.2, 2.2, 2], "nerve"),
      ...tube(
        mirrored(ureter).map(([x, y], index): Point => [x, y + (index < 2 ? 7 : 0)]),
        [3.4, 2.6, 2.2, 2.2, 2.2, 2],
        "nerve",
      ),
      ...(male
        ? [
            ...[1, -1].flatMap((side) =>
              tube(
                at("44,164 30,166 14,184 6,200").map(([x, y]): Point => [x * side, y]),
                1.6,
                "tissue",
              ),
            ),
            filled("tissue", roundBand(at("8,202 18,196 28,192"), [3, 5, 4]), "line"),
            filled("tissue", roundBand(at("-8,202 -18,196 -28,192"), [3, 5, 4]), "line"),
          ]
        : []),
      filled("muscle", ring(bothHalves(at("0,164 18,166 31,178 28,196 14,208 0,211"))), "outline"),
      filled("fluid", ring(bothHalves(at("0,173 13,175 20,184 12,196 0,203"))), "line"),
      stroked("line", straight(at("-12,186 12,186 0,200"), true)),
      ...(male
        ? [
            filled("organ", ring(bothHalves(at("0,208 12,208 16,218 10,228 0,230"))), "outline"),
            stroked("fine", smooth(at("0,202 0,230"))),
          ]
        : []),
    ],
    callouts: [
      { structure: "kidney", at: [62, 40] },
      { structure: "suprarenal-gland", at: [48, -8] },
      { structure: "renal-artery", at: [28, 26] },
      { structure: "left-renal-vein", at: [22, 31] },
      { structure: "abdominal-aorta", at: [7, 90] },
      { structure: "inferior-vena-cava", at: [-9, 84] },
      { structure: "ureter", at: [-30, 104] },
      { structure: "urinary-bladder", at: [-24, 184] },
      ...(male ? [{ structure: "prostate", at: [8, 218] } as const] : []),
    ],
  };
}
