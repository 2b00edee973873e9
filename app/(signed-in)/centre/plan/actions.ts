"use server";
/** The days that plans are counted with. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { planWords } from "#app/_words/en/loan-time.ts";
import { configurePlan } from "#lib/loans/commands/plan.ts";
import { countedSteps, type PlanDays, planScopes } from "#lib/loans/plan-defaults.ts";

/** An empty field is no number of days. */
const daysIn = (fields: FormData, name: string) => {
  const typed = textIn(fields, name);
  return /^\d{1,4}$/.test(typed) ? Number(typed) : Number.NaN;
};

export async function savePlanDays(_before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const days = Object.fromEntries(
      countedSteps.map((step) => [
        step,
        Object.fromEntries(planScopes.map((scope) => [scope, daysIn(fields, `${step}.${scope}`)])),
      ]),
    ) as PlanDays;
    await configurePlan(viewer, { days });
    revalidatePath("/centre/plan");
    return { message: planWords.settingsSaved };
  });
}
