/**
 * What has changed between two evaluations of one loan: for each specimen and
 * rule, the strictest answer before and after. An answer has changed when its
 * outcome has, or the fact behind it. A specimen that only one of them speaks of
 * is left out: it was added or taken off, which is no change of suitability.
 */
import type { Finding } from "#lib/suitability/schema.ts";
import { type Outcome, outcomes } from "#lib/workings/outcome.ts";

export type RunChange = {
  specimenId: string;
  rule: string;
  /** null where the rule gave no answer. */
  before: Finding | null;
  after: Finding | null;
};

const rank = (outcome: Outcome) => outcomes.indexOf(outcome);

/** The strictest finding of each specimen under each rule; the first of equals. */
function strictest(findings: readonly Finding[]): Map<string, Finding> {
  const found = new Map<string, Finding>();
  for (const finding of findings) {
    const key = `${finding.specimenId} ${finding.rule}`;
    const before = found.get(key);
    if (!before || rank(finding.outcome) > rank(before.outcome)) found.set(key, finding);
  }
  return found;
}

/** Whether the answer is stricter than it was; a rule that gave none barred nothing. */
export const gotWorse = ({ before, after }: RunChange): boolean =>
  rank(after?.outcome ?? "clear") > rank(before?.outcome ?? "clear");

const specimensOf = (findings: readonly Finding[]) => new Set(findings.map(({ specimenId }) => specimenId));

/** @returns in the order in which the later evaluation speaks, what ended last */
export function runDifference(before: readonly Finding[], after: readonly Finding[]): RunChange[] {
  const [earlier, later] = [strictest(before), strictest(after)];
  const [had, has] = [specimensOf(before), specimensOf(after)];
  return [...new Set([...later.keys(), ...earlier.keys()])].flatMap((key) => {
    const [was, is] = [earlier.get(key) ?? null, later.get(key) ?? null];
    const specimenId = (is ?? was)?.specimenId ?? "";
    if (!had.has(specimenId) || !has.has(specimenId)) return [];
    if (was?.outcome === is?.outcome && was?.fact === is?.fact) return [];
    return [{ specimenId, rule: (is ?? was)?.rule ?? "", before: was, after: is }];
  });
}
