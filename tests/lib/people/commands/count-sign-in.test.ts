/** Counting attempts to sign in, on real connections. */
import { beforeAll, expect, test } from "vitest";
import { beginSignIn, forgiveSignIn } from "#lib/people/commands/count-sign-in.ts";
import { SIGN_IN_FAILURES } from "#lib/people/sign-in-brake.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { testDatabase } from "#tests/support/database.ts";

beforeAll(async () => {
  await testDatabase();
});

const noon = new Date("2027-03-01T12:00:00Z");
const minutesLater = (minutes: number) => new Date(noon.getTime() + minutes * 60_000);
const begin = async (email: string, at = noon) =>
  await inTransaction(programViewer, "signIn", async (transaction) => {
    await beginSignIn(transaction, email, at);
  });

test("of forty attempts at once under one e-mail ten are tried and the others wait", async () => {
  const answers = await Promise.allSettled(
    Array.from({ length: 40 }, () => begin("guessed@halmren.example")),
  );
  expect(answers.filter((answer) => answer.status === "fulfilled")).toHaveLength(SIGN_IN_FAILURES);
  for (const answer of answers)
    if (answer.status === "rejected")
      expect(answer.reason).toMatchObject({ reason: "sign-in.too-often", parameters: { minutes: 15 } });
});

test("capital letters and spaces make no new e-mail, and another e-mail does not wait", async () => {
  for (let attempt = 0; attempt < SIGN_IN_FAILURES; attempt += 1) await begin("typed@halmren.example");
  await expect(begin(" Typed@Halmren.example ")).rejects.toMatchObject({ reason: "sign-in.too-often" });
  await begin("other@halmren.example");
});

test("the wait ends by itself, and the old attempts are gone", async () => {
  for (let attempt = 0; attempt < SIGN_IN_FAILURES; attempt += 1) await begin("slow@halmren.example");
  await expect(begin("slow@halmren.example", minutesLater(14))).rejects.toMatchObject({
    parameters: { minutes: 1 },
  });
  await begin("slow@halmren.example", minutesLater(15));
  expect(await database().signInFailure.count()).toBe(1);
});

test("the right password forgives what was tried before", async () => {
  for (let attempt = 0; attempt < SIGN_IN_FAILURES; attempt += 1) await begin("found@halmren.example");
  await inTransaction(programViewer, "signIn", async (transaction) => {
    await forgiveSignIn(transaction, "found@halmren.example");
  });
  await begin("found@halmren.example");
});
