/**
 * Counts attempts to sign in by e-mail, in the database, so that the count holds
 * whoever serves. An attempt counts as failed from its beginning and is forgiven
 * when it succeeds: a hundred attempts at once are a hundred, not one. The e-mail
 * is kept as a hash; a wrong one may be anything that a person typed.
 */
import { SIGN_IN_WINDOW_MS, signInWaitsUntil } from "#lib/people/sign-in-brake.ts";
import type { Transaction } from "#lib/platform/database.ts";
import { sha256Hex } from "#lib/platform/hash.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const keyOf = (email: string): string => sha256Hex(email.trim().toLowerCase());

/** @throws {Refusal} "sign-in.too-often" with the minutes to wait */
export async function beginSignIn(transaction: Transaction, email: string, now: Date): Promise<void> {
  const emailKey = keyOf(email);
  await transaction.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`sign-in/${emailKey}`}, 0))`;
  await transaction.signInFailure.deleteMany({
    where: { failedAt: { lte: new Date(now.getTime() - SIGN_IN_WINDOW_MS) } },
  });
  const failures = await transaction.signInFailure.findMany({ where: { emailKey } });
  const until = signInWaitsUntil(
    failures.map((failure) => failure.failedAt),
    now,
  );
  if (until)
    throw new Refusal("conflict", "sign-in.too-often", {
      minutes: Math.ceil((until.getTime() - now.getTime()) / 60_000),
    });
  await transaction.signInFailure.create({ data: { emailKey, failedAt: now } });
}

/** Forgives what was tried under an e-mail whose password was right at last. */
export async function forgiveSignIn(transaction: Transaction, email: string): Promise<void> {
  await transaction.signInFailure.deleteMany({ where: { emailKey: keyOf(email) } });
}
