/**
 * Which days a loan takes from a specimen. The loan runs from the day of delivery
 * to the return-by, which is the first day that is no longer the loan; around it
 * lie days for checks, packing, travel and the rest before opening. All ranges
 * are half-open: [starts on, ends on). A loan that a paper calls "1 March to 30
 * June" starts on 1 March and ends on 1 July here.
 */
import type { PracticeFigures } from "#lib/people/practice.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { onePersonFilterKg } from "#lib/transport/handling.ts";

export type Days = { startsOn: DateText; endsOn: DateText };
export type Buffers = { daysBefore: number; daysAfter: number };

/** The days that must be free: the loan and the days around it. */
export function busyRange({ startsOn, endsOn, daysBefore, daysAfter }: Days & Buffers): Days {
  if (!(startsOn < endsOn)) throw new RangeError("a loan ends after it starts");
  if (!(daysBefore >= 0 && daysAfter >= 0)) throw new RangeError("days around a loan are not negative");
  return { startsOn: addDays(startsOn, -daysBefore), endsOn: addDays(endsOn, daysAfter) };
}

/** What is booked: the busy days that are not past. @throws {RangeError} when all of them are */
export function bookedRange(loan: Days & Buffers, today: DateText): Days {
  const busy = busyRange(loan);
  const startsOn = busy.startsOn < today ? today : busy.startsOn;
  if (!(startsOn < busy.endsOn)) throw new RangeError("the loan is past");
  return { startsOn, endsOn: busy.endsOn };
}

type StageDays = { departsOn: DateText; arrivesOn: DateText };

/**
 * What has to be kept for a loan: the busy days, every day of its stages, and, for
 * what is out of its place now, the days after the loan counted from today.
 */
export function keptDays(
  loan: Days & Buffers,
  stages: readonly StageDays[],
  awayToday: DateText | null,
): Days {
  const busy = busyRange(loan);
  const ends = [
    busy.endsOn,
    ...stages.map(({ arrivesOn }) => addDays(arrivesOn, 1)),
    ...(awayToday === null ? [] : [addDays(awayToday, Math.max(1, loan.daysAfter))]),
  ];
  return {
    startsOn: [busy.startsOn, ...stages.map(({ departsOn }) => departsOn)].sort()[0] ?? busy.startsOn,
    endsOn: ends.sort().at(-1) ?? busy.endsOn,
  };
}

export const travelSizes = ["small", "crate", "whole body"] as const;
export type TravelSize = (typeof travelSizes)[number];
/** Days kept free before a loan and after it, by what travels. */
export type BufferDays = Readonly<Record<TravelSize, number>>;

export function bufferDaysOf(practice: PracticeFigures): BufferDays {
  const { bufferSmallDays, bufferCrateDays, bufferBodyDays } = practice;
  return { small: bufferSmallDays, crate: bufferCrateDays, "whole body": bufferBodyDays };
}

type Travels = Pick<SpecimenInput, "kind" | "massKg" | "mountedMassKg">;

/** How a specimen travels. What one person carries is small; what nobody has weighed counts as a crate. */
export function travelSizeOf({ kind, massKg, mountedMassKg }: Travels): TravelSize {
  if (kind === "whole body") return "whole body";
  if (kind === "body region") return "crate";
  const heaviestKg = mountedMassKg ?? massKg;
  return heaviestKg !== null && heaviestKg <= onePersonFilterKg.men ? "small" : "crate";
}

/** The days around a loan: those of the specimen that needs most. */
export function buffersFor(specimens: readonly Travels[], around: BufferDays): Buffers {
  const days = Math.max(around.small, ...specimens.map((specimen) => around[travelSizeOf(specimen)]));
  return { daysBefore: days, daysAfter: days };
}
