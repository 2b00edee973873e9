/**
 * What a loan's file shows of the specimens on it beyond their lines: what they
 * are, what belongs to them, which of them are sheets of a series. Nothing guarded
 * is among it.
 */
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type SpecimenFacts, specimenFactsOf } from "#lib/specimens/queries.ts";

export type LoanSpecimen = Pick<
  SpecimenFacts,
  | "id"
  | "accessionNumber"
  | "title"
  | "kind"
  | "preparation"
  | "fluidName"
  | "light"
  | "scientificName"
  | "side"
  | "components"
  | "seriesCode"
  | "numberInSeries"
>;

/** By specimen id, every line's specimen whatever its state. */
export async function listLoanSpecimens(viewer: Viewer, loanId: string): Promise<Map<string, LoanSpecimen>> {
  await requireLoanFile(viewer, loanId);
  const lines = await database().loanLine.findMany({ where: { loanId }, select: { specimenId: true } });
  const facts = await specimenFactsOf(
    database(),
    lines.map((line) => line.specimenId),
  );
  return new Map(
    [...facts.values()].map((one) => [
      one.id,
      {
        id: one.id,
        accessionNumber: one.accessionNumber,
        title: one.title,
        kind: one.kind,
        preparation: one.preparation,
        fluidName: one.fluidName,
        light: one.light,
        scientificName: one.scientificName,
        side: one.side,
        components: one.components,
        seriesCode: one.seriesCode,
        numberInSeries: one.numberInSeries,
      },
    ]),
  );
}
