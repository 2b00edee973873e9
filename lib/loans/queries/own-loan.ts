/** Whether a loan's file is the viewer's to see; what is not theirs is not there. */
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

/** @returns whose loan it is @throws {Refusal} "not-found" for what is not there and for what is not theirs */
export async function requireLoanFile(viewer: Viewer, loanId: string): Promise<string> {
  requireSight(viewer, "loanFile");
  if (!Id.safeParse(loanId).success) throw notFound("loan");
  const row = await database().loan.findUnique({ where: { id: loanId }, select: { borrowerId: true } });
  if (!row) throw notFound("loan");
  requireSight(viewer, "loanFile", { institutionId: row.borrowerId });
  return row.borrowerId;
}
