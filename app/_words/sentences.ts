/**
 * Makes sentences of codes, at the edge, in the reader's language. A code without
 * a sentence is a mistake that a test finds; a reader would see the general one.
 */
import { formFor } from "#app/_words/counted.ts";
import { english } from "#app/_words/en.ts";
import { plainIssue } from "#app/_words/plain-issue.ts";
import { type Parameters, readable } from "#app/_words/readable.ts";

export type { Parameters } from "#app/_words/readable.ts";

const sentences: Readonly<Record<string, string>> = english;

/**
 * Fills {name} with the parameter of that name, as people read it, and takes from
 * [name:one|many] the words that go with that number.
 */
export function sentence(code: string, parameters: Parameters = {}): string {
  const pattern = sentences[code] ?? sentences["entry.unknown"] ?? code;
  const said = readable(parameters, (inner, others) => (hasSentence(inner) ? sentence(inner, others) : null));
  const agreed = pattern.replace(
    /\[(\w+):([^|\]]*)\|([^\]]*)\]/g,
    (_whole, name: string, one: string, many: string) => formFor(Number(parameters[name]), one, many),
  );
  return agreed.replace(/\{(\w+)\}/g, (_whole, name: string) => String(said[name] ?? "–"));
}

export function hasSentence(code: string): boolean {
  return code in sentences;
}

/** A field's issue is either a code of ours, or the schema's own words made plain. */
export function sentenceForIssue(message: string): string {
  return hasSentence(message) ? sentence(message) : plainIssue(message);
}
