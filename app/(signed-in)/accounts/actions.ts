"use server";
/** Writes of accounts. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { accountsWords as words } from "#app/_words/en/accounts.ts";
import { keepAccount } from "#lib/people/commands.ts";
import { listAccounts } from "#lib/people/queries.ts";
import type { AccountInput } from "#lib/people/schema.ts";
import { AccountWithPassword } from "#lib/people/schema.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { notFound } from "#lib/platform/refusal.ts";

export async function saveAccount(values: AccountWithPassword): Promise<FormState> {
  return await runAction(async (viewer) => {
    const id = await keepAccount(viewer, parseInput(AccountWithPassword, values));
    revalidatePath("/accounts", "layout");
    return { goTo: `/accounts/${id}` };
  });
}

async function accountNow(viewer: Viewer, id: string): Promise<AccountInput> {
  const account = (await listAccounts(viewer)).find((each) => each.id === id);
  if (!account) throw notFound("account");
  return account;
}

export async function setPassword(id: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const password = String(fields.get("password") ?? "");
    await keepAccount(
      viewer,
      parseInput(AccountWithPassword, { account: await accountNow(viewer, id), password }),
    );
    return { message: words.passwordSet };
  });
}

async function setActive(id: string, active: boolean, message: string): Promise<FormState> {
  return await runAction(async (viewer) => {
    await keepAccount(viewer, { account: { ...(await accountNow(viewer, id)), active }, password: null });
    revalidatePath("/accounts", "layout");
    return { message };
  });
}

export async function closeAccount(id: string): Promise<FormState> {
  return await setActive(id, false, words.closeDone);
}

export async function reopenAccount(id: string): Promise<FormState> {
  return await setActive(id, true, words.reopenDone);
}
