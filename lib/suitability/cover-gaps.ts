/**
 * Whether cover runs without an uncovered hour from nail to nail: from when a
 * specimen leaves its place until it is back in it. The way is cut into stretches,
 * each with its own needs (on the road or not, in which countries); a certificate
 * counts only where it says that it covers them, and certificates at one moment
 * add up. A day of the trade runs from midnight to midnight UTC; a certificate
 * without countries has not said where it holds, so it counts nowhere.
 */

import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { Money } from "#lib/specimens/schema.ts";
import { busyRange } from "#lib/suitability/period.ts";
import type { CoverFacts } from "#lib/suitability/rules/case.ts";

/** Moments are ISO 8601; the end is the first moment outside. */
export type Stretch = { from: string; to: string; isTransit: boolean; territories: readonly string[] };

export const gapReasons = [
  "no-cover",
  "not-on-the-road",
  "not-at-the-venue",
  "other-country",
  "other-currency",
  "too-low",
] as const;
export type GapReason = (typeof gapReasons)[number];

export type CoverGap = { from: string; to: string; reason: GapReason; coveredMinor: number };

const iso = (moment: number) => new Date(moment).toISOString();

/** What certificates give in one moment of a stretch, or why they give too little. */
function standAt(
  active: readonly CoverFacts[],
  stretch: Stretch,
  needed: Money | null,
): { reason: GapReason | null; coveredMinor: number } {
  const gap = (reason: GapReason, coveredMinor = 0) => ({ reason, coveredMinor });
  if (active.length === 0) return gap("no-cover");
  const holding = active.filter((cover) =>
    stretch.isTransit ? cover.coversTransit : cover.coversStay !== false,
  );
  if (holding.length === 0) return gap(stretch.isTransit ? "not-on-the-road" : "not-at-the-venue");
  const here = holding.filter((cover) =>
    stretch.territories.every((country) => cover.territories.includes(country)),
  );
  if (here.length === 0) return gap("other-country");
  const currency = needed?.currency ?? here[0]?.amount.currency;
  const sameCurrency = here.filter((cover) => cover.amount.currency === currency);
  if (sameCurrency.length === 0) return gap("other-currency");
  const coveredMinor = sameCurrency.reduce((sum, cover) => sum + cover.amount.minor, 0);
  if (needed !== null && coveredMinor < needed.minor) return gap("too-low", coveredMinor);
  return { reason: null, coveredMinor };
}

/** A part of the way on which the same certificates hold. */
export type CoverPart = {
  from: string;
  to: string;
  isTransit: boolean;
  territories: readonly string[];
  /** Why it is not covered; null where it is. */
  reason: GapReason | null;
  coveredMinor: number;
};

/** The whole way in parts, covered and uncovered, in order. */
export function coverParts(
  stretches: readonly Stretch[],
  covers: readonly CoverFacts[],
  needed: Money | null,
): CoverPart[] {
  return stretches.flatMap((stretch) => {
    const start = Date.parse(stretch.from);
    const end = Date.parse(stretch.to);
    if (!(start <= end)) throw new RangeError("a stretch ends before it begins");
    const cuts = covers
      .flatMap((cover) => [Date.parse(cover.startsAt), Date.parse(cover.endsAt)])
      .filter((moment) => moment > start && moment < end);
    const moments = [...new Set([start, ...cuts, end])].sort((a, b) => a - b);
    const parts: CoverPart[] = [];
    for (const [index, from] of moments.slice(0, -1).entries()) {
      const to = moments[index + 1] ?? end;
      const active = covers.filter(
        (cover) => Date.parse(cover.startsAt) <= from && Date.parse(cover.endsAt) >= to,
      );
      const stand = standAt(active, stretch, needed);
      const last = parts.at(-1);
      if (last && last.reason === stand.reason && last.coveredMinor === stand.coveredMinor) last.to = iso(to);
      else
        parts.push({
          from: iso(from),
          to: iso(to),
          isTransit: stretch.isTransit,
          territories: stretch.territories,
          ...stand,
        });
    }
    return parts;
  });
}

/** Every uncovered time, in order; neighbours with one reason are one gap. */
export function coverGaps(
  stretches: readonly Stretch[],
  covers: readonly CoverFacts[],
  needed: Money | null,
): CoverGap[] {
  const gaps: CoverGap[] = [];
  for (const { from, to, reason, coveredMinor } of coverParts(stretches, covers, needed)) {
    if (reason === null) continue;
    const last = gaps.at(-1);
    if (last && last.to === from && last.reason === reason && last.coveredMinor === coveredMinor)
      last.to = to;
    else gaps.push({ from, to, reason, coveredMinor });
  }
  return gaps;
}

/**
 * The least that certificates in one currency come to together at any moment of
 * the time in which one of them holds; null where none meets that time.
 */
export function leastCoveredMinor(
  { from, to }: { from: string; to: string },
  covers: readonly CoverFacts[],
): number | null {
  const [start, end] = [Date.parse(from), Date.parse(to)];
  const within = covers.filter(
    (cover) => Date.parse(cover.startsAt) < end && Date.parse(cover.endsAt) > start,
  );
  const moments = [
    start,
    ...within.flatMap((cover) => [Date.parse(cover.startsAt), Date.parse(cover.endsAt)]),
  ].filter((moment) => moment >= start && moment < end);
  const sums = moments.flatMap((moment) => {
    const active = within.filter(
      (cover) => Date.parse(cover.startsAt) <= moment && Date.parse(cover.endsAt) > moment,
    );
    return active.length === 0 ? [] : [active.reduce((sum, cover) => sum + cover.amount.minor, 0)];
  });
  return sums.length === 0 ? null : Math.min(...sums);
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
