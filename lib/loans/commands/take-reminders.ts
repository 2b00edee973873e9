/**
 * Takes the reminders that have come due, by the program itself: for each loan that
 * is out, the step of the plan that the day has come to, with its letters, in one
 * transaction. Whoever runs it twice, or on two servers at once, takes each step
 * once: the loan is locked, and the database keeps a step for one return-by day.
 */
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { reminderPlanOf } from "#lib/loans/queries/reminders.ts";
import { letterOfStep, type ReminderPlan, stepToTake } from "#lib/loans/reminder-plan.ts";
import { outStates } from "#lib/loans/transitions.ts";
import type { Work } from "#lib/people/command.ts";
import { programViewer, type Viewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, daysBetween, toDate, toDateText } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { inTransaction } from "#lib/platform/transaction.ts";

/** The first day after the return-by on which somebody else has one of the specimens. */
async function neededFrom({ transaction }: Work, loanId: string, endsOn: Date): Promise<string | null> {
  const lines = await transaction.loanLine.findMany({
    where: { loanId, state: { in: [...outStates] } },
    select: { specimenId: true },
  });
  const next = await transaction.booking.findFirst({
    where: {
      specimenId: { in: lines.map(({ specimenId }) => specimenId) },
      line: { loanId: { not: loanId } },
      releasedAt: null,
      startsOn: { gte: endsOn },
    },
    orderBy: { startsOn: "asc" },
    select: { startsOn: true },
  });
  return next ? toDateText(next.startsOn) : null;
}

/** Takes the step that one loan has come to, if it has. @returns the step, or null */
async function remind(work: Work, loanId: string, plan: ReminderPlan): Promise<number | null> {
  const { transaction, today } = work;
  await transaction.$queryRaw`SELECT 1 FROM loan WHERE id = ${loanId}::uuid FOR NO KEY UPDATE`;
  const loan = await transaction.loan.findUniqueOrThrow({
    where: { id: loanId },
    select: {
      startsOn: true,
      endsOn: true,
      lines: { where: { state: { in: [...outStates] } }, select: { id: true }, take: 1 },
      reminders: { select: { endsOn: true, dayShift: true } },
    },
  });
  if (loan.lines.length === 0) return null;
  const endsOn = toDateText(loan.endsOn);
  const shift = stepToTake(
    plan,
    {
      startsOn: toDateText(loan.startsOn),
      endsOn,
      taken: loan.reminders
        .filter((reminder) => toDateText(reminder.endsOn) === endsOn)
        .map(({ dayShift }) => dayShift),
    },
    today,
  );
  if (shift === null) return null;
  await transaction.reminder.create({
    data: { id: newId(), loanId, endsOn: loan.endsOn, dayShift: shift, takenAt: work.now },
  });
  await writeLetters(work, loanId, letterOfStep(plan, shift), {
    days: Math.abs(daysBetween(today, endsOn)),
    neededFrom: await neededFrom(work, loanId, loan.endsOn),
  });
  return shift;
}

/** @param viewer whose act it is: the program's @returns how many steps were taken */
export async function takeReminders(viewer: Viewer = programViewer): Promise<number> {
  const moment = now();
  const today = toDateText(moment);
  const plan = await reminderPlanOf(database());
  const loans = await database().loan.findMany({
    where: {
      lines: { some: { state: { in: [...outStates] } } },
      // The first step comes that many days before the return-by day.
      endsOn: { lte: toDate(addDays(today, -(plan.days[0] ?? 0))) },
    },
    select: { id: true },
    orderBy: { endsOn: "asc" },
  });
  let taken = 0;
  for (const { id } of loans) {
    const shift = await inTransaction(viewer, "takeReminders", (transaction) =>
      remind({ viewer, transaction, now: moment, today }, id, plan),
    );
    if (shift !== null) taken += 1;
  }
  return taken;
}
