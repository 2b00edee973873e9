/** How dates, money and figures are written. One place, so that a second language changes it once. */
import { minorDigits } from "#lib/platform/money.ts";

const locale = "en-GB";

const dayFormat = new Intl.DateTimeFormat(locale, {
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});
const momentFormat = new Intl.DateTimeFormat(locale, {
  day: "numeric",
  month: "long",
  year: "numeric",
  hour: "2-digit",
  minute: "2-digit",
  timeZone: "UTC",
});

/** @param date "YYYY-MM-DD" */
export function formatDate(date: string): string {
  return dayFormat.format(new Date(`${date}T00:00:00Z`));
}

/** A moment in universal time, and says so. */
export function formatMoment(moment: Date | string): string {
  return `${momentFormat.format(new Date(moment))} UTC`;
}

const shortMomentFormat = new Intl.DateTimeFormat(locale, {
  day: "numeric",
  month: "short",
  year: "numeric",
  hour: "2-digit",
  minute: "2-digit",
  timeZone: "UTC",
});

/** A moment for a row of a table. */
export function formatMomentShort(moment: Date | string): string {
  return `${shortMomentFormat.format(new Date(moment)).replace("Sept", "Sep")} UTC`;
}

const clockOf = (timeZone: string) =>
  new Intl.DateTimeFormat(locale, {
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZoneName: "short",
    timeZone,
  });

/**
 * A moment on another clock, its zone named: "15:20 CET", with the day where that is another one.
 * @param timeZone as the time zone database calls it, such as "Europe/Oslo"
 * @returns null where that clock shows universal time
 */
export function formatLocal(moment: Date | string, timeZone: string): string | null {
  const read = (zone: string) => {
    const parts = clockOf(zone).formatToParts(new Date(moment));
    const part = (type: Intl.DateTimeFormatPartTypes) =>
      parts.find((each) => each.type === type)?.value ?? "";
    const day = `${part("day")} ${part("month").replace("Sept", "Sep")}`;
    return { day, time: `${part("hour")}:${part("minute")}`, zone: part("timeZoneName") };
  };
  const [there, universal] = [read(timeZone), read("UTC")];
  if (there.day === universal.day && there.time === universal.time) return null;
  const day = there.day === universal.day ? "" : `${there.day}, `;
  return `${day}${there.time} ${there.zone}`;
}

/** A half-open range as its first and last day. */
export function formatRange(startsOn: string, endsOn: string): string {
  const last = new Date(Date.parse(`${endsOn}T00:00:00Z`) - 86_400_000);
  return `${formatDate(startsOn)} to ${dayFormat.format(last)}`;
}

const shortDayFormat = new Intl.DateTimeFormat(locale, {
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});

const shortDay = (moment: number) => shortDayFormat.format(moment).replace("Sept", "Sep");

/** A day for a row of a table. */
export function formatDateShort(date: string): string {
  return shortDay(Date.parse(`${date}T00:00:00Z`));
}

/** A half-open range as its first and last day, for a row of a list. */
export function formatRangeShort(startsOn: string, endsOn: string): string {
  return `${formatDateShort(startsOn)} – ${shortDay(Date.parse(`${endsOn}T00:00:00Z`) - 86_400_000)}`;
}

/** @param money whole minor units and an ISO 4217 code */
export function formatMoney(money: { minor: number; currency: string }): string {
  const digits = minorDigits(money.currency);
  const amount = formatNumber(money.minor / 10 ** digits, digits);
  return `${amount} ${money.currency}`;
}

/** @param digits decimals, fixed; without them, at most two */
export function formatNumber(value: number, digits?: number): string {
  const options =
    digits === undefined
      ? { maximumFractionDigits: 2 }
      : { minimumFractionDigits: digits, maximumFractionDigits: digits };
  return new Intl.NumberFormat(locale, options).format(value).replaceAll(",", "\u202f");
}

/** A number with every decimal it has, for a record of what was written. */
export function formatExact(value: number): string {
  return new Intl.NumberFormat(locale, { maximumFractionDigits: 12 }).format(value).replaceAll(",", "\u202f");
}

export function formatSize(size: { lengthMm: number; widthMm: number; heightMm: number }): string {
  return `${formatNumber(size.lengthMm)} × ${formatNumber(size.widthMm)} × ${formatNumber(size.heightMm)} mm`;
}

/** A fraction as a percentage. */
export function formatShare(fraction: number, digits = 0): string {
  return `${formatNumber(fraction * 100, digits)} %`;
}
