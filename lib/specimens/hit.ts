/**
 * By what of its own a specimen answers a searched text: one of its numbers, its
 * title, or both together. It repeats for one row what the database found by the
 * same patterns, so that the list can say why the row is there.
 */
import {
  meetsPatterns,
  type SearchedParts,
  searchPatterns,
  specimenSearchKey,
} from "#lib/specimens/search-text.ts";

export type Hit = { by: "number"; number: string } | { by: "title" } | { by: "number and title" };

const nothing: SearchedParts = { accessionNumber: "", formerNumbers: [], title: "", latinTitle: "" };

/** Null where neither its numbers nor its titles hold the words of the text. */
export function hitOf(specimen: SearchedParts, text: string): Hit | null {
  const lists = searchPatterns(text);
  const { accessionNumber, formerNumbers, title, latinTitle } = specimen;
  const isIn = (parts: Partial<SearchedParts>) =>
    meetsPatterns(specimenSearchKey({ ...nothing, ...parts }), lists);
  const numbers = [accessionNumber, ...formerNumbers.map((former) => former.number)];
  const number = numbers.find((each) => isIn({ accessionNumber: each }));
  if (number !== undefined) return { by: "number", number };
  if (isIn({ title, latinTitle })) return { by: "title" };
  return isIn(specimen) ? { by: "number and title" } : null;
}
