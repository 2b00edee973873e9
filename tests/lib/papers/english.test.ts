import { expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";

const { write } = englishPaper;
const plain = (text: string) => text.normalize("NFKC");

test.each([
  ["a day", write.day("2027-03-01"), "1 March 2027"],
  ["a moment, in universal time", write.moment("2026-11-26T10:15:00+01:00"), "26 November 2026, 09:15 UTC"],
  ["midnight as 00:00", write.moment("2026-11-26T00:00:00Z"), "26 November 2026, 00:00 UTC"],
  ["a figure", write.number(1420.125), "1,420.125"],
  ["no more decimals than asked", write.number(38.44, { least: 1, most: 1 }), "38.4"],
  ["euros with cents", write.amount({ minor: 1_200_000, currency: "EUR" }), "12,000.00"],
  ["yen without", write.amount({ minor: 12_000, currency: "JPY" }), "12,000"],
  ["dinars with thousandths", write.amount({ minor: 12_000, currency: "TND" }), "12.000"],
  ["a country", write.country("IE"), "Ireland"],
  ["what is no country's code as it is", write.country("Éire"), "Éire"],
  ["a list", write.list(["a", "b", "c"]), "a, b and c"],
  ["a list after a not", write.either(["a", "b", "c"]), "a, b or c"],
  ["one day", write.days(1), "1 day"],
  ["several days", write.days(14), "14 days"],
])("writes %s", (_name, written, expected) => {
  expect(plain(written)).toBe(expected);
});
