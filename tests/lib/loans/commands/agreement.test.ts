/** Drawing up and signing: what is frozen, who signs, what a change does, and what the database refuses. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { drawUpAgreement, signAgreement } from "#lib/loans/commands/agreement.ts";
import { removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { readTerms } from "#lib/loans/frozen-terms.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { withdrawConsent } from "#lib/provenance/commands.ts";
import { aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { agree, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const accepted = async (count = 1) => {
  const specimens = await Promise.all(Array.from({ length: count }, () => aLendableSpecimen(lending)));
  return { specimens, ...(await walk(lending, specimens, "accepted")) };
};
const sign = (viewer: Lending["registrar"], agreementId: string, sha256: string) =>
  signAgreement(viewer, { agreementId, sha256, signerRole: "Signatory" });
const stage = (loanId: string) =>
  planStage(lending.registrar, {
    loanId,
    direction: "out",
    carrier: "Gentle Freight",
    carrierEmail: "",
    through: [],
    vehicle: "",
    departsOn: addDays(today(), 80),
    arrivesOn: addDays(today(), 82),
  });

describe("a version", () => {
  test("freezes its terms as canonical text with their hash", async () => {
    const { id: loanId, specimens } = await accepted();
    const drawn = await drawUpAgreement(lending.registrar, { loanId });
    expect(drawn.version).toBe(1);
    const row = await database().agreement.findUniqueOrThrow({ where: { id: drawn.id } });
    expect(sha256Hex(row.terms)).toBe(drawn.sha256);
    expect(canonicalText(JSON.parse(row.terms))).toBe(row.terms);
    const [sheet] = (await getLoan(lending.registrar, loanId)).agreements;
    expect(readTerms(sheet?.terms ?? "").schedule).toMatchObject([
      { accessionNumber: specimens[0]?.accessionNumber, condition: { grade: "A" } },
    ]);
  });

  test("is not drawn up twice while nothing has changed", async () => {
    const { id: loanId } = await accepted();
    await drawUpAgreement(lending.registrar, { loanId });
    await expect(drawUpAgreement(lending.registrar, { loanId })).rejects.toMatchObject({
      reason: "agreement.unchanged",
      parameters: { version: 1 },
    });
  });

  test("after a change is a new one, and the signatures under the old one count no more", async () => {
    const { id: loanId } = await accepted(2);
    const old = await drawUpAgreement(lending.registrar, { loanId });
    await sign(lending.manager, old.id, old.sha256);
    await stage(loanId);
    const next = await drawUpAgreement(lending.registrar, { loanId });
    expect(next.version).toBe(2);
    await expect(sign(lending.borrowerRegistrar, old.id, old.sha256)).rejects.toMatchObject({
      reason: "agreement.superseded",
    });
    const loan = await getLoan(lending.registrar, loanId);
    expect(loan.state).toBe("accepted");
    expect(loan.gates.find(({ gate }) => gate === "signed")).toMatchObject({ holds: false });
    expect(loan.agreements.map(({ version, signatures }) => [version, signatures.length])).toEqual([
      [2, 0],
      [1, 1],
    ]);
  });

  test("that no longer names what goes out does not let it out", async () => {
    const { id: loanId, specimens } = await accepted(2);
    await agree(lending, loanId);
    await removeSpecimen(lending.registrar, { loanId, specimenId: specimens[1]?.id ?? "" });
    const signed = (await getLoan(lending.registrar, loanId)).gates.find(({ gate }) => gate === "signed");
    expect(signed).toMatchObject({
      holds: false,
      facts: [{ code: "gate.other-schedule", parameters: { numbers: specimens[1]?.accessionNumber } }],
    });
  });

  test("is the registrar's, after the decision", async () => {
    const { id: loanId } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    await expect(drawUpAgreement(lending.registrar, { loanId })).rejects.toMatchObject({
      reason: "loan.not-now",
    });
    await expect(drawUpAgreement(lending.curator, { loanId })).rejects.toMatchObject({ kind: "forbidden" });
  });
});

describe("a signature", () => {
  test("of both sides makes the loan agreed", async () => {
    const { id: loanId } = await accepted();
    const { id, sha256 } = await drawUpAgreement(lending.registrar, { loanId });
    expect(await sign(lending.manager, id, sha256)).toEqual({ party: "lender" });
    expect(await sign(lending.borrowerRegistrar, id, sha256)).toEqual({ party: "borrower" });
    expect(await getLoan(lending.lecturer, loanId)).toMatchObject({ state: "agreed" });
  });

  test("under other terms, twice, or by a stranger is refused", async () => {
    const { id: loanId } = await accepted();
    const { id, sha256 } = await drawUpAgreement(lending.registrar, { loanId });
    await expect(sign(lending.manager, id, "0".repeat(64))).rejects.toMatchObject({
      reason: "agreement.other-terms",
    });
    await expect(sign(lending.lecturer, id, sha256)).rejects.toMatchObject({ kind: "forbidden" });
    const elsewhere = aViewer("borrower registrar", lending.stranger.institutionId);
    await expect(sign(elsewhere, id, sha256)).rejects.toMatchObject({ kind: "not-found" });
    await sign(lending.manager, id, sha256);
    await expect(sign(lending.registrar, id, sha256)).rejects.toMatchObject({
      reason: "agreement.already-signed",
    });
  });

  test("of one account never stands for both sides", async () => {
    const { id: loanId } = await accepted();
    const { id, sha256 } = await drawUpAgreement(lending.registrar, { loanId });
    await sign(lending.manager, id, sha256);
    const sameAccount = { ...lending.borrowerRegistrar, accountId: lending.manager.accountId };
    await expect(sign(sameAccount, id, sha256)).rejects.toMatchObject({ reason: "agreement.same-signer" });
  });

  test("waits while consent has been withdrawn", async () => {
    const { id: loanId, specimens } = await accepted();
    const { id, sha256 } = await drawUpAgreement(lending.registrar, { loanId });
    const { donorCode } = await database().specimenDonor.findFirstOrThrow({
      where: { specimenId: specimens[0]?.id ?? "" },
    });
    await withdrawConsent(lending.donorOfficer, { donorCode, receivedOn: today(), effectiveOn: today() });
    await expect(sign(lending.manager, id, sha256)).rejects.toMatchObject({ reason: "agreement.barred" });
  });
});

describe("the database", () => {
  test("refuses a changed version, and a signature under another hash or under an older version", async () => {
    const { id: loanId } = await accepted();
    const old = await drawUpAgreement(lending.registrar, { loanId });
    const asProgram = (work: Parameters<typeof inTransaction<unknown>>[2]) =>
      inTransaction(programViewer, "test", work);
    await expect(
      asProgram((transaction) =>
        transaction.agreement.update({ where: { id: old.id }, data: { terms: "{}" } }),
      ),
    ).rejects.toThrow();
    const signature = {
      id: "01920000-0000-7000-8000-0000000000aa",
      agreementId: old.id,
      party: "lender",
      signerName: "x",
      signerRole: "x",
      accountId: "x",
      signedAt: new Date(),
      sha256: "0".repeat(64),
    };
    await expect(
      asProgram((transaction) => transaction.signature.create({ data: signature })),
    ).rejects.toMatchObject({ reason: "agreement.other-terms" });
    await stage(loanId);
    await drawUpAgreement(lending.registrar, { loanId });
    await expect(
      asProgram((transaction) =>
        transaction.signature.create({ data: { ...signature, sha256: old.sha256 } }),
      ),
    ).rejects.toMatchObject({ reason: "agreement.superseded" });
  });
});
