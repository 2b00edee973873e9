/** What the acts on a loan's days are told: a step of the plan moved or marked, a longer loan asked for and answered, specimens asked back. */
import { z } from "zod";
import { recallGrounds } from "#lib/loans/extension.ts";
import { PlanDays, PlanStepName } from "#lib/loans/plan-defaults.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";

const text = (most: number) => z.string().trim().max(most);

/** Null gives a step back to the plan, which counts it anew. */
export const MoveStepInput = z.object({ loanId: Id, step: PlanStepName, to: DateText.nullable() });
export type MoveStepInput = z.infer<typeof MoveStepInput>;

/** Null takes the mark back. */
export const MarkStepInput = z.object({ loanId: Id, step: PlanStepName, doneOn: DateText.nullable() });
export type MarkStepInput = z.infer<typeof MarkStepInput>;

export const PlanDaysInput = z.object({ days: PlanDays });
export type PlanDaysInput = z.infer<typeof PlanDaysInput>;

export const AskExtensionInput = z.object({ loanId: Id, endsOn: DateText, grounds: text(2_000).min(10) });
export type AskExtensionInput = z.infer<typeof AskExtensionInput>;

export const AnswerExtensionInput = z.object({
  extensionId: Id,
  outcome: z.enum(["granted", "refused"]),
  /** What the borrower reads; a refusal says why. */
  answer: text(2_000),
  /** Where certificates end before the longer loan: that longer ones are asked for. */
  coverAskedFor: z.boolean(),
});
export type AnswerExtensionInput = z.infer<typeof AnswerExtensionInput>;

export const RecallInput = z.object({
  loanId: Id,
  specimenIds: z.array(Id).min(1, "recall.no-specimens").max(500),
  ground: z.enum(recallGrounds),
  text: text(4_000).min(10),
  stopUse: z.boolean(),
  returnBy: DateText,
});
export type RecallInput = z.infer<typeof RecallInput>;
