/**
 * Sagittal sheets of the head, at a place between its two sides: 0 and 1 at the
 * sides, 0.5 in the middle plane, where the brainstem and the partition of the nose
 * come into view.
 */
import { sulcus } from "#lib/specimens/drawing/brain.ts";
import { belly, spongyBone, vertebralColumn } from "#lib/specimens/drawing/forms.ts";
import { profile } from "#lib/specimens/drawing/head.ts";
import {
  along,
  arc,
  at,
  drawnIn,
  ellipse,
  ellipsePoints,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

const skullMiddle: Point = [108, 64];

function brainOutline(aside: number): Point[] {
  const size = 0.99 - 0.3 * aside ** 2;
  const points: readonly Point[] = at(`
    104,17 78,20 58,32 47,50 45,68 56,78 76,82 96,90 120,96 146,100 162,92 170,74 168,52 152,30
    130,20
  `);
  return drawnIn(points, size, [108, 58]);
}

function middleStructures(vary: Variation): Shape[] {
  const cerebellum: Point[] = at("128,108 144,100 160,104 164,118 154,130 138,130 128,122");
  return [
    filled("hollow", ring(at("76,72 84,54 108,46 132,54 142,72 132,76 112,70 92,76"), 0.9), "fine"),
    filled(
      "paper",
      ring(
        at(`
          70,70 76,54 92,43 112,41 132,48 144,64 144,74 138,74 134,64 122,54 106,50 90,54 80,66 76,74
        `),
        0.9,
      ),
      "line",
    ),
    filled("tissue", ring(at("90,76 104,66 120,68 126,80 112,88 96,86")), "line"),
    stroked("nerve", smooth(at("80,74 90,64 104,60 118,64"))),
    filled(
      "tissue",
      ring(
        at(`
          108,88 120,84 128,94 126,104 122,112 126,124 132,150 134,186 126,186 122,152 114,132 102,122
          98,108 104,98
        `),
        0.9,
      ),
      "line",
    ),
    filled("deep", ring(at("102,104 112,100 118,108 114,120 104,116")), "fine"),
    filled("deep", ring(cerebellum), "line"),
    stroked(
      "line",
      ...[-0.9, -0.5, 0, 0.5, 0.9].map(
        (turn): Path =>
          sulcus(
            vary,
            [
              [131, 115],
              [146 + 4 * Math.cos(turn), 115 + 8 * turn],
              [154 + 6 * Math.cos(turn), 115 + 15 * turn],
            ],
            0.8,
          ),
      ),
    ),
    filled("nerve", ellipse(91, 93, 4, 3, 0.4), "fine"),
    stroked("nerve", smooth(at("92,86 86,86 80,88"))),
  ];
}

function face(vary: Variation, aside: number): Shape[] {
  const central = aside < 0.35;
  const shapes: Shape[] = [];
  if (central) {
    shapes.push(
      filled(
        "hollow",
        ring(
          at(`
            26,92 40,84 62,88 84,96 94,108 94,128 100,152 98,168 91,168 90,148 84,126 70,118 44,118 30,112
            22,104
          `),
          0.9,
        ),
        "line",
      ),
      ...[0, 1, 2].map(
        (row): Shape =>
          filled(
            "organ",
            roundBand(
              [
                [40, 94 + row * 8],
                [56, 95 + row * 8],
                [72 + row * 2, 100 + row * 7],
              ],
              [1.6, 3 + row * 0.4, 1.8],
            ),
            "line",
          ),
      ),
      filled("hollow", ring(at("36,66 46,62 46,76 38,78")), "line"),
      filled("hollow", ring(at("74,86 86,86 90,96 80,96")), "line"),
    );
  } else {
    shapes.push(
      filled("fat", ring(at("34,68 48,62 70,70 82,80 66,88 46,88 34,82")), "line"),
      filled("paper", ellipse(42, 76, 10), "line"),
      stroked("fine", arc(35, 76, 3, 6, 1.8, 4.5)),
      stroked("nerve", smooth(at("52,78 66,80 80,84"))),
      filled("hollow", ring(at("36,92 58,90 74,98 72,112 54,116 38,110")), "line"),
    );
  }
  shapes.push(
    filled("bone", roundBand(at("24,116 46,119 68,119"), [4, 2.2, 2]), "line"),
    filled("tissue", roundBand(at("68,119 82,126 88,140"), [2.4, 3, 2]), "line"),
    filled(
      "muscle",
      ring(at("30,132 40,124 60,122 78,130 86,146 84,160 72,160 60,152 42,148 32,142"), 0.9),
      "outline",
    ),
    stroked(
      "hatch",
      ...[0, 1, 2, 3, 4].map((lane) =>
        smooth([
          [70, 156],
          [62 - lane * 3, 146 - lane * 2],
          [40 + lane * 9, 136 - lane * 2.6],
        ]),
      ),
    ),
    filled("paper", ring(at("24,118 29,119 28,128 25,129"), 0.6), "fine"),
    filled("paper", ring(at("25,131 29,130 31,141 26,142"), 0.6), "fine"),
    ...spongyBone(at("24,142 33,142 37,156 32,163 25,158"), vary, 8),
    filled("bone", ellipse(72, 168, 4, 2.4, 0.4), "line"),
  );
  if (central) {
    shapes.push(
      filled("glass", ring(at("90,150 94,142 97,146 95,162 91,168"), 0.8), "line"),
      filled("hollow", roundBand(at("88,176 90,196 90,218"), [4.4, 4.6, 5]), "line"),
      filled("glass", ring(at("83,172 85,190 83,198 80,188"), 0.8), "line"),
      filled("muscle", roundBand(at("100,172 101,196 101,219"), 2.6), "fine"),
    );
  }
  return shapes;
}

/** Beside the face: the muscles of chewing on the jaw, the temple, the ear's canal. */
function temple(vary: Variation): Shape[] {
  return [
    filled(
      "bone",
      ring(at("96,116 112,112 114,124 108,146 94,158 66,160 60,152 84,142 92,130"), 0.9),
      "line",
    ),
    ...belly(at("84,120 84,94 88,70 96,50"), [8, 15, 20, 12]),
    ...belly(at("72,112 80,130 88,152"), [7, 12, 8]),
    filled("bone", roundBand(at("58,104 80,108 108,108"), [3, 3, 4]), "line"),
    filled("hollow", roundBand(at("118,110 128,108"), [3, 4]), "line"),
    filled("fat", ring(vary.loosen(at("40,104 54,100 62,112 58,136 46,146 36,132"), 1)), "fine"),
    ...belly(at("126,142 118,172 108,206"), [9, 11, 8]),
  ];
}

/** @param level 0 at the right side, 0.5 in the middle plane, 1 at the left side */
export function drawSagittalHead(vary: Variation, level: number): Sketch {
  const aside = Math.min(Math.abs(level - 0.5) * 2, 1);
  const central = aside < 0.22;
  const shrink = 1 - 0.2 * aside ** 2.2;
  const skin = drawnIn(vary.loosen(profile, 0.7), shrink, [100, 110]);
  // No head is quite the same on both sides.
  const lean = (level - 0.5) * 3;
  const brain = brainOutline(aside).map(([x, y]): Point => [x + lean, y]);
  const sulci: Path[] = along(brain, 17).flatMap((point, index): Path[] => {
    if (index === 0 || index === 16 || (central && index > 4 && index < 10)) return [];
    const reach = central ? vary.within(0.2, 0.3) : vary.within(0.22, 0.46);
    return [
      sulcus(
        vary,
        [
          point,
          [point[0] + (skullMiddle[0] - point[0]) * reach, point[1] + (skullMiddle[1] - point[1]) * reach],
        ],
        2,
      ),
    ];
  });
  const inner: Shape[] = central
    ? middleStructures(vary)
    : [
        filled("paper", ring(drawnIn(brain, 0.5 - aside * 0.16, [108, 60])), "fine"),
        filled("deep", ellipse(104, 66, 17 * (1 - aside * 0.5), 10 * (1 - aside * 0.5), -0.1), "line"),
        filled("hollow", roundBand(at("78,62 100,50 126,54 138,70"), [2, 3.4, 3.4, 2]), "fine"),
        ...(aside < 0.8
          ? [
              filled(
                "deep",
                ring(ellipsePoints(148, 114, 19 * (1 - aside * 0.4), 13 * (1 - aside * 0.4), 0.1)),
                "line",
              ),
              stroked("fine", ...[0.3, 0.55, 0.8].map((f) => arc(140, 114, 24 * f, 13 * f, -1, 1))),
            ]
          : []),
      ];
  const outer = aside > 0.62;
  const column: Shape[] = outer
    ? []
    : [
        ...vertebralColumn(at("114,150 116,178 113,200 114,222"), 5, [8, 9]),
        filled("nerve", roundBand(at("131,150 131,186 128,222"), 3), "fine"),
        ...[0, 1, 2, 3].map(
          (row): Shape =>
            filled(
              "bone",
              roundBand(
                [
                  [138, 158 + row * 17],
                  [150, 163 + row * 17],
                ],
                [3, 4],
              ),
              "line",
            ),
        ),
      ];
  const callouts: Callout[] = central
    ? [
        { text: "corpus callosum", at: [108, 45] },
        { text: "cerebellum", at: [150, 116] },
        { text: "pons", at: [108, 110] },
        { text: "lingua", at: [54, 136] },
        { text: "concha nasalis inferior", at: [58, 111] },
        { text: "medulla spinalis", at: [131, 180] },
      ]
    : outer
      ? [
          { text: "m. temporalis", at: [88, 80] },
          { text: "m. masseter", at: [80, 132] },
          { text: "meatus acusticus externus", at: [124, 109] },
          { text: "mandibula", at: [90, 152] },
        ]
      : [
          { text: "hemispherium cerebri", at: [120, 40] },
          { text: "bulbus oculi", at: [42, 74] },
          { text: "sinus maxillaris", at: [56, 104] },
          { text: "lingua", at: [54, 136] },
        ];
  return {
    shapes: [
      filled("tissue", ring(skin, 0.9), "outline"),
      ...(outer
        ? []
        : [filled("muscle", ring(at("120,142 150,138 158,160 148,190 150,218 124,222")), "fine")]),
      filled("bone", ring(drawnIn(brain, 1.085, [106, 60])), "line"),
      filled("hollow", ring(drawnIn(brain, 1.03, [107, 60])), "fine"),
      ...(central
        ? [
            filled(
              "bone",
              ring(at("90,88 104,102 116,132 124,140 130,148 118,150 106,128 92,106 80,96")),
              "line",
            ),
            filled("hollow", ring(at("124,96 152,94 172,110 164,136 142,140 126,138 116,118")), "line"),
          ]
        : [filled("hollow", ring(at("126,98 152,98 168,112 158,134 136,132")), "line")]),
      filled("organ", ring(brain), "outline"),
      stroked("line", ...sulci),
      ...(outer ? temple(vary) : face(vary, aside)),
      ...column,
      ...(outer ? [] : inner),
    ],
    callouts,
  };
}
