/**
 * Which earlier check a check is made beside, and so what the examiner's answers
 * are about: home from a loan, the one before it left; else the latest.
 */
import type { Occasion } from "#lib/condition/schema.ts";

type OnLoan = { loanId: string | null; occasion: Occasion };

/** @param earlier checks of the same specimen, the newest first */
export function checkBeside<Check extends OnLoan>(
  { loanId, occasion }: OnLoan,
  earlier: readonly Check[],
): Check | null {
  const out =
    occasion === "home"
      ? earlier.find((check) => check.occasion === "out" && check.loanId === loanId)
      : undefined;
  return out ?? earlier[0] ?? null;
}
