/**
 * What an agreement says of its clauses, in its annexes and of an amendment, in the
 * language of the paper. Names of clauses and of their parameters are not here: they
 * come with the clauses themselves, in every language that clauses are written in.
 */

import type { AnnexMark } from "#lib/agreements/terms-annexes.ts";
import type { Occasion } from "#lib/condition/schema.ts";
import type { licenceKinds } from "#lib/people/schema.ts";
import type { permitKinds, titleStatuses } from "#lib/provenance/schema.ts";
import type { uses } from "#lib/specimens/schema.ts";

type WordsFor<Codes extends readonly string[]> = Readonly<Record<Codes[number], string>>;

export type AnnexWords = {
  /** Filled with {mark} and {title}. */
  heading: string;
  titles: Readonly<Record<AnnexMark, string>>;
  clauses: {
    lead: string;
    /** Filled with {numbers}. */
    leftOut: string;
    /** Filled with {language}. */
    rules: string;
    own: string;
    ownLead: string;
    allStandard: string;
    clause: string;
    parameter: string;
    here: string;
    standard: string;
    /** Beside a standard that the parties filled in themselves. */
    ownWords: string;
  };
  yes: string;
  no: string;
  nothing: string;
  checks: {
    lead: string;
    none: string;
    number: string;
    occasion: string;
    checkedOn: string;
    grade: string;
    hash: string;
    occasions: Readonly<Record<Occasion, string>>;
  };
  facility: {
    /** Filled with {version}, {day} and {until}. */
    report: string;
    reportedOn: string;
    notReported: string;
    fact: string;
    stated: string;
    limit: string;
    deviation: string;
    beyond: string;
    within: string;
    unknown: string;
    facts: Readonly<Record<string, string>>;
    answers: string;
  };
  display: string;
  contacts: { heading: string; lenderAtAnyHour: string; borrowerAtAnyHour: string; contact: string };
  evidence: {
    lead: string;
    heading: string;
    consent: string;
    complete: string;
    incomplete: string;
    notAsked: string;
    title: string;
    titles: WordsFor<typeof titleStatuses>;
    papers: string;
    /** Filled with {kind}, {number}, {authority} and {validity}. */
    paper: string;
    validUntil: string;
    noEnd: string;
    kinds: WordsFor<typeof permitKinds> & WordsFor<typeof licenceKinds>;
    licences: string;
  };
  costs: {
    /** Filled with {version}, {day} and {total}. */
    quotation: string;
    none: string;
    hash: string;
    bearers: string;
  };
  handling: {
    lead: string;
    specimen: string;
    mass: string;
    use: string;
    uses: WordsFor<typeof uses>;
    hazards: string;
    instructions: string;
    steps: readonly string[];
  };
  labels: {
    credit: string;
    human: string;
    pictures: string;
    handling: string;
    fluid: string;
    thanks: string;
  };
  log: { lead: string; columns: readonly string[] };
  amendment: {
    /** Filled with {number}, {version} and {hash}. */
    lead: string;
    none: string;
    what: string;
    before: string;
    after: string;
    earlier: string;
    version: string;
    hash: string;
    /** The first part of a path. */
    paths: Readonly<Record<string, string>>;
    /** What follows it. */
    fields: Readonly<Record<string, string>>;
    clauseVersion: string;
  };
};
