/** Reminders of loans that are out, as days go by, on a database. */
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { listDue } from "#lib/desk/queries/due.ts";
import { configureReminders, holdNewLoans } from "#lib/loans/commands/reminders.ts";
import { takeReminders } from "#lib/loans/commands/take-reminders.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { aLoanOf, aSpecimen, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const registrar = aViewer("registrar");
const dayIs = (date: string) => setClock(() => new Date(`${date}T06:00:00Z`));

let loan: Awaited<ReturnType<typeof aLoanOf>>;
let specimen: Awaited<ReturnType<typeof aSpecimen>>;

beforeAll(async () => {
  await testDatabase("vocabularies");
});
afterAll(() => setClock());

/** Ways on which a line comes to the venue, by the table of moves. */
async function sendOut(lineIds: readonly string[], to: string): Promise<void> {
  await inWork(async ({ transaction }) => {
    for (const state of [
      "requested",
      "accepted",
      "packed",
      "travelling out",
      "resting at venue",
      "at venue",
    ]) {
      await transaction.loanLine.updateMany({ where: { id: { in: [...lineIds] } }, data: { state } });
      if (state === to) return;
    }
  });
}

beforeEach(async () => {
  dayIs("2027-01-01");
  specimen = await aSpecimen();
  loan = await aLoanOf([specimen], { startsOn: "2027-03-01", endsOn: "2027-07-01" });
  await inWork(({ transaction }) =>
    transaction.loan.update({ where: { id: loan.id }, data: { submittedAt: new Date() } }),
  );
  await sendOut(loan.lineIds, "at venue");
});

const stepsOf = async () =>
  (
    await database().reminder.findMany({
      where: { loanId: loan.id },
      orderBy: [{ endsOn: "asc" }, { dayShift: "asc" }],
    })
  ).map(({ dayShift }) => dayShift);
const lettersOf = async () =>
  await database().mail.findMany({ where: { about: `loan/${loan.id}` }, orderBy: { id: "asc" } });

test("each step is taken once, on its day", async () => {
  for (const day of ["2027-04-30", "2027-05-02", "2027-05-02", "2027-06-01", "2027-06-28", "2027-07-01"]) {
    dayIs(day);
    await takeReminders(programViewer);
    await takeReminders(programViewer);
  }
  expect(await stepsOf()).toEqual([-60, -30, -3, 0]);
  expect((await lettersOf()).map(({ code }) => code)).toEqual([
    "letter.reminder-ahead",
    "letter.reminder-ahead",
    "letter.reminder-ahead",
    "letter.reminder-today",
  ]);
});

test("of days that were missed only the latest step is taken", async () => {
  dayIs("2027-07-09");
  await takeReminders(programViewer);
  expect(await stepsOf()).toEqual([7]);
  const letters = await lettersOf();
  expect(letters.map(({ address }) => address).sort()).toEqual(["lecturer@example.org", "loans@example.org"]);
  expect(letters[0]?.parameters).toMatchObject({ days: 8, endsOn: "2027-07-01" });
});

test("two servers that begin at once take it once", async () => {
  dayIs("2027-06-02");
  await Promise.all([
    takeReminders(programViewer),
    takeReminders(programViewer),
    takeReminders(programViewer),
  ]);
  expect(await stepsOf()).toEqual([-30]);
  expect(await lettersOf()).toHaveLength(1);
});

test("a longer loan begins anew", async () => {
  dayIs("2027-07-05");
  await takeReminders(programViewer);
  expect(await stepsOf()).toEqual([3]);
  await inWork(({ transaction }) =>
    transaction.loan.update({ where: { id: loan.id }, data: { endsOn: toDate("2027-08-01") } }),
  );
  await takeReminders(programViewer);
  expect(await stepsOf()).toEqual([3, -30]);
});

test("who is on the way home is not reminded", async () => {
  await inWork(({ transaction }) =>
    transaction.loanLine.updateMany({ where: { loanId: loan.id }, data: { state: "travelling home" } }),
  );
  dayIs("2027-07-20");
  await takeReminders(programViewer);
  expect(await stepsOf()).toEqual([]);
});

test("the day from which somebody else needs a specimen is said", async () => {
  const next = await aLoanOf([specimen], { startsOn: "2027-08-01", endsOn: "2027-09-01" });
  await inWork(({ transaction }) =>
    transaction.booking.create({
      data: {
        id: newId(),
        specimenId: specimen.id,
        loanLineId: next.lineIds[0] ?? null,
        purpose: "loan",
        strength: "firm",
        startsOn: toDate("2027-07-18"),
        endsOn: toDate("2027-09-15"),
        bookedBy: "program",
      },
    }),
  );
  dayIs("2027-07-04");
  await takeReminders(programViewer);
  expect((await lettersOf())[0]?.parameters).toMatchObject({ neededFrom: "2027-07-18" });
});

test("after the last reminder the registrar is asked to decide on a hold, and nothing is held before", async () => {
  const proposed = async () => (await listDue(registrar)).filter(({ code }) => code === "due.propose-hold");
  const mine = async () => (await proposed()).filter(({ about }) => about.id === loan.id);
  dayIs("2027-07-08");
  await takeReminders(programViewer);
  expect(await mine()).toEqual([]);
  await expect(holdNewLoans(registrar, { loanId: loan.id })).rejects.toMatchObject({
    reason: "reminders.nothing-to-hold",
  });
  dayIs("2027-07-15");
  await takeReminders(programViewer);
  expect(await mine()).toHaveLength(1);
  const standing = async () =>
    (await database().institution.findUniqueOrThrow({ where: { id: loan.borrowerId } })).standing;
  expect(await standing()).toBe("good");
  await holdNewLoans(registrar, { loanId: loan.id });
  expect(await standing()).toBe("on hold");
  expect(await mine()).toEqual([]);
});

test("the centre sets its own days", async () => {
  await configureReminders(registrar, { days: [10, -5] });
  dayIs("2027-06-27");
  await takeReminders(programViewer);
  expect(await stepsOf()).toEqual([-5]);
  await expect(configureReminders(registrar, { days: [] })).rejects.toMatchObject({ kind: "invalid" });
});
