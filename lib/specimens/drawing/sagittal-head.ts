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
  between,
  centreOf,
  drawnIn,
  ellipse,
  ellipsePoints,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import {
  type Callout,
  filled,
  moveSketch,
  type Shape,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** From how far aside only the temple, the parotid gland and the ear are cut. */
const outermost = 0.86;

/** The hemisphere, towards the side only its temporal lobe. */
function brainOutline(aside: number): Point[] {
  const size = aside < 0.6 ? 0.99 - 0.3 * aside ** 2 : 0.88 - (aside - 0.6) * 1.9;
  const points: readonly Point[] = at(`
    104,17 78,20 58,32 47,50 45,68 56,78 76,82 96,90 120,96 146,100 162,92 170,74 168,52 152,30
    130,20
  `);
  return drawnIn(points, size, [108, 58 + Math.max(0, aside - 0.6) * 60]);
}

const cheek: readonly Point[] = at(`
  104,4 74,7 48,20 33,42 32,60 34,70 36,80 38,90 40,98 41,106 42,112 43,118 43,124 44,130 45,136 46,142 48,150
  54,158 62,164 70,167
`);

/** The outline of the head at a place: beside the nose and the mouth the cheek. */
function skinOutline(aside: number): Point[] {
  const share = Math.min(Math.max((aside - 0.2) / 0.2, 0), 1);
  return profile.map((point, index) => between(point, cheek[index] ?? point, share));
}

function middleStructures(vary: Variation): Shape[] {
  const cerebellum: Point[] = at("128,108 144,100 160,104 164,118 154,130 138,130 128,122");
  return [
    filled("hollow", ring(at("76,72 84,54 108,46 132,54 142,72 132,76 112,70 92,76"), 0.9), "fine"),
    filled(
      "sinew",
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

/** Nose, palate, tongue and throat, as far as they reach from the middle. */
function face(vary: Variation): Shape[] {
  return [
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
    ...[0, 1, 2].map((row): Shape => {
      const concha: Point[] = at("40,94 56,95 72,100").map(
        ([x, y], index): Point => [x + (index === 2 ? row * 2 : 0), y + row * (8 - (index === 2 ? 1 : 0))],
      );
      return filled("organ", roundBand(concha, [1.6, 3 + row * 0.4, 1.8]), "line");
    }),
    filled("hollow", ring(at("36,66 46,62 46,76 38,78")), "line"),
    filled("hollow", ring(at("74,86 86,86 90,96 80,96")), "line"),
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
    filled("sinew", ring(at("24,118 29,119 28,128 25,129"), 0.6), "fine"),
    filled("sinew", ring(at("25,131 29,130 31,141 26,142"), 0.6), "fine"),
    ...spongyBone(at("24,142 33,142 37,156 32,163 25,158"), vary, 8),
    filled("bone", ellipse(72, 168, 4, 2.4, 0.4), "line"),
    filled("glass", ring(at("90,150 94,142 97,146 95,162 91,168"), 0.8), "line"),
    filled("hollow", roundBand(at("88,176 90,196 90,218"), [4.4, 4.6, 5]), "line"),
    filled("glass", ring(at("83,172 85,190 83,198 80,188"), 0.8), "line"),
    filled("muscle", roundBand(at("100,172 101,196 101,219"), 2.6), "fine"),
  ];
}

/** Through the eye: orbit, sinus of the upper jaw, the body of the lower jaw, the muscles inside its branch. */
function cheekInside(vary: Variation): Shape[] {
  const molars = (y: number, rise: number): Shape[] =>
    at("52,0 60,0 68,0").map(([x]) =>
      filled(
        "sinew",
        ring(
          [
            [x - 3, y],
            [x + 3, y],
            [x + 2.6, y + rise],
            [x - 2.6, y + rise],
          ],
          0.5,
        ),
        "fine",
      ),
    );
  return [
    filled("fat", ring(at("34,68 48,62 70,70 82,80 66,88 46,88 36,82")), "line"),
    filled("sinew", ellipse(44, 76, 10), "line"),
    stroked("fine", arc(37, 76, 3, 6, 1.8, 4.5)),
    ...belly(at("52,70 66,74 82,80"), [2, 2.6, 1.4]),
    ...belly(at("52,82 66,83 80,83"), [2, 2.6, 1.4]),
    filled("hollow", ring(at("46,93 60,90 74,98 74,110 60,114 48,110")), "line"),
    filled("bone", roundBand(at("48,118 60,118 74,116"), [2.4, 3, 3]), "line"),
    ...molars(121, 6),
    ...molars(136, -7),
    ...spongyBone(at("48,138 62,136 80,136 88,142 82,154 64,158 52,156"), vary, 12),
    ...belly(at("84,100 86,118 84,138"), [6, 9, 6]),
    filled("organ", ring(at("72,160 86,154 96,160 92,170 78,170")), "line"),
    ...belly(at("120,140 116,172 112,216"), [8, 9, 9]),
  ];
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
    filled("fat", ring(vary.loosen(at("54,106 64,104 70,114 66,136 58,144 50,132"), 1)), "fine"),
    ...belly(at("126,142 118,172 108,206"), [9, 11, 8]),
  ];
}

/** At the very side: the temple, the parotid gland before the ear, the ear itself. */
function atTheEar(vary: Variation): Shape[] {
  return [
    ...belly(at("92,112 92,88 96,66 104,48"), [7, 16, 22, 14]),
    filled("fat", ring(vary.loosen(at("92,118 108,112 116,128 112,152 100,158 90,142"), 0.8)), "line"),
    filled("tissue", ring(at("118,84 130,76 142,84 142,104 134,120 128,136 120,132 120,108")), "outline"),
    stroked(
      "line",
      smooth(at("124,92 132,86 136,96 130,110 126,122")),
      smooth(at("122,108 127,104 127,112")),
    ),
  ];
}

const calloutsAt: readonly (readonly [aside: number, callouts: readonly Callout[]])[] = [
  [
    0.22,
    [
      { structure: "corpus-callosum", at: [108, 45] },
      { structure: "vermis-of-cerebellum", at: [150, 116] },
      { structure: "pons", at: [108, 110] },
      { structure: "tongue", at: [54, 136] },
      { structure: "inferior-nasal-concha", at: [58, 111] },
      { structure: "spinal-cord", at: [131, 180] },
      { structure: "epiglottis", at: [93, 156] },
      { structure: "soft-palate", at: [82, 127] },
      { structure: "sphenoidal-sinus", at: [82, 91] },
    ],
  ],
  [
    0.33,
    [
      { structure: "frontal-lobe", at: [66, 44] },
      { structure: "thalamus", at: [104, 66] },
      { structure: "cerebellar-hemisphere", at: [150, 114] },
      { structure: "tongue", at: [54, 136] },
      { structure: "lateral-ventricle", at: [112, 51] },
      { structure: "axis", at: [114, 158] },
    ],
  ],
  [
    0.62,
    [
      { structure: "eyeball", at: [42, 74] },
      { structure: "maxillary-sinus", at: [60, 102] },
      { structure: "frontal-lobe", at: [66, 46] },
      { structure: "parietal-lobe", at: [116, 32] },
      { structure: "cerebellar-hemisphere", at: [148, 114] },
      { structure: "mandible", at: [64, 148] },
      { structure: "submandibular-gland", at: [84, 164] },
    ],
  ],
  [
    outermost,
    [
      { structure: "temporalis", at: [90, 70] },
      { structure: "masseter", at: [80, 132] },
      { structure: "external-acoustic-meatus", at: [124, 109] },
      { structure: "mandible", at: [90, 152] },
      { structure: "temporal-lobe", at: [122, 76] },
    ],
  ],
  [
    1,
    [
      { structure: "temporalis", at: [98, 70] },
      { structure: "parotid-gland", at: [104, 136] },
      { structure: "auricle-of-ear", at: [136, 92] },
    ],
  ],
];

function skullAndBrain(vary: Variation, aside: number): Shape[] {
  const central = aside < 0.22;
  const brain = brainOutline(aside);
  const middle = centreOf(brain);
  const sulci: Path[] = along(brain, 17).flatMap((point, index): Path[] => {
    if (index === 0 || index === 16 || (central && index > 4 && index < 10)) return [];
    const reach = central ? vary.within(0.2, 0.3) : vary.within(0.22, 0.46);
    return [sulcus(vary, [point, between(point, middle, reach)], 2)];
  });
  const posterior = central
    ? [
        filled(
          "bone",
          ring(at("90,88 104,102 116,132 124,140 130,148 118,150 106,128 92,106 80,96")),
          "line",
        ),
        filled("hollow", ring(at("124,96 152,94 172,110 164,136 142,140 126,138 116,118")), "line"),
      ]
    : aside < 0.7
      ? [filled("hollow", ring(at("126,98 152,98 168,112 158,134 136,132")), "line")]
      : [];
  return [
    filled("bone", ring(drawnIn(brain, 1.085, [middle[0] - 2, middle[1]])), "line"),
    filled("hollow", ring(drawnIn(brain, 1.03, [middle[0] - 1, middle[1]])), "fine"),
    ...posterior,
    filled("organ", ring(brain), "outline"),
    stroked("line", ...sulci),
  ];
}

/** Beside the middle plane: the ventricle, the thalamus, a hemisphere of the cerebellum. */
function besideTheMiddle(aside: number): Shape[] {
  const size = 1 - aside * 0.5;
  return [
    ...(aside < 0.45
      ? [
          filled("sinew", ring(ellipsePoints(106, 62, 38 * size, 20 * size)), "fine"),
          filled("deep", ellipse(104, 66, 17 * size, 10 * size, -0.1), "line"),
          filled("hollow", roundBand(at("78,62 100,50 126,54 138,70"), [2, 3.4, 3.4, 2]), "fine"),
        ]
      : []),
    filled(
      "deep",
      ring(ellipsePoints(148, 114, 19 * (1 - aside * 0.4), 13 * (1 - aside * 0.4), 0.1)),
      "line",
    ),
    stroked("fine", ...[0.3, 0.55, 0.8].map((f) => arc(140, 114, 24 * f, 13 * f, -1, 1))),
  ];
}

function column(withCord: boolean): Shape[] {
  return [
    ...vertebralColumn(at("114,150 116,178 113,200 114,222"), 5, [8, 9]),
    ...(withCord ? [filled("nerve", roundBand(at("131,150 131,186 128,222"), 3), "fine")] : []),
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
}

/** @param level 0 at the right side, 0.5 in the middle plane, 1 at the left side */
export function drawSagittalHead(vary: Variation, level: number): Sketch {
  const aside = Math.min(Math.abs(level - 0.5) * 2, 1);
  const shrink = 1 - 0.2 * aside ** 2.2;
  const skin = drawnIn(vary.loosen(skinOutline(aside), 0.7), shrink, [100, 110]);
  // No head is quite the same on both sides.
  const lean = (level - 0.5) * 3;
  const neck = filled("muscle", ring(at("120,142 147,138 154,160 145,190 147,214 124,220")), "fine");
  const head = aside < outermost ? skullAndBrain(vary, aside) : [];
  const inside =
    aside < 0.22
      ? [...face(vary), ...column(true), ...middleStructures(vary)]
      : aside < 0.33
        ? [...face(vary), ...column(false), ...besideTheMiddle(aside)]
        : aside < 0.62
          ? [...cheekInside(vary), ...besideTheMiddle(aside)]
          : aside < outermost
            ? temple(vary)
            : atTheEar(vary);
  const inner: Sketch = {
    shapes: [...(aside < 0.62 ? [neck] : []), ...head, ...inside],
    callouts: calloutsAt.find(([to]) => aside <= to)?.[1] ?? [],
  };
  const { shapes, callouts } = moveSketch(inner, ([x, y]) => between([100, 110], [x + lean, y], shrink));
  return { shapes: [filled("tissue", ring(skin, 0.9), "outline"), ...shapes], callouts };
}
