/**
 * Free days from busy days. A period is half-open: the day on which one ends is
 * the day on which the next may begin. Every day of a window is either in a busy
 * period or in a free one, never in both.
 */
import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

function refuseReversed(period: Period): void {
  if (!(period.startsOn < period.endsOn))
    throw new RangeError(`A period from ${period.startsOn} to ${period.endsOn} has no days.`);
}

/** The same days as few periods, in order: overlapping and touching ones joined. */
export function mergePeriods(periods: readonly Period[]): Period[] {
  const merged: Period[] = [];
  for (const period of [...periods].sort((first, second) => (first.startsOn < second.startsOn ? -1 : 1))) {
    refuseReversed(period);
    const last = merged.at(-1);
    if (last === undefined || period.startsOn > last.endsOn) {
      merged.push({ startsOn: period.startsOn, endsOn: period.endsOn });
    } else if (period.endsOn > last.endsOn) last.endsOn = period.endsOn;
  }
  return merged;
}

/** What the busy periods leave of a window, in order. */
export function freePeriods(busy: readonly Period[], window: Period): Period[] {
  refuseReversed(window);
  const free: Period[] = [];
  let from = window.startsOn;
  for (const { startsOn, endsOn } of mergePeriods(busy)) {
    if (startsOn >= window.endsOn) break;
    if (startsOn > from) free.push({ startsOn: from, endsOn: startsOn });
    if (endsOn > from) from = endsOn;
  }
  if (from < window.endsOn) free.push({ startsOn: from, endsOn: window.endsOn });
  return free;
}

/** The first day, not before the given one, from which as many days on end are free as the wanted period has. */
export function nextFreeStart(busy: readonly Period[], wanted: Period): DateText {
  refuseReversed(wanted);
  const days = daysBetween(wanted.startsOn, wanted.endsOn);
  let start = wanted.startsOn;
  for (const { startsOn, endsOn } of mergePeriods(busy)) {
    if (addDays(start, days) <= startsOn) break;
    if (endsOn > start) start = endsOn;
  }
  return start;
}

/** The days on which a loan keeps a specimen busy: packing and travel before it, rest and checks after it. */
export function withBuffers(period: Period, daysBefore: number, daysAfter: number): Period {
  if (!(daysBefore >= 0 && daysAfter >= 0)) throw new RangeError("Buffer days cannot be negative.");
  return { startsOn: addDays(period.startsOn, -daysBefore), endsOn: addDays(period.endsOn, daysAfter) };
}
