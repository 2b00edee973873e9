"use server";
/** Acts on a loan's way: crates, seals, stages, arrival, count, return, check-in. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { allIn, answerIn, isTicked, numberIn, shareIn, textIn } from "#app/_parts/sent-fields.ts";
import { readCodes } from "#app/_parts/typed-codes.ts";
import { runAction } from "#app/_server/action.ts";
import { formStateOf } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { numbersInWords } from "#app/_words/number-range.ts";
import { checkIn } from "#lib/loans/commands/check-in.ts";
import { planCrates, sealCrate } from "#lib/loans/commands/crates.ts";
import { countReturn, receiveHome } from "#lib/loans/commands/receive-home.ts";
import { openCrate, receiveLoan } from "#lib/loans/commands/receive-loan.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { issueCarrierLink, planStage } from "#lib/loans/commands/stages.ts";
import type { checkInVerdicts } from "#lib/loans/inputs.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { readConfig } from "#lib/platform/config.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import type { Direction } from "#lib/shipments/schema.ts";
import type { CarrierClass, FragilityClass } from "#lib/transport/schema.ts";

async function actOnWay(loanId: string, act: (viewer: Viewer) => Promise<string>): Promise<FormState> {
  return await runAction(async (viewer) => {
    const message = await act(viewer);
    revalidatePath(`/loans/${loanId}`);
    return { message };
  });
}

export async function savePlan(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    const own = allIn(fields, "own").map((specimenId, index) => ({
      specimenId,
      fragilityClass: (textIn(fields, `own.${index}.fragilityClass`) || null) as FragilityClass | null,
      peakG: numberIn(fields, `own.${index}.peakG`),
    }));
    await planCrates(viewer, {
      loanId,
      carrierClass: textIn(fields, "carrierClass") as CarrierClass,
      own: own.filter(({ fragilityClass, peakG }) => fragilityClass !== null || peakG !== null),
    });
    return words.planned;
  });
}

export async function seal(
  loanId: string,
  crateId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    const packed = allIn(fields, "packed").map((specimenId) => ({ specimenId, componentsComplete: true }));
    await sealCrate(viewer, { crateId, sealNumber: textIn(fields, "sealNumber"), packed });
    return words.sealed;
  });
}

export async function saveStage(
  loanId: string,
  direction: Direction,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    await planStage(viewer, {
      loanId,
      direction,
      carrier: textIn(fields, "carrier"),
      carrierEmail: textIn(fields, "carrierEmail"),
      vehicle: textIn(fields, "vehicle"),
      through: readCodes(textIn(fields, "through").toUpperCase()),
      departsOn: textIn(fields, "departsOn"),
      arrivesOn: textIn(fields, "arrivesOn"),
    });
    return words.stagePlanned;
  });
}

export type LinkState = { form: FormState; link: string | null };

/** The link is told once, in the answer, and stands nowhere else. */
export async function giveLink(loanId: string, stageId: string, _before: LinkState): Promise<LinkState> {
  try {
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const { token } = await issueCarrierLink(viewer, { stageId });
    revalidatePath(`/loans/${loanId}`);
    return { form: { state: "idle" }, link: new URL(`/carry/${token}`, readConfig().url).href };
  } catch (error) {
    if (error instanceof Refusal) return { form: formStateOf(error), link: null };
    throw error;
  }
}

/** What was seen of each crate, and the air. */
function arrivalIn(loanId: string, fields: FormData) {
  return {
    loanId,
    crates: allIn(fields, "crate").map((crateId, index) => ({
      crateId,
      arrived: answerIn(fields, `crates.${index}.arrived`) as boolean,
      sealIntact: answerIn(fields, `crates.${index}.sealIntact`),
      outsideDamage: textIn(fields, `crates.${index}.outsideDamage`),
    })),
    outsideC: numberIn(fields, "outsideC"),
    roomC: numberIn(fields, "roomC"),
    roomHumidity: shareIn(fields, "roomHumidity"),
  };
}

export async function receive(
  loanId: string,
  direction: Direction,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    const take = direction === "out" ? receiveLoan : receiveHome;
    await take(viewer, arrivalIn(loanId, fields));
    return words.received;
  });
}

/** Whether each specimen was there. An answer that was not given is left to the schema to refuse. */
function countsIn(fields: FormData) {
  return allIn(fields, "counted").map((specimenId, index) => ({
    specimenId,
    present: answerIn(fields, `counts.${index}.present`) as boolean,
    remark: textIn(fields, `counts.${index}.remark`),
  }));
}

export async function openAndCount(
  loanId: string,
  crateId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    const { missing } = await openCrate(viewer, { crateId, counts: countsIn(fields) });
    return missing.length === 0
      ? words.counted
      : words.countedMissing(numbersInWords(missing.map((one) => one.accessionNumber)));
  });
}

export async function send(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    const chosen = allIn(fields, "going");
    await sendHome(viewer, {
      loanId,
      specimenIds: isTicked(fields, "everything") ? null : chosen,
      seals: allIn(fields, "crate").map((crateId) => ({
        crateId,
        sealNumber: textIn(fields, `seal ${crateId}`),
      })),
      carrier: textIn(fields, "carrier"),
    });
    return words.sent;
  });
}

export async function countHome(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    const counts = countsIn(fields).map((count, index) => ({
      ...count,
      missingComponents: allIn(fields, `counts.${index}.component`).flatMap((name, place) => {
        const missing = numberIn(fields, `counts.${index}.missingComponents.${place}`);
        return missing === null || missing === 0 ? [] : [{ name, missing }];
      }),
    }));
    const { missing } = await countReturn(viewer, { loanId, counts });
    return missing.length === 0
      ? words.counted
      : words.countedMissing(numbersInWords(missing.map((one) => one.accessionNumber)));
  });
}

export async function checkSpecimenIn(
  loanId: string,
  specimenId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnWay(loanId, async (viewer) => {
    await checkIn(viewer, {
      loanId,
      specimenId,
      verdict: textIn(fields, "verdict") as (typeof checkInVerdicts)[number],
      remark: textIn(fields, "remark"),
    });
    return words.checkedIn;
  });
}
