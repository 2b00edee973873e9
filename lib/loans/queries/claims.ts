/** The claims of a loan with everything that happened to them, for who may see its costs. */
import { type ClaimEventKind, claimEnds } from "#lib/loans/claims.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { maySee } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import type { Money } from "#lib/specimens/schema.ts";

type Reader = Database | Transaction;

export type ClaimSheet = {
  id: string;
  number: string;
  specimenId: string;
  accessionNumber: string;
  state: ClaimEventKind;
  isOpen: boolean;
  events: {
    kind: ClaimEventKind;
    at: string;
    by: string;
    amount: Pick<Money, "minor" | "currency"> | null;
    note: string;
  }[];
};

/** For whoever has authorised. */
export async function claimsOfLoan(reader: Reader, loanId: string): Promise<ClaimSheet[]> {
  const rows = await reader.claim.findMany({
    where: { loanId },
    include: { events: { orderBy: { sequence: "asc" } } },
    orderBy: { number: "asc" },
  });
  const specimens = await reader.specimen.findMany({
    where: { id: { in: rows.map(({ specimenId }) => specimenId) } },
    select: { id: true, accessionNumber: true },
  });
  const accounts = await reader.account.findMany({
    where: { id: { in: rows.flatMap(({ events }) => events.map(({ accountId }) => accountId)) } },
    select: { id: true, name: true },
  });
  const names = new Map(accounts.map(({ id, name }) => [id, name]));
  const numbers = new Map(specimens.map(({ id, accessionNumber }) => [id, accessionNumber]));
  return rows.map(({ id, number, specimenId, events }) => {
    const state = (events.at(-1)?.kind ?? "opened") as ClaimEventKind;
    return {
      id,
      number,
      specimenId,
      accessionNumber: numbers.get(specimenId) ?? "",
      state,
      isOpen: !claimEnds.includes(state),
      events: events.map(({ kind, at, accountId, amountMinor, currency, note }) => ({
        kind: kind as ClaimEventKind,
        at: at.toISOString(),
        by: names.get(accountId) ?? "",
        amount: amountMinor === null || currency === null ? null : { minor: Number(amountMinor), currency },
        note,
      })),
    };
  });
}

/** None for who may not see costs. @throws {Refusal} "not-found" for a loan that is not theirs */
export async function listClaims(viewer: Viewer, loanId: string): Promise<ClaimSheet[]> {
  const institutionId = await requireLoanFile(viewer, loanId);
  return maySee(viewer, "replacementCost", { institutionId }) ? await claimsOfLoan(database(), loanId) : [];
}
