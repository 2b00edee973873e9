/**
 * Makes sentences of codes, at the edge, in the reader's language. A code without
 * a sentence is a mistake that a test finds; a reader would see the general one.
 */
import { english } from "#app/_words/en.ts";

export type Parameters = Readonly<Record<string, string | number | boolean | null>>;

const sentences: Readonly<Record<string, string>> = english;

/** Fills {name} with the parameter of that name. */
export function sentence(code: string, parameters: Parameters = {}): string {
  const pattern = sentences[code] ?? sentences["entry.unknown"] ?? code;
  return pattern.replace(/\{(\w+)\}/g, (_whole, name: string) => String(parameters[name] ?? "–"));
}

export function hasSentence(code: string): boolean {
  return code in sentences;
}

/** A field's issue is either a code of ours or already a sentence. */
export function sentenceForIssue(message: string): string {
  return hasSentence(message) ? sentence(message) : message;
}
