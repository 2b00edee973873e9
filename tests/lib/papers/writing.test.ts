import { describe, expect, test } from "vitest";
import { frenchPaper } from "#lib/papers/french.ts";
import { germanPaper } from "#lib/papers/german.ts";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";

const plain = (text: string) => text.normalize("NFKC");
const { write: german } = germanPaper;
const { write: french } = frenchPaper;

test.each([
  ["a day", german.day("2027-03-01"), "1. März 2027"],
  ["a moment", german.moment("2026-11-26T10:15:00+01:00"), "26. November 2026, 09:15 UTC"],
  ["a figure", german.number(1420.125), "1.420,125"],
  ["euros", german.amount({ minor: 1_200_000, currency: "EUR" }), "12.000,00"],
  ["yen", german.amount({ minor: 12_000, currency: "JPY" }), "12.000"],
  ["forints", german.amount({ minor: 1_200_000, currency: "HUF" }), "12.000,00"],
  ["dinars", german.amount({ minor: 1_234_567, currency: "KWD" }), "1.234,567"],
  ["a country", german.country("IE"), "Irland"],
  ["a list", german.list(["a", "b", "c"]), "a, b und c"],
  ["a list after a not", german.either(["a", "b", "c"]), "a, b oder c"],
  ["one day", german.days(1), "1 Tag"],
  ["several days", german.days(14), "14 Tage"],
  ["its decimal mark", german.decimalMark, ","],
])("German writes %s", (_name, written, expected) => {
  expect(plain(written)).toBe(expected);
});

test.each([
  ["a day", french.day("2027-03-02"), "2 mars 2027"],
  ["the first of a month", french.day("2027-03-01"), "1er mars 2027"],
  ["no other day like the first", french.day("2027-03-11"), "11 mars 2027"],
  ["midnight", french.moment("2026-11-01T00:00:00Z"), "1er novembre 2026, 00:00 UTC"],
  ["a figure", french.number(1420.125), "1 420,125"],
  ["dinars", french.amount({ minor: 12_000_000, currency: "TND" }), "12 000,000"],
  ["a country", french.country("DE"), "Allemagne"],
  ["what is no country's code", french.country("Éire"), "Éire"],
  ["a list", french.list(["a", "b", "c"]), "a, b et c"],
  ["one day", french.days(1), "1 jour"],
  ["a colon", french.colon, " : "],
])("French writes %s", (_name, written, expected) => {
  expect(plain(written)).toBe(expected);
});

describe.each(paperLanguages)("in %s", (language) => {
  const { write } = paperWordsIn(language);
  test("no figure, day or sum is torn apart at the end of a line", () => {
    for (const text of [
      write.number(1_234_567.5),
      write.amount({ minor: 123_456_789, currency: "EUR" }),
      write.day("2027-03-01"),
      write.days(12),
    ])
      expect(text).not.toMatch(/[ \u202F]/);
  });

  test("a colon and a semicolon never begin a line", () => {
    for (const mark of [write.colon, write.semicolon]) expect(mark).toMatch(/^\u00A0?[:;] $/);
  });
});

test.each(paperLanguages)(
  "in %s an amount has the decimals of its currency, whatever the locale rounds to",
  (language) => {
    const { amount, decimalMark } = paperWordsIn(language).write;
    for (const [currency, digits] of [
      ["JPY", 0],
      ["EUR", 2],
      ["HUF", 2],
      ["COP", 2],
      ["IQD", 3],
      ["KWD", 3],
    ] as const) {
      const fraction = amount({ minor: 1_234_567, currency }).split(decimalMark)[1] ?? "";
      expect(fraction.length, currency).toBe(digits);
    }
  },
);
