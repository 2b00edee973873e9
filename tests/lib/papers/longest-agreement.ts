/**
 * The agreement at its longest: 300 specimens with the longest German names, every
 * clause of the library, each parameter with its longest value, and an amendment of
 * each of its specimens; painted and read again.
 */
import type { OwnParameters } from "#lib/agreements/clause-values.ts";
import type { ClauseLanguageCode } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import {
  isSetParameter,
  type ParameterName,
  parameterNames,
  parameterOf,
} from "#lib/agreements/clauses/parameters.ts";
import { valueWords } from "#lib/agreements/clauses/written-clause.ts";
import type { CurrentTerms } from "#lib/agreements/frozen-terms.ts";
import type { TermsSubject } from "#lib/agreements/terms.ts";
import { agreementDocument } from "#lib/papers/agreement-document.ts";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import { withCheck } from "#lib/papers/travel-blocks.ts";
import { bothSigned, hashOf, subject, termsOf } from "#tests/lib/papers/agreement-cases.ts";
import { address } from "#tests/lib/papers/issued-papers.ts";
import { judgePainted } from "#tests/lib/papers/longest-papers.ts";
import { longGerman, longTitle } from "#tests/lib/papers/paper-cases.ts";

type Languages = readonly [ClauseLanguageCode, ...ClauseLanguageCode[]];

function longSubject(index: number): TermsSubject {
  const plain = subject(index);
  const { consents } = plain.provenance;
  return {
    ...plain,
    specimen: { ...plain.specimen, title: `${longTitle} ${index + 1}` },
    provenance: {
      ...plain.provenance,
      consents: consents.map((consent) => ({ ...consent, dispositionDueOn: "2041-01-01" })),
    },
  };
}

/** Of each parameter that is set for a loan the value with the most letters. */
function longestParameters(code: ClauseLanguageCode): OwnParameters {
  const longestOption = (name: ParameterName, options: readonly string[]) =>
    options.reduce((longest, option) => {
      const [known, other] = [longest, option].map((one) => valueWords(name, one, clausesIn[code]).length);
      return (other ?? 0) > (known ?? 0) ? option : longest;
    });
  return Object.fromEntries(
    parameterNames.flatMap((name): [string, string | number][] => {
      const parameter = parameterOf(name);
      if (!isSetParameter(parameter)) return [];
      switch (parameter.kind) {
        case "number":
          return [[name, parameter.most]];
        case "choice":
          return [[name, longestOption(name, parameter.options)]];
        default:
          return [[name, `${longGerman}, ${longTitle}`]];
      }
    }),
  );
}

export function longestTerms(languages: Languages, specimens = 300): CurrentTerms {
  const subjects = Array.from({ length: specimens }, (_none, index) => longSubject(index));
  const sha256 = "ab".repeat(32);
  return termsOf(subjects, {
    title: longTitle,
    place: `${longGerman}straße 7`,
    languages,
    parameters: longestParameters(languages[0]),
    amends: {
      number: 1,
      version: 1,
      sha256,
      differences: subjects.map(({ specimen }) => ({
        path: ["specimen", specimen.accessionNumber],
        before: longGerman,
        after: specimen.title,
      })),
      earlier: [{ version: 1, sha256 }],
    },
  });
}

/** What is wrong with an agreement on a sheet. */
export async function judgeAgreement(terms: CurrentTerms, size: PaperSize) {
  const [language, other] = [0, 1].map((index) =>
    paperLanguages.find((known) => known === terms.languages[index]),
  );
  if (language === undefined) throw new RangeError("The papers have no words in the language that rules.");
  const sha256 = hashOf(terms);
  const signatures = bothSigned(terms);
  const bytes = await paintAgreement({
    terms,
    version: terms.loan.version,
    sha256,
    drawnUpAt: "2026-11-25T10:00:00Z",
    signatures,
    checkAddress: address,
    size,
  });
  const words = paperWordsIn(language);
  const plain = agreementDocument(
    { terms, sha256, signatures },
    words,
    other === undefined ? null : paperWordsIn(other),
  );
  return await judgePainted(bytes, size, {
    document: withCheck(plain, { sha256, checkAddress: address }, words),
    numbers: terms.schedule.map(({ accessionNumber }) => accessionNumber),
    times: null,
    title: words.agreement.name,
    language,
  });
}
