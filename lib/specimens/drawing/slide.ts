/**
 * Histological slides: the glass with its label and the stained section under the
 * cover slip, and beside it a roundel of what the microscope shows. Without a subject
 * that is known there is no roundel, and the section is a broken line.
 */
import { liesInside } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  bothHalves,
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
import { type Callout, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export const slideSubjects = [
  "gland",
  "muscle",
  "nerve cells",
  "bone",
  "kidney",
  "spinal cord",
  "eyeball",
] as const;
export type SlideSubject = (typeof slideSubjects)[number];

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

/** Glomeruli among tubules cut across. */
function renalCortex(vary: Variation): Shape[] {
  const corpuscles: Point[] = at("-26,-22 22,-30 30,20 -18,30");
  const shapes: Shape[] = [];
  for (let row = -4; row <= 4; row += 1) {
    for (let column = -4; column <= 4; column += 1) {
      const [dx, dy] = [column * 13 + (row % 2) * 6, row * 12.4];
      const centre: Point = [view.x + dx + vary.within(-1.4, 1.4), view.y + dy + vary.within(-1.4, 1.4)];
      if (!inView(centre, 7) || corpuscles.some(([x, y]) => Math.hypot(x - dx, y - dy) < 19)) continue;
      shapes.push(
        filled("muscle", ellipse(centre[0], centre[1], vary.within(5, 6.4), 5), "fine"),
        filled("paper", ellipse(centre[0], centre[1], 2.2, 1.9), "fine"),
      );
    }
  }
  for (const [dx, dy] of corpuscles) {
    const [x, y] = [view.x + dx, view.y + dy];
    const tuft = vary.loosen(ellipsePoints(x, y, 8.6, 8.2, 0, 11), 1.2);
    shapes.push(
      filled("paper", ellipse(x, y, 12.4, 12), "line"),
      filled("deep", ring(tuft), "line"),
      stroked(
        "fine",
        ...[0, 2.1, 4.2].map((turn) =>
          arc(x + Math.cos(turn) * 3.4, y + Math.sin(turn) * 3.4, 2.8, 2.4, turn, turn + 4),
        ),
      ),
    );
  }
  return shapes;
}

/** The cord cut across, at a scale of 1 for a radius of 20. */
function cordSection(x: number, y: number, scale: number): Shape[] {
  const put = (points: string): Point[] =>
    at(points).map(([px, py]): Point => [x + px * scale, y + py * scale]);
  const both = (points: string): Point[] =>
    bothHalves(at(points)).map(([px, py]): Point => [x + px * scale, y + py * scale]);
  return [
    filled("tissue", ring(both("0,-13 1.4,-15.4 10,-15 18.6,-7 19.4,2 14,12 5,15.6 0,14.6")), "line"),
    filled(
      "deep",
      ring(both("0,-2.6 3,-3 5,-9 9.4,-12.4 8,-6.4 6.6,-1 10.4,2 12,7 8,11 4.6,8 3.4,3 0,2.4"), 0.8),
      "fine",
    ),
    filled("paper", ellipse(x, y, 0.9 * scale), "fine"),
    stroked(
      "fine",
      smooth(put("0,14 0,4")),
      smooth(put("0,-13 0,-4")),
      smooth(put("5,-14 4,-9")),
      smooth(put("-5,-14 -4,-9")),
    ),
  ];
}

/** The eyeball cut level, its front to the left, at a scale of 1 for a radius of 20. */
function eyeSection(x: number, y: number, scale: number): Shape[] {
  const put = (points: string): Point[] =>
    at(points).map(([px, py]): Point => [x + px * scale, y + py * scale]);
  return [
    filled("nerve", roundBand(put("17,5 24,8 31,10"), [3.4 * scale, 3 * scale, 3 * scale]), "line"),
    filled("tissue", ellipse(x, y, 19 * scale, 18.4 * scale), "line"),
    filled("deep", ellipse(x, y, 17.2 * scale, 16.6 * scale), "fine"),
    filled("paper", ellipse(x, y, 15.6 * scale, 15 * scale), "fine"),
    filled("glass", ring(put("-14,-12 -20,-6 -22.6,0 -20,6 -14,12 -17,6 -18.4,0 -17,-6")), "line"),
    filled("glass", ellipse(x - 10.6 * scale, y, 3.6 * scale, 7.4 * scale), "line"),
    stroked("line", smooth(put("-14,-12 -14.4,-7 -14.6,-3")), smooth(put("-14,12 -14.4,7 -14.6,3"))),
    stroked("fine", smooth(put("-12.6,-12 -10.6,-8")), smooth(put("-12.6,12 -10.6,8"))),
  ];
}

function blot(vary: Variation, known: boolean): Shape[] {
  const outline = vary.loosen(ellipsePoints(104, 44, 42, 20, 0.1, 14), 2.4);
  if (!known) return [filled("paper", ring(outline), "hidden")];
  const grains = Array.from({ length: 110 }, (): Point => [vary.within(62, 146), vary.within(24, 64)]);
  return [
    filled("muscle", ring(outline), "line"),
    stroked("stipple", dots(grains.filter((spot) => liesInside(spot, outline)))),
    stroked("hatch", contours(outline, 0, 6, [0.92, 0.84])),
  ];
}

function glass(dx: number, dy: number): Shape[] {
  return [
    filled("glass", box(dx, 8 + dy, 168, 72), "outline"),
    filled("paper", box(dx, 8 + dy, 38, 72), "line"),
  ];
}

const details = {
  gland,
  muscle: fibres,
  "nerve cells": neurons,
  bone: osteons,
  kidney: renalCortex,
} satisfies Partial<Record<SlideSubject, (vary: Variation) => Shape[]>>;

/** The section under the cover slip, and what the roundel shows of it. */
function sectionOf(vary: Variation, subject: SlideSubject): { small: Shape[]; large: Shape[] } {
  const size = vary.within(0.95, 1.05);
  if (subject === "spinal cord")
    return { small: cordSection(100, 44, size), large: cordSection(view.x, view.y, 2.3 * size) };
  if (subject === "eyeball")
    return { small: eyeSection(100, 44, size), large: eyeSection(view.x - 9, view.y - 4, 1.85 * size) };
  return { small: blot(vary, true), large: details[subject](vary) };
}

/** @param count of slides; more than three lie as three */
export function drawSlides(vary: Variation, subject: SlideSubject | null, count = 1): Sketch {
  const section = subject === null ? null : sectionOf(vary, subject);
  const below = Math.min(count, 3) - 1;
  const roundel = (large: readonly Shape[]): Shape[] => [
    stroked("line", ellipse(120, 36, 6)),
    stroked("hatch", straight(at("122,30.3 216,-15")), straight(at("122,41.7 216,103"))),
    filled("tissue", ellipse(view.x, view.y, view.radius), "outline"),
    ...large,
  ];
  return {
    shapes: [
      ...Array.from({ length: below }, (_, index) => glass(0, (below - index) * -14)).flat(),
      ...glass(0, 0),
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
      ...(section?.small ?? blot(vary, false)),
      ...(section === null ? [] : roundel(section.large)),
    ],
    callouts: calloutsOf(subject),
  };
}

function calloutsOf(subject: SlideSubject | null): Callout[] {
  if (subject === "kidney") return [{ structure: "renal-cortex", at: [view.x - 26, view.y - 22] }];
  if (subject === "spinal cord")
    return [
      { structure: "anterior-horn-of-spinal-cord", at: [view.x + 20, view.y + 18] },
      { structure: "posterior-horn-of-spinal-cord", at: [view.x - 19, view.y - 24] },
      { structure: "gracile-fasciculus", at: [view.x + 4, view.y - 26] },
      { structure: "lateral-funiculus-of-spinal-cord", at: [view.x + 36, view.y - 4] },
      { structure: "central-canal-of-spinal-cord", at: [view.x, view.y] },
    ];
  if (subject === "eyeball")
    return [
      { structure: "cornea", at: [view.x - 51, view.y - 4] },
      { structure: "lens-of-eye", at: [view.x - 29, view.y - 4] },
      { structure: "retina", at: [view.x + 21, view.y - 10] },
      { structure: "sclera", at: [view.x - 3, view.y + 30] },
      { structure: "optic-nerve", at: [view.x + 38, view.y + 12] },
    ];
  return [];
}
