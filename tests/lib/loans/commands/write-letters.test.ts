/** A loan from the request to the close, and every letter that it writes on its way. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { letterText } from "#app/_words/letter-text.ts";
import type { Parameters } from "#app/_words/sentences.ts";
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { takeBackCover } from "#lib/loans/commands/record-cover.ts";
import { withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;

/** Whoever has no account yet gets one, so that there is somebody to write to. */
async function keepAccountOf(viewer: Viewer): Promise<void> {
  const { accountId: id, email, name, roles, institutionId } = viewer;
  await inWork(async ({ transaction }) => {
    await transaction.authUser.upsert({
      where: { id },
      create: { id, email, name, emailVerified: true },
      update: {},
    });
    await transaction.account.upsert({
      where: { id },
      create: { id, email, name, roles: [...roles], institutionId },
      update: {},
    });
  });
}

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  const { registrar, curator, donorOfficer, lecturer, borrowerRegistrar, stranger } = lending;
  for (const viewer of [registrar, curator, donorOfficer, lecturer, borrowerRegistrar, stranger])
    await keepAccountOf(viewer);
}, 60_000);
afterAll(() => setClock());

const lettersAbout = async (loanId: string) =>
  await database().mail.findMany({ where: { about: `loan/${loanId}` }, orderBy: { id: "asc" } });
/** The letters in order, each once for its addressees. */
const codesOf = (letters: Awaited<ReturnType<typeof lettersAbout>>) =>
  letters.map(({ code }) => code).filter((code, index, all) => code !== all[index - 1]);

test("each step tells those whom it concerns, and nobody of anything of a donor", async () => {
  const specimen = await aLendableSpecimen(lending, { sex: "female", ageBand: "80 to 89" });
  const loan = await walk(lending, [specimen], "counted");
  await recordCheck(lending.curator, aCheckOf(specimen.id, { loanId: loan.id, occasion: "home" }));
  await checkIn(lending.curator, {
    loanId: loan.id,
    specimenId: specimen.id,
    verdict: "no change",
    remark: "",
  });
  await closeLoan(lending.registrar, { loanId: loan.id });

  const letters = await lettersAbout(loan.id);
  expect(codesOf(letters)).toEqual([
    "letter.submitted",
    "letter.decided",
    "letter.agreement",
    "letter.agreement-to-sign",
    "letter.signed",
    "letter.dispatched",
    "letter.received",
    "letter.sent-home",
    "letter.received-home",
    "letter.checked-in",
    "letter.closed",
  ]);
  const donors = await database().donor.findMany({ select: { code: true } });
  expect(donors.length).toBeGreaterThan(0);
  for (const { code, parameters } of letters) {
    const { subject, text } = letterText(code, parameters as Parameters, "https://loans.example/loans/1");
    const said = `${JSON.stringify(parameters)} ${subject} ${text}`;
    for (const donor of donors) expect(said).not.toContain(donor.code);
    expect(said).not.toContain(specimen.accessionNumber);
    expect(said).not.toMatch(/female|80 to 89|consent|undefined/i);
  }
  const addresses = new Set(letters.map(({ address }) => address));
  expect(addresses).not.toContain(lending.stranger.email);
  expect(addresses).toContain(lending.borrowerRegistrar.email);
}, 120_000);

test("a cover that is taken back and a request that is called off are told", async () => {
  const specimen = await aLendableSpecimen(lending);
  const loan = await walk(lending, [specimen], "agreed");
  const cover = await database().cover.findFirstOrThrow({ where: { loanId: loan.id } });
  await takeBackCover(lending.borrowerRegistrar, { coverId: cover.id });
  await withdrawRequest(lending.lecturer, { loanId: loan.id });
  expect(codesOf(await lettersAbout(loan.id)).slice(-2)).toEqual([
    "letter.cover-taken-back",
    "letter.cancelled",
  ]);
  const asked = await walk(lending, [await aLendableSpecimen(lending)], "requested");
  await withdrawRequest(lending.lecturer, { loanId: asked.id });
  expect(codesOf(await lettersAbout(asked.id)).at(-1)).toBe("letter.withdrawn");
}, 120_000);

test("nobody is told of what they did themselves", async () => {
  const letters = await database().mail.findMany({ where: { code: "letter.submitted" } });
  expect(letters.length).toBeGreaterThan(0);
  expect(letters.map(({ accountId }) => accountId)).not.toContain(lending.lecturer.accountId);
});
