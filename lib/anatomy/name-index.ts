/**
 * All names of the vocabulary by what a typed text may have in common with them:
 * the key, the wider key of nouns and adjectives, the words. It finds which names
 * are worth weighing; their order is the matter of the ranking. The whole
 * vocabulary is looked through, so no slip of the hand is too far from the first
 * letters of a name to be found.
 */
import type { NameKind } from "#lib/anatomy/schema.ts";
import { foldedWords, rootKey, searchKey, stemOf } from "#lib/anatomy/search-key.ts";
import { forgivenSlips, slipsToWord } from "#lib/anatomy/typing-distance.ts";

/** A name that may be meant. */
export type Candidate = {
  structureId: string;
  text: string;
  kind: NameKind;
  searchKey: string;
  animal: boolean;
};

export type IndexedName<Row extends Candidate> = {
  row: Row;
  /** The folded words of the name. */
  named: readonly string[];
  /** Its stems. */
  stems: readonly string[];
  root: string;
};

export type NameIndex<Row extends Candidate> = {
  all: readonly IndexedName<Row>[];
  byKey: ReadonlyMap<string, readonly IndexedName<Row>[]>;
  byRoot: ReadonlyMap<string, readonly IndexedName<Row>[]>;
  /** By each folded word and each stem. */
  byWord: ReadonlyMap<string, readonly IndexedName<Row>[]>;
};

/** A typed text as it is compared with names. */
export type TypedText = { key: string; words: readonly string[]; root: string };

export function readTyped(text: string): TypedText {
  const words = foldedWords(text);
  return { key: searchKey(text), words, root: rootKey(words) };
}

export function indexNames<Row extends Candidate>(rows: readonly Row[]): NameIndex<Row> {
  const all: IndexedName<Row>[] = [];
  const byKey = new Map<string, IndexedName<Row>[]>();
  const byRoot = new Map<string, IndexedName<Row>[]>();
  const byWord = new Map<string, IndexedName<Row>[]>();
  const put = (map: Map<string, IndexedName<Row>[]>, key: string, name: IndexedName<Row>) => {
    const list = map.get(key);
    if (list) list.push(name);
    else map.set(key, [name]);
  };
  for (const row of rows) {
    const named = foldedWords(row.text);
    const name = { row, named, stems: row.searchKey.split(" "), root: rootKey(named) };
    all.push(name);
    put(byKey, row.searchKey, name);
    put(byRoot, name.root, name);
    for (const word of new Set([...named, ...name.stems])) put(byWord, word, name);
  }
  return { all, byKey, byRoot, byWord };
}

/** The names in which each typed word meets some word. */
function meetingEach<Row extends Candidate>(
  index: NameIndex<Row>,
  words: readonly string[],
  meets: (typed: string, word: string) => boolean,
): Set<IndexedName<Row>> {
  let found: Set<IndexedName<Row>> | null = null;
  for (const typed of words) {
    const met = new Set<IndexedName<Row>>();
    for (const [word, names] of index.byWord)
      if (meets(typed, word)) for (const name of names) if (found?.has(name) ?? true) met.add(name);
    found = met;
  }
  return found ?? new Set();
}

/** Names with the text's key, with its wider key, or with a word that begins as each typed word does. */
export function literalNames<Row extends Candidate>(
  index: NameIndex<Row>,
  { key, words, root }: TypedText,
): IndexedName<Row>[] {
  if (key === "") return [];
  const begun = meetingEach(index, words, (typed, word) => word.startsWith(typed) || word === stemOf(typed));
  return [...new Set([...(index.byKey.get(key) ?? []), ...(index.byRoot.get(root) ?? []), ...begun])];
}

/** Names in which each typed word is within the forgiven slips of some word. */
export function nearNames<Row extends Candidate>(
  index: NameIndex<Row>,
  { key, words }: TypedText,
): IndexedName<Row>[] {
  if (key === "") return [];
  return [
    ...meetingEach(index, words, (typed, word) => {
      const forgiven = forgivenSlips(typed.length);
      return word.length >= typed.length - forgiven && slipsToWord(typed, word, forgiven) <= forgiven;
    }),
  ];
}
