/**
 * Drawing up the agreement. Each version freezes its terms as canonical text with
 * a hash; a change is a new version, and with it the signatures under the one
 * before count no more; from the first signature on, a new version is a numbered
 * amendment. The rules run, and a bar stops it.
 */

import { DrawUpInput } from "#lib/agreements/agreement-input.ts";
import { saysTheSame } from "#lib/agreements/frozen-terms.ts";
import { liveLines, refuseBars, requireState } from "#lib/loans/at-hand.ts";
import { keepRun, refuseAndKeep, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { termsNow } from "#lib/loans/queries/terms-now.ts";
import { command } from "#lib/people/command.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";

export type DrawnUp = { id: Id; version: number; sha256: string };

export const drawUpAgreement = command(
  "drawUpAgreement",
  DrawUpInput,
  async (work, { loanId, languages, parameters }): Promise<DrawnUp> => {
    const loan = await takeLoan(work, loanId, "drawUpAgreement");
    requireState(loan, statesInPreparation);
    const loanCase = await loanCaseOf(work.transaction, loan.id, work.today);
    const findings = judgeSuitability(loanCase.request, loanCase.subjects);
    const judged = { stopped: "agreement", findings, inputs: loanCase } as const;
    await refuseAndKeep(work, "drawUpAgreement", loan.id, judged, () =>
      refuseBars(liveLines(loan), findings, "agreement.barred"),
    );
    const { terms, newest } = await termsNow(work.transaction, loanCase, {
      languages,
      parameters,
      today: work.today,
    });
    const { version } = terms.loan;
    if (newest && saysTheSame(newest.terms, terms))
      throw new Refusal("conflict", "agreement.unchanged", { version: newest.version });
    const text = canonicalText(terms);
    const id = newId();
    const sha256 = sha256Hex(text);
    await work.transaction.agreement.create({
      data: {
        id,
        loanId: loan.id,
        version,
        terms: text,
        sha256,
        drawnUpBy: work.viewer.name,
        drawnUpAt: work.now,
      },
    });
    await keepRun(work, loan.id, "agreement", findings, loanCase);
    await writeLetters(work, loan.id, "agreement", { version });
    return { id, version, sha256 };
  },
);
