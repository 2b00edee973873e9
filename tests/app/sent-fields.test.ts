/** What a plain form has sent, read by name. */
import { expect, test } from "vitest";
import {
  allIn,
  answerIn,
  digitsOf,
  isTicked,
  minorIn,
  numberIn,
  shareIn,
  textIn,
} from "#app/_parts/sent-fields.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { Refusal } from "#lib/platform/refusal.ts";

function sent(...pairs: [string, string][]): FormData {
  const fields = new FormData();
  for (const [name, value] of pairs) fields.append(name, value);
  return fields;
}

test("text is trimmed, and what was not sent is empty", () => {
  const fields = sent(["name", "  Quiet room "]);
  expect(textIn(fields, "name")).toBe("Quiet room");
  expect(textIn(fields, "other")).toBe("");
});

function refusedAt(read: () => unknown): { path: string; message: string }[] {
  try {
    read();
  } catch (error) {
    if (error instanceof Refusal) return [...error.issues];
  }
  return [];
}

test("an empty number is not known, and what is no number is refused at its field", () => {
  const fields = sent(["empty", ""], ["comma", "20,5"], ["words", "warm"], ["widthMm", "1.200"]);
  expect(numberIn(fields, "empty")).toBeNull();
  expect(numberIn(fields, "comma")).toBe(20.5);
  expect(refusedAt(() => numberIn(fields, "words"))).toEqual([
    { path: "words", message: fieldWords.notANumber },
  ]);
  expect(refusedAt(() => numberIn(fields, "widthMm"))).toEqual([
    { path: "widthMm", message: fieldWords.twoReadings("1200", "1.2000") },
  ]);
});

test("a percentage becomes a fraction", () => {
  expect(shareIn(sent(["humidity", "48"]), "humidity")).toBe(0.48);
  expect(shareIn(sent(), "humidity")).toBeNull();
});

test("an answer that was not given is neither yes nor no", () => {
  const fields = sent(["a", "yes"], ["b", "no"], ["c", ""]);
  expect(["a", "b", "c", "d"].map((name) => answerIn(fields, name))).toEqual([true, false, null, null]);
});

test("values of one name keep their order, and empty ones are left out", () => {
  expect(allIn(sent(["id", "1"], ["id", ""], ["id", "2"]), "id")).toEqual(["1", "2"]);
  expect(isTicked(sent(["all", "on"]), "all")).toBe(true);
  expect(isTicked(sent(), "all")).toBe(false);
});

test("money is whole minor units of its own currency", () => {
  const fields = sent(["amount", "12 500.50"], ["unclear", "30.000"]);
  expect(minorIn(fields, "amount", "EUR")).toBe(1_250_050);
  expect(refusedAt(() => minorIn(fields, "amount", "JPY"))).toEqual([
    { path: "amount", message: fieldWords.tooManyDecimals(0) },
  ]);
  expect(minorIn(fields, "unclear", "JPY")).toBe(30_000);
  expect(refusedAt(() => minorIn(fields, "unclear", "EUR"))).toEqual([
    { path: "unclear", message: fieldWords.twoReadings("30000", "30.00") },
  ]);
  expect(minorIn(sent(["amount", ""]), "amount", "EUR")).toBeNull();
  expect([digitsOf("EUR"), digitsOf("JPY"), digitsOf("no")]).toEqual([2, 0, 2]);
});
