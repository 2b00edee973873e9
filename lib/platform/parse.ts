/**
 * Turns untrusted input into a value of a schema, or into one refusal that names
 * every field that is wrong, each once. What a person cannot see is taken out of
 * every text before it is read, here and nowhere else.
 */
import type { z } from "zod";
import { type FieldIssue, Refusal } from "#lib/platform/refusal.ts";

type Issue = z.core.$ZodIssue;

/** Of two bounds of one field the narrower; otherwise what the schema says first. */
function plainer(first: Issue, second: Issue): Issue {
  if (first.code === "too_small" && second.code === "too_small")
    return second.minimum > first.minimum ? second : first;
  if (first.code === "too_big" && second.code === "too_big")
    return second.maximum < first.maximum ? second : first;
  return first;
}

/** Where an issue stands; a field that the schema does not know stands where it was named. */
const pathsOf = ({ path, ...issue }: Issue): string[] =>
  (issue.code === "unrecognized_keys" ? issue.keys.map((key) => [...path, key]) : [path]).map((each) =>
    each.join("."),
  );

/** The issues of a failed parse, one for each field, with dotted paths, in the order of the schema. */
export function fieldIssues(error: z.ZodError, unknownField?: string): FieldIssue[] {
  const byPath = new Map<string, Issue>();
  for (const issue of error.issues)
    for (const path of pathsOf(issue)) {
      const before = byPath.get(path);
      byPath.set(path, before ? plainer(before, issue) : issue);
    }
  return [...byPath].map(([path, { code, message }]) => ({
    path,
    message: code === "unrecognized_keys" ? (unknownField ?? message) : message,
  }));
}

/**
 * Characters that nobody sees (Unicode's format characters that have no shape): turns of
 * the writing direction, which make a text look like another one; blanks without
 * width, soft hyphens and byte-order marks, which come along when text is pasted and
 * keep a title from being found. The two joiners between letters stay: Persian and
 * the scripts of India are not written without them.
 */
const unseen = /(?![\u200c\u200d])(?=\p{Default_Ignorable_Code_Point})\p{Cf}|[\ufff9-\ufffb]/gu;
const joinerOfNothing = /(?<=^|\s)[\u200c\u200d]+|[\u200c\u200d]+(?=\s|$)/gu;

export function withoutUnseen(text: string): string {
  return text.replace(unseen, "").replace(joinerOfNothing, "");
}

/** A password is taken to the letter, as it is where somebody signs in. */
const toTheLetter: ReadonlySet<string> = new Set(["password"]);

/** No schema of ours goes as deep; what does is refused by it. */
const deepest = 40;

const isPlain = (value: unknown): value is object =>
  Array.isArray(value) ||
  (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype);

function seenOnly(value: unknown, name = "", depth = 0): unknown {
  if (typeof value === "string") return toTheLetter.has(name) ? value : withoutUnseen(value);
  if (!isPlain(value) || depth > deepest) return value;
  if (Array.isArray(value)) return value.map((inner) => seenOnly(inner, "", depth + 1));
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, seenOnly(inner, key, depth + 1)]),
  );
}

/** Control characters other than the ends of lines and the tabulator, and halves of characters. */
const unstorable = /(?![\t\n\r])\p{Cc}|\p{Cs}/u;

function unstorableIn(value: unknown, path = ""): FieldIssue[] {
  if (typeof value === "string")
    return unstorable.test(value) ? [{ path, message: "text.not-storable" }] : [];
  if (!isPlain(value)) return [];
  return Object.entries(value).flatMap(([name, inner]) =>
    unstorableIn(inner, path === "" ? name : `${path}.${name}`),
  );
}

/** What was asked: something to be kept, or a question, which keeps nothing. */
type Asked = "input" | "query";

function parse<Schema extends z.ZodType>(schema: Schema, given: unknown, asked: Asked): z.output<Schema> {
  const result = schema.safeParse(seenOnly(given));
  if (!result.success) {
    const found = fieldIssues(result.error, asked === "query" ? "query.unknown" : undefined);
    throw new Refusal("invalid", `${asked}.invalid`, {}, found);
  }
  const issues = unstorableIn(result.data);
  if (issues.length > 0) throw new Refusal("invalid", `${asked}.not-storable`, {}, issues);
  return result.data;
}

/** @throws {Refusal} of kind "invalid" with one issue per wrong field. */
export function parseInput<Schema extends z.ZodType>(schema: Schema, input: unknown): z.output<Schema> {
  return parse(schema, input, "input");
}

/** The same for what is only asked for, such as a search. @throws {Refusal} that does not speak of saving */
export function parseQuery<Schema extends z.ZodType>(schema: Schema, query: unknown): z.output<Schema> {
  return parse(schema, query, "query");
}
