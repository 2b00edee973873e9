/**
 * Recording a specimen and revising its record. A revision states which version
 * it was made from and is refused when somebody else was faster. Rows of the
 * lists that stay as they were are not written, so the audit tells what changed.
 */
import { z } from "zod";
import { command, type Work } from "#lib/people/command.ts";
import { maySee } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { type FieldIssue, notFound, Refusal } from "#lib/platform/refusal.ts";
import { followsPattern } from "#lib/specimens/accession-number.ts";
import {
  listChanges,
  repeatedAt,
  toColumns,
  toReplacementCost,
  toSpecimenInput,
} from "#lib/specimens/record.ts";
import { type Component, type FormerNumber, type Hazard, SpecimenInput } from "#lib/specimens/schema.ts";

const componentKey = ({ name }: Component) => name;
const formerNumberKey = ({ number, kind }: FormerNumber) => `${kind}/${number}`;
const hazardKey = ({ substance }: Hazard) => substance;

const issue = (path: string, message: string): FieldIssue => ({ path, message });

/** Whether the specimen would become a part of itself. */
async function wholeIsBelow({ transaction }: Work, id: string, wholeId: string): Promise<boolean> {
  const found = await transaction.$queryRaw<unknown[]>`
    WITH RECURSIVE above (id) AS (
      SELECT ${wholeId}::uuid
      UNION SELECT specimen.whole_id FROM specimen JOIN above ON specimen.id = above.id WHERE specimen.whole_id IS NOT NULL
    )
    SELECT 1 FROM above WHERE id = ${id}::uuid`;
  return found.length > 0;
}

/** What only the collection can tell of a record; the rest its schema has told. */
async function checkRecord(work: Work, id: string, input: SpecimenInput): Promise<void> {
  const { transaction } = work;
  const issues: FieldIssue[] = [];
  const { accessionPattern, accessionExample } = await centreSettings(transaction);
  if (!followsPattern(input.accessionNumber, accessionPattern))
    issues.push(issue("accessionNumber", "specimen.number-pattern"));
  const namesake = await transaction.specimen.findFirst({
    where: { accessionNumber: input.accessionNumber, id: { not: id } },
    select: { id: true },
  });
  if (namesake) issues.push(issue("accessionNumber", "specimen.number-taken"));
  for (const at of repeatedAt(input.components, componentKey))
    issues.push(issue(`components.${at}.name`, "specimen.twice"));
  for (const at of repeatedAt(input.formerNumbers, formerNumberKey))
    issues.push(issue(`formerNumbers.${at}.number`, "specimen.twice"));
  for (const at of repeatedAt(input.hazards, hazardKey))
    issues.push(issue(`hazards.${at}.substance`, "specimen.twice"));
  if (input.wholeId !== null) {
    const whole = await transaction.specimen.findUnique({
      where: { id: input.wholeId },
      select: { id: true },
    });
    if (!whole) issues.push(issue("wholeId", "specimen.whole-unknown"));
    else if (await wholeIsBelow(work, id, input.wholeId))
      issues.push(issue("wholeId", "specimen.whole-in-ring"));
  }
  if (issues.length > 0) throw new Refusal("invalid", "input.invalid", { example: accessionExample }, issues);
}

export const recordSpecimen = command("recordSpecimen", SpecimenInput, async (work, input) => {
  const { transaction } = work;
  const id = newId();
  await checkRecord(work, id, input);
  await transaction.specimen.create({ data: { id, ...toColumns(input), recordedAt: work.now } });
  const { components, formerNumbers, hazards } = input;
  await transaction.component.createMany({
    data: components.map((row) => ({ id: newId(), specimenId: id, ...row })),
  });
  await transaction.formerNumber.createMany({
    data: formerNumbers.map((row) => ({ id: newId(), specimenId: id, ...row })),
  });
  await transaction.hazard.createMany({ data: hazards.map((row) => ({ specimenId: id, ...row })) });
  return { id, version: 1 };
});

/** The record as it should stand, the specimen it is of, and the version that was looked at. */
export const SpecimenRevision = z.intersection(
  z.object({ id: Id, version: z.number().int().min(1).max(2_000_000_000) }),
  SpecimenInput,
);
export type SpecimenRevision = z.infer<typeof SpecimenRevision>;

export const reviseSpecimen = command(
  "reviseSpecimen",
  SpecimenRevision,
  async (work, { id, version, ...typed }) => {
    const { transaction, viewer } = work;
    // Two revisions of one record wait for each other here.
    await transaction.$queryRaw`SELECT 1 FROM specimen WHERE id = ${id}::uuid FOR UPDATE`;
    const row = await transaction.specimen.findUnique({
      where: { id },
      include: { components: true, formerNumbers: true, hazards: true },
    });
    if (!row) throw notFound("specimen");
    if (row.version !== version)
      throw new Refusal("conflict", "record.changed-meanwhile", { version: row.version });
    // A cost that the viewer may not see is not theirs to change.
    const input = maySee(viewer, "replacementCost")
      ? typed
      : { ...typed, replacementCost: toReplacementCost(row) };
    if (row.seriesId !== null && input.kind !== "sheet")
      throw new Refusal("invalid", "input.invalid", {}, [issue("kind", "specimen.sheet-of-series")]);
    await checkRecord(work, id, input);
    await transaction.specimen.update({ where: { id }, data: { ...toColumns(input), version: version + 1 } });
    await reviseLists(work, id, toSpecimenInput(row), input);
    return { id, version: version + 1 };
  },
);

async function reviseLists(
  { transaction }: Work,
  specimenId: string,
  before: SpecimenInput,
  after: SpecimenInput,
): Promise<void> {
  const components = listChanges(before.components, after.components, componentKey);
  for (const { name } of components.removed)
    await transaction.component.delete({ where: { specimenId_name: { specimenId, name } } });
  for (const { name, ...data } of components.changed)
    await transaction.component.update({ where: { specimenId_name: { specimenId, name } }, data });
  await transaction.component.createMany({
    data: components.added.map((row) => ({ id: newId(), specimenId, ...row })),
  });

  const numbers = listChanges(before.formerNumbers, after.formerNumbers, formerNumberKey);
  const numberAt = ({ number, kind }: FormerNumber) => ({
    specimenId_number_kind: { specimenId, number, kind },
  });
  for (const former of numbers.removed) await transaction.formerNumber.delete({ where: numberAt(former) });
  for (const former of numbers.changed)
    await transaction.formerNumber.update({ where: numberAt(former), data: { markedOn: former.markedOn } });
  await transaction.formerNumber.createMany({
    data: numbers.added.map((row) => ({ id: newId(), specimenId, ...row })),
  });

  const hazards = listChanges(before.hazards, after.hazards, hazardKey);
  for (const { substance } of hazards.removed)
    await transaction.hazard.delete({ where: { specimenId_substance: { specimenId, substance } } });
  for (const { substance, ...data } of hazards.changed)
    await transaction.hazard.update({ where: { specimenId_substance: { specimenId, substance } }, data });
  await transaction.hazard.createMany({ data: hazards.added.map((row) => ({ specimenId, ...row })) });
}
