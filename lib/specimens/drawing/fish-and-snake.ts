/** Fish and snake from the left side: plain, or as a skeleton inside their outline. */
import { vertebralColumn } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  arc,
  at,
  beside,
  ellipse,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function fishOutline(vary: Variation): Point[] {
  return vary.loosen(
    at(`
      10,84 30,66 60,52 100,46 140,52 180,68 214,82 252,62 246,88 254,116 214,94 180,106 140,120
      100,124 60,114 28,100
    `),
    0.8,
  );
}

export function finsOfFish(): Shape[] {
  return [
    filled("glass", ring(at("84,48 100,26 130,26 150,54 120,48")), "line"),
    filled("glass", ring(at("110,123 118,142 138,138 140,120")), "line"),
    filled("glass", ring(at("160,112 170,128 186,120 184,104")), "line"),
    stroked(
      "fine",
      ...[94, 104, 114, 124, 134].map((x) =>
        straight([
          [x, 47],
          [x + 4, 30],
        ]),
      ),
    ),
    stroked(
      "fine",
      ...[66, 78, 88, 98, 110].map((y) =>
        straight([
          [220, 88],
          [246, y],
        ]),
      ),
    ),
  ];
}

export function drawFish(vary: Variation, bare: boolean): Sketch {
  const outline = fishOutline(vary);
  const spine: Point[] = at("52,80 100,78 150,82 212,88");
  const bones: Shape[] = [
    ...Array.from({ length: 16 }, (_, index): Shape => {
      const [x = 0, y = 0] = along(spine, 17)[index + 1] ?? [0, 0];
      const reach = 26 * Math.sin(Math.PI * (0.25 + index / 24));
      return stroked(
        "line",
        smooth([
          [x, y],
          [x + 5, y - reach * 0.6],
          [x + 8, y - reach],
        ]),
        smooth([
          [x, y],
          [x + 5, y + reach * 0.6],
          [x + 6, y + reach * 1.1],
        ]),
      );
    }),
    ...vertebralColumn(spine, 24, [2.6, 1.4]),
    filled("bone", ring(at("14,84 34,66 54,60 60,80 54,102 32,100")), "line"),
    filled("hollow", ellipse(34, 78, 5), "line"),
  ];
  const skin: Shape[] = [
    stroked("line", smooth(at("62,78 120,76 180,84 214,88"))),
    filled("sinew", ellipse(34, 78, 5), "line"),
    filled("ink", ellipse(34, 78, 2)),
    stroked("line", arc(50, 84, 10, 22, -1.2, 1.2), smooth(at("10,86 20,90"))),
  ];
  return {
    shapes: [
      filled(bare ? "paper" : "tissue", ring(outline), bare ? "hidden" : "outline"),
      ...finsOfFish(),
      ...(bare ? bones : skin),
    ],
    callouts: bare
      ? [
          { structure: "vertebral-column", at: [130, 80] },
          { structure: "skull", at: [44, 70] },
        ]
      : [],
  };
}

export function drawSnake(vary: Variation, bare: boolean): Sketch {
  const turns = 2.6 + vary.within(0, 0.4);
  const line: Point[] = Array.from({ length: 44 }, (_, index): Point => {
    const share = index / 43;
    const angle = -0.6 + share * turns * 2 * Math.PI;
    const reach = 96 - share * 66;
    return [Math.cos(angle) * reach * 1.15, Math.sin(angle) * reach * 0.86];
  });
  const widths = line.map((_, index) =>
    index < 2 ? 5.4 : 3 + 4.6 * Math.sin(Math.PI * Math.min(1, (index + 6) / 46)) ** 0.7,
  );
  const inside: Shape[] = bare
    ? [
        stroked("line", smooth(line)),
        stroked(
          "fine",
          ...along(line, 110)
            .slice(4, 100)
            .map((point, index, all) => {
              const next = all[index + 1] ?? point;
              const angle = Math.atan2(next[1] - point[1], next[0] - point[0]);
              return straight([
                [point[0] + Math.cos(angle + 1) * 5, point[1] + Math.sin(angle + 1) * 5],
                point,
                [point[0] + Math.cos(angle - 1) * 5, point[1] + Math.sin(angle - 1) * 5],
              ]);
            }),
        ),
      ]
    : [
        stroked(
          "hatch",
          smooth(
            beside(
              line,
              widths.map((w) => w * 0.5),
            ),
          ),
          smooth(
            beside(
              line,
              widths.map((w) => -w * 0.5),
            ),
          ),
        ),
        stroked(
          "fine",
          ...along(line, 60)
            .slice(3, 56)
            .map((point) => ellipse(point[0], point[1], 1.6, 1)),
        ),
      ];
  const head = line[0] ?? [0, 0];
  return {
    shapes: [
      filled(bare ? "paper" : "tissue", roundBand(line, widths), bare ? "hidden" : "outline"),
      ...inside,
      filled(
        "bone",
        ring([
          [head[0] - 6, head[1] + 6],
          [head[0] - 2, head[1] - 10],
          [head[0] + 5, head[1] - 15],
          [head[0] + 9, head[1] - 4],
          [head[0] + 6, head[1] + 8],
        ]),
        "line",
      ),
      filled("ink", ellipse(head[0] + 3, head[1] - 4, 1.2)),
    ],
    callouts: [],
  };
}
