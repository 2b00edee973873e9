/**
 * Puts the names that a text may mean into the order a person expects: the same
 * words before other endings, whole words before beginnings, a whole name but for
 * one slip before the beginning of a longer one ("hart" is the heart, not the pouch
 * of Hartmann), typing errors before mere likeness; inside one tier preferred names
 * before others, short before long. Each structure appears once, with its best name.
 */
import { likenessOf } from "#lib/anatomy/likeness.ts";
import type { Candidate, IndexedName, TypedText } from "#lib/anatomy/name-index.ts";
import { type MatchTier, matchTiers } from "#lib/anatomy/schema.ts";
import { stemOf } from "#lib/anatomy/search-key.ts";
import { slipsToName, slipsToWholeName } from "#lib/anatomy/typing-distance.ts";

export type Ranked<Row extends Candidate> = { row: Row; tier: MatchTier; slips: number };

/** A name that is no typing error must be at least this alike to count. */
const leastLikeness = 0.5;
/** Of two names with as many slips, the one with fewer words that nobody typed is meant. */
const strangerWord = 0.01;
/** Of two names with as many slips, the preferred name of a human structure is meant. */
const lesserName = 0.001;

const sameWords = (one: readonly string[], other: readonly string[]) =>
  one.length === other.length && [...one].sort().join(" ") === [...other].sort().join(" ");

type Placed = { tier: MatchTier; slips: number };

function sameKey(name: IndexedName<Candidate>, { key, words }: TypedText): Placed {
  const same = sameWords(name.named, words) || /^cn\d+$/.test(key);
  if (!same) return { tier: "other ending", slips: 0 };
  return { tier: name.row.kind === "preferred" ? "preferred name" : "other name", slips: 0 };
}

/** Each typed word is a word of the name in some ending, or begins one; loosely where more of the name was not typed. */
function begun({ named, stems }: IndexedName<Candidate>, words: readonly string[]): Placed | null {
  const begins = (typed: string) =>
    stems.includes(stemOf(typed)) || [...named, ...stems].some((word) => word.startsWith(typed));
  if (!words.every(begins)) return null;
  const isWhole = (typed: string) =>
    named.some((word) => word === typed || (!word.startsWith(typed) && stemOf(word) === stemOf(typed)));
  const loose = named.length > words.length && !words.every(isWhole);
  return { tier: loose ? "loose beginning" : "beginning", slips: 0 };
}

function tierOf(name: IndexedName<Candidate>, typed: TypedText): Placed | null {
  const { named, stems, root, row } = name;
  const { words } = typed;
  if (row.searchKey === typed.key) return sameKey(name, typed);
  if (root === typed.root) return { tier: "other form", slips: 0 };
  const beginning = begun(name, words);
  if (beginning) return beginning;
  const lesser = (Number(row.kind === "synonym") + 2 * Number(row.animal)) * lesserName;
  const whole = slipsToWholeName(words, named);
  if (whole !== null && whole <= 1) return { tier: "near name", slips: whole + lesser };
  const slips = slipsToName(words, [...named, ...stems]);
  if (slips !== null)
    return { tier: "typing error", slips: slips + strangerWord * (named.length - words.length) + lesser };
  const likeness = likenessOf(words.join(" "), named.join(" "));
  return likeness >= leastLikeness ? { tier: "likeness", slips: 1 - likeness } : null;
}

function compare(one: Ranked<Candidate>, other: Ranked<Candidate>): number {
  return (
    matchTiers.indexOf(one.tier) - matchTiers.indexOf(other.tier) ||
    one.slips - other.slips ||
    Number(one.row.animal) - Number(other.row.animal) ||
    Number(one.row.kind === "synonym") - Number(other.row.kind === "synonym") ||
    one.row.text.length - other.row.text.length ||
    (one.row.text < other.row.text ? -1 : 1)
  );
}

/** @returns the structures that the text may mean, best first, at most `limit` */
export function rankNames<Row extends Candidate>(
  typed: TypedText,
  names: readonly IndexedName<Row>[],
  limit: number,
): Ranked<Row>[] {
  const ranked = names.flatMap((name) => {
    const placed = tierOf(name, typed);
    return placed ? [{ row: name.row, ...placed }] : [];
  });
  const best = new Map<string, Ranked<Row>>();
  for (const one of ranked.sort(compare))
    if (!best.has(one.row.structureId)) best.set(one.row.structureId, one);
  return [...best.values()].slice(0, limit);
}

const literalTiers: readonly MatchTier[] = [
  "preferred name",
  "other name",
  "other ending",
  "other form",
  "beginning",
  "loose beginning",
];

/** Whether a name was met without any slip of the hand. */
export function isLiteral({ tier }: Ranked<Candidate>): boolean {
  return literalTiers.includes(tier);
}

/** Whether a text was met by more than mere likeness. */
export function isSure(ranked: readonly Ranked<Candidate>[]): boolean {
  return ranked[0] !== undefined && ranked[0].tier !== "likeness";
}

/**
 * What a person who typed this text means, for a search that must not wander: all
 * structures of the best tier; of typing errors only those with the fewest slips;
 * never mere likeness.
 */
export function meantBy<Row extends Candidate>(ranked: readonly Ranked<Row>[]): Ranked<Row>[] {
  const [first] = ranked;
  if (!first || !isSure(ranked)) return [];
  return ranked.filter(({ tier, slips }) => tier === first.tier && slips === first.slips);
}
