/** Every parameter of every clause, changed and found again: in the text of each language and in a PDF. */
import { extractText, getDocumentProxy } from "unpdf";
import { beforeAll, describe, expect, test } from "vitest";
import { clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { type ClauseId, clauseIds, clauseRule } from "#lib/agreements/clauses/library.ts";
import {
  isSetParameter,
  type ParameterName,
  parameterNames,
  parameterOf,
} from "#lib/agreements/clauses/parameters.ts";
import { valueWords, writeClause } from "#lib/agreements/clauses/written-clause.ts";
import { clausesAgreed } from "#lib/agreements/frozen-terms.ts";
import type { Block } from "#lib/papers/blocks.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paintPages } from "#lib/papers/paint.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { sampleAfter, sampleBefore } from "#tests/support/clause-samples.ts";

const places = clauseIds.flatMap((id) =>
  clauseRule(id).parameters.map((name): [ClauseId, ParameterName] => [id, name]),
);
const letters = (text: string) => text.normalize("NFKC").replace(/\s/g, "");
const timesIn = (text: string, words: string) => letters(text).split(letters(words)).length - 1;

describe.each(clauseLanguages)("in %s", (code) => {
  const language = clausesIn[code];

  test.each(places)("clause %s says a changed %s", (id, name) => {
    const changed = { ...sampleBefore, [name]: sampleAfter[name] };
    const before = writeClause(id, sampleBefore, language).text;
    const after = writeClause(id, changed, language).text;
    const words = valueWords(name, sampleAfter[name], language);
    expect(words).not.toBe(valueWords(name, sampleBefore[name], language));
    expect(timesIn(after, words)).toBeGreaterThan(timesIn(before, words));
  });
});

describe("one PDF of all clauses in all languages, everything changed", () => {
  let text = "";
  beforeAll(async () => {
    const blocks = clauseLanguages.flatMap((code) =>
      clauseIds.map((id): Block => {
        const { heading, text: said } = writeClause(id, sampleAfter, clausesIn[code]);
        return { kind: "clause", mark: `${code} ${clauseRule(id).number}`, heading, text: said };
      }),
    );
    const document = { head: { left: "", right: "" }, foot: { left: "", pageOf: "" }, blocks };
    const bytes = await paintPages(layOut(document, measureText), {
      title: "Clauses",
      author: "Centre",
      subject: "Clauses",
      keywords: [],
      language: "en",
      madeAt: "2026-11-25T10:00:00Z",
    });
    text = letters((await extractText(await getDocumentProxy(bytes))).text.join(" "));
  });

  test.each(clauseLanguages)("holds each clause whole, and with it every changed value, in %s", (code) => {
    const language = clausesIn[code];
    for (const [id, name] of places) {
      const words = letters(valueWords(name, sampleAfter[name], language));
      const clause = letters(writeClause(id, sampleAfter, language).text);
      expect(clause, `${id} ${name}`).toContain(words);
      expect(text, `${id} ${name}`).toContain(clause);
    }
  });
});

test("what is set for a loan stands in its terms, in each of its languages, and is no longer standard", () => {
  const parameters = Object.fromEntries(
    parameterNames
      .filter((name) => isSetParameter(parameterOf(name)))
      .map((name) => [name, sampleAfter[name] as string | number]),
  );
  const standard = someTerms(5);
  expect(standard.clauses.every(({ isStandard }) => isStandard)).toBe(true);
  for (const languages of [["en", "de"], ["fr"]] as const) {
    const terms = someTerms(5, { parameters, languages });
    for (const code of languages)
      for (const [index, { text }] of clausesAgreed(terms, code).entries())
        for (const { name, value, standard: usual } of terms.clauses[index]?.parameters ?? [])
          if (usual !== undefined)
            expect(letters(text)).toContain(
              letters(valueWords(name as ParameterName, value, clausesIn[code])),
            );
    for (const { parameters: set, isStandard } of terms.clauses)
      expect(isStandard).toBe(set.every(({ standard: usual }) => usual === undefined));
  }
});
