/** Words of what was paid against what a loan costs, in English. */
import type { PaymentKind } from "#lib/costing/payments.ts";

export const paymentWords = {
  title: "Payments",
  caption: "What was paid, in the order of entry",
  none: "No payment is entered.",
  kinds: {
    received: "received",
    "paid back": "paid back",
    "put off": "put off",
  } satisfies Record<PaymentKind, string>,
  kind: "What",
  day: "Day",
  until: (day: string) => `until ${day}`,
  amount: "Amount",
  reference: "Reference",
  note: "Note",
  enteredBy: "Entered by",
  owed: {
    quotation: (version: number) => `Owed by the quotation, version ${version}`,
    "cost statement": (version: number) => `Owed by the cost statement, version ${version}`,
    cancellation: "Owed for the cancellation",
  },
  received: "Received",
  paidBack: "Paid back",
  open: "Open",
  owedBack: (amount: string) => `${amount} to be paid back`,
  settled: "settled",
  waits: "Dispatch waits for it; the way home never does.",
  putOffUntil: (day: string, by: string) => `Put off until ${day} by ${by}.`,
  working: "Balance",
  record: "Record a payment",
  choose: "choose",
  inCurrency: (currency: string) => `In ${currency}, the currency of the quotation.`,
  paidOn: "Paid on",
  referenceHint: "By which it is found again, such as the bank's line.",
  recorded: "The payment is entered. An entry is never changed: what went back is an entry of its own.",
  putOff: "Release against what is open",
  putOffAbout:
    "The agreement lets the lender hold dispatch back, and so also let it go. The reason, the day and your name stay in the file.",
  putOffDay: "Put off until",
  reason: "Reason",
  reasonHint: "At least ten characters.",
  isPutOff: "Put off. What is agreed later is asked for again.",
  refusals: {
    "payment.reference-missing": "Write the reference by which the payment is found again.",
    "payment.reason-short": "Say the reason in at least ten characters; it stands in the file.",
    "payment.until-past": "This day is past.",
    "payment.not-accepted":
      "No quotation of this loan was accepted: there is nothing that a payment could count against.",
    "payment.other-currency": "Payments count in the currency of the quotation that was accepted.",
    "payment.entered-already":
      "This payment is entered already: the same day, amount and reference {reference}.",
    "payment.back-too-much": "More goes back than came in.",
    "payment.nothing-open": "Nothing is open on {loan}: there is nothing to put off.",
  },
} as const;
