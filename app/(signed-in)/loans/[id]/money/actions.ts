"use server";
/** Acts on a loan's money: drawing up and answering a quotation, stating what the loan came to. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { moneyWords as words } from "#app/_words/en/money.ts";
import { lineRows } from "#app/(signed-in)/loans/[id]/money/rows.ts";
import { exchangeIn, lineIn, otherLinesIn } from "#app/(signed-in)/loans/[id]/money/sent-lines.ts";
import { statementRows } from "#app/(signed-in)/loans/[id]/money/statement-rows.ts";
import type { AnswerInput } from "#lib/costing/schema.ts";
import { answerQuotation, drawUpCostStatement, drawUpQuotation } from "#lib/loans/commands/costings.ts";
import { findMoney, findQuotationDraft } from "#lib/loans/queries/costings.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export async function quote(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const draft = await findQuotationDraft(viewer, loanId);
    if (!draft) throw new Refusal("conflict", "costing.no-fee-scale");
    await drawUpQuotation(viewer, {
      loanId,
      lines: [...lineRows(draft.byScale, null).map((row) => lineIn(fields, row)), ...otherLinesIn(fields)],
      exchange: exchangeIn(fields, draft.scale.currency),
      validUntil: textIn(fields, "validUntil"),
      note: textIn(fields, "note"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { goTo: `/loans/${loanId}#money` };
  });
}

export async function stateCosts(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const money = await findMoney(viewer, loanId);
    if (!money?.accepted) throw new Refusal("conflict", "costing.not-accepted");
    const { currency } = money.accepted.content;
    await drawUpCostStatement(viewer, {
      loanId,
      lines: [...statementRows(money).map((row) => lineIn(fields, row)), ...otherLinesIn(fields)],
      exchange: exchangeIn(fields, currency),
      note: textIn(fields, "note"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { goTo: `/loans/${loanId}#money` };
  });
}

export async function answer(
  loanId: string,
  costingId: string,
  sha256: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await answerQuotation(viewer, {
      costingId,
      sha256,
      outcome: textIn(fields, "outcome") as AnswerInput["outcome"],
      remark: textIn(fields, "remark"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.answered };
  });
}
