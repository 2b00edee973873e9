/**
 * A bar that somebody who may has set aside, with grounds and evidence. The book
 * says whose word may go against which rule; the bar then is attend, and carries
 * the word with it. It is for one specimen, one rule and one fact of one loan: a
 * bar on another fact of the same rule stands. What is only attend stays so.
 */

import type { DateText } from "#lib/platform/dates.ts";
import { ruleEntry } from "#lib/suitability/rules/book.ts";
import type { Finding, offices } from "#lib/suitability/schema.ts";

type Office = (typeof offices)[number];

export type SetAside = {
  specimenId: string;
  rule: string;
  fact: string;
  office: Office;
  by: string;
  grounds: string;
  evidence: string;
  on: DateText;
};

/** Offices whose word may go against a bar of this rule. */
export const mayGoAgainst = (rule: string): readonly Office[] => ruleEntry(rule).overriddenBy;

export function withSetAside(findings: readonly Finding[], words: readonly SetAside[]): Finding[] {
  return findings.map((finding) => {
    if (finding.outcome !== "bar") return finding;
    const word = words.findLast(
      ({ specimenId, rule, fact }) =>
        specimenId === finding.specimenId && rule === finding.rule && fact === finding.fact,
    );
    if (!word || !mayGoAgainst(finding.rule).includes(word.office)) return finding;
    const { office, by, grounds, evidence, on } = word;
    return { ...finding, outcome: "attend", setAside: { office, by, grounds, evidence, on } };
  });
}
