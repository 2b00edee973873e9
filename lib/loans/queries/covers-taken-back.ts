/** Certificates that were on a loan's record and are not any more, by the key that the audit knows them by. */
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";

export async function listCoversTakenBack(viewer: Viewer, loanId: string): Promise<string[]> {
  requireSight(viewer, "audit");
  await requireLoanFile(viewer, loanId);
  const rows = await database().auditEntry.findMany({
    where: { tableName: "cover", operation: "delete", before: { path: ["loan_id"], equals: loanId } },
    select: { rowKey: true },
    orderBy: { id: "asc" },
  });
  return rows.map(({ rowKey }) => rowKey);
}
