import fc from "fast-check";
import { expect, test } from "vitest";
import {
  cornerTurn,
  greatestTurningWidthMm,
  ladderLimitMm,
  leastBreadthForTurnedMm,
} from "#lib/transport/corner-turn.ts";

const corridor = fc.double({ min: 600, max: 3000, noNaN: true });
const length = fc.double({ min: 100, max: 6000, noNaN: true });

test("equal corridors agree with the closed form √2 w − l/2, and never exceed the corridor", () => {
  fc.assert(
    fc.property(corridor, length, (w, l) => {
      const closed = Math.min(w, Math.SQRT2 * w - l / 2);
      expect(greatestTurningWidthMm(l, w, w)).toBeCloseTo(closed, 3);
    }),
  );
});

test("the order of the corridors does not matter", () => {
  fc.assert(
    fc.property(corridor, corridor, length, (w1, w2, l) => {
      expect(greatestTurningWidthMm(l, w1, w2)).toBeCloseTo(greatestTurningWidthMm(l, w2, w1), 3);
    }),
  );
});

test("a longer crate must be narrower, a wider corridor lets more through", () => {
  fc.assert(
    fc.property(corridor, corridor, length, (w1, w2, l) => {
      const here = greatestTurningWidthMm(l, w1, w2);
      expect(greatestTurningWidthMm(l + 50, w1, w2)).toBeLessThanOrEqual(here + 1e-3);
      expect(greatestTurningWidthMm(l, w1 + 50, w2)).toBeGreaterThanOrEqual(here - 1e-3);
      expect(here).toBeLessThanOrEqual(Math.min(w1, w2));
    }),
  );
});

test("at the ladder limit no width is left", () => {
  fc.assert(
    fc.property(corridor, corridor, (w1, w2) => {
      expect(greatestTurningWidthMm(ladderLimitMm(w1, w2), w1, w2)).toBeCloseTo(0, 2);
    }),
  );
});

test("nothing is left beyond the limit, and the answer says 0", () => {
  expect(cornerTurn({ lengthMm: 5000, firstWidthMm: 1500, secondWidthMm: 1500 }).greatestWidthMm).toBe(0);
});

/** The breadth that a rectangle turned by an angle takes, where it fits the length: searched on a fine grid. */
function searchedBreadthMm(longMm: number, shortMm: number, roomLongMm: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index <= 90_000; index++) {
    const angle = (index / 90_000) * (Math.PI / 2);
    const along = longMm * Math.cos(angle) + shortMm * Math.sin(angle);
    const across = longMm * Math.sin(angle) + shortMm * Math.cos(angle);
    if (along <= roomLongMm) least = Math.min(least, across);
  }
  return least;
}

test.each([
  [1700, 300, 1400],
  [1500, 100, 1400],
  [2300, 400, 2100],
  [1800, 150, 1400],
])(
  "a plan of %d × %d turned in a room %d long needs the breadth that a search finds",
  (long, short, room) => {
    const least = leastBreadthForTurnedMm(long, short, room);
    expect(Math.abs(least - searchedBreadthMm(long, short, room))).toBeLessThan(0.5);
  },
);

test("lengths of nothing are out of range", () => {
  expect(() => greatestTurningWidthMm(0, 1000, 1000)).toThrow(RangeError);
  expect(() => ladderLimitMm(1000, Number.NaN)).toThrow(RangeError);
  expect(() => leastBreadthForTurnedMm(1000, 500, 1200)).toThrow(RangeError);
});
