/**
 * The evaluations of one loan as they were kept, the newest first, each beside the
 * one before it, in the viewer's sight: what is withheld of a finding is withheld
 * of its change as well.
 */
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { readableFindings, sightOfLoan } from "#lib/loans/sight.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type RunChange, runDifference } from "#lib/suitability/run-difference.ts";
import type { Finding } from "#lib/suitability/schema.ts";

export type KeptRun = {
  id: string;
  occasion: string;
  runAt: string;
  /** What differs from the one before; null for the first, which has none. */
  changes: RunChange[] | null;
};

/** Evaluations that are shown, and the one before the oldest of them. */
const most = 20;

/** @throws {Refusal} "not-found" for what is not there and for what is not theirs */
export async function listKeptRuns(viewer: Viewer, loanId: string): Promise<KeptRun[]> {
  const sight = sightOfLoan(viewer, { institutionId: await requireLoanFile(viewer, loanId) });
  const rows = await database().suitabilityRun.findMany({
    where: { loanId },
    select: { id: true, occasion: true, runAt: true, findings: true },
    orderBy: [{ runAt: "desc" }, { id: "desc" }],
    take: most + 1,
  });
  const runs = rows.map((row) => ({
    ...row,
    findings: readableFindings(row.findings as unknown as Finding[], sight),
  }));
  return runs.slice(0, most).map(({ id, occasion, runAt, findings }, index) => {
    const before = runs[index + 1];
    return {
      id,
      occasion,
      runAt: runAt.toISOString(),
      changes: before ? runDifference(before.findings, findings) : null,
    };
  });
}
