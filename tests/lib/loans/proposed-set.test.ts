/** The fewest specimens that can travel together, against trying every set. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { daysFreeWith, proposedSet, type TravellingCandidate } from "#lib/loans/proposed-set.ts";
import { addDays } from "#lib/platform/dates.ts";

const levels = [14, 30, 60];
const candidate = (
  id: string,
  ownDays: number,
  freeWithDays: number | null,
  ...structures: string[]
): TravellingCandidate => ({
  id,
  ownDays,
  freeWithDays,
  shows: structures.map((structureId) => ({ structureId, seen: 1 })),
});

describe("a set that travels together", () => {
  test("leaves out what is free only with fewer days than its slowest specimen needs", () => {
    const set = proposedSet(
      ["heart", "trunk"],
      [
        candidate("small heart", 14, 14, "heart"),
        candidate("trunk", 60, 60, "trunk"),
        candidate("large heart", 30, 60, "heart"),
      ],
      levels,
    );
    expect(set).toMatchObject({ chosen: ["trunk", "large heart"], daysAround: 60, notShown: [] });
  });

  test("of two as small takes the one that is away for fewer days", () => {
    const set = proposedSet(
      ["heart"],
      [candidate("body", 60, 60, "heart"), candidate("small", 14, 60, "heart")],
      levels,
    );
    expect(set).toMatchObject({ chosen: ["small"], daysAround: 14, isSmallest: true });
  });

  test("shows more rather than be smaller, and names what it cannot show with the others", () => {
    const set = proposedSet(
      ["a", "b", "c"],
      [candidate("ab", 30, 30, "a", "b"), candidate("c", 14, 14, "c")],
      levels,
    );
    expect(set).toMatchObject({ chosen: ["ab"], notShown: ["c"], daysAround: 30 });
  });

  test("is none where no days are possible", () => {
    expect(proposedSet(["a"], [candidate("a", 14, 60, "a")], [])).toBeNull();
  });
});

const structures = ["a", "b", "c", "d", "e"];
const anyCandidates = fc
  .array(
    fc.record({
      ownDays: fc.constantFrom(...levels),
      freeWithDays: fc.constantFrom(null, ...levels),
      shows: fc.uniqueArray(
        fc.record({ structureId: fc.constantFrom(...structures), seen: fc.constantFrom(0.25, 1) }),
        { selector: ({ structureId }) => structureId, maxLength: 4 },
      ),
    }),
    { maxLength: 8 },
  )
  .map((rows) => rows.map((row, index): TravellingCandidate => ({ id: String(index), ...row })));

const shownBy = (wanted: readonly string[], ones: readonly TravellingCandidate[]) =>
  wanted.filter((id) => ones.some(({ shows }) => shows.some(({ structureId }) => structureId === id)));
const travelTogether = (ones: readonly TravellingCandidate[]) => {
  const days = Math.max(0, ...ones.map(({ ownDays }) => ownDays));
  return ones.every(({ freeWithDays }) => freeWithDays !== null && freeWithDays >= days);
};

test("no set of specimens that travel together shows more, or as much with fewer", () => {
  fc.assert(
    fc.property(fc.subarray(structures), anyCandidates, (wanted, candidates) => {
      let most = 0;
      let fewest = 0;
      for (let mask = 0; mask < 2 ** candidates.length; mask += 1) {
        const ones = candidates.filter((_one, index) => (mask & (1 << index)) !== 0);
        if (!travelTogether(ones)) continue;
        const shown = shownBy(wanted, ones).length;
        if (shown > most || (shown === most && ones.length < fewest)) [most, fewest] = [shown, ones.length];
      }
      const set = proposedSet(wanted, candidates, levels);
      const chosen = candidates.filter(({ id }) => set?.chosen.includes(id));
      expect(travelTogether(chosen)).toBe(true);
      expect(shownBy(wanted, chosen)).toHaveLength(most);
      expect(set?.notShown).toHaveLength(wanted.length - most);
      expect(chosen).toHaveLength(fewest);
      expect(set).toMatchObject({ isSmallest: true, atLeast: fewest });
    }),
    { numRuns: 300 },
  );
});

describe("days around with which the wanted days are free", () => {
  const wanted = { startsOn: "2027-03-01", endsOn: "2027-07-01" };
  const until = (day: string) => [{ startsOn: "2026-11-01", endsOn: day }];
  test.each([
    ["nothing is promised", [], 60],
    ["it comes back a month before", until("2027-01-30"), 30],
    ["it comes back on the first of the days for packing", until("2027-02-15"), 14],
    ["it comes back a day later", until("2027-02-16"), null],
    ["it is promised in the middle", [{ startsOn: "2027-05-01", endsOn: "2027-05-02" }], null],
  ])("where %s", (_what, busy, days) => {
    expect(daysFreeWith(busy, wanted, levels, "2026-12-01")).toBe(days);
  });

  test("do not reach into the past", () => {
    expect(daysFreeWith(until("2027-02-20"), wanted, levels, "2027-02-20")).toBe(60);
  });

  test("are never more than asked, and fewer are free as well", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 1, max: 90 }), (start, length) => {
        const startsOn = addDays("2026-12-01", start);
        const busy = [{ startsOn, endsOn: addDays(startsOn, length) }];
        const most = daysFreeWith(busy, wanted, levels, "2026-12-01");
        for (const days of levels) {
          const alone = daysFreeWith(busy, wanted, [days], "2026-12-01");
          expect(alone).toBe(most !== null && days <= most ? days : null);
        }
      }),
    );
  });
});
