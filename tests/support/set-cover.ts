/** Candidates for a best set by the dice, and the fewest of them by ways that cannot be wrong. */
import fc from "fast-check";
import type { SetCandidate } from "#lib/loans/best-set.ts";

export const someStructures = ["a", "b", "c", "d", "e", "f", "g"] as const;

export const candidatesOf = (
  maxLength: number,
  { structures = someStructures, minLength = 0 }: { structures?: readonly string[]; minLength?: number } = {},
) =>
  fc
    .array(
      fc.record({
        shows: fc.uniqueArray(
          fc.record({ structureId: fc.constantFrom(...structures), seen: fc.constantFrom(0.25, 0.5, 1) }),
          { selector: ({ structureId }) => structureId, maxLength: 5 },
        ),
      }),
      { minLength, maxLength },
    )
    .map((rows) => rows.map((row, index) => ({ id: String(index), ...row })));

/** Every set of candidates that shows as much as all of them, by counting. */
export function smallestByTrying(wanted: readonly string[], candidates: readonly SetCandidate[]): number {
  const shownBy = candidates.map(({ shows }) =>
    shows.reduce((set, { structureId }) => {
      const position = wanted.indexOf(structureId);
      return position < 0 ? set : set | (1 << position);
    }, 0),
  );
  const all = shownBy.reduce((set, shown) => set | shown, 0);
  let least = candidates.length;
  for (let mask = 0; mask < 2 ** candidates.length; mask += 1) {
    let chosen = 0;
    let shown = 0;
    shownBy.forEach((set, index) => {
      if ((mask & (1 << index)) === 0) return;
      chosen += 1;
      shown |= set;
    });
    if (chosen < least && shown === all) least = chosen;
  }
  return least;
}

/** The same for any number of candidates, from the sets of few structures that so many can show. */
export function smallestByReaching(wanted: readonly string[], candidates: readonly SetCandidate[]): number {
  const positions = new Map(wanted.map((id, position) => [id, 1 << position]));
  const shownBy = candidates.map(({ shows }) =>
    shows.reduce((set, { structureId }) => set | (positions.get(structureId) ?? 0), 0),
  );
  const all = shownBy.reduce((set, shown) => set | shown, 0);
  let reached = new Set([0]);
  for (let count = 0; ; count += 1) {
    if (reached.has(all)) return count;
    reached = new Set([...reached].flatMap((set) => shownBy.map((shown) => set | shown)));
  }
}
