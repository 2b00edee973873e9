/**
 * Recording a series of sheets, with the records of its sheets in one go where a
 * template for them is given. Stated again with its id, the series is revised and
 * only numbers that have no sheet yet get one.
 */
import { command, type Work } from "#lib/people/command.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { newId } from "#lib/platform/identity.ts";
import { type FieldIssue, notFound, Refusal } from "#lib/platform/refusal.ts";
import { followsPattern } from "#lib/specimens/accession-number.ts";
import { orderedLandmarks } from "#lib/specimens/levels.ts";
import { toColumns } from "#lib/specimens/record.ts";
import { SeriesRecord, type SheetTemplate, sheetRecord } from "#lib/specimens/sheet-template.ts";

export type RecordedSeries = {
  id: string;
  sheets: { number: number; id: string; accessionNumber: string }[];
};

const issue = (path: string, message: string): FieldIssue => ({ path, message });

function checkSeries(input: SeriesRecord): FieldIssue[] {
  const issues: FieldIssue[] = [];
  const last = input.firstNumber + input.sheetCount - 1;
  const outside = (number: number) => number < input.firstNumber || number > last;
  for (const [index, { number }] of input.landmarks.entries())
    if (outside(number)) issues.push(issue(`landmarks.${index}.number`, "series.number-outside"));
  if (input.landmarks.length > 0 && orderedLandmarks(input.landmarks) === null)
    issues.push(issue("landmarks", "series.landmarks-disorder"));
  for (const [index, number] of (input.sheets?.missing ?? []).entries())
    if (outside(number)) issues.push(issue(`sheets.missing.${index}`, "series.number-outside"));
  const { human, scientificName, ageBand } = input.sheets ?? {
    human: true,
    scientificName: "Homo sapiens",
    ageBand: null,
  };
  if (human !== (scientificName === "Homo sapiens"))
    issues.push(issue("sheets.scientificName", "specimen.species-mismatch"));
  if (!human && ageBand !== null) issues.push(issue("sheets.ageBand", "specimen.age-band-human-only"));
  return issues;
}

/** Sheets that have a record already must stay within the numbers of the series. */
async function checkKeptSheets({ transaction }: Work, input: SeriesRecord, id: string): Promise<Set<number>> {
  const kept = await transaction.specimen.findMany({
    where: { seriesId: id },
    select: { numberInSeries: true },
  });
  const numbers = kept.flatMap(({ numberInSeries: number }) => (number === null ? [] : [number]));
  const last = input.firstNumber + input.sheetCount - 1;
  const outside = numbers.filter((number) => number < input.firstNumber || number > last);
  if (outside.length > 0)
    throw new Refusal("invalid", "input.invalid", { numbers: outside.slice(0, 10).join(", ") }, [
      issue("sheetCount", "series.sheet-outside"),
    ]);
  return new Set(numbers);
}

async function recordSheets(
  { transaction }: Work,
  input: SeriesRecord,
  template: SheetTemplate,
  seriesId: string,
  kept: ReadonlySet<number>,
): Promise<RecordedSeries["sheets"]> {
  const without = new Set([...template.missing, ...kept]);
  const numbers = Array.from({ length: input.sheetCount }, (_, index) => input.firstNumber + index).filter(
    (number) => !without.has(number),
  );
  const rows = numbers.map((number) => ({
    id: newId(),
    ...toColumns(sheetRecord(template, input, number)),
    seriesId,
    numberInSeries: number,
  }));
  const { accessionPattern, accessionExample } = await centreSettings(transaction);
  const odd = rows.find(({ accessionNumber }) => !followsPattern(accessionNumber, accessionPattern));
  if (odd)
    throw new Refusal(
      "invalid",
      "input.invalid",
      { example: accessionExample, accessionNumber: odd.accessionNumber },
      [issue("sheets.numberStem", "specimen.number-pattern")],
    );
  await transaction.specimen.createMany({ data: rows });
  return rows.map(({ id, numberInSeries: number, accessionNumber }) => ({ id, number, accessionNumber }));
}

export const recordSeries = command(
  "recordSeries",
  SeriesRecord,
  async (work, input): Promise<RecordedSeries> => {
    const { transaction } = work;
    const issues = checkSeries(input);
    if (issues.length > 0) throw new Refusal("invalid", "input.invalid", {}, issues);
    const { id: given, sheets: template, landmarks, ...data } = input;
    const id = given ?? newId();
    let kept: ReadonlySet<number> = new Set();
    if (given === null) await transaction.series.create({ data: { id, ...data } });
    else {
      const locked = await transaction.$queryRaw<
        unknown[]
      >`SELECT 1 FROM series WHERE id = ${given}::uuid FOR UPDATE`;
      if (locked.length === 0) throw notFound("series");
      kept = await checkKeptSheets(work, input, given);
      await transaction.series.update({ where: { id }, data });
      await transaction.seriesLandmark.deleteMany({ where: { seriesId: id } });
    }
    await transaction.seriesLandmark.createMany({
      data: landmarks.map((landmark) => ({ seriesId: id, ...landmark })),
    });
    return { id, sheets: template ? await recordSheets(work, input, template, id, kept) : [] };
  },
);
