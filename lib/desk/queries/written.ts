/** What of messages, letters and reminders waits for the viewer. */
import type { DueItem } from "#lib/desk/due.ts";
import { dueFromWritten } from "#lib/desk/written.ts";
import { listUnread } from "#lib/loans/queries/messages.ts";
import { loansToHold } from "#lib/loans/queries/reminders.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";

const mostFaults = 50;

/** Letters that could not be sent, for who may send them again. */
async function listFaults(viewer: Viewer) {
  if (!maySee(viewer, "letters") || isBorrower(viewer)) return [];
  const rows = await database().mail.findMany({
    where: { sentAt: null, fault: { not: "" } },
    orderBy: { queuedAt: "desc" },
    take: mostFaults,
  });
  return rows.map(({ id, parameters, address, queuedAt }) => ({
    id,
    loan: String((parameters as { loan?: unknown }).loan ?? ""),
    address,
    queuedOn: toDateText(queuedAt),
  }));
}

export async function listWritten(viewer: Viewer): Promise<DueItem[]> {
  const decidesHold = !isBorrower(viewer) && mayDo(viewer, "holdNewLoans");
  const [unread, faults, toHold] = await Promise.all([
    listUnread(viewer),
    listFaults(viewer),
    decidesHold ? loansToHold(database()) : [],
  ]);
  return dueFromWritten({ unread, faults, toHold });
}
