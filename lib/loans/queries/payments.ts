/**
 * What a loan costs as it was agreed, what was paid of it, and what is still open:
 * before dispatch the quotation that was accepted, afterwards what it came to. For
 * commands and queries that have already authorised.
 */
import type { PaymentKind } from "#lib/costing/payments.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";

type Reader = Database | Transaction;

export type PaymentSheet = {
  id: string;
  kind: PaymentKind;
  minor: number;
  currency: string;
  /** The day of the payment; of what is put off, the day until which. */
  day: DateText;
  reference: string;
  note: string;
  enteredBy: string;
  enteredAt: string;
};

export type Owed = {
  kind: "quotation" | "cost statement";
  version: number;
  minor: number;
  currency: string;
  statedOn: DateText;
};

export type PaymentStanding = {
  /** The quotation that was accepted last; null where none was. */
  agreed: Owed | null;
  /** The newest cost statement. */
  stated: Owed | null;
  /** In the order of their entry. */
  payments: PaymentSheet[];
};

const toOwed = (row: {
  kind: string;
  version: number;
  totalMinor: bigint;
  currency: string;
  drawnUpAt: Date;
}): Owed => ({
  kind: row.kind as Owed["kind"],
  version: row.version,
  minor: Number(row.totalMinor),
  currency: row.currency,
  statedOn: toDateText(row.drawnUpAt),
});

/** By the loan; every loan that is asked for has its entry. */
export async function paymentStandings(
  reader: Reader,
  loanIds: readonly string[],
): Promise<ReadonlyMap<string, PaymentStanding>> {
  const ids = [...new Set(loanIds)];
  const costings = await reader.costing.findMany({
    where: {
      loanId: { in: ids },
      OR: [{ kind: "cost statement" }, { kind: "quotation", answer: { outcome: "accepted" } }],
    },
    select: { loanId: true, kind: true, version: true, totalMinor: true, currency: true, drawnUpAt: true },
    orderBy: { version: "asc" },
  });
  const rows = await reader.payment.findMany({
    where: { loanId: { in: ids } },
    orderBy: { sequence: "asc" },
  });
  const accounts = await reader.account.findMany({
    where: { id: { in: [...new Set(rows.map(({ accountId }) => accountId))] } },
    select: { id: true, name: true },
  });
  const names = new Map(accounts.map(({ id, name }) => [id, name]));
  return new Map(
    ids.map((loanId): [string, PaymentStanding] => {
      const own = costings.filter((row) => row.loanId === loanId);
      const newest = (kind: Owed["kind"]) => own.findLast((row) => row.kind === kind);
      const [agreed, stated] = [newest("quotation"), newest("cost statement")];
      return [
        loanId,
        {
          agreed: agreed ? toOwed(agreed) : null,
          stated: stated ? toOwed(stated) : null,
          payments: rows
            .filter((row) => row.loanId === loanId)
            .map((row) => ({
              id: row.id,
              kind: row.kind as PaymentKind,
              minor: Number(row.amountMinor),
              currency: row.currency,
              day: toDateText(row.day),
              reference: row.reference,
              note: row.note,
              enteredBy: names.get(row.accountId) ?? "",
              enteredAt: row.enteredAt.toISOString(),
            })),
        },
      ];
    }),
  );
}

export async function paymentStanding(reader: Reader, loanId: string): Promise<PaymentStanding> {
  const found = (await paymentStandings(reader, [loanId])).get(loanId);
  return found ?? { agreed: null, stated: null, payments: [] };
}
