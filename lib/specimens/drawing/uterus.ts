/** The uterus with its tubes and ovaries, from behind; the vagina is cut short. */
import { tube } from "#lib/specimens/drawing/forms.ts";
import {
  at,
  band,
  contours,
  dots,
  ellipse,
  mirrored,
  type Point,
  ring,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function drawUterus(vary: Variation): Sketch {
  const half: Point[] = at("0,10 18,12 31,22 30,40 20,62 14,84 13,108 0,112");
  const outline = [...half, ...mirrored(half).reverse()].filter(
    (point, index) => index < half.length || point[0] !== 0,
  );
  const tubeLine: Point[] = vary.loosen(at("28,22 48,12 72,8 94,18 104,36"), 1.4);
  const sides = (line: readonly Point[], width: number | readonly number[]): Shape[] => [
    ...tube(line, width, "organ"),
    ...tube(mirrored(line), width, "organ"),
  ];
  return {
    shapes: [
      filled("tissue", ring(at("24,22 60,14 98,30 88,60 52,80 18,84")), "fine"),
      filled("tissue", ring(mirrored(at("24,22 60,14 98,30 88,60 52,80 18,84"))), "fine"),
      filled("tissue", band(at("0,100 0,112 0,122"), [17, 20, 20]), "outline"),
      filled("hollow", ellipse(0, 122, 19, 4), "line"),
      stroked("line", smooth(at("14,100 34,112 46,124")), smooth(at("-14,100 -34,112 -46,124"))),
      ...sides(tubeLine, [4, 3.4, 4, 5.5, 7]),
      ...[1, -1].map((side) =>
        stroked(
          "line",
          ...[-0.5, -0.1, 0.3, 0.7].map((turn) =>
            smooth([
              [104 * side, 38],
              [(104 + 8 * Math.sin(turn * 2)) * side, 46],
              [(104 + 11 * Math.sin(turn * 2.4)) * side, 54],
            ]),
          ),
        ),
      ),
      ...[1, -1].flatMap((side): Shape[] => [
        filled("bone", ellipse(76 * side, 42, 15, 9, -0.2 * side), "outline"),
        stroked(
          "stipple",
          dots(
            Array.from({ length: 7 }, (): Point => [76 * side + vary.within(-9, 9), 42 + vary.within(-4, 4)]),
          ),
        ),
      ]),
      filled("muscle", ring(outline), "outline"),
      stroked("hatch", contours(outline, 1, 5, [0.93, 0.86]), contours(outline, 9, 13, [0.93, 0.86])),
      stroked(
        "artery",
        smooth(at("60,96 34,92 24,78 29,64 30,48 36,34")),
        smooth(at("-60,96 -34,92 -24,78 -29,64 -30,48 -36,34")),
      ),
    ],
    callouts: [
      { structure: "fundus-of-uterus", at: [-8, 16] },
      { structure: "uterine-tube", at: [60, 9] },
      { structure: "ovary", at: [76, 42] },
      { structure: "body-of-uterus", at: [16, 50] },
      { structure: "fimbriae-of-uterine-tube", at: [-104, 50] },
      { structure: "broad-ligament-of-uterus", at: [-50, 66] },
      { structure: "uterosacral-ligament", at: [-34, 112] },
      { structure: "uterine-artery", at: [-30, 88] },
      { structure: "cervix-of-uterus", at: [10, 98] },
    ],
  };
}
