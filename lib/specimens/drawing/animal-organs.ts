/**
 * Organs of animals: the stomach of a ruminant with its four chambers, the organs of
 * a dog and of a fish in place with the left wall taken away, a cast of the lungs and
 * air sacs of a fowl from below.
 */
import { finsOfFish, fishOutline } from "#lib/specimens/drawing/fish-and-snake.ts";
import { tube } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  contours,
  dots,
  ellipse,
  mirrored,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { filled, moveSketch, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** From the right side, the front of the animal at the right; windows are cut into each chamber. */
export function drawRuminantStomach(vary: Variation): Sketch {
  const rumen = vary.loosen(
    at(`
      214,36 190,16 150,6 104,8 60,18 26,38 10,66 14,86 30,94 16,106 14,130 32,156 70,170 116,172 156,160
      186,140 206,112 222,84
    `),
    1.2,
  );
  const window = (points: string): Shape => filled("hollow", ring(at(points)), "outline");
  const comb: Path[] = at("218,72 228,72 238,72 213,81 223,81 233,81 243,81 218,90 228,90 238,90").map(
    ([x, y]) =>
      ring(
        Array.from({ length: 6 }, (_, corner): Point => {
          const turn = (Math.PI / 3) * corner + Math.PI / 6;
          return [x + Math.cos(turn) * 5, y + Math.sin(turn) * 5];
        }),
        0.1,
      ),
  );
  return {
    shapes: [
      filled("deep", ring(at("204,14 222,2 240,12 244,34 230,44 212,34")), "line"),
      ...tube(at("258,4 244,20 230,38"), 7, "tissue"),
      filled("organ", ring(rumen), "outline"),
      stroked("hatch", contours(rumen, 2, 7, [0.95, 0.9]), contours(rumen, 10, 14, [0.95, 0.9])),
      stroked("line", smooth(at("22,92 60,96 110,92 164,96 200,90"))),
      stroked("line", smooth(at("30,94 44,80 44,64")), smooth(at("26,100 44,112 46,130"))),
      window("58,40 96,28 136,34 148,54 120,72 78,72 56,60"),
      stroked("line", smooth(at("62,58 100,64 144,54"))),
      stroked(
        "stipple",
        dots(
          at(
            "70,46 80,42 90,38 100,38 110,40 120,42 130,46 76,52 88,48 100,48 112,50 124,52 84,58 98,56 112,58 126,60 92,66 106,68",
          ),
        ),
      ),
      window("72,120 108,112 144,120 146,138 110,148 76,142"),
      stroked(
        "stipple",
        dots(
          at("84,126 96,122 108,120 120,122 132,126 88,134 100,130 112,130 124,132 136,132 100,140 114,140"),
        ),
      ),
      filled(
        "organ",
        ring(vary.loosen(at("210,58 226,48 246,54 260,74 260,98 246,116 226,116 210,104 202,82"), 1)),
        "outline",
      ),
      window("210,72 226,62 246,70 250,88 234,98 214,94"),
      stroked("line", ...comb),
      filled(
        "organ",
        ring(vary.loosen(at("164,98 184,88 206,98 212,120 200,138 178,140 160,126"), 0.8)),
        "outline",
      ),
      window("172,106 188,98 202,110 202,126 186,132 170,122"),
      stroked(
        "line",
        ...[0, 1, 2, 3].map((fold) =>
          smooth(
            at("176,104 186,116 188,131").map(
              ([x, y]): Point => [x + fold * 6 - 5, y + Math.abs(fold - 1.5) * 1.6],
            ),
          ),
        ),
      ),
      filled(
        "organ",
        ring(
          vary.loosen(
            at(
              "204,132 222,126 240,134 244,152 226,172 192,184 150,188 112,184 88,170 84,158 100,158 130,168 166,162 190,148",
            ),
            0.8,
          ),
        ),
        "outline",
      ),
      ...tube(at("92,164 72,158 56,140 44,116"), [6, 6.4, 6, 5.4], "tissue"),
      window("150,170 190,160 220,146 230,150 216,164 186,176 156,180"),
      stroked(
        "line",
        ...[0, 1, 2].map((fold) =>
          smooth([
            [158, 176 - fold * 2],
            [190, 170 - fold * 4],
            [222, 154 - fold * 2.4],
          ]),
        ),
      ),
      stroked("line", smooth(at("86,160 92,164 90,170"))),
    ],
    callouts: [
      { structure: "dorsal-sac-of-rumen", at: [170, 28] },
      { structure: "ventral-sac-of-rumen", at: [60, 150] },
      { structure: "ruminal-pillars", at: [34, 88] },
      { structure: "ruminal-papillae", at: [100, 48] },
      { structure: "reticulum", at: [254, 96] },
      { structure: "reticular-cells", at: [228, 81] },
      { structure: "omasum", at: [206, 122] },
      { structure: "abomasum", at: [230, 140] },
      { structure: "pylorus", at: [90, 164] },
    ],
  };
}

export function drawDogOrgans(vary: Variation): Sketch {
  const trunk = vary.loosen(
    at(`
      86,66 104,72 126,76 156,80 186,80 208,84 226,92 230,108 226,122 214,140 200,138 190,130 174,130
      150,142 130,146 112,144 96,134 84,112 80,88
    `),
    0.6,
  );
  const loops: Point[][] = [
    at("170,116 182,108 194,114 204,106"),
    at("174,124 186,118 198,123 208,116"),
    at("168,108 180,101 194,104"),
  ];
  return {
    shapes: [
      stroked(
        "hidden",
        smooth(
          at("88,66 92,56 88,38 78,32 72,40 58,50 48,62 34,70 22,74 22,82 30,88 48,88 62,86 72,92 80,100"),
        ),
        smooth(at("96,134 102,152 103,166")),
        smooth(at("126,146 118,156 116,168")),
        smooth(at("200,138 214,154 220,168")),
        smooth(at("228,122 228,138 237,154")),
        smooth(at("226,92 236,86 246,78")),
      ),
      filled("tissue", ring(trunk, 0.9), "outline"),
      filled(
        "hollow",
        ring(
          at(
            "98,88 124,84 156,87 190,88 214,94 220,106 214,126 194,122 172,122 148,134 124,138 106,128 97,108",
          ),
          0.9,
        ),
        "line",
      ),
      filled("artery", roundBand(at("112,98 122,92 140,91 170,91 204,94"), 2), "fine"),
      filled("muscle", roundBand(at("92,84 112,95 140,96 152,98"), 2), "fine"),
      filled("organ", ring(at("110,110 122,104 134,112 136,126 126,134 114,126")), "line"),
      stroked("artery", smooth(at("124,106 128,118 130,132"))),
      filled(
        "tissue",
        ring(vary.loosen(at("100,98 116,92 138,92 148,98 142,112 132,124 124,114 112,112 102,112"), 0.6)),
        "line",
      ),
      stroked("fine", smooth(at("122,93 124,104 130,120"))),
      filled(
        "deep",
        ring(vary.loosen(at("146,104 156,98 164,104 164,122 152,132 142,132 142,118"), 0.6)),
        "outline",
      ),
      filled("organ", ring(vary.loosen(at("160,98 176,96 180,106 174,118 162,122 158,110"), 0.5)), "line"),
      ...loops.flatMap((line) => [filled("tissue", roundBand(vary.loosen(line, 0.8), 4.4), "line")]),
      filled("fat", ring(vary.loosen(at("158,122 172,117 188,121 194,128 176,129 162,133"), 0.5)), "fine"),
      filled("deep", roundBand(at("178,96 184,104 182,116"), [3, 4.4, 3]), "line"),
      filled("organ", ring(at("186,92 198,92 202,98 194,103 186,100 189,96")), "line"),
      filled("tissue", roundBand(at("200,98 210,101 218,99"), 2.8), "line"),
      filled("muscle", ring(at("202,118 212,114 216,122 208,130 200,127")), "line"),
      stroked("outline", smooth(at("152,88 144,100 138,118 140,136"))),
      stroked("nerve", smooth(at("98,92 114,102 130,104 142,110"))),
    ],
    callouts: [
      { structure: "left-lung", at: [110, 100] },
      { structure: "heart", at: [120, 124] },
      { structure: "diaphragm", at: [141, 106] },
      { structure: "liver", at: [152, 116] },
      { structure: "stomach", at: [168, 106] },
      { structure: "spleen", at: [182, 106] },
      { structure: "kidney", at: [196, 97] },
      { structure: "jejunum", at: [196, 116] },
      { structure: "urinary-bladder", at: [209, 122] },
    ],
  };
}

export function drawFishOrgans(vary: Variation): Sketch {
  return {
    shapes: [
      filled("tissue", ring(fishOutline(vary)), "outline"),
      ...finsOfFish(),
      filled(
        "hollow",
        ring(at("58,66 76,60 110,58 150,66 176,78 182,92 160,106 124,116 90,118 66,110 58,96")),
        "line",
      ),
      filled("hollow", ring(at("46,66 58,70 62,88 58,106 46,102 40,86")), "outline"),
      ...[0, 1, 2, 3].map(
        (row): Shape =>
          filled(
            "artery",
            roundBand(
              at("46,70 52,86 49,102").map(([x, y]): Point => [x + row * 3.2 - 3, y]),
              [1.2, 1.8, 1.2],
            ),
            "fine",
          ),
      ),
      filled("deep", ring(vary.loosen(at("70,90 88,84 104,88 108,100 92,108 74,106"), 0.7)), "outline"),
      filled("glass", ring(at("76,68 94,64 110,68 112,76 96,80 80,78")), "outline"),
      filled("glass", ring(at("111,70 132,70 150,80 142,86 122,82 111,77")), "outline"),
      filled("deep", roundBand(at("80,62 106,60 136,64 152,70"), 1.8), "fine"),
      filled(
        "tissue",
        roundBand(vary.loosen(at("98,104 114,96 130,104 144,96 158,102 170,98"), 0.8), 4),
        "line",
      ),
      filled("tissue", roundBand(vary.loosen(at("96,110 114,108 132,112 152,108"), 0.6), 3.4), "line"),
      filled("fat", roundBand(at("118,90 140,90 162,92"), [2, 4, 2]), "line"),
      filled("organ", ellipse(110, 92, 5, 3.4), "line"),
      filled("organ", ring(at("60,104 68,102 72,110 64,114")), "outline"),
      filled("sinew", ellipse(30, 78, 5.4), "line"),
      filled("ink", ellipse(30, 78, 2.2)),
      stroked("line", smooth(at("10,86 18,90"))),
      stroked("hatch", ...at("190,74 202,80 196,92 208,90").map(([x, y]) => arc(x, y, 5, 5, -1, 1))),
    ],
    callouts: [
      { structure: "gill", at: [50, 86] },
      { structure: "swim-bladder", at: [94, 70] },
      { structure: "liver", at: [82, 98] },
      { structure: "heart", at: [66, 108] },
      { structure: "small-intestine", at: [150, 102] },
      { structure: "spleen", at: [110, 92] },
      { structure: "kidney", at: [120, 62] },
      { structure: "ovary", at: [146, 90] },
      { structure: "eyeball", at: [30, 78] },
    ],
  };
}

export function drawAirSacCast(vary: Variation): Sketch {
  return moveSketch(airSacs(vary), ([x, y]) => [x * 1.25, y]);
}

function airSacs(vary: Variation): Sketch {
  const pair = (points: string, wash: "glass" | "duct" | "tissue"): Shape[] => {
    const outline = vary.loosen(at(points), 0.8);
    return [outline, mirrored(outline)].flatMap((one, index) => [
      filled(wash, ring(one), "line"),
      stroked("hatch", contours(one, index === 0 ? 1 : 2, 4, [0.88, 0.76])),
    ]);
  };
  const lung = at("6,92 18,84 30,92 33,112 26,126 12,124 6,108");
  const pipes = (points: readonly Point[], side: 1 | -1): Path[] =>
    Array.from({ length: 6 }, (_, row) =>
      smooth(
        [
          [8, 94 + row * 5],
          [18, 90 + row * 6],
          [30, 98 + row * 4],
        ].map(([x = 0, y = 0]): Point => [(x * points.length * side) / 7, y]),
      ),
    );
  return {
    shapes: [
      ...pair("6,6 14,2 18,14 15,36 8,48 5,30", "glass"),
      ...pair("14,136 36,130 46,148 42,186 28,214 12,208 6,176 8,150", "glass"),
      ...pair("12,124 30,118 44,126 44,144 28,152 14,144", "tissue"),
      ...pair("10,104 28,98 40,106 38,122 24,128 12,122", "glass"),
      filled("duct", ring(lung), "line"),
      filled("duct", ring(mirrored(lung)), "line"),
      stroked("duct-twig", ...pipes(lung, 1), ...pipes(lung, -1)),
      filled(
        "glass",
        ring(
          vary.loosen(at("-34,60 -20,50 0,54 20,50 34,60 42,74 26,80 10,78 0,84 -10,78 -26,80 -42,74"), 0.7),
        ),
        "outline",
      ),
      ...tube(at("0,-34 0,20 0,70"), 4, "duct"),
      stroked(
        "line",
        ...[-28, -20, -12, -4, 4, 12, 20, 28, 36, 44, 52].map((y) => arc(0, y, 4, 1.4, 0.2, Math.PI - 0.2)),
      ),
      filled("duct", roundBand(at("-4,70 0,73 4,70"), 3.4), "line"),
      filled("duct", roundBand(at("1,74 8,84 15,96"), 2.4), "line"),
      filled("duct", roundBand(at("-1,74 -8,84 -15,96"), 2.4), "line"),
    ],
    callouts: [
      { structure: "trachea", at: [0, 0] },
      { structure: "syrinx", at: [-2, 72] },
      { structure: "cervical-air-sac", at: [12, 20] },
      { structure: "clavicular-air-sac", at: [-26, 64] },
      { structure: "lung", at: [20, 106] },
      { structure: "cranial-thoracic-air-sac", at: [-36, 112] },
      { structure: "caudal-thoracic-air-sac", at: [36, 140] },
      { structure: "abdominal-air-sac", at: [-32, 182] },
    ],
  };
}
