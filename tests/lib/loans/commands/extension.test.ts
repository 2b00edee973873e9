/** A longer loan, asked for and answered: judged anew, kept in the calendar, covered or asked for. */
import { beforeAll, beforeEach, expect, test } from "vitest";
import { answerExtension, askExtension } from "#lib/loans/commands/extension.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDateText } from "#lib/platform/dates.ts";
import { withdrawConsent } from "#lib/provenance/commands.ts";
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { cover, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
beforeEach(startClock);

const grounds = "The course runs a second time.";
const grant = { outcome: "granted", answer: "", coverAskedFor: false } as const;

async function aLoanAtVenue() {
  const specimen = await aLendableSpecimen(lending);
  const { id: loanId } = await walk(lending, [specimen], "at venue");
  const { endsOn } = (await getLoan(lending.registrar, loanId)).request;
  return { loanId, specimen, endsOn };
}
async function asked(days: number) {
  const loan = await aLoanAtVenue();
  const extensionId = await askExtension(lending.lecturer, {
    loanId: loan.loanId,
    endsOn: addDays(loan.endsOn, days),
    grounds,
  });
  return { ...loan, extensionId, longer: addDays(loan.endsOn, days) };
}

test("granted, the loan is longer, its days are kept, and the agreement wants an amendment", async () => {
  const { loanId, extensionId, specimen, longer } = await asked(28);
  expect((await getLoan(lending.registrar, loanId)).nextSteps.map(({ code }) => code)).toContain(
    "next.answer-extension",
  );
  await answerExtension(lending.registrar, { extensionId, ...grant });
  const loan = await getLoan(lending.registrar, loanId);
  expect(loan.request.endsOn).toBe(longer);
  expect(loan.time.extensions).toMatchObject([{ outcome: "granted", endsOn: longer }]);
  expect(loan.nextSteps.map(({ code }) => code)).toContain("next.amend-days");
  expect(loan.latestRun?.occasion).toBe("extension");
  const booking = await database().booking.findFirstOrThrow({
    where: { specimenId: specimen.id, releasedAt: null },
  });
  expect(toDateText(booking.endsOn) >= longer).toBe(true);
});

test("days that somebody else has refuse it, and nothing is changed", async () => {
  const { loanId, extensionId, specimen, endsOn } = await asked(60);
  await bookSpecimen(lending.curator, {
    specimenId: specimen.id,
    startsOn: addDays(endsOn, 40),
    endsOn: addDays(endsOn, 80),
    purpose: "teaching in the house",
  });
  await expect(answerExtension(lending.registrar, { extensionId, ...grant })).rejects.toMatchObject({
    kind: "conflict",
  });
  const loan = await getLoan(lending.registrar, loanId);
  expect(loan.request.endsOn).toBe(endsOn);
  expect(loan.time.reasons.some(({ outcome }) => outcome === "bar")).toBe(true);
  await answerExtension(lending.registrar, {
    extensionId,
    outcome: "refused",
    answer: "Promised to a course in the house.",
    coverAskedFor: false,
  });
  expect((await getLoan(lending.lecturer, loanId)).time.extensions).toMatchObject([
    { outcome: "refused", answer: "Promised to a course in the house." },
  ]);
});

test("cover that ends first refuses it until longer cover is asked for", async () => {
  const { extensionId, loanId } = await asked(400);
  await expect(answerExtension(lending.registrar, { extensionId, ...grant })).rejects.toMatchObject({
    reason: "extension.cover-ends",
  });
  const reasons = await answerExtension(lending.registrar, { extensionId, ...grant, coverAskedFor: true });
  expect(reasons.map(({ code }) => code)).toContain("extension.cover-ends");
  await cover(lending, loanId, {
    startsAt: `${today()}T00:00:00Z`,
    endsAt: `${addDays(today(), 900)}T00:00:00Z`,
  });
});

test("consent that was withdrawn since refuses it", async () => {
  const { extensionId, specimen } = await asked(28);
  const { donorCode } = await database().specimenDonor.findFirstOrThrow({
    where: { specimenId: specimen.id },
  });
  await withdrawConsent(lending.donorOfficer, {
    donorCode,
    receivedOn: today(),
    effectiveOn: today(),
  } as Parameters<typeof withdrawConsent>[1]);
  await expect(answerExtension(lending.registrar, { extensionId, ...grant })).rejects.toMatchObject({
    reason: "extension.barred",
  });
});

test("it is asked for once, longer than before, by who borrows, and answered once with grounds", async () => {
  const { loanId, extensionId, endsOn, longer } = await asked(28);
  await expect(
    askExtension(lending.borrowerRegistrar, { loanId, endsOn: addDays(longer, 5), grounds }),
  ).rejects.toMatchObject({ reason: "extension.asked-already" });
  await expect(askExtension(lending.stranger, { loanId, endsOn: longer, grounds })).rejects.toMatchObject({
    kind: "not-found",
  });
  const refuse = { extensionId, outcome: "refused", coverAskedFor: false } as const;
  await expect(answerExtension(lending.registrar, { ...refuse, answer: "no" })).rejects.toMatchObject({
    issues: [{ path: "answer", message: "extension.say-why" }],
  });
  await answerExtension(lending.registrar, { ...refuse, answer: "The specimen has to rest." });
  await expect(answerExtension(lending.registrar, { extensionId, ...grant })).rejects.toMatchObject({
    reason: "extension.answered-already",
  });
  await expect(askExtension(lending.lecturer, { loanId, endsOn, grounds })).rejects.toMatchObject({
    issues: [{ path: "endsOn", message: "extension.not-longer" }],
  });
});
