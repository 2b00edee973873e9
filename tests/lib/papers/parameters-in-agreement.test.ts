/**
 * Every parameter of every clause, changed by itself and found again in the agreement:
 * what is set for a loan, and facts that can be told apart, through the terms as they
 * are drawn up; facts that follow from the specimens through their clause in the terms.
 */
import { beforeAll, describe, expect, test } from "vitest";
import { clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { clauseIds, clauseRule } from "#lib/agreements/clauses/library.ts";
import {
  type FactName,
  isSetParameter,
  type ParameterName,
  parameterNames,
  parameterOf,
} from "#lib/agreements/clauses/parameters.ts";
import { type ClauseValues, valueWords, writeClause } from "#lib/agreements/clauses/written-clause.ts";
import { type CurrentTerms, clausesAgreed } from "#lib/agreements/frozen-terms.ts";
import type { ParameterValue } from "#lib/agreements/terms-annexes.ts";
import { agreementDocument } from "#lib/papers/agreement-document.ts";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import type { Block } from "#lib/papers/blocks.ts";
import { paperWordsIn } from "#lib/papers/languages.ts";
import { hashOf, subject, termsOf } from "#tests/lib/papers/agreement-cases.ts";
import { blockText } from "#tests/lib/papers/block-text.ts";
import { lettersOf, readPainted, timesIn } from "#tests/lib/papers/painted-paper.ts";
import { sampleAfter, sampleBefore } from "#tests/support/clause-samples.ts";
import { aConsentFact } from "#tests/support/consents.ts";
import { aRequestFact, aVenueFact } from "#tests/support/loan-cases.ts";

type Asked = Parameters<typeof termsOf>[1];
type Request = Parameters<typeof aRequestFact>[0];
type Venue = Parameters<typeof aVenueFact>[0];

/** A limb that is owed back, a jar and an animal, so that no clause of the library is left out. */
const [limb, jar, animal] = [subject(0), subject(2), subject(4)];
const owedBack = [aConsentFact({ disposition: "burial", dispositionDueOn: "2028-02-01" })];
const subjects = [{ ...limb, provenance: { ...limb.provenance, consents: owedBack } }, jar, animal];
const base = termsOf(subjects, {});

const asked = (request: Request = {}, venue: Venue = {}): Asked => ({
  request: aRequestFact({
    pictures: ["internal"],
    ...request,
    venue: aVenueFact({ countryCode: "IE", ...venue }),
  }),
});
const { lender, borrower } = base;

const facts: Partial<Record<FactName, Asked>> = {
  lender: { lender: { ...lender, name: "Another office" } },
  lenderAddress: { lender: { ...lender, address: "Another road 9" } },
  borrower: { borrower: { ...borrower, name: "Another faculty" } },
  borrowerAddress: { borrower: { ...borrower, address: "Another quay 8" } },
  contact: { borrower: { ...borrower, contactName: "B. Reader" } },
  purpose: asked({ purpose: "exhibition" }),
  title: { title: "Summer course" },
  audience: asked({ audience: "general public" }),
  admission: asked({ paidAdmission: true }),
  style: asked({ displayStyle: "artistic" }),
  licencesHeld: asked(
    {},
    {
      licences: [
        {
          kind: "public display",
          number: "PD-7741",
          authority: "Harbour county",
          validFrom: "2024-01-01",
          validUntil: "2029-01-01",
        },
      ],
    },
  ),
  startsOn: asked({ startsOn: "2027-03-08" }),
  returnBy: asked({ endsOn: "2027-07-08" }),
  opensOn: { opensOn: "2027-03-22" },
  daysBefore: asked({ daysBefore: 17 }),
  daysAfter: asked({ daysAfter: 19 }),
  venue: asked({}, { name: "Hall 77" }),
  venueAddress: asked({}, { address: "Another quay 7" }),
  fee: {
    costing: {
      kind: "quotation",
      version: 1,
      sha256: "ab".repeat(32),
      total: { minor: 7_654_321, currency: "EUR" },
      drawnUpOn: "2026-11-20",
    },
  },
  carriers: {
    stages: [
      {
        direction: "out",
        carrier: "Gentle Freight",
        through: [],
        departsOn: "2027-02-26",
        arrivesOn: "2027-03-01",
      },
    ],
  },
  coverCountries: { certificates: base.cover.certificates.map((one) => ({ ...one, territories: ["JP"] })) },
  teachingUse: asked({ teachingUse: "handling" }),
  borderFrom: { lender: { ...lender, countryCode: "JP" } },
  borderTo: asked({}, { countryCode: "BR" }),
  lawCountry: { lender: { ...lender, countryCode: "JP" } },
  rulingLanguage: { languages: ["de"] },
};

const valuesOf = ({ clauses }: CurrentTerms): ClauseValues =>
  Object.fromEntries(
    clauses.flatMap(({ parameters }) => parameters.map(({ name, value }) => [name, value] as const)),
  );

/** The terms with one value of one fact, as if the loan had it. */
function withFact(name: ParameterName, value: ParameterValue): CurrentTerms {
  const values = { ...valuesOf(base), [name]: value };
  return {
    ...base,
    clauses: base.clauses.map((clause) => {
      const id = clauseIds.find((one) => one === clause.id);
      return id === undefined || !clause.parameters.some((one) => one.name === name)
        ? clause
        : {
            ...clause,
            parameters: clause.parameters.map((one) => (one.name === name ? { ...one, value } : one)),
            texts: { en: writeClause(id, values, clausesIn.en) },
          };
    }),
  };
}

const otherSample = (name: ParameterName, now: ParameterValue | undefined) =>
  [sampleAfter[name], sampleBefore[name]].find((one) => JSON.stringify(one) !== JSON.stringify(now)) ?? null;

function changed(name: ParameterName): CurrentTerms {
  const other = otherSample(name, valuesOf(base)[name]);
  if (isSetParameter(parameterOf(name)))
    return termsOf(subjects, { parameters: { [name]: other as string | number } });
  const said = facts[name as FactName];
  return said === undefined ? withFact(name, other) : termsOf(subjects, said);
}

const flat = (blocks: readonly Block[]): Block[] =>
  blocks.flatMap((block) => (block.kind === "together" ? flat(block.blocks) : [block]));

/** The blocks of an agreement: those of its clauses by number, and the table of what is not standard. */
function readDocument(terms: CurrentTerms) {
  const code = clauseLanguages.find((one) => one === terms.languages[0]) ?? "en";
  const words = paperWordsIn(code);
  const blocks = flat(agreementDocument({ terms, sha256: hashOf(terms), signatures: [] }, words).blocks);
  const own = blocks.find(
    (block) =>
      block.kind === "table" && block.columns.some(({ header }) => header === words.annexes.clauses.here),
  );
  return {
    language: clausesIn[code],
    clauses: new Map(
      blocks.flatMap((block) => (block.kind === "clause" ? [[block.mark, blockText(block)] as const] : [])),
    ),
    own: own === undefined ? "" : blockText(own),
  };
}

const letters = (text: string) => text.normalize("NFKC").replace(/\s/g, "");
const before = readDocument(base);

test("no clause is left out of the loan, and nothing of it is set otherwise", () => {
  expect(base.clauses.map(({ id }) => id)).toEqual(clauseIds);
  expect(before.own).toBe("");
});

test.each(parameterNames)("%s by itself is found in its clauses", (name) => {
  const terms = changed(name);
  const value = valuesOf(terms)[name] ?? null;
  expect(value).not.toEqual(valuesOf(base)[name] ?? null);
  const { language, clauses, own } = readDocument(terms);
  const words = valueWords(name, value, language);
  const ids = clauseIds.filter((id) => clauseRule(id).parameters.includes(name));
  expect(ids).not.toEqual([]);
  for (const id of ids) {
    const mark = String(clauseRule(id).number);
    const [text = "", earlier = ""] = [clauses, before.clauses].map((one) => letters(one.get(mark) ?? ""));
    expect(timesIn(text, words), `${id}: ${words}`).toBeGreaterThan(timesIn(earlier, words));
  }
  if (!isSetParameter(parameterOf(name))) return;
  expect(letters(own)).toContain(letters(language.labels[name]));
  expect(letters(own)).toContain(letters(words.replace(/,$/, "")));
});

describe.each(clauseLanguages)("a painted agreement in %s with everything set otherwise", (code) => {
  const set = parameterNames.filter((name) => isSetParameter(parameterOf(name)));
  const terms = termsOf(subjects, {
    languages: [code],
    parameters: Object.fromEntries(set.map((name) => [name, sampleAfter[name] as string | number])),
  });
  let text = "";
  beforeAll(async () => {
    const bytes = await paintAgreement({
      terms,
      version: terms.loan.version,
      sha256: hashOf(terms),
      drawnUpAt: "2026-11-25T10:00:00Z",
      signatures: [],
    });
    text = lettersOf(await readPainted(bytes));
  });

  test("holds each clause whole, and in it each value", () => {
    const language = clausesIn[code];
    for (const { number, heading, text: said } of clausesAgreed(terms, code))
      expect(text).toContain(letters(`${number}${heading}${said}`));
    for (const { id, parameters, texts } of terms.clauses)
      for (const { name, value, standard } of parameters)
        if (standard !== undefined)
          expect(letters(texts[code]?.text ?? ""), `${id}: ${name}`).toContain(
            letters(valueWords(name as ParameterName, value, language)),
          );
    for (const name of set) expect(text).toContain(letters(language.labels[name]));
  });
});
