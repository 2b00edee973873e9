"use server";
/** Signing in and out. A wrong address and a wrong password are the same sentence. */

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { FormState } from "#app/_parts/form-state.ts";
import { auth, signInByPassword } from "#app/_server/auth.ts";
import { formStateOf } from "#app/_server/refusals.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const Credentials = z.object({
  email: z.string().trim().toLowerCase().min(3).max(200),
  password: z.string().min(1).max(128),
  // A place in this program: browsers read a backslash as a stroke and drop control characters.
  to: z
    .string()
    .regex(/^\/(?!\/)[^\\\p{Cc}]*$/u)
    .catch("/"),
});

export async function signIn(_before: FormState, fields: FormData): Promise<FormState> {
  const typed = Credentials.safeParse(Object.fromEntries(fields));
  try {
    if (!typed.success) throw new Refusal("unauthenticated", "sign-in.wrong");
    const { to, ...credentials } = typed.data;
    await signInByPassword(credentials, await headers());
  } catch (error) {
    if (error instanceof Refusal) return formStateOf(error);
    throw error;
  }
  redirect(typed.data.to);
}

export async function signOut(): Promise<void> {
  await auth().api.signOut({ headers: await headers() });
  redirect("/sign-in");
}
