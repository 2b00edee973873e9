/**
 * What is paid against what a loan costs: money that came in, money that went back,
 * and a payment that the house has put off with a reason. The balance is whole minor
 * units of one currency, so nothing in it is ever rounded; below nothing is a sum that
 * the house owes back. Only the newest putting-off counts, and only up to its amount:
 * what has been agreed since then is asked for again.
 */
import { z } from "zod";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode, majorText, minorUnits } from "#lib/platform/money.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

export const paymentKinds = ["received", "paid back", "put off"] as const;
export type PaymentKind = (typeof paymentKinds)[number];

const most = 100_000_000_000;
const text = (longest: number) => z.string().trim().max(longest);

export const PaymentInput = z.object({
  loanId: Id,
  kind: z.enum(paymentKinds).exclude(["put off"]),
  /** In the currency of the quotation that was accepted. */
  amountMinor: minorUnits(most),
  paidOn: DateText,
  /** By which it is found again: the bank's line, the receipt. */
  reference: text(200).min(1, "payment.reference-missing"),
  note: text(2_000),
});
export type PaymentInput = z.infer<typeof PaymentInput>;

export const PutOffInput = z.object({
  loanId: Id,
  /** The day until which the house waits for the money. */
  until: DateText,
  reason: text(2_000).min(10, "payment.reason-short"),
});
export type PutOffInput = z.infer<typeof PutOffInput>;

export type PaymentEntry = { kind: PaymentKind; minor: number; currency: string; day: DateText };

/** What is agreed to be paid before dispatch, and how it stands. */
export type AgreedPayment = {
  /** Of the quotation that was accepted. */
  version: number;
  openMinor: number;
  currency: string;
  putOff: { by: string; until: DateText } | null;
};

const Sum = z.number().int().min(0).max(most);
const unit = "minor units";

export const paymentBalance = working({
  id: "payment-balance",
  title: "Balance of a loan's payments",
  about: "What is still open of what a loan costs, after what was paid and what was paid back.",
  input: z.object({
    owedMinor: Sum.meta({ title: "What is owed", unit }),
    currency: CurrencyCode.meta({ title: "Currency" }),
    payments: z
      .array(z.object({ kind: z.enum(["received", "paid back"]), minor: Sum }))
      .max(1_000)
      .meta({ title: "Payments" }),
  }),
  output: z.object({
    receivedMinor: z.number().int().meta({ title: "Received", unit }),
    paidBackMinor: z.number().int().meta({ title: "Paid back", unit }),
    openMinor: z.number().int().meta({ title: "Open", unit }),
  }),
  sources: [cite("derived")],
  cautions: [],
  compute({ owedMinor, currency, payments }, note) {
    const sumOf = (kind: string) =>
      payments.reduce((sum, one) => (one.kind === kind ? sum + one.minor : sum), 0);
    const receivedMinor = sumOf("received");
    const paidBackMinor = sumOf("paid back");
    const openMinor = owedMinor - receivedMinor + paidBackMinor;
    const [owed, received, back] = [owedMinor, receivedMinor, paidBackMinor].map((minor) =>
      majorText(minor, currency),
    );
    note("received", received ?? "", currency, "sum of what came in");
    note("paid back", back ?? "", currency, "sum of what went back");
    note("open", majorText(openMinor, currency), currency, `${owed} − ${received} + ${back}`);
    return { receivedMinor, paidBackMinor, openMinor };
  },
});

/** What the working is given: payments in another currency than the one owed do not count. */
export function balanceInput(
  owed: { minor: number; currency: string },
  payments: readonly PaymentEntry[],
): z.input<(typeof paymentBalance)["input"]> {
  const { minor: owedMinor, currency } = owed;
  return {
    owedMinor,
    currency,
    payments: payments.flatMap(({ kind, minor, currency: paidIn }) =>
      kind === "put off" || paidIn !== currency ? [] : [{ kind, minor }],
    ),
  };
}

export function openMinorOf(
  owed: { minor: number; currency: string },
  payments: readonly PaymentEntry[],
): number {
  return paymentBalance(balanceInput(owed, payments)).openMinor;
}

/**
 * The newest putting-off, where it is for all that is open and its day has not passed.
 * @param payments in the order of their entry
 */
export function putOffOf<Entry extends PaymentEntry>(
  open: { minor: number; currency: string },
  payments: readonly Entry[],
  today: DateText,
): Entry | null {
  const newest = payments.findLast(({ kind }) => kind === "put off");
  if (newest === undefined || newest.currency !== open.currency || newest.day < today) return null;
  return open.minor > 0 && open.minor <= newest.minor ? newest : null;
}

/** How what was agreed before dispatch stands on a day; null where nothing was agreed. */
export function agreedPayment(
  standing: {
    agreed: { version: number; minor: number; currency: string } | null;
    payments: readonly (PaymentEntry & { enteredBy: string })[];
  },
  today: DateText,
): AgreedPayment | null {
  const { agreed, payments } = standing;
  if (agreed === null) return null;
  const { version, currency } = agreed;
  const openMinor = openMinorOf(agreed, payments);
  const putOff = putOffOf({ minor: openMinor, currency }, payments, today);
  return { version, openMinor, currency, putOff: putOff && { by: putOff.enteredBy, until: putOff.day } };
}
