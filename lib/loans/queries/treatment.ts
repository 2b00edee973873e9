/** The conservator's estimates of treatment on one loan, for the house. */
import { isLive } from "#lib/loans/loan-state.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { hoursTogether, type TreatmentHours } from "#lib/loans/treatment.ts";
import { maySee } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";

export type TreatmentRow = {
  specimenId: string;
  accessionNumber: string;
  title: string;
  /** Null where nobody has estimated it. */
  estimate: { hours: TreatmentHours; work: string; by: string; on: DateText } | null;
};

export type TreatmentSheet = { rows: TreatmentRow[]; together: string };

/** Hours that are stated on the lines which still count, for a quotation. */
export async function treatmentHoursOf(
  reader: Database | Transaction,
  loanId: string,
): Promise<TreatmentHours[]> {
  const lines = await reader.loanLine.findMany({
    where: { loanId, treatmentHours: { not: null } },
    select: { state: true, treatmentHours: true },
  });
  return lines.flatMap(({ state, treatmentHours }) =>
    treatmentHours !== null && isLive(state as LineState) ? [treatmentHours.toString()] : [],
  );
}

/** Null for a borrower, who reads the hours on the quotation. @throws {Refusal} "not-found" for what is not theirs */
export async function treatmentOf(viewer: Viewer, loanId: string): Promise<TreatmentSheet | null> {
  await requireLoanFile(viewer, loanId);
  if (!maySee(viewer, "allLoans")) return null;
  const lines = await database().loanLine.findMany({
    where: { loanId },
    select: {
      state: true,
      specimenId: true,
      specimen: { select: { accessionNumber: true, title: true } },
      treatmentHours: true,
      treatmentWork: true,
      treatmentBy: true,
      treatmentOn: true,
    },
    orderBy: { specimen: { accessionNumber: "asc" } },
  });
  const rows = lines
    .filter(({ state, treatmentHours }) => isLive(state as LineState) || treatmentHours !== null)
    .map(
      ({ specimenId, specimen, treatmentHours, treatmentWork, treatmentBy, treatmentOn }): TreatmentRow => ({
        specimenId,
        ...specimen,
        estimate:
          treatmentHours === null || treatmentOn === null
            ? null
            : {
                hours: treatmentHours.toString(),
                work: treatmentWork,
                by: treatmentBy,
                on: toDateText(treatmentOn),
              },
      }),
    );
  return { rows, together: hoursTogether(rows.flatMap(({ estimate }) => estimate?.hours ?? [])) };
}
