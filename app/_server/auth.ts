/**
 * Signing in: e-mail and password, sessions in Postgres. Who may do what is not
 * decided here; a session only says which account is asking. The sign-in library
 * has no address of its own: the one way in is the form, and that has the brake.
 */
import "server-only";
import { betterAuth } from "better-auth";
import { APIError } from "better-auth/api";
import { nextCookies } from "better-auth/next-js";
import { beginSignIn, forgiveSignIn } from "#lib/people/commands/count-sign-in.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import { readConfig } from "#lib/platform/config.ts";
import { databasePool } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { inTransaction } from "#lib/platform/transaction.ts";

function makeAuth() {
  const { secret, url } = readConfig();
  return betterAuth({
    secret,
    baseURL: url,
    database: databasePool(),
    telemetry: { enabled: false },
    trustedOrigins: [url],
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 12, maxPasswordLength: 128 },
    user: { modelName: "auth_user" },
    session: { modelName: "auth_session", expiresIn: 60 * 60 * 12 },
    account: { modelName: "auth_secret" },
    verification: { modelName: "auth_verification" },
    rateLimit: { enabled: false },
    advanced: {
      database: { generateId: () => newId() },
      useSecureCookies: url.startsWith("https://"),
    },
    plugins: [nextCookies()],
  });
}

let made: ReturnType<typeof makeAuth> | undefined;

export function auth(): ReturnType<typeof makeAuth> {
  made ??= makeAuth();
  return made;
}

/**
 * Begins a session, or refuses: a wrong e-mail and a wrong password are the same.
 * @throws {Refusal} "sign-in.wrong" or "sign-in.too-often"
 */
export async function signInByPassword(
  credentials: { email: string; password: string },
  headers: Headers,
): Promise<void> {
  const { email } = credentials;
  await inTransaction(programViewer, "signIn", async (transaction) => {
    await beginSignIn(transaction, email, now());
  });
  try {
    await auth().api.signInEmail({ body: credentials, headers });
  } catch (error) {
    if (error instanceof APIError) throw new Refusal("unauthenticated", "sign-in.wrong");
    throw error;
  }
  await inTransaction(programViewer, "signIn", async (transaction) => {
    await forgiveSignIn(transaction, email);
  });
}
