/** The best set against brute force, with many more runs, more candidates and more structures. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestSet, EXACT_CANDIDATES } from "#lib/loans/best-set.ts";
import {
  candidatesOf,
  smallestByReaching,
  smallestByTrying,
  someStructures,
} from "#tests/support/set-cover.ts";

const manyStructures = Array.from({ length: 12 }, (_none, index) => `s${index}`);

test("is as small as the smallest of all sets", () => {
  fc.assert(
    fc.property(fc.subarray([...someStructures]), candidatesOf(12), (wanted, candidates) => {
      const set = bestSet(wanted, candidates);
      expect(set.isSmallest).toBe(true);
      expect(set.chosen).toHaveLength(smallestByTrying(wanted, candidates));
      const chosen = candidates.filter(({ id }) => set.chosen.includes(id));
      const shown = new Set(chosen.flatMap((one) => one.shows.map(({ structureId }) => structureId)));
      for (const id of wanted) expect(shown.has(id)).toBe(!set.notShown.includes(id));
    }),
    { numRuns: 10_000 },
  );
});

describe("of twelve wanted structures", () => {
  const wanted = fc.subarray(manyStructures, { minLength: 6 });

  test("is proved smallest up to the number of candidates that is promised", () => {
    fc.assert(
      fc.property(
        wanted,
        candidatesOf(EXACT_CANDIDATES, { structures: manyStructures }),
        (some, candidates) => {
          const set = bestSet(some, candidates);
          expect(set.isSmallest).toBe(true);
          expect(set.chosen).toHaveLength(smallestByReaching(some, candidates));
        },
      ),
      { numRuns: 2_000 },
    );
  });

  test("of more candidates never claims too much: its bound is not above the smallest, nor the set below", () => {
    const many = candidatesOf(90, { structures: manyStructures, minLength: EXACT_CANDIDATES + 1 });
    fc.assert(
      fc.property(wanted, many, (some, candidates) => {
        const set = bestSet(some, candidates);
        const smallest = smallestByReaching(some, candidates);
        expect(set.atLeast).toBeLessThanOrEqual(smallest);
        expect(set.chosen.length).toBeGreaterThanOrEqual(smallest);
        if (set.isSmallest) expect(set.chosen).toHaveLength(smallest);
      }),
      { numRuns: 1_000 },
    );
  });
});
