/** The file that stands as a signature, as it was sent; for who may read the terms that it signs. */
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

export type SignedFile = { mediaType: string; content: Uint8Array };

export async function getSignedFile(viewer: Viewer, loanId: string, fileId: string): Promise<SignedFile> {
  const institutionId = await requireLoanFile(viewer, loanId);
  requireSight(viewer, "replacementCost", { institutionId });
  if (!Id.safeParse(fileId).success) throw notFound("signature");
  const row = await database().signature.findFirst({
    where: { fileId, agreement: { loanId } },
    include: { file: { select: { mediaType: true, content: true } } },
  });
  if (!row?.file) throw notFound("signature");
  return row.file;
}
