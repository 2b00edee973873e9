"use server";
/** Signing in and out. A wrong address and a wrong password are the same sentence. */

import { APIError } from "better-auth/api";
import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { FormState } from "#app/_parts/form-state.ts";
import { auth } from "#app/_server/auth.ts";
import { sentence } from "#app/_words/sentences.ts";

const Credentials = z.object({
  email: z.string().trim().toLowerCase().min(3).max(200),
  password: z.string().min(1).max(128),
  // A place in this program: browsers read a backslash as a stroke and drop control characters.
  to: z
    .string()
    .regex(/^\/(?!\/)[^\\\p{Cc}]*$/u)
    .catch("/"),
});

function refused(code: string): FormState {
  return { state: "refused", kind: "unauthenticated", message: sentence(code), issues: [] };
}

export async function signIn(_before: FormState, fields: FormData): Promise<FormState> {
  const typed = Credentials.safeParse(Object.fromEntries(fields));
  if (!typed.success) return refused("sign-in.wrong");
  const { email, password, to } = typed.data;
  try {
    await auth().api.signInEmail({ body: { email, password }, headers: await headers() });
  } catch (error) {
    if (error instanceof APIError)
      return refused(error.statusCode === 429 ? "sign-in.too-often" : "sign-in.wrong");
    throw error;
  }
  redirect(to);
}

export async function signOut(): Promise<void> {
  await auth().api.signOut({ headers: await headers() });
  redirect("/sign-in");
}
