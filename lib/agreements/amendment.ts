/**
 * What a new version keeps of the one before it, and what it amends. Until somebody
 * has signed, a new version amends nothing; from the first signature on it is a
 * numbered amendment of the last version that somebody has signed, and says what
 * differs. Old signatures stay under the old text.
 */
import type { OwnParameters } from "#lib/agreements/clause-values.ts";
import { type ClauseLanguageCode, clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { type AgreementTerms, findTerms } from "#lib/agreements/frozen-terms.ts";
import type { Amendment } from "#lib/agreements/terms-annexes.ts";
import { termsDifference } from "#lib/agreements/terms-difference.ts";

/** A version as it is kept. */
export type KeptVersion = { version: number; sha256: string; terms: string; signatures: number };

export type Kept = { languages: ClauseLanguageCode[]; parameters: OwnParameters };

/** The languages of a version, and what was set in it otherwise than the standard. */
export function keptOf(terms: AgreementTerms | null): Kept {
  if (terms?.format !== "loan-agreement-3") return { languages: ["en"], parameters: {} };
  const own = terms.clauses
    .flatMap(({ parameters }) => parameters)
    .filter(({ value, standard }) => standard !== undefined && value !== standard)
    .map(({ name, value }) => [name, value]);
  const languages = terms.languages.flatMap((code) => clauseLanguages.filter((known) => known === code));
  return {
    languages: languages.length === 0 ? ["en"] : languages,
    parameters: Object.fromEntries(own),
  };
}

/** @param versions all that there are, the oldest first */
export function amendmentOf(versions: readonly KeptVersion[], terms: AgreementTerms): Amendment | null {
  const signed = versions.filter(({ signatures }) => signatures > 0);
  const last = signed.at(-1);
  if (last === undefined) return null;
  const before = findTerms(last.terms);
  return {
    number: signed.length,
    version: last.version,
    sha256: last.sha256,
    differences:
      before === null ? [{ path: ["format"], before: null, after: null }] : termsDifference(before, terms),
    earlier: signed.map(({ version, sha256 }) => ({ version, sha256 })),
  };
}
