/** The hand-overs of one loan: the part of each specimen's chain of custody that the loan wrote. */
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";

export type LoanHandover = {
  id: string;
  specimenId: string;
  accessionNumber: string;
  fromParty: string | null;
  toParty: string;
  handedOverAt: string;
  releasedBy: string;
  receivedBy: string;
  reason: string;
};

/** The latest first. */
export async function listLoanHandovers(viewer: Viewer, loanId: string): Promise<LoanHandover[]> {
  await requireLoanFile(viewer, loanId);
  const lines = await database().loanLine.findMany({ where: { loanId }, select: { specimenId: true } });
  const rows = await database().custodyEvent.findMany({
    where: { loanId, specimenId: { in: lines.map((line) => line.specimenId) } },
    include: { specimen: { select: { accessionNumber: true } } },
    orderBy: [{ handedOverAt: "desc" }, { sequence: "desc" }, { specimen: { accessionNumber: "asc" } }],
    take: 2_000,
  });
  return rows.map(({ specimen, handedOverAt, loanId: _loan, sequence: _sequence, ...handover }) => ({
    ...handover,
    accessionNumber: specimen.accessionNumber,
    handedOverAt: handedOverAt.toISOString(),
  }));
}
