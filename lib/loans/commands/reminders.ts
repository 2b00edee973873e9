/**
 * The days on which the centre reminds, and the hold on new loans that the last
 * reminder proposes. The hold is somebody's act, never the plan's.
 */
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { LoanOnly } from "#lib/loans/inputs.ts";
import { loansToHold, reminderPlanKey } from "#lib/loans/queries/reminders.ts";
import { ReminderPlan } from "#lib/loans/reminder-plan.ts";
import { command } from "#lib/people/command.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export const configureReminders = command(
  "configureReminders",
  ReminderPlan,
  async ({ transaction }, plan) => {
    await transaction.setting.upsert({
      where: { key: reminderPlanKey },
      create: { key: reminderPlanKey, value: plan },
      update: { value: plan },
    });
  },
);

/** Puts the borrower of an overdue loan on hold for new loans, once every reminder was taken. */
export const holdNewLoans = command("holdNewLoans", LoanOnly, async (work, { loanId }) => {
  const loan = await takeLoan(work, loanId, "holdNewLoans");
  const [found] = await loansToHold(work.transaction, [loan.id]);
  if (!found) throw new Refusal("conflict", "reminders.nothing-to-hold", { loan: loan.number });
  await work.transaction.institution.update({
    where: { id: loan.borrowerId },
    data: { standing: "on hold" },
  });
});
