"use server";
/** Writes about donors: consents, withdrawals, the sealed record. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import type { SealedState } from "#app/(signed-in)/donors/sealed-state.ts";
import {
  keepSealedRecord,
  openSealedRecord,
  recordConsent,
  registerDonor,
  type SealedRecord,
  withdrawConsent,
} from "#lib/provenance/commands.ts";
import type { ConsentInput } from "#lib/provenance/schema.ts";

const textOf = (fields: FormData, name: string) => String(fields.get(name) ?? "").trim();
const dayOf = (fields: FormData, name: string) => textOf(fields, name) || null;

export async function registerNewDonor(): Promise<FormState> {
  return await runAction(async (viewer) => {
    const code = await registerDonor(viewer, {});
    revalidatePath("/donors");
    return { goTo: `/donors/${code}` };
  });
}

export async function saveConsent(values: ConsentInput): Promise<FormState> {
  return await runAction(async (viewer) => {
    await recordConsent(viewer, values);
    revalidatePath("/donors", "layout");
    return { goTo: `/donors/${values.donorCode}` };
  });
}

export async function saveWithdrawal(code: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    await withdrawConsent(viewer, {
      donorCode: code,
      receivedOn: textOf(fields, "receivedOn"),
      effectiveOn: textOf(fields, "effectiveOn") || textOf(fields, "receivedOn"),
    });
    revalidatePath("/donors", "layout");
    return { message: words.withdrawn };
  });
}

/** The record goes to the page that asked and nowhere else. */
export async function openRecord(code: string, _before: SealedState, fields: FormData): Promise<SealedState> {
  const found: SealedRecord[] = [];
  const answer = await runAction(async (viewer) => {
    found.push(await openSealedRecord(viewer, { donorCode: code, reason: textOf(fields, "reason") }));
    revalidatePath(`/donors/${code}`);
    return { message: words.opened };
  });
  const [record] = found;
  return record ? { state: "open", record } : answer;
}

export async function saveSealedRecord(
  code: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await keepSealedRecord(viewer, {
      donorCode: code,
      fullName: textOf(fields, "fullName"),
      bornOn: dayOf(fields, "bornOn"),
      diedOn: dayOf(fields, "diedOn"),
      kin: textOf(fields, "kin"),
      documentPlace: textOf(fields, "documentPlace"),
    });
    revalidatePath(`/donors/${code}`);
    return { message: words.kept };
  });
}
