/**
 * Turns untrusted input into a value of a schema, or into one refusal that
 * names every field that is wrong.
 */
import type { z } from "zod";
import { type FieldIssue, Refusal } from "#lib/platform/refusal.ts";

/** The issues of a failed parse, with dotted paths, in the order of the schema. */
export function fieldIssues(error: z.ZodError): FieldIssue[] {
  return error.issues.map((issue) => ({ path: issue.path.join("."), message: issue.message }));
}

/** Texts that the database cannot keep as they are: with a NUL, or with half of a character. */
function unstorable(value: unknown, path = ""): FieldIssue[] {
  if (typeof value === "string")
    return /[\0\p{Cs}]/u.test(value) ? [{ path, message: "text.not-storable" }] : [];
  const isPlain = Array.isArray(value) || (value instanceof Object && value.constructor === Object);
  if (!isPlain) return [];
  return Object.entries(value).flatMap(([name, inner]) =>
    unstorable(inner, path === "" ? name : `${path}.${name}`),
  );
}

/** @throws {Refusal} of kind "invalid" with one issue per wrong field. */
export function parseInput<Schema extends z.ZodType>(schema: Schema, input: unknown): z.output<Schema> {
  const result = schema.safeParse(input);
  if (!result.success) throw new Refusal("invalid", "input.invalid", {}, fieldIssues(result.error));
  const issues = unstorable(result.data);
  if (issues.length > 0) throw new Refusal("invalid", "input.not-storable", {}, issues);
  return result.data;
}
