/** Codes become sentences: filled, closed, and free of words we do not use. */
import { expect, test } from "vitest";
import { english } from "#app/_words/en.ts";
import { hasSentence, sentence, sentenceForIssue } from "#app/_words/sentences.ts";

test("parameters are filled in and a missing one shows a dash", () => {
  expect(sentence("booking.taken", { accessionNumber: "AN 2020.0001", freeFrom: "2027-04-01" })).toContain(
    "AN 2020.0001",
  );
  expect(sentence("booking.taken", {})).toContain("–");
});

test("a field's issue is a sentence already or becomes one", () => {
  expect(sentenceForIssue("currency.three-letters")).toMatch(/three capital letters/);
  expect(sentenceForIssue("Too big")).toBe("Too big");
  expect(hasSentence("no.such-code")).toBe(false);
});

test("every entry is a closed sentence or a short label, in neutral words", () => {
  for (const [code, text] of Object.entries(english)) {
    expect(text.trim(), code).toBe(text);
    expect(text.length, code).toBeGreaterThan(0);
    expect(text, code).not.toMatch(/\b(corpse|cadaver|body parts|lawful|legal to|remains of the)\b/i);
  }
});
