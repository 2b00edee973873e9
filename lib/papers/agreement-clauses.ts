/**
 * The clauses of an agreement, in one language or in two side by side, and what in
 * them differs from the lender's standard terms. The words are those that were
 * frozen; only the names of parameters are looked up, in the language that rules.
 */

import { type ClauseLanguage, clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { clauseIds, clauseLibrary } from "#lib/agreements/clauses/library.ts";
import { clauseParameters, type ParameterName } from "#lib/agreements/clauses/parameters.ts";
import { valueWords } from "#lib/agreements/clauses/written-clause.ts";
import {
  type AgreementTerms,
  type CurrentTerms,
  clausesAgreed,
  rulingLanguage,
} from "#lib/agreements/frozen-terms.ts";
import type { ParameterValue } from "#lib/agreements/terms-annexes.ts";
import type { Block, Cell } from "#lib/papers/blocks.ts";
import { heldFigures } from "#lib/papers/held-figures.ts";
import { rangesOf } from "#lib/papers/row-groups.ts";
import { capital, fill, type PaperWords, say } from "#lib/papers/words.ts";

/** The clauses' own words in the language that rules; English where that one is no longer written in. */
export function clauseLanguageOf(terms: AgreementTerms): ClauseLanguage {
  const ruling = clauseLanguages.find((code) => code === rulingLanguage(terms)) ?? "en";
  return clausesIn[ruling];
}

/** What a parameter is called; its name where the library no longer knows it. */
export function parameterLabel(name: string, language: ClauseLanguage): string {
  return say(language.labels, name);
}

/** Some words end with the comma that their sentence needs; standing alone they do not. */
const alone = (text: string) => heldFigures(text.replace(/,$/, ""));

/** What a parameter holds, as the clauses would say it. */
export function parameterText(name: string, value: ParameterValue, language: ClauseLanguage): string {
  return Object.hasOwn(clauseParameters, name)
    ? alone(valueWords(name as ParameterName, value, language))
    : typeof value === "object"
      ? JSON.stringify(value)
      : String(value);
}

/** The clauses one below the other, as terms of any form hold them. */
export function plainClauses(terms: AgreementTerms): Block[] {
  return clausesAgreed(terms, rulingLanguage(terms)).map(({ number, heading, text }) => ({
    kind: "clause",
    mark: String(number),
    heading,
    text: heldFigures(text),
  }));
}

const languageName = (code: string, { languages }: ClauseLanguage) => capital(say(languages, code));

/** Two languages side by side; the one that rules stands on the left. */
function besideEachOther(terms: CurrentTerms, second: string, words: PaperWords): Block {
  const ruling = rulingLanguage(terms);
  const language = clauseLanguageOf(terms);
  const seconds = clausesAgreed(terms, second);
  const cell = (clause: { number: number; heading: string; text: string }): Cell => ({
    paragraphs: [
      [{ text: `${clause.number} ${clause.heading}`, emphasis: "strong" }],
      heldFigures(clause.text),
    ],
  });
  return {
    kind: "table",
    columns: [
      {
        header: fill(words.annexes.clauses.rules, { language: languageName(ruling, language) }),
        align: "left",
        width: { share: 1 },
      },
      { header: languageName(second, language), align: "left", width: { share: 1 } },
    ],
    rows: clausesAgreed(terms, ruling).map((clause, index) => {
      const other = seconds[index];
      return [cell(clause), other === undefined ? "" : cell(other)];
    }),
  };
}

/** What is set otherwise than the standard, and nothing else. */
function ownTermsBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const { clauses: said } = words.annexes;
  const language = clauseLanguageOf(terms);
  const own = terms.clauses.flatMap((clause) =>
    clause.parameters
      .filter(({ value, standard }) => standard !== undefined && value !== standard)
      .map((parameter) => ({ clause, parameter })),
  );
  if (own.length === 0) return [{ kind: "note", text: said.allStandard }];
  return [
    { kind: "subheading", text: said.own },
    { kind: "paragraph", text: said.ownLead, isLead: true },
    {
      kind: "table",
      columns: [
        { header: said.clause, align: "right", width: "fit" },
        { header: said.parameter, align: "left", width: { share: 3 } },
        { header: said.here, align: "left", width: { share: 3 } },
        { header: said.standard, align: "left", width: { share: 3 } },
      ],
      rows: own.map(({ clause, parameter: { name, value, standard = null } }) => [
        String(clause.number),
        parameterLabel(name, language),
        [{ text: parameterText(name, value, language), emphasis: "strong" }],
        parameterText(name, standard, language),
      ]),
    },
  ];
}

/** The numbers of the library that a loan has no clause for. */
function numbersLeftOut(terms: CurrentTerms): number[] {
  const stated = new Set(terms.clauses.map(({ number }) => number));
  return clauseIds.map((id) => clauseLibrary[id].number).filter((number) => !stated.has(number));
}

export function clausesBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const { clauses: said } = words.annexes;
  const [, second] = terms.languages;
  const leftOut = numbersLeftOut(terms);
  const lead =
    leftOut.length === 0 ? said.lead : `${said.lead} ${fill(said.leftOut, { numbers: rangesOf(leftOut) })}`;
  return [
    { kind: "paragraph", text: lead, isLead: true },
    ...ownTermsBlocks(terms, words),
    ...(second === undefined ? plainClauses(terms) : [besideEachOther(terms, second, words)]),
  ];
}
