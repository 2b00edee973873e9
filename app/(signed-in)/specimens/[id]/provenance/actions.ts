"use server";
/** Writes about where a specimen came from and what papers it has. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { readCodes } from "#app/_parts/typed-codes.ts";
import { runAction } from "#app/_server/action.ts";
import { specimenProvenanceWords as words } from "#app/_words/en/specimen-provenance.ts";
import { linkDonor, recordPermit, recordTitle, withdrawPermit } from "#lib/provenance/commands.ts";
import type { SpecimenPermitInput, SpecimenTitleInput } from "#lib/provenance/schema.ts";

const textOf = (fields: FormData, name: string) => String(fields.get(name) ?? "").trim();
const dayOf = (fields: FormData, name: string) => textOf(fields, name) || null;

function refresh(specimenId: string): void {
  revalidatePath(`/specimens/${specimenId}`, "layout");
}

export async function saveDonors(
  specimenId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const donorCodes = readCodes(textOf(fields, "donorCodes").toUpperCase());
    await linkDonor(viewer, { specimenId, donorCodes });
    refresh(specimenId);
    return { message: words.donorsSaved };
  });
}

export async function saveTitle(
  specimenId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await recordTitle(viewer, {
      specimenId,
      status: textOf(fields, "status") as SpecimenTitleInput["status"],
      ownerName: textOf(fields, "ownerName"),
      leaveToLend: fields.get("leaveToLend") === "on",
      leaveReference: textOf(fields, "leaveReference"),
      recordedOn: textOf(fields, "recordedOn"),
    });
    refresh(specimenId);
    return { message: words.titleSaved };
  });
}

export async function savePermit(
  specimenId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await recordPermit(viewer, {
      specimenId,
      kind: textOf(fields, "kind") as SpecimenPermitInput["kind"],
      number: textOf(fields, "number"),
      authority: textOf(fields, "authority"),
      territories: readCodes(textOf(fields, "territories").toUpperCase()),
      validFrom: dayOf(fields, "validFrom"),
      validUntil: dayOf(fields, "validUntil"),
    });
    refresh(specimenId);
    return { message: words.permitSaved };
  });
}

export async function takeBackPermit(
  specimenId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await withdrawPermit(viewer, {
      permitId: textOf(fields, "permitId"),
      withdrawnOn: textOf(fields, "withdrawnOn"),
      because: textOf(fields, "because"),
    });
    refresh(specimenId);
    return { message: words.permitTakenBack };
  });
}
