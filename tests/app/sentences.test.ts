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

test.each<[string, Record<string, number>, string]>([
  ["gate.permits", { open: 1 }, "1 point wants attention"],
  ["gate.permits", { open: 3 }, "3 points want attention"],
  ["next.submit", { specimens: 1 }, "1 specimen is on the slip"],
  ["next.submit", { specimens: 2 }, "2 specimens are on the slip"],
  ["condition.unknown-activity", { unknown: 1 }, "1 finding whether it is active"],
  ["gate.checked", { specimens: 1 }, "The specimen is checked"],
  ["gate.checked", { specimens: 13 }, "All 13 specimens are checked"],
  ["due.overdue", { days: 1 }, "by 1 day."],
])("%s agrees with its number, %j", (code, parameters, said) => {
  expect(sentence(code, parameters)).toContain(said);
});

test("every choice of words in a sentence goes with a number that the sentence names, and none is left over", () => {
  for (const [code, text] of Object.entries(english)) {
    for (const [, name, , many] of text.matchAll(/\[(\w+):([^|\]]*)\|([^\]]*)\]/g))
      expect(`${text} ${many}`, code).toContain(`{${name}}`);
    expect(sentence(code, {}), code).not.toMatch(/[[\]|{}]/);
  }
});

test("what a specimen is not fit for is told as one or the other", () => {
  expect(sentence("condition.unfit", { unfitTo: "show, travel", checkedOn: "2027-01-10" })).toBe(
    "Not fit to show or travel, by the check of 10 January 2027.",
  );
});
