/**
 * Signing in: e-mail and password, sessions in Postgres. Who may do what is not
 * decided here; a session only says which account is asking.
 */
import "server-only";
import { betterAuth } from "better-auth";
import { nextCookies } from "better-auth/next-js";
import { readConfig } from "#lib/platform/config.ts";
import { databasePool } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";

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
    rateLimit: {
      enabled: true,
      storage: "database",
      modelName: "auth_rate_limit",
      customRules: { "/sign-in/email": { window: 60, max: 20 } },
    },
    advanced: {
      database: { generateId: () => newId() },
      // No proxy is believed: the address of a client is what the connection says.
      ipAddress: { ipAddressHeaders: ["x-anatheca-client"] },
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
