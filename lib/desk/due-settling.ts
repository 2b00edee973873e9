/**
 * What is due to settle a loan: money that dispatch waits for, a cost statement that
 * is not paid, and a customs border that was crossed and not discharged. Each stays
 * until the record says otherwise. The days are those of the agreement; where none
 * names them, the standards of clauses 15, 16 and 33.
 */
import type { DueItem } from "#lib/desk/due.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";

/** What counts where no agreement names the days: the standards of the clauses. */
export const standardDays = { feeDays: 30, paymentDays: 30, dischargeDays: 30 } as const;

type About = { loanId: string; loan: string; borrower: string };

export type OpenBeforeDispatch = About & {
  version: number;
  leavesOn: DateText;
  /** Days before dispatch on which the last instalment is due. */
  feeDays: number;
  /** Until when the house has put it off. */
  putOffUntil: DateText | null;
};
export type UnpaidStatement = About & { version: number; statedOn: DateText; paymentDays: number };
export type NotDischarged = About & { homeOn: DateText; dischargeDays: number };

const item = (
  { loanId, loan, borrower }: About,
  code: string,
  dueOn: DateText,
  outcome: DueItem["outcome"],
  parameters: DueItem["parameters"],
): DueItem => ({
  key: `${loanId} ${code}`,
  outcome,
  dueOn,
  code,
  parameters: { loan, borrower, ...parameters },
  about: { kind: "loan", id: loanId },
});

export function dueBeforeDispatch(loans: readonly OpenBeforeDispatch[], today: DateText): DueItem[] {
  return loans.map((one) => {
    const dueOn = one.putOffUntil ?? addDays(one.leavesOn, -one.feeDays);
    return item(one, "due.payment-before-dispatch", dueOn, dueOn < today ? "bar" : "attend", {
      version: one.version,
    });
  });
}

/** Money that is late is no danger to a specimen: it wants attention and no more. */
export function dueFromStatements(loans: readonly UnpaidStatement[]): DueItem[] {
  return loans.map((one) =>
    item(one, "due.statement-unpaid", addDays(one.statedOn, one.paymentDays), "attend", {
      version: one.version,
    }),
  );
}

export function dueFromCustoms(loans: readonly NotDischarged[], today: DateText): DueItem[] {
  return loans.map((one) => {
    const date = addDays(one.homeOn, one.dischargeDays);
    return item(one, "due.customs-discharge", date, date < today ? "bar" : "attend", { date });
  });
}
