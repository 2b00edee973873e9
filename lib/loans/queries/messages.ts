/** Messages on a loan with who wrote them, and the loans on which somebody has some to read. */
import { type MessageSide, unreadOf } from "#lib/loans/messages.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";

const sideOf = (viewer: Viewer): MessageSide => (isBorrower(viewer) ? "borrower" : "centre");

export type MessageRow = {
  id: string;
  side: MessageSide;
  by: string;
  text: string;
  writtenAt: string;
  isUnread: boolean;
};

/** In the order in which they were written. */
export async function messagesOf(viewer: Viewer, loanId: string): Promise<MessageRow[]> {
  await requireLoanFile(viewer, loanId);
  const rows = await database().message.findMany({
    where: { loanId },
    orderBy: [{ writtenAt: "asc" }, { id: "asc" }],
    take: 500,
  });
  const messages = rows.map((row) => ({ ...row, side: row.side as MessageSide }));
  const [names, seen] = await Promise.all([
    database().account.findMany({
      where: { id: { in: rows.map(({ accountId }) => accountId) } },
      select: { id: true, name: true },
    }),
    database().messageSeen.findUnique({
      where: { loanId_accountId: { loanId, accountId: viewer.accountId } },
    }),
  ]);
  const nameOf = new Map(names.map(({ id, name }) => [id, name]));
  const unread = new Set(
    mayDo(viewer, "readMessages") ? unreadOf(messages, sideOf(viewer), seen?.seenAt ?? null) : [],
  );
  return messages.map((message) => ({
    id: message.id,
    side: message.side,
    by: nameOf.get(message.accountId) ?? message.accountId,
    text: message.text,
    writtenAt: message.writtenAt.toISOString(),
    isUnread: unread.has(message),
  }));
}

export type UnreadLoan = { loanId: string; number: string; borrower: string; count: number; since: DateText };

/** Loans with messages that the viewer has to read: the registrar for the house, a borrower of its own. */
export async function listUnread(viewer: Viewer): Promise<UnreadLoan[]> {
  const borrows = isBorrower(viewer);
  if (!borrows && !(maySee(viewer, "allLoans") && viewer.roles.includes("registrar"))) return [];
  const side = sideOf(viewer);
  const rows = await database().$queryRaw<
    { loanId: string; number: string; borrower: string; count: number; since: Date }[]
  >`
    SELECT loan.id AS "loanId", loan.number, institution.name AS borrower,
           count(*)::int AS count, min(message.written_at) AS since
      FROM message
      JOIN loan ON loan.id = message.loan_id
      JOIN institution ON institution.id = loan.borrower_id
      LEFT JOIN message_seen seen ON seen.loan_id = loan.id AND seen.account_id = ${viewer.accountId}
     WHERE message.side <> ${side}
       AND (${!borrows} OR loan.borrower_id::text = ${viewer.institutionId ?? ""})
       AND message.written_at > coalesce(seen.seen_at, '-infinity')
       AND NOT EXISTS (SELECT 1 FROM message own
                        WHERE own.loan_id = loan.id AND own.side = ${side} AND own.written_at >= message.written_at)
     GROUP BY loan.id, loan.number, institution.name
     ORDER BY since
     LIMIT 200`;
  return rows.map(({ since, ...row }) => ({ ...row, since: toDateText(since) }));
}
