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

test("an empty number is not known, and what is no number is not taken for nought", () => {
  const fields = sent(["empty", ""], ["comma", "20,5"], ["words", "warm"]);
  expect(numberIn(fields, "empty")).toBeNull();
  expect(numberIn(fields, "comma")).toBe(20.5);
  expect(numberIn(fields, "words")).toBeNaN();
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
  const fields = sent(["amount", "12 500.50"]);
  expect(minorIn(fields, "amount", "EUR")).toBe(1_250_050);
  expect(minorIn(fields, "amount", "JPY")).toBe(12_501);
  expect(minorIn(sent(["amount", ""]), "amount", "EUR")).toBeNull();
  expect([digitsOf("EUR"), digitsOf("JPY"), digitsOf("no")]).toEqual([2, 0, 2]);
});
