/** What a schema says of a wrong field is a sentence for a person. */
import { expect, test } from "vitest";
import { z } from "zod";
import { plainIssue } from "#app/_words/plain-issue.ts";

const said = (schema: z.ZodType, value: unknown) =>
  plainIssue(schema.safeParse(value).error?.issues[0]?.message ?? "");

test.each([
  [z.string().min(1), "", "Fill this in."],
  [z.string().min(10), "short", "Write at least 10 characters."],
  [z.string().max(3), "too long", "Write at most 3 characters."],
  [z.number().min(5), 4, "At least 5."],
  [z.number().positive(), 0, "More than 0."],
  [z.number().max(5), 6, "At most 5."],
  [z.number().max(100_000), 1e9, "At most 100\u202f000."],
  [z.number().max(0.025), 1, "At most 0.025."],
  [z.number(), Number.NaN, "Write a number."],
  [z.number().int(), 1.5, "Write a whole number."],
  [z.number().int(), "one", "Write a number."],
  [z.boolean(), null, "Choose yes or no."],
  [z.enum(["a", "b"]), "", "Choose one of the list."],
  [z.array(z.string()).min(1), [], "Name at least one."],
  [z.email(), "nobody", "Write an e-mail address, for example loans@example.org."],
  [z.iso.date(), "tomorrow", "Give a day."],
  [z.uuid(), "x", "Choose one of the list."],
])("the words of the schema are made plain: %#", (schema, value, sentence) => {
  expect(said(schema, value)).toBe(sentence);
});

test("a sentence of our own is left as it is", () => {
  expect(plainIssue("Say where it is.")).toBe("Say where it is.");
});
