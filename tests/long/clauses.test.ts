/**
 * Every parameter of every clause in every language, changed alone and found in a
 * painted file; and all that are set for a loan, changed in the whole agreement.
 */
import { describe, expect, test } from "vitest";
import { clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { type ClauseId, clauseIds, clauseRule } from "#lib/agreements/clauses/library.ts";
import {
  isSetParameter,
  type ParameterName,
  parameterNames,
  parameterOf,
} from "#lib/agreements/clauses/parameters.ts";
import { type ClauseValues, valueWords, writeClause } from "#lib/agreements/clauses/written-clause.ts";
import { clausesAgreed } from "#lib/agreements/frozen-terms.ts";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import type { Block } from "#lib/papers/blocks.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paintPages } from "#lib/papers/paint.ts";
import { hashOf, someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { lettersOf, readPainted, timesIn } from "#tests/lib/papers/painted-paper.ts";
import { sampleAfter, sampleBefore } from "#tests/support/clause-samples.ts";

const facts = {
  title: "Clauses",
  author: "Centre",
  subject: "Clauses",
  keywords: [],
  madeAt: "2026-11-25T10:00:00Z",
};

/** A file of one clause on a page for each set of values, as letters page by page. */
async function lettersOfPages(
  id: ClauseId,
  code: (typeof clauseLanguages)[number],
  all: readonly ClauseValues[],
) {
  const blocks = all.flatMap((values, index): Block[] => {
    const { heading, text } = writeClause(id, values, clausesIn[code]);
    const clause: Block = { kind: "clause", mark: `${clauseRule(id).number}`, heading, text };
    return index === 0 ? [clause] : [{ kind: "page-break" }, clause];
  });
  const document = { head: { left: "", right: "" }, foot: { left: "", pageOf: "" }, blocks };
  const bytes = await paintPages(layOut(document, measureText), { ...facts, language: code });
  return (await readPainted(bytes)).pages.map((page) => lettersOf({ pages: [page] }));
}

const withParameters = clauseIds.filter((id) => clauseRule(id).parameters.length > 0);

describe.each(clauseLanguages)("in %s", (code) => {
  const language = clausesIn[code];

  test.each(withParameters)(
    "a file of clause %s says each of its parameters when it alone is changed",
    async (id) => {
      const { parameters } = clauseRule(id);
      const changed = parameters.map((name) => ({ ...sampleBefore, [name]: sampleAfter[name] }));
      const [before = "", ...after] = await lettersOfPages(id, code, [sampleBefore, ...changed]);
      expect(after).toHaveLength(parameters.length);
      for (const [index, name] of parameters.entries()) {
        const words = valueWords(name, sampleAfter[name], language);
        expect(timesIn(after[index] ?? "", words), name).toBeGreaterThan(timesIn(before, words));
      }
    },
  );
});

const standard = someTerms(5);
const standardValues = new Map(
  standard.clauses.flatMap(({ parameters }) => parameters.map(({ name, value }) => [name, value] as const)),
);
/** Parameters that are set for a loan and stand in a clause of this one. */
const setForLoan = parameterNames.filter(
  (name) => isSetParameter(parameterOf(name)) && standardValues.has(name),
);
/** Another value than the one that this loan has without anybody's doing. */
const otherValue = (name: ParameterName) =>
  sampleAfter[name] === standardValues.get(name) ? sampleBefore[name] : sampleAfter[name];

describe.each(clauseLanguages)("a whole agreement in %s", (code) => {
  test("holds every clause with each parameter that is set for a loan, and not as it was", async () => {
    expect(setForLoan.length).toBeGreaterThan(50);
    const parameters = Object.fromEntries(
      setForLoan.map((name) => [name, otherValue(name) as string | number]),
    );
    const terms = someTerms(5, { languages: [code], parameters });
    const bytes = await paintAgreement({
      terms,
      version: terms.loan.version,
      sha256: hashOf(terms),
      drawnUpAt: facts.madeAt,
      signatures: [],
    });
    const letters = lettersOf(await readPainted(bytes));
    const usual = clausesAgreed(someTerms(5, { languages: [code] }), code);
    for (const [index, { number, heading, text }] of clausesAgreed(terms, code).entries()) {
      const isChanged = terms.clauses[index]?.parameters.some(({ name }) =>
        (setForLoan as readonly string[]).includes(name),
      );
      expect(timesIn(letters, `${number}${heading}${text}`), heading).toBe(1);
      if (isChanged) expect(timesIn(letters, usual[index]?.text ?? ""), heading).toBe(0);
      for (const { name } of terms.clauses[index]?.parameters ?? [])
        if (name in parameters)
          expect(
            timesIn(
              text.normalize("NFKC").replace(/\s/g, ""),
              valueWords(name as ParameterName, otherValue(name as ParameterName), clausesIn[code]),
            ),
            name,
          ).toBeGreaterThan(0);
    }
  });
});
