/** The balance of what was paid, and what a putting-off is good for. */
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  openMinorOf,
  type PaymentEntry,
  PaymentInput,
  PutOffInput,
  paymentBalance,
  putOffOf,
} from "#lib/costing/payments.ts";
import { newId } from "#lib/platform/identity.ts";

const entry = (
  kind: PaymentEntry["kind"],
  minor: number,
  said: Partial<PaymentEntry> = {},
): PaymentEntry => ({
  kind,
  minor,
  currency: "EUR",
  day: "2027-03-01",
  ...said,
});
const owed = { minor: 470_643, currency: "EUR" };

test("a worked example is settled to the cent", () => {
  // 4 706.43 − (2 000.00 + 2 800.00) + 93.57 = 0.00
  const { output, steps } = paymentBalance.explain({
    owedMinor: 470_643,
    currency: "EUR",
    payments: [
      { kind: "received", minor: 200_000 },
      { kind: "received", minor: 280_000 },
      { kind: "paid back", minor: 9_357 },
    ],
  });
  expect(output).toEqual({ receivedMinor: 480_000, paidBackMinor: 9_357, openMinor: 0 });
  expect(steps.at(-1)).toMatchObject({ value: "0.00", formula: "4706.43 − 4800.00 + 93.57" });
});

test("more than is owed is owed back, and another currency or a promise pays nothing", () => {
  expect(openMinorOf(owed, [entry("received", 500_000)])).toBe(-29_357);
  expect(
    openMinorOf(owed, [entry("received", 500_000, { currency: "NOK" }), entry("put off", 470_643)]),
  ).toBe(470_643);
});

test("the balance is exact whatever the order of the entries", () => {
  const some = fc.array(
    fc.record({ kind: fc.constantFrom("received" as const, "paid back" as const), minor: fc.nat(1e9) }),
    { maxLength: 40 },
  );
  fc.assert(
    fc.property(some, fc.nat(1e9), (payments, minor) => {
      const entries = payments.map(({ kind, minor: paid }) => entry(kind, paid));
      const exact = payments.reduce(
        (open, { kind, minor: paid }) => (kind === "received" ? open - BigInt(paid) : open + BigInt(paid)),
        BigInt(minor),
      );
      expect(BigInt(openMinorOf({ minor, currency: "EUR" }, entries))).toBe(exact);
      expect(openMinorOf({ minor, currency: "EUR" }, entries.toReversed())).toBe(Number(exact));
    }),
  );
});

const off = entry("put off", 1_000, { day: "2027-04-01" });
test.each([
  ["what was open then, until its last day", { minor: 1_000, currency: "EUR" }, [off], "2027-04-01", true],
  ["less than was open then", { minor: 1, currency: "EUR" }, [off], "2027-03-01", true],
  ["more than was open then", { minor: 1_001, currency: "EUR" }, [off], "2027-03-01", false],
  ["a day after its last", { minor: 1_000, currency: "EUR" }, [off], "2027-04-02", false],
  ["nothing that is open", { minor: 0, currency: "EUR" }, [off], "2027-03-01", false],
  ["another currency", { minor: 1_000, currency: "NOK" }, [off], "2027-03-01", false],
  [
    "what a newer one does not cover",
    { minor: 1_000, currency: "EUR" },
    [off, entry("put off", 10, { day: "2027-05-01" })],
    "2027-03-01",
    false,
  ],
])("a putting-off is asked of %s", (_what, open, payments, today, holds) => {
  expect(putOffOf(open, payments, today) !== null).toBe(holds);
});

const payment = {
  loanId: newId(),
  kind: "received",
  amountMinor: 1,
  paidOn: "2027-03-01",
  reference: "line 1",
  note: "",
} as const;
test.each([
  ["nothing", { amountMinor: 0 }],
  ["less than nothing", { amountMinor: -5 }],
  ["a fraction of a cent", { amountMinor: 1.5 }],
  ["no number", { amountMinor: Number.NaN }],
  ["no reference", { reference: " " }],
  ["a putting-off as a payment", { kind: "put off" }],
])("%s is no payment", (_what, said) => {
  expect(PaymentInput.safeParse(payment).success).toBe(true);
  expect(PaymentInput.safeParse({ ...payment, ...said }).success).toBe(false);
});

test("nothing is put off without a reason", () => {
  const said = { loanId: newId(), until: "2027-04-01" };
  expect(PutOffInput.safeParse({ ...said, reason: "short" }).success).toBe(false);
  expect(PutOffInput.safeParse({ ...said, reason: "Their year ends in June." }).success).toBe(true);
});
