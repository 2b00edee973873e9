/** Drawing up and signing: what is frozen, who signs, what a change does, and what the database refuses. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type CurrentTerms, clausesAgreed, findTerms, readTerms } from "#lib/agreements/frozen-terms.ts";
import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { countersignAgreement, signAgreement } from "#lib/loans/commands/sign-agreement.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { getSignedFile } from "#lib/loans/queries/signed-file.ts";
import { findTermsNow } from "#lib/loans/queries/terms-now.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { giveMandate, revokeMandate } from "#lib/people/commands/mandates.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { withdrawConsent } from "#lib/provenance/commands.ts";
import { aMandate, aViewer } from "#tests/support/builders.ts";
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
  signAgreement(viewer, { agreementId, sha256, signerRole: "Signatory", strokes: "", electronic: true });
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

  test("takes languages and parameters, and keeps them until others are chosen", async () => {
    const { id: loanId } = await accepted();
    await drawUpAgreement(lending.registrar, {
      loanId,
      languages: ["de", "fr"],
      parameters: { recallDays: 45 },
    });
    await stage(loanId);
    await drawUpAgreement(lending.registrar, { loanId });
    const terms = (await getLoan(lending.registrar, loanId)).agreements.map((one) =>
      findTerms(one.terms ?? ""),
    );
    for (const one of terms) {
      expect(one).toMatchObject({ languages: ["de", "fr"], amends: null });
      expect(clausesAgreed(one as CurrentTerms, "fr").find(({ id }) => id === "recall")?.text).toContain(
        "45\u00A0jours",
      );
    }
    await drawUpAgreement(lending.registrar, { loanId, languages: ["en"], parameters: {} });
    expect(await findTermsNow(lending.registrar, loanId)).toMatchObject({ languages: ["en"] });
  });

  test.each([
    [
      "a parameter that no clause has",
      { parameters: { recallWeeks: 3 } },
      "clause.no-parameter",
      "parameters.recallWeeks",
    ],
    [
      "a fact of the loan",
      { parameters: { startsOn: "2027-01-01" } },
      "clause.no-parameter",
      "parameters.startsOn",
    ],
    [
      "a figure out of range",
      { parameters: { recallDays: 9_999 } },
      "clause.out-of-range",
      "parameters.recallDays",
    ],
    [
      "one language twice",
      { languages: ["en" as const, "en" as const] },
      "agreement.one-language-twice",
      "languages",
    ],
  ])("with %s is not drawn up", async (_what, said, message, path) => {
    const { id: loanId } = await accepted();
    await expect(drawUpAgreement(lending.registrar, { loanId, ...said })).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path, message }],
    });
  });

  test("after a signature is a numbered amendment that says what differs, and what was signed stays", async () => {
    const { id: loanId } = await accepted();
    await agree(lending, loanId);
    const [signed] = (await getLoan(lending.registrar, loanId)).agreements;
    await drawUpAgreement(lending.registrar, { loanId, parameters: { recallDays: 45 } });
    const [next, before] = (await getLoan(lending.registrar, loanId)).agreements;
    expect(before).toEqual(signed);
    expect(findTerms(next?.terms ?? "")).toMatchObject({
      amends: {
        number: 1,
        version: 1,
        sha256: signed?.sha256,
        differences: [{ path: ["parameter", "recallDays"], before: 30, after: 45 }],
      },
    });
    await expect(drawUpAgreement(lending.registrar, { loanId })).rejects.toMatchObject({
      reason: "agreement.unchanged",
    });
  });

  test("is seen before it is frozen by who may draw it up, and by nobody else", async () => {
    const { id: loanId } = await accepted();
    expect(await findTermsNow(lending.registrar, loanId)).toMatchObject({
      loan: { version: 1 },
      amends: null,
    });
    expect(await findTermsNow(lending.curator, loanId)).toBeNull();
    const { id: early } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    expect(await findTermsNow(lending.registrar, early)).toBeNull();
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

  test("needs a mandate that reaches the replacement cost", async () => {
    const { id: loanId } = await accepted();
    const { id, sha256 } = await drawUpAgreement(lending.registrar, { loanId });
    const nobody = aViewer("collection manager");
    await expect(sign(nobody, id, sha256)).rejects.toMatchObject({ reason: "mandate.none" });
    await aMandate(nobody, { limit: { minor: 1, currency: "EUR" } });
    await expect(sign(nobody, id, sha256)).rejects.toMatchObject({ reason: "mandate.cost-above" });
    await expect(
      giveMandate(nobody, {
        accountId: nobody.accountId,
        acts: ["sign agreements"],
        limit: null,
        validFrom: today(),
        validUntil: null,
        reference: "My own word",
      }),
    ).rejects.toMatchObject({ reason: "mandate.own" });
    const wider = await aMandate(nobody);
    await sign(nobody, id, sha256);
    const row = await database().signature.findFirstOrThrow({ where: { agreementId: id } });
    expect(row.mandateId).toBe(wider);
    await revokeMandate(lending.registrar, { mandateId: wider });
    expect((await database().mandate.findUniqueOrThrow({ where: { id: wider } })).revokedOn).not.toBeNull();
  });

  test("is drawn, or stands by a file that was signed elsewhere, kept with its hash", async () => {
    const { id: loanId } = await accepted();
    const { id, sha256 } = await drawUpAgreement(lending.registrar, { loanId });
    const shown = { agreementId: id, sha256, signerRole: "Head" };
    await signAgreement(lending.manager, { ...shown, strokes: "M1 1L9 9", electronic: true });
    const content = new TextEncoder().encode("%PDF-1.7 signed on paper");
    const paper = { ...shown, party: "borrower", signerName: "Dean of the faculty", content } as const;
    await expect(countersignAgreement(lending.manager, paper)).rejects.toMatchObject({ kind: "forbidden" });
    const { fileId } = await countersignAgreement(lending.registrar, paper);
    const loan = await getLoan(lending.borrowerRegistrar, loanId);
    expect(loan.state).toBe("agreed");
    expect(loan.agreements[0]?.signatures).toMatchObject([
      { party: "lender", method: "drawn", strokes: "M1 1L9 9", file: null },
      { party: "borrower", method: "countersigned", signerName: "Dean of the faculty", file: { id: fileId } },
    ]);
    const file = await getSignedFile(lending.borrowerRegistrar, loanId, fileId);
    expect(new Uint8Array(file.content)).toEqual(content);
    await expect(getSignedFile(lending.stranger, loanId, fileId)).rejects.toMatchObject({
      kind: "not-found",
    });
    const other = await accepted();
    await expect(getSignedFile(lending.registrar, other.id, fileId)).rejects.toMatchObject({
      kind: "not-found",
    });
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
