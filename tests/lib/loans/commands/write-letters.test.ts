/** A loan from the request to the close, and every letter that it writes on its way. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { letterText } from "#app/_words/letter-text.ts";
import type { Parameters } from "#app/_words/sentences.ts";
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { openClaim, recordClaimEvent } from "#lib/loans/commands/claims.ts";
import { countReturn } from "#lib/loans/commands/receive-home.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { takeBackCover } from "#lib/loans/commands/record-cover.ts";
import { withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { warnOfCover } from "#lib/loans/commands/warn-of-cover.ts";
import { letterPlan } from "#lib/loans/letters.ts";
import { lineMoveRows } from "#lib/loans/transitions.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { now, setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, walk } from "#tests/support/loan-walk.ts";

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
    "letter.opened",
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

test("what comes home incomplete, and every step of its claim, is told", async () => {
  const specimen = await aLendableSpecimen(lending);
  const loan = await walk(lending, [specimen], "home");
  passHours(72);
  const counts = [{ specimenId: specimen.id, present: false, remark: "", missingComponents: [] }];
  await countReturn(lending.registrar, { loanId: loan.id, counts });
  const claim = await openClaim(lending.registrar, {
    loanId: loan.id,
    specimenId: specimen.id,
    note: "Not in its crate.",
  });
  await recordClaimEvent(lending.registrar, {
    claimId: claim.id,
    kind: "notified",
    amount: null,
    note: "By letter.",
  });
  const letters = await lettersAbout(loan.id);
  expect(codesOf(letters).slice(-2)).toEqual(["letter.missing-home", "letter.claim"]);
  expect(letters.filter(({ code }) => code === "letter.claim").length).toBeGreaterThan(2);
}, 120_000);

test("harm that a borrower records at a check is told to the house", async () => {
  const specimen = await aLendableSpecimen(lending);
  const loan = await walk(lending, [specimen], "at venue");
  await recordCheck(
    lending.borrowerRegistrar,
    aCheckOf(specimen.id, { loanId: loan.id, occasion: "incident" }),
  );
  const told = (await lettersAbout(loan.id)).filter(({ code }) => code === "letter.harm");
  expect(told.map(({ accountId }) => accountId)).toContain(lending.registrar.accountId);
  expect(told.map(({ accountId }) => accountId)).not.toContain(lending.borrowerRegistrar.accountId);
}, 120_000);

test("the end of a cover is announced 60, 30 and 7 days ahead, each once", async () => {
  const loan = await walk(lending, [await aLendableSpecimen(lending)], "agreed");
  const cover = await database().cover.findFirstOrThrow({
    where: { loanId: loan.id },
    orderBy: { endsAt: "desc" },
  });
  const toEnd = (days: number) =>
    Math.floor((cover.endsAt.getTime() - now().getTime()) / 3_600_000) - days * 24;
  const written = async () =>
    (await lettersAbout(loan.id)).filter(
      ({ code, accountId }) => code === "letter.cover-ends" && accountId === lending.registrar.accountId,
    ).length;
  passHours(toEnd(61));
  await warnOfCover();
  expect(await written()).toBe(0);
  for (const [index, days] of [59, 29, 6].entries()) {
    passHours(toEnd(days));
    await warnOfCover();
    await warnOfCover();
    expect(await written()).toBe(index + 1);
  }
}, 120_000);

/** What the database lets a line do, and who hears of it; what nobody hears of has its reason. */
const toldOf: Record<string, readonly string[] | string> = {
  requested: ["submitted"],
  accepted: ["decided"],
  declined: ["declined"],
  withdrawn: ["withdrawn", "cancelled"],
  packed: "packing is work inside the house; leaving it is told to everybody",
  "travelling out": ["dispatched"],
  "resting at venue": ["received"],
  "at venue": ["opened"],
  missing: ["harm", "missing-home"],
  "travelling home": ["sent-home"],
  "resting at home": ["received-home"],
  "checked in": ["checked-in"],
  closed: ["closed"],
};

test("every state that a line can reach is told, or says why it is not", () => {
  const reached = [...new Set(lineMoveRows.map(({ toState }) => toState as string))].sort();
  expect(Object.keys(toldOf).sort()).toEqual(reached);
  const known = Object.keys(letterPlan);
  for (const told of Object.values(toldOf))
    if (typeof told !== "string") for (const event of told) expect(known).toContain(event);
});

test("nobody is told of what they did themselves", async () => {
  const letters = await database().mail.findMany({ where: { code: "letter.submitted" } });
  expect(letters.length).toBeGreaterThan(0);
  expect(letters.map(({ accountId }) => accountId)).not.toContain(lending.lecturer.accountId);
});
