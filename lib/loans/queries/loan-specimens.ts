/**
 * What a loan's file shows of the specimens on it beyond their lines: what they
 * are, what belongs to them, which of them are sheets of a series. Nothing guarded
 * is among it.
 */
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type DrawnFacts, drawnFactsOf } from "#lib/specimens/queries/drawn-facts.ts";
import { type SpecimenFacts, specimenFactsOf } from "#lib/specimens/queries.ts";

export type LoanSpecimen = Pick<
  SpecimenFacts,
  | "id"
  | "accessionNumber"
  | "title"
  | "latinTitle"
  | "kind"
  | "preparation"
  | "fluidName"
  | "light"
  | "partsAtRisk"
  | "hasTeeth"
  | "scientificName"
  | "side"
  | "components"
  | "seriesCode"
  | "numberInSeries"
> &
  DrawnFacts;

/** By specimen id, every line's specimen whatever its state. */
export async function listLoanSpecimens(viewer: Viewer, loanId: string): Promise<Map<string, LoanSpecimen>> {
  await requireLoanFile(viewer, loanId);
  const lines = await database().loanLine.findMany({ where: { loanId }, select: { specimenId: true } });
  const ids = lines.map((line) => line.specimenId);
  const [facts, drawn] = await Promise.all([specimenFactsOf(database(), ids), drawnFactsOf(database(), ids)]);
  return new Map(
    [...facts.values()].map((one) => [
      one.id,
      {
        id: one.id,
        accessionNumber: one.accessionNumber,
        title: one.title,
        latinTitle: one.latinTitle,
        kind: one.kind,
        preparation: one.preparation,
        fluidName: one.fluidName,
        light: one.light,
        partsAtRisk: one.partsAtRisk,
        hasTeeth: one.hasTeeth,
        scientificName: one.scientificName,
        side: one.side,
        components: one.components,
        seriesCode: one.seriesCode,
        numberInSeries: one.numberInSeries,
        shown: drawn.get(one.id)?.shown ?? [],
        sheetPlace: drawn.get(one.id)?.sheetPlace ?? null,
      },
    ]),
  );
}
