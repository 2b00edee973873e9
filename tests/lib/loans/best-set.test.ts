/** The fewest specimens that show what is wanted, against trying every set. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestSet, EXACT_CANDIDATES, type SetCandidate } from "#lib/loans/best-set.ts";
import {
  candidatesOf,
  smallestByReaching,
  smallestByTrying,
  someStructures,
} from "#tests/support/set-cover.ts";

const shows = (id: string, ...structures: string[]): SetCandidate => ({
  id,
  shows: structures.map((structureId) => ({ structureId, seen: 1 })),
});

describe("the best set", () => {
  test("takes one specimen that shows everything before two that share it", () => {
    const set = bestSet(
      ["heart", "lung"],
      [shows("a", "heart"), shows("b", "lung"), shows("c", "lung", "heart")],
    );
    expect(set).toEqual({ chosen: ["c"], notShown: [], isSmallest: true, atLeast: 1 });
  });

  test("is not led astray by the specimen that shows most", () => {
    const wanted = ["1", "2", "3", "4", "5", "6"];
    const set = bestSet(wanted, [
      shows("widest", "1", "2", "4", "5"),
      shows("first half", "1", "2", "3"),
      shows("second half", "4", "5", "6"),
    ]);
    expect(set.chosen).toEqual(["first half", "second half"]);
  });

  test("of two sets as small takes the one that is better seen", () => {
    const set = bestSet(
      ["vagus"],
      [
        { id: "landmark", shows: [{ structureId: "vagus", seen: 0.2 }] },
        { id: "exposed", shows: [{ structureId: "vagus", seen: 1 }] },
      ],
    );
    expect(set.chosen).toEqual(["exposed"]);
  });

  test("says what nobody shows and covers the rest", () => {
    expect(bestSet(["heart", "gill"], [shows("a", "heart", "foot")])).toEqual({
      chosen: ["a"],
      notShown: ["gill"],
      isSmallest: true,
      atLeast: 1,
    });
  });

  test("of nothing wanted, or nothing to be had, is empty", () => {
    expect(bestSet([], [shows("a", "heart")]).chosen).toEqual([]);
    expect(bestSet(["heart"], [])).toMatchObject({ chosen: [], notShown: ["heart"], atLeast: 0 });
  });
});

test("is as small as the smallest of all sets, and shows as much", () => {
  fc.assert(
    fc.property(fc.subarray([...someStructures]), candidatesOf(9), (wanted, candidates) => {
      const set = bestSet(wanted, candidates);
      const chosen = candidates.filter(({ id }) => set.chosen.includes(id));
      const shown = new Set(chosen.flatMap((one) => one.shows.map(({ structureId }) => structureId)));
      expect(set.isSmallest).toBe(true);
      expect(set.chosen).toHaveLength(smallestByTrying(wanted, candidates));
      expect(set.atLeast).toBe(set.chosen.length);
      expect(smallestByReaching(wanted, candidates)).toBe(set.chosen.length);
      for (const id of wanted) expect(shown.has(id)).toBe(!set.notShown.includes(id));
    }),
    { numRuns: 300 },
  );
});

test("of very many candidates has a bound that no set can be below", () => {
  const wanted = Array.from({ length: 40 }, (_, index) => `s${index}`);
  const candidates = Array.from({ length: 3 * EXACT_CANDIDATES }, (_, index) =>
    shows(
      `c${index}`,
      ...wanted.filter((_id, position) => (position * 7 + index * 5) % 11 < 2 + (index % 3)),
    ),
  );
  const set = bestSet(wanted, candidates);
  expect(set.notShown).toEqual([]);
  expect(set.atLeast).toBeGreaterThan(1);
  expect(set.atLeast).toBeLessThanOrEqual(set.chosen.length);
});

const manyStructures = Array.from({ length: 14 }, (_, index) => `s${index}`);
const manyCandidates = (count: number) =>
  fc
    .array(fc.uniqueArray(fc.constantFrom(...manyStructures), { minLength: 1, maxLength: 4 }), {
      minLength: count,
      maxLength: count,
    })
    .map((rows) => rows.map((row, index) => shows(String(index), ...row)));

describe("with many candidates", () => {
  test("as many as are searched to the end, is the smallest there is", () => {
    fc.assert(
      fc.property(manyCandidates(EXACT_CANDIDATES), (candidates) => {
        const set = bestSet(manyStructures, candidates);
        expect(set.isSmallest).toBe(true);
        expect(set.chosen).toHaveLength(smallestByReaching(manyStructures, candidates));
      }),
      { numRuns: 25 },
    );
  });

  test("more than that, states a bound that the smallest set keeps to", () => {
    fc.assert(
      fc.property(manyCandidates(70), (candidates) => {
        const set = bestSet(manyStructures, candidates);
        const smallest = smallestByReaching(manyStructures, candidates);
        expect(set.atLeast).toBeLessThanOrEqual(smallest);
        expect(set.chosen.length).toBeGreaterThanOrEqual(smallest);
        if (set.isSmallest) expect(set.chosen).toHaveLength(smallest);
      }),
      { numRuns: 15 },
    );
  });
});
