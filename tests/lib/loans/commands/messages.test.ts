/** Messages between the two sides of a loan, and the letters about them. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { sendLetterAgain } from "#lib/desk/commands/send-letter-again.ts";
import { listDue } from "#lib/desk/queries/due.ts";
import { getLetter, listLetters } from "#lib/desk/queries/letters.ts";
import { readMessages, writeMessage } from "#lib/loans/commands/messages.ts";
import { messagesOf } from "#lib/loans/queries/messages.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { aLoanOf, aSpecimen, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

let loan: Awaited<ReturnType<typeof aLoanOf>>;
let lecturer: Viewer;
let keeper: Viewer;
const registrar = aViewer("registrar");
const stranger = aViewer("lecturer", "0198c2a0-0000-7000-8000-000000000001");
let hour = 8;
const later = () => {
  hour += 1;
  const moment = new Date(Date.UTC(2027, 0, 4, hour));
  setClock(() => moment);
};

async function keepAccountOf(viewer: Viewer): Promise<void> {
  const { accountId: id, email, name, roles, institutionId } = viewer;
  await inWork(async ({ transaction }) => {
    await transaction.authUser.create({ data: { id, email, name, emailVerified: true } });
    await transaction.account.create({ data: { id, email, name, roles: [...roles], institutionId } });
  });
}

beforeAll(async () => {
  await testDatabase("tables");
  later();
  loan = await aLoanOf([await aSpecimen()]);
  lecturer = { ...aViewer("lecturer", loan.borrowerId), email: "lecturer@example.org" };
  keeper = aViewer("borrower registrar", loan.borrowerId);
  for (const viewer of [registrar, lecturer, keeper]) await keepAccountOf(viewer);
});
afterAll(() => setClock());

const unreadFor = async (viewer: Viewer) =>
  (await listDue(viewer))
    .filter(({ code }) => code === "due.message")
    .map(({ parameters }) => parameters.count);
const say = (viewer: Viewer, text: string) => writeMessage(viewer, { loanId: loan.id, text });

test("nobody writes on a slip that was not submitted", async () => {
  await expect(say(lecturer, "Is it free?")).rejects.toMatchObject({ reason: "loan.not-now" });
  await inWork(({ transaction }) =>
    transaction.loan.update({ where: { id: loan.id }, data: { submittedAt: new Date("2027-01-02") } }),
  );
});

test("what a borrower writes is due to the registrar, and a letter says no more than that", async () => {
  later();
  await say(lecturer, "May the donor's year of death stand on the label?");
  expect(await unreadFor(registrar)).toEqual([1]);
  expect(await unreadFor(lecturer)).toEqual([]);
  const { rows } = await listLetters(registrar);
  expect(rows.map(({ address, code }) => [address, code])).toEqual([
    [registrar.email, "letter.message-to-centre"],
  ]);
  expect(JSON.stringify(rows)).not.toMatch(/label|death/);
});

test("an answer clears it and is due to the other side, until each has read it", async () => {
  later();
  await say(registrar, "No, please leave it out.");
  expect(await unreadFor(registrar)).toEqual([]);
  expect([await unreadFor(lecturer), await unreadFor(keeper)]).toEqual([[1], [1]]);
  expect((await messagesOf(lecturer, loan.id)).map(({ side, isUnread }) => [side, isUnread])).toEqual([
    ["borrower", false],
    ["centre", true],
  ]);
  later();
  await readMessages(lecturer, { loanId: loan.id });
  expect([await unreadFor(lecturer), await unreadFor(keeper)]).toEqual([[], [1]]);
  later();
  await say(lecturer, "Understood.");
  expect(await unreadFor(keeper)).toEqual([]);
});

test("a message is never changed", async () => {
  await expect(
    inWork(({ transaction }) => transaction.message.updateMany({ data: { text: "otherwise" } })),
  ).rejects.toThrow();
});

test("who is of another institution finds neither the messages nor the letters", async () => {
  await expect(messagesOf(stranger, loan.id)).rejects.toMatchObject({ kind: "not-found" });
  await expect(say(stranger, "Hello there")).rejects.toMatchObject({ kind: "not-found" });
  expect((await listLetters(stranger)).rows).toEqual([]);
  const [letter] = (await listLetters(registrar)).rows;
  await expect(getLetter(stranger, letter?.id ?? "")).rejects.toMatchObject({ kind: "not-found" });
});

test("a borrower reads the own letters only, and the post of the house is whole for the registrar", async () => {
  const own = await listLetters(lecturer);
  expect(new Set(own.rows.map(({ address }) => address))).toEqual(new Set(["lecturer@example.org"]));
  expect(own.all).toBe(false);
  expect((await listLetters(registrar)).rows.length).toBeGreaterThan(own.rows.length);
  const first = await listLetters(registrar, {}, { limit: 1 });
  expect(first.rows).toHaveLength(1);
  const second = await listLetters(registrar, {}, { limit: 1, after: first.next });
  expect(second.rows[0]?.id).not.toBe(first.rows[0]?.id);
});

test("a letter with a fault is due until it is put back into the outbox, to a corrected address", async () => {
  const letter = (await listLetters(registrar)).rows.at(-1);
  const letterId = letter?.id ?? "";
  await database().mail.update({ where: { id: letterId }, data: { attempts: 3, fault: "EENVELOPE: 550" } });
  const faults = async () => (await listDue(registrar)).filter(({ code }) => code === "due.letter-fault");
  expect((await faults()).map(({ about }) => about)).toEqual([{ kind: "letter", id: letterId }]);
  expect((await listLetters(registrar, { state: "fault" })).rows.map(({ id }) => id)).toEqual([letterId]);
  expect(await getLetter(registrar, letterId)).toMatchObject({ state: "fault", fault: "EENVELOPE: 550" });
  await sendLetterAgain(registrar, { letterId, address: "right@house.example" });
  expect(await faults()).toEqual([]);
  expect(await getLetter(registrar, letterId)).toMatchObject({ address: "right@house.example", attempts: 0 });
  await database().mail.update({ where: { id: letterId }, data: { sentAt: new Date() } });
  await expect(
    sendLetterAgain(registrar, { letterId, address: "right@house.example" }),
  ).rejects.toMatchObject({ reason: "letter.sent-already" });
});
