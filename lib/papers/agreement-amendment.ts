/**
 * Annex M: which version an amendment amends, and what differs, in words. A path or a
 * code that has no word is printed as it is, so that a difference is never lost.
 */
import type { ClauseLanguage } from "#lib/agreements/clauses/language.ts";
import { type ClauseId, clauseLibrary } from "#lib/agreements/clauses/library.ts";
import type { CurrentTerms } from "#lib/agreements/frozen-terms.ts";
import { ParameterValue, type TermsDifference } from "#lib/agreements/terms-annexes.ts";
import { clauseLanguageOf, parameterLabel, parameterText } from "#lib/papers/agreement-clauses.ts";
import { moneyText } from "#lib/papers/agreement-parts.ts";
import type { Block } from "#lib/papers/blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";
import { DateText } from "#lib/platform/dates.ts";

type Json = TermsDifference["before"];

const isMoney = (value: object): value is { minor: number; currency: string } =>
  "minor" in value && typeof value.minor === "number" && "currency" in value;

/** Codes of the request, wherever they stand. */
function codeWords({ loan, schedule }: PaperWords): Readonly<Record<string, string>> {
  return {
    ...schedule.kinds,
    ...schedule.preparations,
    ...loan.audiences,
    ...loan.displayStyles,
    ...loan.plannedPictures,
    ...loan.plannedActivities,
    ...loan.teachingUses,
    ...loan.purposes,
  };
}

/** A value of the terms in words: days, figures and money as the paper writes them, and of the rest what it holds. */
export function differenceValue(value: Json, words: PaperWords): string {
  const { annexes, write } = words;
  if (value === null) return annexes.nothing;
  if (typeof value === "boolean") return value ? annexes.yes : annexes.no;
  if (typeof value === "number") return write.number(value);
  if (typeof value === "string")
    return DateText.safeParse(value).success ? write.day(value as DateText) : say(codeWords(words), value);
  if (Array.isArray(value))
    return value.length === 0
      ? annexes.nothing
      : value.map((item) => differenceValue(item, words)).join(write.semicolon);
  if (isMoney(value)) return moneyText(value, words);
  return Object.entries(value)
    .map(
      ([field, inner]) =>
        `${say(annexes.amendment.fields, field)}${write.colon}${differenceValue(inner, words)}`,
    )
    .join(", ");
}

const clauseNumber = (id: string) =>
  Object.hasOwn(clauseLibrary, id) ? clauseLibrary[id as ClauseId].number : null;

/** One difference as three cells: what, before, now; clauses are named in the language given. */
export function differenceCells(
  { path, before, after }: TermsDifference,
  terms: CurrentTerms,
  words: PaperWords,
  language: ClauseLanguage = clauseLanguageOf(terms),
): [string, string, string] {
  const { amendment, nothing } = words.annexes;
  const [head = "", ...rest] = path;
  const [name = ""] = rest;
  if (head === "parameter") {
    const value = (said: Json) =>
      said === null ? nothing : parameterText(name, ParameterValue.parse(said), language);
    const clause = terms.clauses.find(({ parameters }) => parameters.some((one) => one.name === name));
    const number = clause === undefined ? "" : ` ${clause.number}`;
    return [
      `${amendment.paths.parameter}${number}, ${parameterLabel(name, language)}`,
      value(before),
      value(after),
    ];
  }
  if (head === "clause") {
    const heading = Object.hasOwn(language.clauses, name) ? language.clauses[name as ClauseId].heading : name;
    const value = (said: Json) =>
      typeof said === "number" ? fill(amendment.clauseVersion, { version: said }) : nothing;
    return [
      `${say(amendment.paths, head)} ${clauseNumber(name) ?? ""} ${heading}`,
      value(before),
      value(after),
    ];
  }
  if (head === "languages") {
    const value = (said: Json) =>
      Array.isArray(said) ? said.map((code) => say(language.languages, String(code))).join(", ") : nothing;
    return [say(amendment.paths, head), value(before), value(after)];
  }
  const fields = rest.map((field) => {
    const day = /^(\d{4}-\d{2}-\d{2})(T[\d:.]+Z)?$/.exec(field)?.[1];
    return DateText.safeParse(day).success ? words.write.day(day as DateText) : say(amendment.fields, field);
  });
  return [
    [say(amendment.paths, head), ...fields].join(", "),
    differenceValue(before, words),
    differenceValue(after, words),
  ];
}

export function amendmentBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const { amends } = terms;
  const { amendment: said } = words.annexes;
  if (amends === null) return [];
  const { number, version, sha256, differences, earlier } = amends;
  return [
    { kind: "paragraph", text: fill(said.lead, { number, version, hash: sha256 }), isLead: true },
    differences.length === 0
      ? { kind: "paragraph", text: said.none }
      : {
          kind: "table",
          columns: [
            { header: said.what, align: "left", width: { share: 4 } },
            { header: said.before, align: "left", width: { share: 3 } },
            { header: said.after, align: "left", width: { share: 3 } },
          ],
          rows: differences.map((difference) => differenceCells(difference, terms, words)),
        },
    { kind: "subheading", text: said.earlier },
    {
      kind: "table",
      columns: [
        { header: said.version, align: "right", width: "fit" },
        { header: said.hash, align: "left", width: { share: 1 } },
      ],
      rows: earlier.map((one) => [String(one.version), [{ text: one.sha256, emphasis: "code" }]]),
    },
  ];
}
