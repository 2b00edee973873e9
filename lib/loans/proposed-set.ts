/**
 * The fewest specimens that show what is wanted and can travel together. Days for
 * packing, travel and checks belong to the loan and not to the specimen: they are
 * those of its slowest specimen, and all others have to be free on them too. So
 * the set is sought once for each number of days around, among the specimens that
 * need no more and are free with so many; the best of these sets is the best of
 * all. It shows as much as can be shown together, then has the fewest specimens,
 * then the fewest days around.
 */
import { type BestSet, bestSet, type SetCandidate } from "#lib/loans/best-set.ts";
import { type DateText, rangesOverlap } from "#lib/platform/dates.ts";
import { mergePeriods, withBuffers } from "#lib/whereabouts/free-periods.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

export type TravellingCandidate = SetCandidate & {
  /** Days around a loan of this specimen alone. */
  ownDays: number;
  /** The most days around with which it is free on the wanted days; null where it is with none. */
  freeWithDays: number | null;
};

export type ProposedSet = BestSet & { daysAround: number };

const canTravel = ({ ownDays, freeWithDays }: TravellingCandidate, days: number) =>
  ownDays <= days && freeWithDays !== null && freeWithDays >= days;

const isBetter = (one: BestSet, other: BestSet) =>
  one.notShown.length < other.notShown.length ||
  (one.notShown.length === other.notShown.length && one.chosen.length < other.chosen.length);

/**
 * @param daysAround the numbers of days that there can be around a loan
 * @returns null where no number of days is possible
 */
export function proposedSet(
  wanted: readonly string[],
  candidates: readonly TravellingCandidate[],
  daysAround: readonly number[],
): ProposedSet | null {
  const sets = [...daysAround]
    .sort((one, other) => one - other)
    .map((days) => ({
      daysAround: days,
      ...bestSet(
        wanted,
        candidates.filter((one) => canTravel(one, days)),
      ),
    }));
  const [first, ...others] = sets;
  if (!first) return null;
  const best = others.reduce((found, set) => (isBetter(set, found) ? set : found), first);
  const asFull = sets.filter((set) => set.notShown.length === best.notShown.length);
  const atLeast = Math.min(...asFull.map((set) => set.atLeast));
  return { ...best, atLeast, isSmallest: atLeast === best.chosen.length };
}

/**
 * The most days around with which the wanted days are free; null where they are with none. Days that are past are
 * nobody's matter.
 */
export function daysFreeWith(
  busy: readonly Period[],
  wanted: Period,
  daysAround: readonly number[],
  today: DateText,
): number | null {
  const merged = mergePeriods(busy);
  const isFree = (days: number) => {
    const around = withBuffers(wanted, days, days);
    const asked = { ...around, startsOn: around.startsOn < today ? today : around.startsOn };
    return !merged.some((period) => rangesOverlap(period, asked));
  };
  const free = daysAround.filter(isFree);
  return free.length === 0 ? null : Math.max(...free);
}
