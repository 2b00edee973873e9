/** Catalogue records to test with, made through the commands of the catalogue. */

import { programViewer } from "#lib/people/viewer.ts";
import { recordShown } from "#lib/specimens/commands/record-shown.ts";
import { recordSpecimen } from "#lib/specimens/commands/record-specimen.ts";
import { nothingKnownInLaw, type Shown, type SpecimenInput } from "#lib/specimens/schema.ts";
import type { SeriesRecord, SheetTemplate } from "#lib/specimens/sheet-template.ts";

let made = 0;

/** A record as somebody types it: a human organ of which little else is known. */
export function aRecord(said: Partial<SpecimenInput> = {}): SpecimenInput {
  made += 1;
  return {
    accessionNumber: `AN 2020.${String(made).padStart(4, "0")}`,
    title: `Preparation ${made}`,
    latinTitle: "",
    kind: "organ",
    preparation: "silicone-impregnated",
    fluidName: null,
    fluidPercent: null,
    human: true,
    scientificName: "Homo sapiens",
    sex: "female",
    ageBand: "60–69",
    side: "left",
    pose: "",
    size: null,
    massKg: null,
    mountedSize: null,
    mountedMassKg: null,
    massWeighed: false,
    partsAtRisk: "",
    use: "viewing only",
    light: "ordinary",
    replacementCost: null,
    preparedOn: null,
    acquiredOn: null,
    publishable: false,
    note: "",
    wholeId: null,
    components: [],
    formerNumbers: [],
    hazards: [],
    legal: nothingKnownInLaw,
    ...said,
  };
}

/** A row of what is shown: fully exposed on the left. */
export function aShown(structureId: string, said: Partial<Shown> = {}): Shown {
  return { structureId, side: "left", seen: "fully exposed", state: "shown", remark: "", ...said };
}

/** A specimen in the catalogue that shows these structures. */
export async function aRecorded(
  said: Partial<SpecimenInput> = {},
  shown: readonly (Shown | string)[] = [],
): Promise<{ id: string; accessionNumber: string }> {
  const record = aRecord(said);
  const { id } = await recordSpecimen(programViewer, record);
  if (shown.length > 0)
    await recordShown(programViewer, {
      specimenId: id,
      shown: shown.map((row) => (typeof row === "string" ? aShown(row) : row)),
    });
  return { id, accessionNumber: record.accessionNumber };
}

/** What the sheets of a human series have in common. */
export function aSheetTemplate(said: Partial<SheetTemplate> = {}): SheetTemplate {
  made += 1;
  return {
    numberStem: `SH ${String(made).padStart(3, "0")}/`,
    digits: 3,
    titleStem: "Trunk, transverse sheet",
    human: true,
    scientificName: "Homo sapiens",
    sex: "male",
    ageBand: "70–79",
    side: "both",
    size: { lengthMm: 420, widthMm: 300, heightMm: 4 },
    massKg: 0.6,
    use: "viewing only",
    light: "ordinary",
    replacementCost: null,
    preparedOn: null,
    acquiredOn: null,
    publishable: false,
    missing: [],
    ...said,
  };
}

/** A transverse series of ten sheets, all of them recorded. */
export function aSeriesRecord(said: Partial<SeriesRecord> = {}): SeriesRecord {
  made += 1;
  return {
    id: null,
    code: `SH ${String(made).padStart(3, "0")}`,
    title: "Trunk, transverse",
    plane: "transverse",
    direction: "head to foot",
    thicknessMm: 3,
    sawLossMm: 1,
    startLevelMm: 0,
    firstNumber: 1,
    sheetCount: 10,
    embedding: "epoxy",
    imagedFace: "lower",
    shrinkageArea: null,
    note: "",
    landmarks: [],
    sheets: aSheetTemplate(),
    ...said,
  };
}
