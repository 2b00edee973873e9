/** A loan by the number that people write down. */
import { maySee } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";

/** Null when there is none, or none for this viewer; capitals and spaces do not matter. */
export async function findLoanByNumber(viewer: Viewer, typed: string): Promise<{ id: string } | null> {
  const compact = typed.toUpperCase().replace(/\s+/g, "");
  const number = /^L(\d{4}-\d{3,})$/.exec(compact)?.[1];
  if (!number) return null;
  const loan = await database().loan.findUnique({
    where: { number: `L ${number}` },
    select: { id: true, borrowerId: true },
  });
  if (!loan || !maySee(viewer, "loanFile", { institutionId: loan.borrowerId })) return null;
  return { id: loan.id };
}
