/**
 * The fewest specimens that together show everything that is wanted: a minimum
 * set cover. Every wanted structure has to be shown by one of the chosen, and of
 * two sets as small the one in which the structures are seen better is taken.
 *
 * The search branches on the structure that the fewest specimens show, and leaves
 * a branch as soon as the structures that are still wanted need more specimens
 * than the best set has. With thirty candidates or fewer it runs to its end and
 * the set is proved smallest; with more it stops after a number of steps, and
 * what it answers is then the best set found with a bound below which none lies.
 *
 * @source set covering and the greedy bound: Chvátal, Mathematics of Operations
 *   Research 4 (1979) 233–235, from memory
 */

/** One specimen with what it shows of the wanted; `seen` from 0 (landmark only) to 1 (fully exposed). */
export type SetCandidate = { id: string; shows: readonly { structureId: string; seen: number }[] };

export type BestSet = {
  /** Ids in the order of the candidates. */
  chosen: string[];
  /** Wanted structures that no candidate shows; the set shows all others. */
  notShown: string[];
  /** No set that shows as much has fewer. */
  isSmallest: boolean;
  /** No set that shows as much can have fewer than this. */
  atLeast: number;
};

/** Up to so many candidates the smallest set is found, however long it takes. */
export const EXACT_CANDIDATES = 30;
const MOST_STEPS = 200_000;

type Cover = { index: number; shown: bigint; seen: number };

const bit = (position: number) => 1n << BigInt(position);

function countBits(set: bigint): number {
  let count = 0;
  for (let rest = set; rest !== 0n; rest &= rest - 1n) count += 1;
  return count;
}

/** What is needed at least to show a set, if each of the covers showed its part and no two the same. */
function lowerBound(wanted: bigint, covers: readonly Cover[]): number {
  const parts = covers.map((cover) => countBits(cover.shown & wanted)).sort((a, b) => b - a);
  let left = countBits(wanted);
  let needed = 0;
  for (const part of parts) {
    if (left <= 0) break;
    left -= part;
    needed += 1;
  }
  return needed;
}

/** A cover is left out where another shows all that it shows, at least as well. */
function withoutDominated(covers: readonly Cover[]): Cover[] {
  const isDominated = (one: Cover) =>
    covers.some(
      (other) =>
        other !== one &&
        (one.shown & other.shown) === one.shown &&
        (other.shown !== one.shown ||
          other.seen > one.seen ||
          (other.seen === one.seen && other.index < one.index)) &&
        other.seen >= one.seen,
    );
  return covers.filter((cover) => !isDominated(cover));
}

type Found = { covers: Cover[]; seen: number };

const isBetter = (one: Found, other: Found) =>
  one.covers.length < other.covers.length ||
  (one.covers.length === other.covers.length && one.seen > other.seen);

/** The structure that the fewest covers show, with those covers, the widest first. */
function narrowest(wanted: bigint, covers: readonly Cover[], structures: number): Cover[] {
  let fewest: Cover[] | null = null;
  for (let position = 0; position < structures; position += 1) {
    if ((wanted & bit(position)) === 0n) continue;
    const showing = covers.filter((cover) => (cover.shown & bit(position)) !== 0n);
    if (fewest === null || showing.length < fewest.length) fewest = showing;
  }
  return (fewest ?? []).sort(
    (a, b) => countBits(b.shown & wanted) - countBits(a.shown & wanted) || b.seen - a.seen,
  );
}

/** Takes the cover that shows most of what is still wanted until nothing is. */
function greedySet(wanted: bigint, covers: readonly Cover[]): Found {
  const chosen: Cover[] = [];
  for (let left = wanted; left !== 0n; ) {
    const [widest] = [...covers].sort(
      (a, b) => countBits(b.shown & left) - countBits(a.shown & left) || b.seen - a.seen,
    );
    if (!widest || (widest.shown & left) === 0n) break;
    chosen.push(widest);
    left &= ~widest.shown;
  }
  return { covers: chosen, seen: chosen.reduce((sum, cover) => sum + cover.seen, 0) };
}

/**
 * @param wanted ids of structures, each once
 * @param candidates specimens that may be had; what they show beside the wanted is not looked at
 */
export function bestSet(wanted: readonly string[], candidates: readonly SetCandidate[]): BestSet {
  const positionOf = new Map(wanted.map((id, position) => [id, position]));
  const all = candidates.map(({ shows }, index): Cover => {
    const relevant = shows.filter(({ structureId }) => positionOf.has(structureId));
    const shown = relevant.reduce((set, { structureId }) => set | bit(positionOf.get(structureId) ?? 0), 0n);
    return { index, shown, seen: relevant.reduce((sum, { seen }) => sum + seen, 0) };
  });
  const reachable = all.reduce((set, cover) => set | cover.shown, 0n);
  const covers = withoutDominated(all.filter((cover) => cover.shown !== 0n));
  const mustEnd = covers.length <= EXACT_CANDIDATES;
  let best = greedySet(reachable, covers);
  let steps = 0;
  let ended = true;
  const search = (left: bigint, chosen: Cover[], seen: number): void => {
    steps += 1;
    if (!mustEnd && steps > MOST_STEPS) {
      ended = false;
      return;
    }
    if (left === 0n) {
      const found = { covers: chosen, seen };
      if (isBetter(found, best)) best = found;
      return;
    }
    if (chosen.length + lowerBound(left, covers) > best.covers.length) return;
    for (const cover of narrowest(left, covers, wanted.length))
      search(left & ~cover.shown, [...chosen, cover], seen + cover.seen);
  };
  search(reachable, [], 0);
  return {
    chosen: best.covers
      .map((cover) => cover.index)
      .sort((a, b) => a - b)
      .flatMap((index) => candidates[index]?.id ?? []),
    notShown: wanted.filter((_id, position) => (reachable & bit(position)) === 0n),
    isSmallest: ended,
    atLeast: ended ? best.covers.length : lowerBound(reachable, covers),
  };
}
