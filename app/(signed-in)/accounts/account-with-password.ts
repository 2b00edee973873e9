/** An account as the form states it: a new one together with its first password. */
import { z } from "zod";
import { AccountInput } from "#lib/people/schema.ts";

export const AccountWithPassword = z
  .object({
    account: AccountInput,
    /** Null leaves the password as it is. */
    password: z.string().min(12, "account.password-short").max(128).nullable(),
  })
  .refine(({ account, password }) => account.id !== null || password !== null, {
    path: ["password"],
    message: "account.password-needed",
  });
export type AccountWithPassword = z.infer<typeof AccountWithPassword>;
