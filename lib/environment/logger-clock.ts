/**
 * When each line of a logger's file was written. A logger keeps the offset from UTC
 * that it was started with and knows no summer time, so one offset holds for the
 * whole file: as it stands in the times, else in the lines before them, else as
 * somebody says. Day and month by numbers alone are settled by a day above twelve,
 * else somebody has to say.
 */
import { Refusal } from "#lib/platform/refusal.ts";

export const dateOrders = ["year first", "day first", "month first"] as const;
export type DateOrder = (typeof dateOrders)[number];

export type ClockRow = { line: number; clock: string };
export type SaidOfClock = { utcOffsetMinutes: number | null; dateOrder: DateOrder | null };
export type ReadClock = { moments: string[]; dateOrder: DateOrder; utcOffsetMinutes: number };

const yearFirst = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})/;
const others = /^(\d{1,2})([-./])(\d{1,2})[-./](\d{4}|\d{2})(?!\d)/;
const timeOfDay = /(?:^|[T\s])(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*([ap]\.?m\.?)?/i;
const offsetAtEnd = /(Z|[+-]\d{2}:?\d{2})$/;
const offsetInHead = /(?:GMT|UTC)\s*([+\-−]\s?\d{1,2}(?::?\d{2})?)?/i;

function minutesOf(offset: string): number {
  if (offset === "Z") return 0;
  const [, sign = "+", hours = "0", minutes = "0"] =
    /^([+\-−])\s?(\d{1,2}):?(\d{2})?$/.exec(offset.trim()) ?? [];
  return (sign === "+" ? 1 : -1) * (Number(hours) * 60 + Number(minutes || "0"));
}

function orderOf(rows: readonly ClockRow[], said: DateOrder | null): DateOrder {
  if (rows.every(({ clock }) => yearFirst.test(clock))) return "year first";
  let [firstAbove, secondAbove, dotted] = [false, false, true];
  for (const { clock, line } of rows) {
    const [, first, mark, second] = others.exec(clock) ?? [];
    if (first === undefined) throw new Refusal("invalid", "logger.time-unreadable", { line, text: clock });
    firstAbove ||= Number(first) > 12;
    secondAbove ||= Number(second) > 12;
    dotted &&= mark === ".";
  }
  if (firstAbove && secondAbove) throw new Refusal("invalid", "logger.date-order");
  if (firstAbove) return "day first";
  if (secondAbove) return "month first";
  // Dates with full stops are written with the day first (common practice, no source).
  if (dotted) return "day first";
  if (said === null || said === "year first") throw new Refusal("invalid", "logger.date-order");
  return said;
}

function offsetOf(rows: readonly ClockRow[], preamble: string, said: number | null): number {
  const inTimes = new Set(rows.map(({ clock }) => offsetAtEnd.exec(clock)?.[1] ?? ""));
  const [only = ""] = inTimes;
  if (inTimes.size === 1 && only !== "") return minutesOf(only);
  if (inTimes.size > 1) throw new Refusal("invalid", "logger.offset-changes");
  const inHead = offsetInHead.exec(preamble);
  const told = inHead === null ? null : minutesOf(inHead[1] ?? "Z");
  if (told !== null && said !== null && told !== said) throw new Refusal("invalid", "logger.offset-differs");
  const offset = told ?? said;
  if (offset === null) throw new Refusal("invalid", "logger.offset-unknown");
  return offset;
}

/** @returns milliseconds since 1970 as if the clock stood on UTC; null for a day or an hour that does not exist */
function localMs(clock: string, order: DateOrder): number | null {
  const found = order === "year first" ? yearFirst.exec(clock) : others.exec(clock);
  if (found === null) return null;
  const [a, b, c] = order === "year first" ? [found[1], found[2], found[3]] : [found[4], found[3], found[1]];
  const [month, day] = order === "month first" ? [c, b] : [b, c];
  const year = Number(a) < 100 ? 2000 + Number(a) : Number(a);
  const rest = clock.slice(found[0].length);
  const time = timeOfDay.exec(rest);
  if (time === null) return null;
  const half = time[4]?.toLowerCase();
  const twelve = Number(time[1]);
  if (half !== undefined && !(twelve >= 1 && twelve <= 12)) return null;
  const hour = half === undefined ? twelve : (twelve % 12) + (half.startsWith("p") ? 12 : 0);
  const [minute, second] = [Number(time[2]), Number(time[3] ?? 0)];
  if (!(hour <= 23 && minute <= 59 && second <= 59)) return null;
  const ms = Date.UTC(year, Number(month) - 1, Number(day), hour, minute, second);
  const back = new Date(ms);
  return back.getUTCMonth() === Number(month) - 1 && back.getUTCDate() === Number(day) ? ms : null;
}

/** A clock that was set back to its beginning by a change of battery. */
const earliest = Date.UTC(2001, 0, 1);

/** @throws {Refusal} "logger.…" with what cannot be settled */
export function readClock(rows: readonly ClockRow[], preamble: string, said: SaidOfClock): ReadClock {
  const dateOrder = orderOf(rows, said.dateOrder);
  const utcOffsetMinutes = offsetOf(rows, preamble, said.utcOffsetMinutes);
  const moments = rows.map(({ clock, line }) => {
    const local = localMs(clock, dateOrder);
    if (local === null) throw new Refusal("invalid", "logger.time-unreadable", { line, text: clock });
    if (local < earliest) throw new Refusal("invalid", "logger.clock-reset", { line, text: clock });
    return new Date(local - utcOffsetMinutes * 60_000).toISOString();
  });
  return { moments, dateOrder, utcOffsetMinutes };
}
