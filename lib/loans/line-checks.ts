/**
 * The checks of one specimen on one loan, each beside the one that it was made
 * beside: going out stands alone, home again is compared with going out, every
 * other with the one before it.
 */
import { checkBeside } from "#lib/condition/beside.ts";
import { type CheckComparison, compareChecks } from "#lib/condition/comparison.ts";
import type { Finding, Occasion } from "#lib/condition/schema.ts";

type Checked = { loanId: string | null; occasion: Occasion; findings: readonly Finding[] };

export type BesideEarlier<Check> = {
  check: Check;
  /** Null for the first one on the loan. */
  comparison: CheckComparison | null;
};

/** @param checks of one specimen on one loan, in the order in which they were recorded */
export function checksBesideEarlier<Check extends Checked>(checks: readonly Check[]): BesideEarlier<Check>[] {
  return checks.map((check, index) => {
    const beside = checkBeside(check, checks.slice(0, index).toReversed());
    return { check, comparison: beside === null ? null : compareChecks(beside, check) };
  });
}
