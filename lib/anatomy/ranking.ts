/**
 * Puts the names that the database found into the order a person expects: the
 * same words before other endings, those before beginnings, those before typing
 * errors, those before mere likeness; inside one tier preferred names before
 * others, short before long. Each structure appears once, with its best name.
 */
import { type MatchTier, matchTiers, type NameKind } from "#lib/anatomy/schema.ts";
import { foldedWords, searchKey, stemOf } from "#lib/anatomy/search-key.ts";
import { slipsToName } from "#lib/anatomy/typing-distance.ts";

/** A name that may be meant. Likeness runs from 0 to 1. */
export type Candidate = {
  structureId: string;
  text: string;
  kind: NameKind;
  searchKey: string;
  likeness: number;
  animal: boolean;
};

export type Ranked<Row extends Candidate> = { row: Row; tier: MatchTier; slips: number };

/** A name that is no typing error must be at least this alike to count. */
const leastLikeness = 0.5;
/** Of two names with as many slips, the one with fewer words that nobody typed is meant. */
const strangerWord = 0.01;

const sameWords = (one: readonly string[], other: readonly string[]) =>
  one.length === other.length && [...one].sort().join(" ") === [...other].sort().join(" ");

function tierOf(
  candidate: Candidate,
  key: string,
  words: readonly string[],
): { tier: MatchTier; slips: number } | null {
  const named = foldedWords(candidate.text);
  if (candidate.searchKey === key) {
    const same = sameWords(named, words) || /^cn\d+$/.test(key);
    if (!same) return { tier: "other ending", slips: 0 };
    return { tier: candidate.kind === "preferred" ? "preferred name" : "other name", slips: 0 };
  }
  const keyWords = candidate.searchKey.split(" ");
  const begins = words.every((typed) => {
    const stem = stemOf(typed);
    return keyWords.some((word) => word === stem || word.startsWith(typed));
  });
  const slips = slipsToName(words, [...named, ...keyWords]);
  if (begins || slips === 0) return { tier: "beginning", slips: 0 };
  if (slips !== null)
    return { tier: "typing error", slips: slips + strangerWord * (named.length - words.length) };
  return candidate.likeness >= leastLikeness ? { tier: "likeness", slips: words.length * 4 } : null;
}

/** @returns the structures that the text may mean, best first, at most `limit` */
export function rankCandidates<Row extends Candidate>(
  text: string,
  rows: readonly Row[],
  limit: number,
): Ranked<Row>[] {
  const key = searchKey(text);
  const words = foldedWords(text);
  const ranked = rows.flatMap((row) => {
    const placed = tierOf(row, key, words);
    return placed ? [{ row, ...placed }] : [];
  });
  const order = (one: Ranked<Row>, other: Ranked<Row>) =>
    matchTiers.indexOf(one.tier) - matchTiers.indexOf(other.tier) ||
    one.slips - other.slips ||
    (one.tier === "likeness" ? other.row.likeness - one.row.likeness : 0) ||
    Number(one.row.animal) - Number(other.row.animal) ||
    Number(one.row.kind === "synonym") - Number(other.row.kind === "synonym") ||
    one.row.text.length - other.row.text.length ||
    (one.row.text < other.row.text ? -1 : 1);
  const best = new Map<string, Ranked<Row>>();
  for (const one of ranked.sort(order))
    if (!best.has(one.row.structureId)) best.set(one.row.structureId, one);
  return [...best.values()].slice(0, limit);
}

/**
 * What a person who typed this text means, for a search that must not wander: all
 * structures of the best tier; of typing errors only those with the fewest slips;
 * never mere likeness.
 */
export function meantBy<Row extends Candidate>(ranked: readonly Ranked<Row>[]): Ranked<Row>[] {
  const [first] = ranked;
  if (!first || first.tier === "likeness") return [];
  return ranked.filter(({ tier, slips }) => tier === first.tier && slips === first.slips);
}
