"use server";
/** Issuing papers from a loan's file. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { papersWords } from "#app/_words/en/papers.ts";
import { type IssuePaperInput, issuePaper } from "#lib/papers/commands/issue-paper.ts";
import { papersOfLoan } from "#lib/papers/queries/loan-papers.ts";
import { Refusal } from "#lib/platform/refusal.ts";

/** Issues one kind for everything on one way that it can be issued for; the choice is "kind|way". */
export async function issuePapers(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const [kind = "", direction = ""] = textIn(fields, "which").split("|");
    const { issuable } = await papersOfLoan(viewer, loanId);
    const subjects = (issuable.find((one) => one.kind === kind)?.subjects ?? [])
      .filter((subject) => (subject.direction ?? "") === direction)
      .map(({ subject }) => subject);
    if (subjects.length === 0) throw new Refusal("conflict", "paper.not-now");
    const issued = await issuePaper(viewer, {
      loanId,
      kind: kind as IssuePaperInput["kind"],
      subjects,
      language: textIn(fields, "language") as IssuePaperInput["language"],
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: papersWords.done(issued.length) };
  });
}
