/**
 * Estimating the hours of treatment that a specimen takes before it leaves. The newest
 * estimate takes the place of the one before; the audit keeps both. A quotation that is
 * drawn up already keeps what it says.
 */
import { liveLines, requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { TreatmentInput } from "#lib/loans/treatment.ts";
import { command } from "#lib/people/command.ts";
import { toDate } from "#lib/platform/dates.ts";
import { notFound } from "#lib/platform/refusal.ts";

const estimable = statesBeforeRelease.filter((state) => state !== "enquiry");

export const estimateTreatment = command(
  "estimateTreatment",
  TreatmentInput,
  async (work, { loanId, specimenId, hours, work: treatmentWork }): Promise<void> => {
    const loan = await takeLoan(work, loanId, "estimateTreatment");
    requireState(loan, estimable);
    const line = liveLines(loan).find((one) => one.specimenId === specimenId);
    if (!line) throw notFound("specimen");
    await work.transaction.loanLine.update({
      where: { id: line.id },
      data:
        hours === null
          ? { treatmentHours: null, treatmentWork: "", treatmentBy: "", treatmentOn: null }
          : {
              treatmentHours: hours,
              treatmentWork,
              treatmentBy: work.viewer.name,
              treatmentOn: toDate(work.today),
            },
    });
  },
);
