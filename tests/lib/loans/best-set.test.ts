/** The fewest specimens that show what is wanted, against trying every set. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestSet, EXACT_CANDIDATES, type SetCandidate } from "#lib/loans/best-set.ts";

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

/** Every set of candidates that shows as much as all of them, by counting. */
function smallestByTrying(wanted: readonly string[], candidates: readonly SetCandidate[]): number {
  const shown = (ones: readonly SetCandidate[]) =>
    new Set(
      ones
        .flatMap((one) => one.shows.map(({ structureId }) => structureId))
        .filter((id) => wanted.includes(id)),
    );
  const all = shown(candidates).size;
  let least = candidates.length;
  for (let mask = 0; mask < 2 ** candidates.length; mask += 1) {
    const chosen = candidates.filter((_one, index) => (mask & (1 << index)) !== 0);
    if (chosen.length < least && shown(chosen).size === all) least = chosen.length;
  }
  return least;
}

const structures = ["a", "b", "c", "d", "e", "f", "g"];
const candidatesOf = (maxLength: number) =>
  fc
    .array(
      fc.record({
        shows: fc.uniqueArray(
          fc.record({ structureId: fc.constantFrom(...structures), seen: fc.constantFrom(0.25, 0.5, 1) }),
          { selector: ({ structureId }) => structureId, maxLength: 5 },
        ),
      }),
      { maxLength },
    )
    .map((rows) => rows.map((row, index) => ({ id: String(index), ...row })));

test("is as small as the smallest of all sets, and shows as much", () => {
  fc.assert(
    fc.property(fc.subarray(structures), candidatesOf(9), (wanted, candidates) => {
      const set = bestSet(wanted, candidates);
      const chosen = candidates.filter(({ id }) => set.chosen.includes(id));
      const shown = new Set(chosen.flatMap((one) => one.shows.map(({ structureId }) => structureId)));
      expect(set.isSmallest).toBe(true);
      expect(set.chosen).toHaveLength(smallestByTrying(wanted, candidates));
      expect(set.atLeast).toBe(set.chosen.length);
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
