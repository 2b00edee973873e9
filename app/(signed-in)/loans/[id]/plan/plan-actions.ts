"use server";
/** Acts on a loan's days: a step moved or marked, a longer loan asked for and answered, specimens asked back. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { allIn, isTicked, textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { extensionWords, planWords, recallWords } from "#app/_words/en/loan-time.ts";
import { answerExtension, askExtension } from "#lib/loans/commands/extension.ts";
import { markPlanStep, movePlanStep } from "#lib/loans/commands/plan.ts";
import { recallLoan } from "#lib/loans/commands/recall.ts";
import type { RecallGround } from "#lib/loans/extension.ts";
import type { PlanStepName } from "#lib/loans/plan-defaults.ts";
import type { AnswerExtensionInput } from "#lib/loans/time-inputs.ts";
import type { Viewer } from "#lib/people/viewer.ts";

async function actOnDays(loanId: string, act: (viewer: Viewer) => Promise<string>): Promise<FormState> {
  return await runAction(async (viewer) => {
    const message = await act(viewer);
    revalidatePath(`/loans/${loanId}`);
    return { message };
  });
}

export async function moveStep(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnDays(loanId, async (viewer) => {
    const to = textIn(fields, "to") || null;
    const changed = await movePlanStep(viewer, { loanId, step: textIn(fields, "step") as PlanStepName, to });
    return to !== null && changed.length === 0 ? planWords.nothingMoved : planWords.movedDone(changed.length);
  });
}

export async function markStep(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnDays(loanId, async (viewer) => {
    const doneOn = textIn(fields, "doneOn") || null;
    await markPlanStep(viewer, { loanId, step: textIn(fields, "step") as PlanStepName, doneOn });
    return planWords.marked;
  });
}

export async function askLonger(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnDays(loanId, async (viewer) => {
    await askExtension(viewer, {
      loanId,
      endsOn: textIn(fields, "endsOn"),
      grounds: textIn(fields, "grounds"),
    });
    return extensionWords.askedDone;
  });
}

export async function answerLonger(
  loanId: string,
  extensionId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnDays(loanId, async (viewer) => {
    const reasons = await answerExtension(viewer, {
      extensionId,
      outcome: textIn(fields, "outcome") as AnswerExtensionInput["outcome"],
      answer: textIn(fields, "answer"),
      coverAskedFor: isTicked(fields, "coverAskedFor"),
    });
    return reasons.length === 0 ? extensionWords.answered : extensionWords.answeredAttend(reasons.length);
  });
}

export async function recall(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnDays(loanId, async (viewer) => {
    await recallLoan(viewer, {
      loanId,
      specimenIds: allIn(fields, "specimenIds"),
      ground: textIn(fields, "ground") as RecallGround,
      text: textIn(fields, "text"),
      stopUse: isTicked(fields, "stopUse"),
      returnBy: textIn(fields, "returnBy"),
    });
    return recallWords.done;
  });
}
