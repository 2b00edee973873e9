/**
 * What the sheets of one series have in common, from which their records are made
 * in one go: their numbers follow from the stem of the series, their preparation
 * from its embedding. Numbers that are missing get no record.
 */
import { z } from "zod";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { sheetAccessionNumber } from "#lib/specimens/accession-number.ts";
import {
  ageBands,
  lightClasses,
  ReplacementCost,
  SeriesInput,
  Size,
  SpecimenInput,
  sexes,
  specimenSides,
  uses,
} from "#lib/specimens/schema.ts";

const text = (most: number) => z.string().trim().max(most);

export const SheetTemplate = z.object({
  /** What stands before the number: "AN 2019.0100/" gives "AN 2019.0100/007". */
  numberStem: z.string().max(36).min(1),
  digits: z.number().int().min(1).max(6),
  titleStem: text(180).min(1),
  human: z.boolean(),
  scientificName: text(120).min(1),
  sex: z.enum(sexes),
  ageBand: z.enum(ageBands).nullable(),
  side: z.enum(specimenSides),
  size: Size.nullable(),
  massKg: z.number().positive().max(2_000).nullable(),
  use: z.enum(uses),
  light: z.enum(lightClasses),
  replacementCost: ReplacementCost.nullable(),
  preparedOn: DateText.nullable(),
  acquiredOn: DateText.nullable(),
  publishable: z.boolean(),
  /** Numbers for which there is no sheet. */
  missing: z.array(z.number().int().min(0).max(20_000)).max(10_000),
});
export type SheetTemplate = z.infer<typeof SheetTemplate>;

/** A series as it is typed in, with the sheets it is recorded with. */
export const SeriesRecord = SeriesInput.extend({
  /** Null for a new series. */
  id: Id.nullable(),
  /** What all new sheets have in common; null to record none. */
  sheets: SheetTemplate.nullable(),
});
export type SeriesRecord = z.infer<typeof SeriesRecord>;

/** The record of one sheet. */
export function sheetRecord(
  template: SheetTemplate,
  series: Pick<SeriesInput, "embedding">,
  number: number,
): SpecimenInput {
  const { numberStem, digits, titleStem, missing: _missing, ...common } = template;
  return SpecimenInput.parse({
    ...common,
    accessionNumber: sheetAccessionNumber(numberStem, number, digits),
    title: `${titleStem} ${number}`,
    latinTitle: "",
    kind: "sheet",
    preparation: series.embedding === "epoxy" ? "epoxy sheet" : "polyester sheet",
    fluidName: null,
    fluidPercent: null,
    pose: "",
    mountedSize: null,
    mountedMassKg: null,
    massWeighed: false,
    partsAtRisk: "",
    note: "",
    wholeId: null,
    components: [],
    formerNumbers: [],
    hazards: [],
  });
}
