/**
 * What is due of what was written: messages that wait for somebody to read them,
 * letters that could not be sent, and borrowers whose last reminder was taken.
 */
import type { DueItem } from "#lib/desk/due.ts";
import type { DateText } from "#lib/platform/dates.ts";

type Written = {
  unread: readonly { loanId: string; number: string; borrower: string; count: number; since: DateText }[];
  faults: readonly { id: string; loan: string; address: string; queuedOn: DateText }[];
  toHold: readonly { id: string; number: string; borrower: string; endsOn: DateText }[];
};

export function dueFromWritten({ unread, faults, toHold }: Written): DueItem[] {
  return [
    ...unread.map(
      ({ loanId, number, borrower, count, since }): DueItem => ({
        key: `${loanId} due.message`,
        outcome: "attend",
        dueOn: since,
        code: "due.message",
        parameters: { loan: number, borrower, count },
        about: { kind: "loan", id: loanId },
      }),
    ),
    ...faults.map(
      ({ id, loan, address, queuedOn }): DueItem => ({
        key: `letter ${id}`,
        outcome: "attend",
        dueOn: queuedOn,
        code: "due.letter-fault",
        parameters: { loan, address },
        about: { kind: "letter", id },
      }),
    ),
    ...toHold.map(
      ({ id, number, borrower, endsOn }): DueItem => ({
        key: `${id} due.propose-hold`,
        outcome: "attend",
        dueOn: endsOn,
        code: "due.propose-hold",
        parameters: { loan: number, borrower },
        about: { kind: "loan", id },
      }),
    ),
  ];
}
