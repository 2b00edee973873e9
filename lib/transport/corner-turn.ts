/**
 * How a rigid rectangle goes round a corner of 90° between two corridors, and how
 * one rectangle lies turned inside another (a crate across the car of a lift).
 *
 *     ┌──────────────────        The crate touches both outer walls with its long
 *     │  ╲╲        w2           side at the angle θ; the inner corner leaves it
 *     │    ╲╲   ┌────────        b(θ) = w2 cos θ + w1 sin θ − l sin θ cos θ
 *     │ w1   ╲╲ │                and the width that passes is the least b(θ).
 *
 * A crate that cannot be turned may still go round by moving on sideways, when its
 * length passes the second corridor crosswise.
 */
import { z } from "zod";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

const GRID = 720;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The least of b(θ) over 0 ≤ θ ≤ 90°: a grid finds the valley, golden section its floor.
 * @returns mm, the greatest width that turns; at most the narrower corridor, negative when none does
 * @accuracy 0.001 mm
 */
export function greatestTurningWidthMm(
  lengthMm: number,
  firstWidthMm: number,
  secondWidthMm: number,
): number {
  if (!(lengthMm > 0 && firstWidthMm > 0 && secondWidthMm > 0)) {
    throw new RangeError("length and corridors must be above 0 mm");
  }
  const room = (theta: number) =>
    secondWidthMm * Math.cos(theta) +
    firstWidthMm * Math.sin(theta) -
    lengthMm * Math.sin(theta) * Math.cos(theta);
  const step = Math.PI / 2 / GRID;
  let lowest = 0;
  for (let index = 1; index <= GRID; index++) {
    if (room(index * step) < room(lowest * step)) lowest = index;
  }
  let from = Math.max(0, lowest - 1) * step;
  let to = Math.min(GRID, lowest + 1) * step;
  for (let round = 0; round < 40; round++) {
    const left = to - GOLDEN * (to - from);
    const right = from + GOLDEN * (to - from);
    if (room(left) < room(right)) to = right;
    else from = left;
  }
  return Math.min(room(from), room(lowest * step), firstWidthMm, secondWidthMm);
}

/** The longest thing without width that turns, such as a ladder: (w1^⅔ + w2^⅔)^1.5  @returns mm */
export function ladderLimitMm(firstWidthMm: number, secondWidthMm: number): number {
  if (!(firstWidthMm > 0 && secondWidthMm > 0)) throw new RangeError("corridors must be above 0 mm");
  return (firstWidthMm ** (2 / 3) + secondWidthMm ** (2 / 3)) ** 1.5;
}

/**
 * Carver's condition for a rectangle p × q (p the longer) inside a × b (a the longer)
 * when p > a: it lies turned if q ≤ b and b is at least the returned breadth.
 * @returns mm, the least breadth b; p > a ≥ q
 * @source rectangle-in-rectangle
 */
export function leastBreadthForTurnedMm(longMm: number, shortMm: number, roomLongMm: number): number {
  if (!(longMm > roomLongMm && roomLongMm > 0 && shortMm > 0 && longMm >= shortMm)) {
    throw new RangeError("only a rectangle longer than the room lies turned in it");
  }
  const square = longMm ** 2 + shortMm ** 2;
  const turned =
    (2 * longMm * shortMm * roomLongMm + (longMm ** 2 - shortMm ** 2) * Math.sqrt(square - roomLongMm ** 2)) /
    square;
  return Math.max(turned, shortMm);
}

const corridorMm = (title: string) => z.number().positive().max(20_000).meta({ title, unit: "mm" });

export const cornerTurn = working({
  id: "corner-turn",
  title: "Turn of a corridor",
  about: "The widest crate of a given length that turns from one corridor into another at 90°.",
  input: z.object({
    lengthMm: corridorMm("Length of the crate"),
    firstWidthMm: corridorMm("Width before the turn"),
    secondWidthMm: corridorMm("Width after the turn"),
  }),
  output: z.object({
    greatestWidthMm: z.number().meta({ title: "Greatest width of the crate", unit: "mm" }),
    ladderLimitMm: z.number().meta({ title: "Longest thing that turns", unit: "mm" }),
  }),
  sources: [cite("derived", "least of w2 cos θ + w1 sin θ − l sin θ cos θ")],
  cautions: [
    "For a flat, rigid crate without clearance: handles, door frames and skirtings take their share.",
  ],
  compute({ lengthMm, firstWidthMm, secondWidthMm }, note) {
    const limitMm = note(
      "longest thing that turns",
      ladderLimitMm(firstWidthMm, secondWidthMm),
      "mm",
      "(w1^⅔ + w2^⅔)^1.5",
    );
    const widthMm = Math.max(0, greatestTurningWidthMm(lengthMm, firstWidthMm, secondWidthMm));
    note("greatest width", widthMm, "mm", "least of w2 cos θ + w1 sin θ − l sin θ cos θ; 0 when none");
    return { greatestWidthMm: widthMm, ladderLimitMm: limitMm };
  },
});
