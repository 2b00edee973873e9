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

/** @throws {Refusal} of kind "invalid" with one issue per wrong field. */
export function parseInput<Schema extends z.ZodType>(schema: Schema, input: unknown): z.output<Schema> {
  const result = schema.safeParse(input);
  if (result.success) return result.data;
  throw new Refusal("invalid", "input.invalid", {}, fieldIssues(result.error));
}
