/**
 * The ladder of reminders before and after the day that specimens are due back:
 * which step a loan has come to, who is written to, and whether it was the last. A
 * step is taken once for one return-by day; of steps that were missed only the
 * latest is taken, and a return-by that moved begins anew. Reminding changes
 * nothing by itself: a hold on new loans is proposed, never set.
 */
import { z } from "zod";
import type { LetterEvent } from "#lib/loans/letters.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";

/** Days before (negative) and after the return-by day. */
const Shift = z.number().int("reminders.whole").min(-365, "reminders.range").max(365, "reminders.range");
export const ReminderPlan = z.object({
  days: z
    .array(Shift)
    .min(1, "reminders.none")
    .max(16)
    .refine((days) => new Set(days).size === days.length, "reminders.twice")
    .transform((days) => [...days].sort((one, other) => one - other)),
});
export type ReminderPlan = z.infer<typeof ReminderPlan>;

/** @source reminder ladder of lending offices; common practice, no source */
export const defaultReminders: ReminderPlan = { days: [-60, -30, -14, -3, 0, 3, 7, 14] };

/** From how many days after the return-by day on the institution itself and the registrar are written to; common practice, no source. */
export const URGENT_AFTER_DAYS = 7;

export type RemindedLoan = {
  /** The day of delivery: what would have been said before it is not said after it. */
  startsOn: DateText;
  /** Return-by. */
  endsOn: DateText;
  /** Steps that were taken for this return-by day. */
  taken: readonly number[];
};

/** The step to take on a day, or null: the latest that has come, where neither it nor a later one was taken. */
export function stepToTake({ days }: ReminderPlan, loan: RemindedLoan, today: DateText): number | null {
  const come = days.filter((shift) => {
    const day = addDays(loan.endsOn, shift);
    return day <= today && day >= loan.startsOn;
  });
  const latest = come.at(-1);
  if (latest === undefined || loan.taken.some((shift) => shift >= latest)) return null;
  return latest;
}

/** Whether a step is the last of the plan and comes after the return-by day. */
export function isLastStep({ days }: ReminderPlan, shift: number): boolean {
  return shift > 0 && shift === days.at(-1);
}

/** Which letter a step is; who gets it follows from the letter. */
export function letterOfStep(plan: ReminderPlan, shift: number): LetterEvent {
  if (isLastStep(plan, shift)) return "reminder-last";
  if (shift >= URGENT_AFTER_DAYS) return "reminder-urgent";
  if (shift > 0) return "reminder-overdue";
  return shift === 0 ? "reminder-today" : "reminder-ahead";
}
