/**
 * How a language writes days, moments, figures, countries and lists on paper. All of
 * it comes from the locale; what a locale does not know is passed in. The spaces in a
 * figure or a day never break at the end of a line. Pure.
 */
import type { PaperWords } from "#lib/papers/words.ts";
import { minorDigits } from "#lib/platform/money.ts";

type Own = {
  locale: string;
  /** One day, and several of them. */
  day: string;
  days: string;
  /** What a language that spaces its colons and semicolons puts before them. */
  beforeMark?: string;
  /** The first day of a month, where it is written otherwise than the others. */
  firstOfMonth?: string;
};

/** Narrow spaces, which some readers of files do not keep, and spaces that break. */
const heldTogether = (text: string) => text.replace(/[\u202F ]/g, "\u00A0");

export function writingIn({ locale, day, days, beforeMark = "", firstOfMonth }: Own): PaperWords["write"] {
  const dayFormat = new Intl.DateTimeFormat(locale, {
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
  const timeFormat = new Intl.DateTimeFormat(locale, {
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone: "UTC",
  });
  const countryNames = new Intl.DisplayNames(locale, { type: "region", fallback: "code" });
  const listFormat = new Intl.ListFormat(locale, { type: "conjunction" });
  const eitherFormat = new Intl.ListFormat(locale, { type: "disjunction" });
  const dayText = (date: Date) => {
    const written = dayFormat.format(date);
    return heldTogether(firstOfMonth === undefined ? written : written.replace(/^1(?= )/, firstOfMonth));
  };
  const figure = (value: number, { least, most }: { least: number; most: number }) =>
    heldTogether(
      new Intl.NumberFormat(locale, { minimumFractionDigits: least, maximumFractionDigits: most }).format(
        value,
      ),
    );
  return {
    day: (date) => dayText(new Date(`${date}T00:00:00Z`)),
    moment: (iso) => `${dayText(new Date(iso))}, ${timeFormat.format(new Date(iso))}\u00A0UTC`,
    number: (value, decimals = { least: 0, most: 3 }) => figure(value, decimals),
    country: (code) => (/^[A-Z]{2}$/.test(code) ? (countryNames.of(code) ?? code) : code),
    days: (count) => `${count}\u00A0${count === 1 ? day : days}`,
    list: (items) => listFormat.format(items),
    either: (items) => eitherFormat.format(items),
    amount: ({ minor, currency }) => {
      const digits = minorDigits(currency);
      return figure(minor / 10 ** digits, { least: digits, most: digits });
    },
    decimalMark: new Intl.NumberFormat(locale).format(0.5).slice(1, 2),
    colon: `${beforeMark}: `,
    semicolon: `${beforeMark}; `,
  };
}
