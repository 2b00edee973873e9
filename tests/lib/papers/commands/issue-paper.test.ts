/** Issuing: who may, what for, what is frozen, which version, and what anyone learns by the code. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { signAgreement } from "#lib/loans/commands/sign-agreement.ts";
import { agreementCode } from "#lib/papers/check-address.ts";
import { issuePaper } from "#lib/papers/commands/issue-paper.ts";
import { paintIssuedPaper } from "#lib/papers/issued-paper.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import type { PaperKind } from "#lib/papers/paper-kinds.ts";
import { checkPaper, getPaper, papersOfLoan } from "#lib/papers/queries/loan-papers.ts";
import { programViewer, type Viewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { sha256Hex } from "#lib/platform/hash.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, type Walked, walk } from "#tests/support/loan-walk.ts";

const secret = "a secret of this test, long enough";
let lending: Lending;
let loan: Walked;

async function subjectsOf(kind: PaperKind, viewer: Viewer = lending.registrar): Promise<string[]> {
  const { issuable } = await papersOfLoan(viewer, loan.id);
  return issuable.find((one) => one.kind === kind)?.subjects.map(({ subject }) => subject) ?? [];
}
const issue = async (kind: PaperKind, viewer: Viewer = lending.registrar) =>
  await issuePaper(viewer, {
    loanId: loan.id,
    kind,
    subjects: await subjectsOf(kind),
    language: "en",
  });
const codeOf = async (id: string) => (await database().issuedPaper.findUniqueOrThrow({ where: { id } })).code;

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  const specimens = [
    await aLendableSpecimen(lending, { title: "Heart" }),
    await aLendableSpecimen(lending, { title: "Liver" }),
  ];
  loan = await walk(lending, specimens, "packed");
});
afterAll(() => setClock());

describe("a paper that is issued", () => {
  test("is frozen with its hash, a version and a code of its own", async () => {
    const issued = await issue("packing list");
    expect(issued.length).toBeGreaterThan(0);
    const rows = await database().issuedPaper.findMany({ where: { loanId: loan.id, kind: "packing list" } });
    expect(rows).toHaveLength(issued.length);
    for (const row of rows) {
      expect(row.version).toBe(1);
      expect(row.sha256).toBe(sha256Hex(row.content));
      expect(row.code).toMatch(/^[a-z2-7]{26}$/);
      expect(row.issuedBy).toBe(lending.registrar.name);
    }
    expect(new Set(rows.map(({ code }) => code)).size).toBe(rows.length);
    expect(rows.map(({ content }) => content).join()).not.toMatch(/D-[0-9A-Z]{5}|minor|donor|1200000/);
  });

  test("is not issued again while it would say the same", async () => {
    passHours(1);
    await expect(issue("packing list")).rejects.toMatchObject({ reason: "paper.unchanged" });
  });

  test("becomes a new version when a record changes, and the old one says so", async () => {
    const [first] = await issue("outgoing receipt");
    await inTransaction(programViewer, "stateRequest", async (transaction) => {
      await transaction.loan.update({ where: { id: loan.id }, data: { title: "Spring course" } });
    });
    passHours(1);
    const [second] = await issue("outgoing receipt");
    expect([first?.version, second?.version]).toEqual([1, 2]);
    expect(await checkPaper(await codeOf(first?.id ?? ""), secret)).toMatchObject({
      version: 1,
      holds: false,
    });
    expect(await checkPaper(await codeOf(second?.id ?? ""), secret)).toMatchObject({
      version: 2,
      holds: true,
    });
    const { papers } = await papersOfLoan(lending.registrar, loan.id);
    expect(
      papers
        .filter(({ kind }) => kind === "outgoing receipt")
        .map(({ version, isNewest }) => [version, isNewest]),
    ).toEqual([
      [2, true],
      [1, false],
    ]);
  });

  test("is never changed and never taken away", async () => {
    const { id } = await database().issuedPaper.findFirstOrThrow({ where: { loanId: loan.id } });
    for (const change of ["UPDATE issued_paper SET issued_by = 'Somebody'", "DELETE FROM issued_paper"])
      await expect(
        inTransaction(programViewer, "issuePaper", (transaction) =>
          transaction.$executeRawUnsafe(`${change} WHERE id = '${id}'`),
        ),
      ).rejects.toThrow();
    const row = await database().issuedPaper.findUniqueOrThrow({ where: { id } });
    expect(row.issuedBy).toBe(lending.registrar.name);
  });

  test("is printed for both sides and for nobody else", async () => {
    const [issued] = await issue("crate label", lending.curator);
    const id = issued?.id ?? "";
    for (const viewer of [lending.registrar, lending.conservator, lending.lecturer]) {
      const { paper, lender, pictures, fileName } = await getPaper(viewer, loan.id, id);
      expect(fileName).toMatch(/-crate-label-1\.pdf$/);
      const pdf = await paintIssuedPaper(
        { ...paper, checkAddress: "https://lending.example.org" },
        "letter",
        { lender, pictures },
      );
      expect(Buffer.from(pdf).subarray(0, 5).toString()).toBe("%PDF-");
    }
    await expect(getPaper(lending.stranger, loan.id, id)).rejects.toMatchObject({ kind: "not-found" });
    await expect(getPaper(lending.registrar, loan.id, "nothing")).rejects.toMatchObject({
      kind: "not-found",
    });
    const elsewhere = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    await expect(getPaper(lending.registrar, elsewhere.id, id)).rejects.toMatchObject({ kind: "not-found" });
  });
});

describe("refused", () => {
  test("what is not planned", async () => {
    expect(await subjectsOf("incoming receipt")).toEqual([]);
    await expect(
      issuePaper(lending.registrar, {
        loanId: loan.id,
        kind: "incoming receipt",
        subjects: ["home"],
        language: "en",
      }),
    ).rejects.toMatchObject({ reason: "paper.not-now" });
  });

  test("a dispatch note from a curator, who issues what lies in and on crates only", async () => {
    await expect(issue("dispatch note", lending.curator)).rejects.toMatchObject({ kind: "forbidden" });
    expect(await subjectsOf("dispatch note", lending.curator)).toEqual([]);
    expect((await subjectsOf("packing list", lending.curator)).length).toBeGreaterThan(0);
    expect((await papersOfLoan(lending.lecturer, loan.id)).issuable).toEqual([]);
  });
});

describe("by its code anyone learns", () => {
  test("kind, number, version, language, date and hash, what holds beside it or instead, and nothing else", async () => {
    const [issued] = await issue("dispatch note");
    const checked = await checkPaper(await codeOf(issued?.id ?? ""), secret);
    expect(Object.keys(checked ?? {}).sort()).toEqual([
      "holds",
      "isSigned",
      "issuedAt",
      "kind",
      "languages",
      "loanNumber",
      "others",
      "sha256",
      "version",
    ]);
    expect(checked).toMatchObject({ kind: "dispatch note", loanNumber: loan.number, holds: true });
  });

  test("of an agreement the same, and whether both have signed it or another since", async () => {
    const agreements = await database().agreement.findMany({
      where: { loanId: loan.id },
      orderBy: { version: "asc" },
    });
    const [first] = agreements;
    const code = agreementCode(first?.id ?? "", secret);
    expect(await checkPaper(code, secret)).toMatchObject({
      kind: "agreement",
      version: 1,
      languages: ["en"],
      holds: true,
      isSigned: true,
      others: [],
    });
    // A draft takes nothing from what both have signed; once both have signed it, it does.
    const draft = await drawUpAgreement(lending.registrar, { loanId: loan.id });
    expect(await checkPaper(code, secret)).toMatchObject({ version: 1, holds: true, others: [] });
    const draftCode = agreementCode(draft.id, secret);
    expect(await checkPaper(draftCode, secret)).toMatchObject({ version: 2, holds: true, isSigned: false });
    for (const viewer of [lending.registrar, lending.borrowerRegistrar])
      await signAgreement(viewer, {
        agreementId: draft.id,
        sha256: draft.sha256,
        signerRole: "Registrar",
        strokes: "",
        electronic: true,
      });
    expect(await checkPaper(draftCode, secret)).toMatchObject({ holds: true, isSigned: true });
    expect(await checkPaper(code, secret)).toMatchObject({
      version: 1,
      holds: false,
      others: [{ version: 2, languages: ["en"] }],
    });
  });

  test("nothing by a code that no paper bears", async () => {
    for (const code of [
      "",
      "a".repeat(26),
      "a".repeat(44),
      "' OR 1=1 --",
      "%00",
      "__proto__",
      "A".repeat(26),
    ])
      expect(await checkPaper(code, secret)).toBeNull();
  });
});

describe("the language of a paper", () => {
  const languagesOf = async (kind: PaperKind) =>
    (await papersOfLoan(lending.registrar, loan.id)).papers
      .filter((paper) => paper.kind === kind && paper.isNewest)
      .map(({ language }) => language);
  const speak = async (languages: string[]) => {
    await inTransaction(programViewer, "stateRequest", async (transaction) => {
      const { borrowerId } = await transaction.loan.findUniqueOrThrow({ where: { id: loan.id } });
      await transaction.institution.update({ where: { id: borrowerId }, data: { languages } });
    });
  };
  const issueIn = async (language?: PaperLanguage) =>
    await issuePaper(lending.registrar, {
      loanId: loan.id,
      kind: "outgoing receipt",
      subjects: await subjectsOf("outgoing receipt"),
      language,
    });

  test("is the borrower's first one that papers speak, and the borrower's come first in the choice", async () => {
    await inTransaction(programViewer, "stateRequest", async (transaction) => {
      await transaction.loan.update({ where: { id: loan.id }, data: { title: "Summer course" } });
    });
    await speak(["nl", "fr-BE", "de"]);
    expect((await papersOfLoan(lending.registrar, loan.id)).languages).toEqual(["fr", "de", "en"]);
    await issueIn();
    expect(new Set(await languagesOf("outgoing receipt"))).toEqual(new Set(["fr"]));
  });

  test("is English where papers speak none of the borrower's", async () => {
    await speak(["nl"]);
    expect((await papersOfLoan(lending.registrar, loan.id)).languages).toEqual(["en", "de", "fr"]);
    await issueIn();
    expect(new Set(await languagesOf("outgoing receipt"))).toEqual(new Set(["fr", "en"]));
  });

  test("stands beside the same in another language, and is not issued twice", async () => {
    await issueIn("de");
    expect(new Set(await languagesOf("outgoing receipt"))).toEqual(new Set(["fr", "en", "de"]));
    await expect(issueIn("fr")).rejects.toMatchObject({ reason: "paper.unchanged" });
    const rows = await database().issuedPaper.findMany({
      where: { loanId: loan.id, kind: "outgoing receipt" },
      orderBy: { version: "desc" },
      take: 3,
    });
    for (const { code } of rows) {
      const checked = await checkPaper(code, secret);
      expect(checked).toMatchObject({ holds: true, isSigned: null });
      // each names its own language, and the other two beside it
      expect(checked?.languages).toHaveLength(1);
      expect(
        [
          ...(checked?.languages ?? []),
          ...(checked?.others.flatMap(({ languages }) => languages) ?? []),
        ].sort(),
      ).toEqual(["de", "en", "fr"]);
    }
  });
});
