/**
 * Writing down what was paid, and putting off what is open before dispatch. Both
 * count against the quotation that was accepted last and in its currency. An entry
 * is never changed: money that went back is an entry of its own. Nothing here ever
 * holds a specimen back from coming home.
 */
import { openMinorOf, PaymentInput, PutOffInput } from "#lib/costing/payments.ts";
import { requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { paymentStanding } from "#lib/loans/queries/payments.ts";
import { command, refuseDaysToCome } from "#lib/people/command.ts";
import { toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const refuseAt = (path: string, message: string) =>
  new Refusal("invalid", "input.invalid", {}, [{ path, message }]);

export const recordPayment = command("recordPayment", PaymentInput, async (work, input) => {
  const { loanId, kind, amountMinor, paidOn, reference, note } = input;
  const { transaction, viewer, now } = work;
  const loan = await takeLoan(work, loanId, "recordPayment");
  refuseDaysToCome(work, { paidOn });
  const { agreed, payments } = await paymentStanding(transaction, loan.id);
  if (agreed === null) throw new Refusal("conflict", "payment.not-accepted", { loan: loan.number });
  const { currency } = agreed;
  const isSame = (one: (typeof payments)[number]) =>
    one.kind === kind && one.day === paidOn && one.reference === reference && one.minor === amountMinor;
  if (payments.some(isSame)) throw new Refusal("conflict", "payment.entered-already", { reference });
  // what is held is what would be open the other way round if nothing were owed
  if (kind === "paid back" && amountMinor > -openMinorOf({ minor: 0, currency }, payments))
    throw refuseAt("amountMinor", "payment.back-too-much");
  await transaction.payment.create({
    data: {
      id: newId(),
      loanId: loan.id,
      kind,
      amountMinor: BigInt(amountMinor),
      currency,
      day: toDate(paidOn),
      reference,
      note,
      accountId: viewer.accountId,
      enteredAt: now,
    },
  });
});

export const putOffPayment = command(
  "putOffPayment",
  PutOffInput,
  async (work, { loanId, until, reason }) => {
    const { transaction, viewer, now, today } = work;
    const loan = await takeLoan(work, loanId, "putOffPayment");
    requireState(loan, statesInPreparation);
    if (until < today) throw refuseAt("until", "payment.until-past");
    const { agreed, payments } = await paymentStanding(transaction, loan.id);
    if (agreed === null) throw new Refusal("conflict", "payment.not-accepted", { loan: loan.number });
    const openMinor = openMinorOf(agreed, payments);
    if (openMinor <= 0) throw new Refusal("conflict", "payment.nothing-open", { loan: loan.number });
    await transaction.payment.create({
      data: {
        id: newId(),
        loanId: loan.id,
        kind: "put off",
        amountMinor: BigInt(openMinor),
        currency: agreed.currency,
        day: toDate(until),
        reference: "",
        note: reason,
        accountId: viewer.accountId,
        enteredAt: now,
      },
    });
  },
);
