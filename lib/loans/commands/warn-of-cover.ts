/**
 * Writes when the cover of a loan comes to its end, by the program itself: 60, 30
 * and 7 days before, each once for one end. A new certificate that reaches further
 * begins anew.
 */
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { coverWarningDays, coverWarningOf } from "#lib/loans/cover-warning.ts";
import { letterCode } from "#lib/loans/letters.ts";
import { endedStates } from "#lib/loans/transitions.ts";
import type { Work } from "#lib/people/command.ts";
import { programViewer, type Viewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, type DateText, daysBetween, toDate, toDateText } from "#lib/platform/dates.ts";
import { inTransaction } from "#lib/platform/transaction.ts";

async function warn(work: Work, loanId: string, endsOn: DateText, warning: number): Promise<boolean> {
  await work.transaction.$queryRaw`SELECT 1 FROM loan WHERE id = ${loanId}::uuid FOR NO KEY UPDATE`;
  const said = await work.transaction.mail.findFirst({
    where: {
      about: `loan/${loanId}`,
      code: letterCode("cover-ends"),
      parameters: { path: ["coverEndsOn"], equals: endsOn },
      queuedAt: { gte: toDate(addDays(endsOn, -warning)) },
    },
    select: { id: true },
  });
  if (said) return false;
  await writeLetters(work, loanId, "cover-ends", {
    coverEndsOn: endsOn,
    days: Math.max(0, daysBetween(work.today, endsOn)),
  });
  return true;
}

/** @param viewer whose act it is: the program's @returns for how many loans letters were written */
export async function warnOfCover(viewer: Viewer = programViewer): Promise<number> {
  const moment = now();
  const today = toDateText(moment);
  const loans = await database().loan.findMany({
    where: {
      closedAt: null,
      agreements: { some: {} },
      lines: {
        some: { state: { notIn: ["noted", "requested", "resting at home", "checked in", ...endedStates] } },
      },
      covers: { some: {} },
    },
    select: { id: true, covers: { orderBy: { endsAt: "desc" }, take: 1, select: { endsAt: true } } },
  });
  let warned = 0;
  for (const { id, covers } of loans) {
    const endsAt = covers[0]?.endsAt;
    if (!endsAt) continue;
    const endsOn = toDateText(endsAt);
    const days = daysBetween(today, endsOn);
    const warning = coverWarningOf(days);
    if (warning === null || days < 0 || days > coverWarningDays[0]) continue;
    const wrote = await inTransaction(viewer, "takeReminders", (transaction) =>
      warn({ viewer, transaction, now: moment, today }, id, endsOn, warning),
    );
    if (wrote) warned += 1;
  }
  return warned;
}
