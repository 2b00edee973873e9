/**
 * Whether cover runs without an uncovered hour from nail to nail: from when a
 * specimen leaves its place until it is back in it. The way is cut into stretches,
 * each with its own needs (on the road or not, in which countries); a certificate
 * counts only where it says that it covers them, and certificates at one moment
 * add up. A day of the trade runs from midnight to midnight UTC; a certificate
 * without countries has not said where it holds, so it counts nowhere.
 */
import { busyRange } from "#lib/loans/period.ts";
import type { CoverFacts } from "#lib/loans/rules/case.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { Money } from "#lib/specimens/schema.ts";

/** Moments are ISO 8601; the end is the first moment outside. */
export type Stretch = { from: string; to: string; isTransit: boolean; territories: readonly string[] };

export const gapReasons = [
  "no-cover",
  "not-on-the-road",
  "other-country",
  "other-currency",
  "too-low",
] as const;
export type GapReason = (typeof gapReasons)[number];

export type CoverGap = { from: string; to: string; reason: GapReason; coveredMinor: number };

const iso = (moment: number) => new Date(moment).toISOString();

/** What certificates give in one moment of a stretch, or why they give too little. */
function gapAt(active: readonly CoverFacts[], stretch: Stretch, needed: Money | null) {
  const gap = (reason: GapReason, coveredMinor = 0) => ({ reason, coveredMinor });
  if (active.length === 0) return gap("no-cover");
  const onTheRoad = active.filter((cover) => !stretch.isTransit || cover.coversTransit);
  if (onTheRoad.length === 0) return gap("not-on-the-road");
  const here = onTheRoad.filter((cover) =>
    stretch.territories.every((country) => cover.territories.includes(country)),
  );
  if (here.length === 0) return gap("other-country");
  if (needed === null) return null;
  const sameCurrency = here.filter((cover) => cover.amount.currency === needed.currency);
  if (sameCurrency.length === 0) return gap("other-currency");
  const coveredMinor = sameCurrency.reduce((sum, cover) => sum + cover.amount.minor, 0);
  return coveredMinor < needed.minor ? gap("too-low", coveredMinor) : null;
}

/** Every uncovered time, in order; neighbours with one reason are one gap. */
export function coverGaps(
  stretches: readonly Stretch[],
  covers: readonly CoverFacts[],
  needed: Money | null,
): CoverGap[] {
  const gaps: CoverGap[] = [];
  for (const stretch of stretches) {
    const start = Date.parse(stretch.from);
    const end = Date.parse(stretch.to);
    if (!(start <= end)) throw new RangeError("a stretch ends before it begins");
    const cuts = covers
      .flatMap((cover) => [Date.parse(cover.startsAt), Date.parse(cover.endsAt)])
      .filter((moment) => moment > start && moment < end);
    const moments = [...new Set([start, ...cuts, end])].sort((a, b) => a - b);
    for (const [index, from] of moments.slice(0, -1).entries()) {
      const to = moments[index + 1] ?? end;
      const active = covers.filter(
        (cover) => Date.parse(cover.startsAt) <= from && Date.parse(cover.endsAt) >= to,
      );
      const gap = gapAt(active, stretch, needed);
      if (gap === null) continue;
      const last = gaps.at(-1);
      if (
        last &&
        last.to === iso(from) &&
        last.reason === gap.reason &&
        last.coveredMinor === gap.coveredMinor
      )
        last.to = iso(to);
      else gaps.push({ from: iso(from), to: iso(to), ...gap });
    }
  }
  return gaps;
}

export type NailToNail = {
  startsOn: DateText;
  endsOn: DateText;
  daysBefore: number;
  daysAfter: number;
  lenderCountry: string;
  venueCountry: string;
  out: { departsOn: DateText; arrivesOn: DateText } | null;
  home: { departsOn: DateText; arrivesOn: DateText } | null;
};

const midnight = (day: DateText) => `${day}T00:00:00.000Z`;

/**
 * The stretches of a loan: the way out, the stay, the way home. A stage that
 * nobody has planned yet takes all the days that are kept for it.
 */
export function nailToNailStretches(loan: NailToNail): Stretch[] {
  const busy = busyRange(loan);
  const leavesOn = loan.out?.departsOn ?? busy.startsOn;
  const outUntil = addDays(loan.out?.arrivesOn ?? loan.startsOn, 1);
  const backOn = loan.home === null ? busy.endsOn : addDays(loan.home.arrivesOn, 1);
  const homeFrom = loan.home?.departsOn ?? loan.endsOn;
  const bothCountries = [...new Set([loan.lenderCountry, loan.venueCountry])];
  const stretch = (from: DateText, to: DateText, isTransit: boolean, territories: string[]): Stretch[] =>
    from < to ? [{ from: midnight(from), to: midnight(to), isTransit, territories }] : [];
  const inOrder = (...days: [DateText, DateText]) => days.sort() as [DateText, DateText];
  const [stayEnds] = inOrder(homeFrom, backOn);
  const [, setsOutFrom] = inOrder(homeFrom, outUntil);
  return [
    ...stretch(leavesOn, outUntil, true, bothCountries),
    ...stretch(outUntil, stayEnds, false, [loan.venueCountry]),
    ...stretch(setsOutFrom, backOn, true, bothCountries),
  ];
}
