/**
 * A histological slide: the glass with its label and the stained section under the
 * cover slip, and beside it a roundel of what the microscope shows.
 */
import { liesInside } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  box,
  contours,
  dots,
  ellipse,
  ellipsePoints,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export const tissues = ["gland", "muscle", "nerve", "bone"] as const;
export type Tissue = (typeof tissues)[number];

const view = { x: 236, y: 44, radius: 62 };

function inView(point: Point, margin: number): boolean {
  return Math.hypot(point[0] - view.x, point[1] - view.y) < view.radius - margin;
}

function gland(vary: Variation): Shape[] {
  const shapes: Shape[] = [];
  for (let row = -3; row <= 3; row += 1) {
    for (let column = -3; column <= 3; column += 1) {
      const centre: Point = [
        view.x + column * 21 + (row % 2) * 10 + vary.within(-2, 2),
        view.y + row * 18 + vary.within(-2, 2),
      ];
      if (!inView(centre, 11)) continue;
      const cells = ellipsePoints(
        centre[0],
        centre[1],
        9.4 * vary.within(0.9, 1.05),
        8.4,
        vary.within(0, 3),
        9,
      );
      shapes.push(
        filled("muscle", ring(vary.loosen(cells, 0.6)), "line"),
        filled(
          "paper",
          ring(
            cells.map(
              ([x, y]): Point => [centre[0] + (x - centre[0]) * 0.34, centre[1] + (y - centre[1]) * 0.34],
            ),
          ),
          "fine",
        ),
        stroked(
          "stipple",
          dots(
            cells.map(
              ([x, y]): Point => [centre[0] + (x - centre[0]) * 0.76, centre[1] + (y - centre[1]) * 0.76],
            ),
          ),
        ),
      );
    }
  }
  return shapes;
}

function fibres(vary: Variation): Shape[] {
  const shapes: Shape[] = [];
  for (let row = -5; row <= 5; row += 1) {
    const y = view.y + row * 11;
    const reach = Math.sqrt(Math.max(0, (view.radius - 5) ** 2 - (row * 11) ** 2));
    if (reach < 14) continue;
    const sway = vary.within(-2, 2);
    const line: Point[] = [
      [view.x - reach + 3, y],
      [view.x - reach * 0.3, y + sway],
      [view.x + reach * 0.3, y - sway],
      [view.x + reach - 3, y],
    ];
    shapes.push(filled("muscle", roundBand(line, 4), "fine"));
    const bars: Path[] = [];
    for (let x = -reach + 6; x < reach - 5; x += 3.4)
      bars.push(
        straight([
          [view.x + x, y - 3.2],
          [view.x + x, y + 3.2],
        ]),
      );
    shapes.push(
      stroked("hatch", ...bars),
      filled("deep", ellipse(view.x + vary.within(-reach * 0.7, reach * 0.7), y - 3.6, 3, 1.1), "fine"),
    );
  }
  return shapes;
}

function neurons(vary: Variation): Shape[] {
  const shapes: Shape[] = [];
  for (let row = -2; row <= 2; row += 1) {
    for (let column = -2; column <= 2; column += 1) {
      const place: Point = [
        view.x + column * 25 + (row % 2) * 12 + vary.within(-4, 4),
        view.y + row * 24 + vary.within(-4, 4),
      ];
      if (!inView(place, 17)) continue;
      const turn = vary.within(0, 6.28);
      const arms = Array.from({ length: 6 }, (_, index): Path => {
        const angle = turn + (index * 6.28) / 6 + vary.within(-0.3, 0.3);
        const reach = vary.within(10, 16);
        const bend: Point = [
          place[0] + Math.cos(angle) * reach * 0.55,
          place[1] + Math.sin(angle) * reach * 0.55,
        ];
        const end = (by: number): Point => [
          place[0] + Math.cos(angle + by) * reach,
          place[1] + Math.sin(angle + by) * reach,
        ];
        return [...smooth([place, bend, end(0.3)]), ...smooth([bend, end(-0.25)])];
      });
      shapes.push(
        stroked("fine", ...arms),
        filled("muscle", ring(vary.loosen(ellipsePoints(place[0], place[1], 6, 4.6, turn, 7), 0.8)), "line"),
        filled("deep", ellipse(place[0], place[1], 2), "fine"),
      );
    }
  }
  const glia = Array.from(
    { length: 90 },
    (): Point => [view.x + vary.within(-58, 58), view.y + vary.within(-58, 58)],
  );
  return [stroked("stipple", dots(glia.filter((point) => inView(point, 4)))), ...shapes];
}

function osteons(vary: Variation): Shape[] {
  const shapes: Shape[] = [];
  const places: Point[] = at("-26,-24 18,-30 34,8 -6,10 -38,16 10,42 -22,44");
  for (const [dx = 0, dy = 0] of places) {
    const centre: Point = [view.x + dx + vary.within(-2, 2), view.y + dy + vary.within(-2, 2)];
    const reach = Math.min(19, view.radius - 3 - Math.hypot(centre[0] - view.x, centre[1] - view.y));
    if (reach < 7) continue;
    const rings = Array.from(
      { length: 4 },
      (_, index): Path =>
        ellipse(centre[0], centre[1], reach * (0.4 + index * 0.2), reach * (0.36 + index * 0.2)),
    );
    const lacunae = Array.from({ length: 16 }, (_, index): Point => {
      const angle = index * 2.4;
      const share = 0.48 + (index % 3) * 0.2;
      return [
        centre[0] + Math.cos(angle) * reach * share,
        centre[1] + Math.sin(angle) * reach * share * 0.95,
      ];
    });
    shapes.push(
      filled("bone", ellipse(centre[0], centre[1], reach, reach * 0.96), "line"),
      stroked("hatch", ...rings),
      stroked("stipple", dots(lacunae)),
      filled("hollow", ellipse(centre[0], centre[1], reach * 0.16), "line"),
    );
  }
  return shapes;
}

export function drawSlide(vary: Variation, tissue: Tissue): Sketch {
  const outline = vary.loosen(ellipsePoints(104, 44, 42, 20, 0.1, 14), 2.4);
  const lumen = vary.loosen(ellipsePoints(98, 46, 15, 6, 0.2, 9), 1.4);
  const grains: Point[] = [];
  for (let attempt = 0; attempt < 160 && grains.length < 60; attempt += 1) {
    const spot: Point = [vary.within(62, 146), vary.within(24, 64)];
    if (liesInside(spot, outline) && !liesInside(spot, lumen)) grains.push(spot);
  }
  const detail = { gland, muscle: fibres, nerve: neurons, bone: osteons }[tissue](vary);
  return {
    shapes: [
      filled("glass", box(0, 8, 168, 72), "outline"),
      filled("paper", box(0, 8, 38, 72), "line"),
      stroked(
        "fine",
        ...[20, 28, 36].map((y) =>
          straight([
            [6, y],
            [y === 36 ? 22 : 32, y],
          ]),
        ),
        ...Array.from({ length: 12 }, (_, index) =>
          straight([
            [7 + index * 2.1, 56],
            [7 + index * 2.1, 70],
          ]),
        ),
      ),
      filled("paper", box(52, 16, 104, 56), "fine"),
      filled("muscle", ring(outline), "line"),
      filled("paper", ring(lumen), "line"),
      stroked("stipple", dots(grains)),
      stroked("hatch", contours(outline, 0, 6, [0.92, 0.84])),
      stroked("line", ellipse(120, 36, 6)),
      stroked(
        "hatch",
        straight([
          [122, 30.3],
          [view.x - 20, view.y - view.radius + 3],
        ]),
        straight([
          [122, 41.7],
          [view.x - 20, view.y + view.radius - 3],
        ]),
      ),
      filled("tissue", ellipse(view.x, view.y, view.radius), "outline"),
      ...detail,
      stroked("fine", arc(view.x, view.y, view.radius + 3, view.radius + 3, 0.4, 1.6)),
    ],
    callouts: [],
  };
}
