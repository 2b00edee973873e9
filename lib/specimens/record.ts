/**
 * Between the record as people type and read it and the row as it is stored. The
 * two ways are inverse: what was typed comes back as it was typed.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { toDateOrNull, toDateTextOrNull } from "#lib/platform/dates.ts";
import type {
  Component,
  FormerNumber,
  Hazard,
  LegalFacts,
  ReplacementCost,
  Size,
  SpecimenInput,
} from "#lib/specimens/schema.ts";
import { specimenSearchKey } from "#lib/specimens/search-text.ts";

export type SpecimenRow = Prisma.SpecimenGetPayload<object>;
export type SpecimenColumns = Omit<Prisma.SpecimenUncheckedCreateInput, "id" | "version" | "recordedAt">;

/** The columns of a specimen's own row; its lists are rows of other tables. */
export function toColumns(input: SpecimenInput): SpecimenColumns {
  const {
    size,
    mountedSize,
    replacementCost,
    legal,
    components: _components,
    formerNumbers,
    hazards: _hazards,
    ...plain
  } = input;
  return {
    ...plain,
    ...legal,
    heldSince: toDateOrNull(legal.heldSince),
    lengthMm: size?.lengthMm ?? null,
    widthMm: size?.widthMm ?? null,
    heightMm: size?.heightMm ?? null,
    mountedLengthMm: mountedSize?.lengthMm ?? null,
    mountedWidthMm: mountedSize?.widthMm ?? null,
    mountedHeightMm: mountedSize?.heightMm ?? null,
    replacementCostMinor: replacementCost ? BigInt(replacementCost.minor) : null,
    replacementCostCurrency: replacementCost?.currency ?? null,
    replacementCostBasis: replacementCost?.basis ?? null,
    replacementCostOn: toDateOrNull(replacementCost?.statedOn),
    replacementCostBy: replacementCost?.statedBy ?? null,
    preparedOn: toDateOrNull(input.preparedOn),
    acquiredOn: toDateOrNull(input.acquiredOn),
    searchKey: specimenSearchKey({ ...input, formerNumbers }),
  };
}

export function toLegalFacts(row: SpecimenRow): LegalFacts {
  return {
    containsCells: row.containsCells,
    wholeBody: row.wholeBody,
    originCountry: row.originCountry,
    imported: row.imported,
    heldSince: toDateTextOrNull(row.heldSince),
    deathPeriod: row.deathPeriod as LegalFacts["deathPeriod"],
    deathPapers: row.deathPapers,
    anatomicalExamination: row.anatomicalExamination,
    speciesAppendix: row.speciesAppendix as LegalFacts["speciesAppendix"],
    madePeriod: row.madePeriod as LegalFacts["madePeriod"],
    freeFluidMl: row.freeFluidMl,
  };
}

function toSize(lengthMm: number | null, widthMm: number | null, heightMm: number | null): Size | null {
  return lengthMm === null || widthMm === null || heightMm === null ? null : { lengthMm, widthMm, heightMm };
}

export function toReplacementCost(row: SpecimenRow): ReplacementCost | null {
  const minor = row.replacementCostMinor;
  const statedOn = toDateTextOrNull(row.replacementCostOn);
  if (minor === null || row.replacementCostCurrency === null || statedOn === null) return null;
  return {
    minor: Number(minor),
    currency: row.replacementCostCurrency,
    basis: row.replacementCostBasis as ReplacementCost["basis"],
    statedOn,
    statedBy: row.replacementCostBy ?? "",
  };
}

export type SpecimenLists = {
  components: readonly Prisma.ComponentGetPayload<object>[];
  formerNumbers: readonly Prisma.FormerNumberGetPayload<object>[];
  hazards: readonly Prisma.HazardGetPayload<object>[];
};

/** The record as it was typed. */
export function toSpecimenInput(row: SpecimenRow & SpecimenLists): SpecimenInput {
  return {
    accessionNumber: row.accessionNumber,
    title: row.title,
    latinTitle: row.latinTitle,
    kind: row.kind as SpecimenInput["kind"],
    preparation: row.preparation as SpecimenInput["preparation"],
    fluidName: row.fluidName as SpecimenInput["fluidName"],
    fluidPercent: row.fluidPercent,
    human: row.human,
    scientificName: row.scientificName,
    sex: row.sex as SpecimenInput["sex"],
    ageBand: row.ageBand as SpecimenInput["ageBand"],
    side: row.side as SpecimenInput["side"],
    pose: row.pose,
    size: toSize(row.lengthMm, row.widthMm, row.heightMm),
    massKg: row.massKg,
    mountedSize: toSize(row.mountedLengthMm, row.mountedWidthMm, row.mountedHeightMm),
    mountedMassKg: row.mountedMassKg,
    massWeighed: row.massWeighed,
    partsAtRisk: row.partsAtRisk,
    use: row.use as SpecimenInput["use"],
    light: row.light as SpecimenInput["light"],
    replacementCost: toReplacementCost(row),
    preparedOn: toDateTextOrNull(row.preparedOn),
    acquiredOn: toDateTextOrNull(row.acquiredOn),
    publishable: row.publishable,
    note: row.note,
    wholeId: row.wholeId,
    legal: toLegalFacts(row),
    components: row.components.map(({ name, count, detachable }): Component => ({ name, count, detachable })),
    formerNumbers: row.formerNumbers.map(
      ({ number, kind, markedOn }): FormerNumber => ({
        number,
        kind: kind as FormerNumber["kind"],
        markedOn,
      }),
    ),
    hazards: row.hazards.map(
      ({ substance, percent, note }): Hazard => ({
        substance: substance as Hazard["substance"],
        percent,
        note,
      }),
    ),
  };
}

/** What changes between two lists of rows that are told apart by a key. */
export function listChanges<Row>(
  before: readonly Row[],
  after: readonly Row[],
  keyOf: (row: Row) => string,
): { added: Row[]; changed: Row[]; removed: Row[] } {
  const old = new Map(before.map((row) => [keyOf(row), row]));
  const kept = new Set(after.map(keyOf));
  const differs = (one: Row, other: Row) => JSON.stringify(one) !== JSON.stringify(other);
  return {
    added: after.filter((row) => !old.has(keyOf(row))),
    changed: after.filter((row) => {
      const earlier = old.get(keyOf(row));
      return earlier !== undefined && differs(earlier, row);
    }),
    removed: before.filter((row) => !kept.has(keyOf(row))),
  };
}

/** Positions of entries whose key stands earlier in the list. */
export function repeatedAt<Row>(rows: readonly Row[], keyOf: (row: Row) => string): number[] {
  const seen = new Set<string>();
  return rows.flatMap((row, index) => {
    const key = keyOf(row);
    if (seen.has(key)) return [index];
    seen.add(key);
    return [];
  });
}
