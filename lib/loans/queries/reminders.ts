/** The plan of reminders as the centre has set it, and which steps one loan has come to. */
import { defaultReminders, isLastStep, ReminderPlan } from "#lib/loans/reminder-plan.ts";
import { outStates } from "#lib/loans/transitions.ts";
import { mayDo, requireSight } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";

type Reader = Database | Transaction;

/** The key under which it is kept. */
export const reminderPlanKey = "days of reminders";

export async function reminderPlanOf(reader: Reader): Promise<ReminderPlan> {
  const setting = await reader.setting.findUnique({ where: { key: reminderPlanKey } });
  return setting === null ? defaultReminders : ReminderPlan.parse(setting.value);
}

export async function getReminderPlan(viewer: Viewer): Promise<ReminderPlan> {
  requireSight(viewer, "allLoans");
  return await reminderPlanOf(database());
}

/**
 * Loans whose last reminder was taken, which are out still, and whose institution
 * may still be lent to: for each of them somebody decides on a hold.
 * @param loanIds of these; without them, of all
 */
export async function loansToHold(reader: Reader, loanIds?: readonly string[]) {
  const plan = await reminderPlanOf(reader);
  const rows = await reader.loan.findMany({
    where: {
      ...(loanIds ? { id: { in: [...loanIds] } } : {}),
      borrower: { standing: "good" },
      lines: { some: { state: { in: [...outStates] } } },
      reminders: { some: { dayShift: { gt: 0 } } },
    },
    select: {
      id: true,
      number: true,
      endsOn: true,
      borrowerId: true,
      borrower: { select: { name: true } },
      reminders: { select: { endsOn: true, dayShift: true } },
    },
    orderBy: { endsOn: "asc" },
    take: 500,
  });
  return rows
    .filter(({ endsOn, reminders }) =>
      reminders.some((one) => one.endsOn.getTime() === endsOn.getTime() && isLastStep(plan, one.dayShift)),
    )
    .map(({ id, number, endsOn, borrowerId, borrower }) => ({
      id,
      number,
      endsOn: toDateText(endsOn),
      borrowerId,
      borrower: borrower.name,
    }));
}

/** Whether the viewer is to decide on a hold for the borrower of this loan. */
export async function isToBeHeld(viewer: Viewer, loanId: string): Promise<boolean> {
  if (isBorrower(viewer) || !mayDo(viewer, "holdNewLoans")) return false;
  return (await loansToHold(database(), [loanId])).length > 0;
}
