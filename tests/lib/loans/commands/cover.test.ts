/** Certificates: a wrong one is taken back before the specimens leave, and what is barred stops the agreement. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { recordCover, takeBackCover } from "#lib/loans/commands/record-cover.ts";
import { listCoversTakenBack } from "#lib/loans/queries/covers-taken-back.ts";
import { getLoan } from "#lib/loans/queries.ts";
import type { CoverInput } from "#lib/loans/schema.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { cover, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const record = (loanId: string, said: Partial<CoverInput> = {}) =>
  recordCover(lending.borrowerRegistrar, {
    loanId,
    insurer: "Mutual cover",
    policyNumber: "MC 4711",
    minor: 90_000_000,
    currency: "EUR",
    startsAt: `${addDays(today(), -1)}T00:00:00Z`,
    endsAt: `${addDays(today(), 400)}T00:00:00Z`,
    coversTransit: true,
    territories: ["NO"],
    ...said,
  });
const stepsOf = async (loanId: string) =>
  (await getLoan(lending.registrar, loanId)).nextSteps.map(({ code, parameters }) => [
    code,
    parameters.fact ?? parameters.gate ?? null,
  ]);
const accepted = async () => {
  const specimen = await aLendableSpecimen(lending);
  return { specimen, loanId: (await walk(lending, [specimen], "accepted")).id };
};

describe("an agreement", () => {
  test("is not drawn up while cover is barred, and may be while certificates are still to come", async () => {
    const { loanId } = await accepted();
    const wrong = await record(loanId, { minor: 100 });
    await expect(drawUpAgreement(lending.registrar, { loanId })).rejects.toMatchObject({
      reason: "agreement.barred",
      parameters: { fact: "cover.too-low", group: "cover" },
    });
    expect(await stepsOf(loanId)).toContainEqual(["next.barred", "cover.too-low"]);
    await takeBackCover(lending.borrowerRegistrar, { coverId: wrong });
    expect(await stepsOf(loanId)).toEqual([
      ["next.record-cover", null],
      ["next.draw-up", null],
    ]);
    await drawUpAgreement(lending.registrar, { loanId });
  });

  test("is drawn up beside cover that is still named as open", async () => {
    const { loanId } = await accepted();
    await record(loanId, { endsAt: `${addDays(today(), 100)}T00:00:00Z` });
    expect(await stepsOf(loanId)).toEqual([
      ["next.gate", "gate.cover-no-cover"],
      ["next.draw-up", null],
    ]);
    await record(loanId, { policyNumber: "MC 4712", startsAt: `${addDays(today(), 100)}T00:00:00Z` });
    expect(await stepsOf(loanId)).toEqual([["next.draw-up", null]]);
  });
});

describe("a certificate that was recorded wrongly", () => {
  test("is taken back by the registrars of both sides, and by nobody else", async () => {
    const { loanId } = await accepted();
    const [first, second] = [await record(loanId), await record(loanId, { policyNumber: "MC 4712" })];
    for (const viewer of [lending.lecturer, lending.curator, lending.manager])
      await expect(takeBackCover(viewer, { coverId: first })).rejects.toMatchObject({ kind: "forbidden" });
    const elsewhere = aViewer("borrower registrar", lending.stranger.institutionId);
    await expect(takeBackCover(elsewhere, { coverId: first })).rejects.toMatchObject({ kind: "not-found" });
    await takeBackCover(lending.registrar, { coverId: first });
    await takeBackCover(lending.borrowerRegistrar, { coverId: second });
    expect((await getLoan(lending.registrar, loanId)).covers).toEqual([]);
    await expect(takeBackCover(lending.registrar, { coverId: first })).rejects.toMatchObject({
      kind: "not-found",
    });
  });

  test("leaves its trace in the audit, and is found there as the loan's", async () => {
    const { loanId } = await accepted();
    const coverId = await record(loanId);
    await takeBackCover(lending.borrowerRegistrar, { coverId });
    expect(
      await database().auditEntry.findMany({
        where: { tableName: "cover", rowKey: coverId },
        orderBy: { id: "asc" },
        select: { act: true, operation: true, actor: true },
      }),
    ).toEqual([
      { act: "recordCover", operation: "insert", actor: lending.borrowerRegistrar.accountId },
      { act: "takeBackCover", operation: "delete", actor: lending.borrowerRegistrar.accountId },
    ]);
    expect(await listCoversTakenBack(lending.registrar, loanId)).toEqual([coverId]);
    await expect(listCoversTakenBack(lending.lecturer, loanId)).rejects.toMatchObject({ kind: "forbidden" });
  });

  test("stays in the terms that were signed, and opens the gate again", async () => {
    const { id: loanId } = await walk(lending, [await aLendableSpecimen(lending)], "packed");
    const { covers } = await getLoan(lending.registrar, loanId);
    await takeBackCover(lending.registrar, { coverId: covers?.[0]?.id ?? "" });
    const loan = await getLoan(lending.registrar, loanId);
    expect(loan.gates.find(({ gate }) => gate === "cover")?.holds).toBe(false);
    expect(loan.agreements[0]?.signatures).toHaveLength(2);
    await expect(dispatchLoan(lending.registrar, { loanId })).rejects.toMatchObject({
      parameters: { gate: "cover", fact: "gate.cover-no-cover" },
    });
    await cover(lending, loanId);
    await dispatchLoan(lending.registrar, { loanId });
  });

  test("is on record for good once the specimens have left", async () => {
    const { id: loanId } = await walk(lending, [await aLendableSpecimen(lending)], "out");
    const { covers } = await getLoan(lending.registrar, loanId);
    await expect(takeBackCover(lending.registrar, { coverId: covers?.[0]?.id ?? "" })).rejects.toMatchObject({
      reason: "loan.not-now",
    });
  });
});
