/** Asking specimens back: on which ground, by whom, with what notice; the way home stays open. */
import { beforeAll, beforeEach, expect, test } from "vitest";
import { listDue } from "#lib/desk/queries/due.ts";
import { recallLoan } from "#lib/loans/commands/recall.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { getLoan } from "#lib/loans/queries.ts";
import type { RecallInput } from "#lib/loans/time-inputs.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { withdrawConsent } from "#lib/provenance/commands.ts";
import { aCentre } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { newSeals, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
beforeEach(startClock);

async function atVenue() {
  const [one, other] = [await aLendableSpecimen(lending), await aLendableSpecimen(lending)];
  const { id: loanId } = await walk(lending, [one, other], "at venue");
  const recall = (said: Partial<RecallInput> = {}): RecallInput => ({
    loanId,
    specimenIds: [one.id],
    ground: "conditions broken",
    text: "Please send it home; the case was opened.",
    stopUse: true,
    returnBy: addDays(today(), 7),
    ...said,
  });
  return { loanId, one, other, recall };
}
const codes = async (loanId: string) =>
  (await getLoan(lending.registrar, loanId)).nextSteps.map(({ code }) => code);

test("what is asked back is due for both sides until it is on its way home", async () => {
  const { loanId, one, recall } = await atVenue();
  await recallLoan(lending.registrar, recall());
  expect(await codes(loanId)).toContain("next.recalled");
  const dueOf = async () =>
    (await listDue(lending.registrar)).filter(({ about }) => about.id === loanId).map(({ code }) => code);
  expect(await dueOf()).toContain("due.stop-use");
  await sendHome(lending.lecturer, {
    loanId,
    specimenIds: [one.id],
    seals: await newSeals(lending, loanId),
    carrier: "Gentle Freight",
  });
  expect(await codes(loanId)).not.toContain("next.recalled");
  expect(await dueOf()).not.toContain("due.stop-use");
});

test("a withdrawal offers to ask back exactly what it is about, with one act", async () => {
  const { loanId, one, recall } = await atVenue();
  const { donorCode } = await database().specimenDonor.findFirstOrThrow({ where: { specimenId: one.id } });
  await withdrawConsent(lending.donorOfficer, {
    donorCode,
    receivedOn: today(),
    effectiveOn: today(),
  } as Parameters<typeof withdrawConsent>[1]);
  const loan = await getLoan(lending.donorOfficer, loanId);
  expect(loan.time.withdrawn).toEqual([one.id]);
  expect(loan.nextSteps[0]).toMatchObject({
    code: "next.consent-withdrawn",
    action: "recallLoan",
    outcome: "bar",
  });
  await recallLoan(lending.donorOfficer, recall({ ground: "consent withdrawn" }));
  expect(await codes(loanId)).not.toContain("next.consent-withdrawn");
});

test.each<[string, keyof Lending, (today: string, stranger: string) => Partial<RecallInput>, object]>([
  [
    "the donors' office asks back for consent only",
    "donorOfficer",
    () => ({}),
    { reason: "recall.other-ground" },
  ],
  [
    "for its own need the centre gives 30 days",
    "registrar",
    (day) => ({ ground: "own need", returnBy: addDays(day, 29) }),
    { reason: "recall.too-soon" },
  ],
  [
    "a day that has passed is none",
    "registrar",
    (day) => ({ returnBy: addDays(day, -1) }),
    { kind: "invalid" },
  ],
  ["without a specimen nothing is asked back", "registrar", () => ({ specimenIds: [] }), { kind: "invalid" }],
  ["a borrower asks nothing back", "borrowerRegistrar", () => ({}), { kind: "forbidden" }],
])("%s", async (_what, who, said, refusal) => {
  const { recall } = await atVenue();
  const viewer = lending[who] as Lending["registrar"];
  await expect(recallLoan(viewer, recall(said(today(), "")))).rejects.toMatchObject(refusal);
});

test("with 30 days' notice the centre's own need is ground enough, and what is not out is not asked back", async () => {
  const { loanId, recall } = await atVenue();
  await recallLoan(
    lending.manager,
    recall({ ground: "own need", returnBy: addDays(today(), 30), stopUse: false }),
  );
  expect((await getLoan(lending.lecturer, loanId)).time.recalls).toMatchObject([
    { ground: "own need", stopUse: false },
  ]);
  const elsewhere = await aLendableSpecimen(lending);
  await expect(recallLoan(lending.registrar, recall({ specimenIds: [elsewhere.id] }))).rejects.toMatchObject({
    kind: "not-found",
  });
});

test("the notice for the centre's own need is the one that was signed, which begins from the centre's figure", async () => {
  const settings = await centreSettings();
  await aCentre({ ...settings, practice: { recallNoticeDays: 45 } });
  const { recall } = await atVenue().finally(() => aCentre(settings));
  const ownNeed = (days: number) =>
    recallLoan(lending.manager, recall({ ground: "own need", returnBy: addDays(today(), days) }));
  await expect(ownNeed(44)).rejects.toMatchObject({ reason: "recall.too-soon" });
  await expect(ownNeed(45)).resolves.toBeDefined();
});
