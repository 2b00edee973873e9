/**
 * What of a specimen is searched, and by which patterns a text is looked for in
 * it. The stored text is a line of words between blanks: the parts of its numbers,
 * each with all that follows it and without strokes, the words of its titles
 * folded, and their stems. Words are letters and digits only, so they stand in patterns as they are.
 */
import { foldedWords, stemOf } from "#lib/anatomy/search-key.ts";
import { compactNumber } from "#lib/specimens/accession-number.ts";

export type SearchedParts = {
  accessionNumber: string;
  formerNumbers: readonly { number: string }[];
  title: string;
  latinTitle: string;
};

const numberParts = (text: string) =>
  text
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part !== "");

/** The searched line of one specimen, with a blank at each end. */
export function specimenSearchKey({
  accessionNumber,
  formerNumbers,
  title,
  latinTitle,
}: SearchedParts): string {
  const words = new Set<string>();
  for (const number of [accessionNumber, ...formerNumbers.map((former) => former.number)]) {
    const parts = numberParts(number);
    for (const [index, part] of parts.entries()) words.add(part).add(parts.slice(index).join(""));
    words.add(compactNumber(number));
  }
  for (const word of [...foldedWords(title), ...foldedWords(latinTitle)]) words.add(word).add(stemOf(word));
  words.delete("");
  return ` ${[...words].join(" ")} `;
}

const whole = (word: string) => `% ${word} %`;
const begins = (word: string) => (word.length > 1 ? `% ${word}%` : whole(word));

/**
 * Patterns for LIKE: a line that meets every pattern of one list is meant.
 * @param extent whether the beginning of a word is enough
 */
export function searchPatterns(
  text: string,
  extent: "beginnings" | "whole words" = "beginnings",
): string[][] {
  const meets = extent === "beginnings" ? begins : whole;
  const parts = numberParts(text);
  if (parts.length === 0) return [];
  const compact = compactNumber(text);
  const lists = [parts.map(meets)];
  if (parts.length > 1) lists.push([meets(compact)]);
  const words = foldedWords(text);
  lists.push(
    words.map(meets),
    words.map((word) => whole(stemOf(word))),
  );
  const seen = new Set<string>();
  return lists.filter((list) => {
    const once = list.join("|");
    return list.length > 0 && !seen.has(once) && seen.add(once);
  });
}

/** Whether a searched line meets every pattern of one of the lists, as LIKE would say. */
export function meetsPatterns(line: string, lists: readonly (readonly string[])[]): boolean {
  return lists.some((patterns) => patterns.every((pattern) => line.includes(pattern.slice(1, -1))));
}

/** The text as one folded line, to be compared by likeness. */
export function likenessText(text: string): string {
  return foldedWords(text).join(" ");
}
