/** Payments through the commands, the gate of release that asks for them, and what the database refuses by itself. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { setFeeScale } from "#lib/costing/commands.ts";
import { listDue } from "#lib/desk/queries/due.ts";
import { answerQuotation, drawUpQuotation } from "#lib/loans/commands/costings.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { putOffPayment, recordPayment } from "#lib/loans/commands/payments.ts";
import { findMoney, listPaymentKeys } from "#lib/loans/queries/costings.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";
import { aFeeScale, someLines } from "#tests/support/money.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  await setFeeScale(lending.manager, { scale: aFeeScale(), validFrom: today() });
});
afterAll(() => setClock());

/** 550.00 and a quarter of it as tax. */
const totalMinor = 68_750;

async function quoted(loanId: string, isAccepted = true): Promise<void> {
  const { id, sha256 } = await drawUpQuotation(lending.registrar, {
    loanId,
    lines: someLines(),
    exchange: [],
    validUntil: addDays(today(), 30),
    note: "",
  });
  if (!isAccepted) return;
  const said = { costingId: id, sha256, outcome: "accepted", remark: "" } as const;
  await answerQuotation(lending.borrowerRegistrar, said);
}
const walked = async (step: "accepted" | "packed") =>
  (await walk(lending, [await aLendableSpecimen(lending)], step)).id;
const pay = (loanId: string, amountMinor: number, said: Partial<Parameters<typeof recordPayment>[1]> = {}) =>
  recordPayment(lending.registrar, {
    loanId,
    kind: "received",
    amountMinor,
    paidOn: today(),
    reference: `line ${amountMinor}`,
    note: "",
    ...said,
  });
const reason = "Their budget year begins in a fortnight.";
const paidGate = async (loanId: string) =>
  (await getLoan(lending.registrar, loanId)).gates.find(({ gate }) => gate === "paid");
const paid = async (loanId: string, viewer = lending.registrar) =>
  (await findMoney(viewer, loanId))?.payments.payments.map(({ kind, minor }) => [kind, minor]);

describe("a payment", () => {
  test("waits for a quotation that was accepted, also in the database", async () => {
    const loanId = await walked("accepted");
    await quoted(loanId, false);
    await expect(pay(loanId, 100)).rejects.toMatchObject({ reason: "payment.not-accepted" });
    const row = {
      id: newId(),
      loanId,
      kind: "received",
      amountMinor: 1n,
      currency: "EUR",
      day: new Date(),
      reference: "x",
      accountId: "a",
      enteredAt: new Date(),
    };
    await expect(database().payment.create({ data: row })).rejects.toThrow();
  });

  test("is entered once, on a day that has come, and goes back only as far as it came", async () => {
    const loanId = await walked("accepted");
    await quoted(loanId);
    await pay(loanId, 20_000);
    await expect(pay(loanId, 20_000)).rejects.toMatchObject({ reason: "payment.entered-already" });
    await expect(pay(loanId, 5, { paidOn: addDays(today(), 3) })).rejects.toMatchObject({
      issues: [{ path: "paidOn", message: "date.to-come" }],
    });
    await expect(pay(loanId, 0)).rejects.toMatchObject({ issues: [{ path: "amountMinor" }] });
    await expect(pay(loanId, 20_001, { kind: "paid back" })).rejects.toMatchObject({
      issues: [{ path: "amountMinor", message: "payment.back-too-much" }],
    });
    await pay(loanId, 20_000, { kind: "paid back" });
    expect(await paid(loanId)).toEqual([
      ["received", 20_000],
      ["paid back", 20_000],
    ]);
    expect(await paid(loanId, lending.borrowerRegistrar)).toHaveLength(2);
    expect(await findMoney(lending.lecturer, loanId)).toBeNull();
    await expect(findMoney(lending.stranger, loanId)).rejects.toMatchObject({ kind: "not-found" });
  });

  test("is audited and never changed", async () => {
    const loanId = await walked("accepted");
    await quoted(loanId);
    await pay(loanId, 700);
    const [key] = await listPaymentKeys(lending.registrar, loanId);
    const entries = await database().auditEntry.findMany({
      where: { tableName: "payment", rowKey: key ?? "" },
    });
    expect(entries).toMatchObject([{ act: "recordPayment", operation: "insert" }]);
    await expect(database().payment.updateMany({ data: { amountMinor: 1n } })).rejects.toThrow();
    await expect(database().payment.deleteMany({ where: { loanId } })).rejects.toThrow();
  });
});

describe("the gate of release", () => {
  test("asks for nothing where nothing was agreed", async () => {
    const loanId = await walked("packed");
    expect(await paidGate(loanId)).toMatchObject({ holds: true, facts: [{ code: "gate.nothing-to-pay" }] });
  });

  test("holds back until the last cent, and says so on the desk", async () => {
    const loanId = await walked("packed");
    await quoted(loanId);
    await pay(loanId, totalMinor - 1);
    expect(await paidGate(loanId)).toMatchObject({ holds: false, facts: [{ code: "gate.not-paid" }] });
    await expect(dispatchLoan(lending.registrar, { loanId })).rejects.toMatchObject({
      reason: "loan.gate-fails",
      parameters: { gate: "paid" },
    });
    const due = async () =>
      (await listDue(lending.registrar)).filter(
        ({ code, about }) => code === "due.payment-before-dispatch" && about.id === loanId,
      );
    expect(await due()).toHaveLength(1);
    await pay(loanId, 1);
    expect(await due()).toEqual([]);
    expect(await paidGate(loanId)).toMatchObject({ holds: true, facts: [{ code: "gate.paid" }] });
    await dispatchLoan(lending.registrar, { loanId });
  });

  test("lets go what the collection manager has put off with a reason", async () => {
    const loanId = await walked("packed");
    await quoted(loanId);
    const until = addDays(today(), 14);
    await expect(putOffPayment(lending.registrar, { loanId, until, reason })).rejects.toMatchObject({
      kind: "forbidden",
    });
    await expect(
      putOffPayment(lending.manager, { loanId, until: addDays(today(), -1), reason }),
    ).rejects.toMatchObject({ issues: [{ path: "until" }] });
    await putOffPayment(lending.manager, { loanId, until, reason });
    expect(await paidGate(loanId)).toMatchObject({
      holds: true,
      facts: [{ code: "gate.payment-put-off", parameters: { until } }],
    });
    await dispatchLoan(lending.registrar, { loanId });
    await expect(putOffPayment(lending.manager, { loanId, until, reason })).rejects.toMatchObject({
      reason: "loan.not-now",
    });
    await pay(loanId, totalMinor);
    expect(await paid(loanId)).toEqual([
      ["put off", totalMinor],
      ["received", totalMinor],
    ]);
  });

  test("puts off nothing where nothing is open", async () => {
    const loanId = await walked("accepted");
    await quoted(loanId);
    await pay(loanId, totalMinor);
    await expect(putOffPayment(lending.manager, { loanId, until: today(), reason })).rejects.toMatchObject({
      reason: "payment.nothing-open",
    });
  });
});
