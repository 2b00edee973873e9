/**
 * Loans that are judged worse than when a person last settled them, because
 * consent, a licence or a venue changed. Derived from the evaluations that were
 * kept; what settles it are an act for which the loan was judged, a decision, a
 * word against a bar or a recall.
 */
import { type DueItem, dueFromJudged } from "#lib/desk/due.ts";
import { changeOccasions, judgedWorse } from "#lib/loans/judged-again.ts";
import { maySee } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const most = 100;

/** For the house: a borrower reads in its own loan what came of it. */
export async function dueJudged(viewer: Viewer): Promise<DueItem[]> {
  if (!maySee(viewer, "allLoans")) return [];
  const loans = await database().loan.findMany({
    where: { closedAt: null, runs: { some: { occasion: { in: [...changeOccasions] } } } },
    select: {
      id: true,
      number: true,
      borrower: { select: { name: true } },
      runs: {
        select: { occasion: true, runAt: true, findings: true },
        orderBy: [{ runAt: "asc" }, { id: "asc" }],
      },
      decisions: { select: { decidedAt: true } },
      overrides: { select: { at: true } },
      recalls: { select: { recalledAt: true } },
    },
    orderBy: { endsOn: "asc" },
    take: most,
  });
  return loans.flatMap(({ id, number, borrower, runs, decisions, overrides, recalls }) => {
    const worse = judgedWorse(
      runs.map((run) => ({ ...run, findings: run.findings as unknown as Finding[] })),
      [
        ...decisions.map(({ decidedAt }) => decidedAt),
        ...overrides.map(({ at }) => at),
        ...recalls.map(({ recalledAt }) => recalledAt),
      ],
    );
    return worse === null
      ? []
      : dueFromJudged({
          id,
          number,
          borrower: borrower.name,
          since: toDateText(worse.since),
          count: worse.count,
        });
  });
}
