/**
 * Reads of single records. Everyone signed in may read them; facts of a person,
 * costs and pictures are left out where the viewer may not see them. Costs belong
 * to a loan for who borrows, so a borrower never reads them here; a picture of a
 * human specimen is shown to a borrower only where every donor allowed pictures,
 * and to who is not signed in only where every donor allowed them openly online.
 */
import { maySee } from "#lib/people/permission.ts";
import { isBorrower, isOfTheHouse, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { toDateTextOrNull } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { provenanceFactsOf } from "#lib/provenance/queries.ts";
import type { Scope } from "#lib/provenance/schema.ts";
import { strictestConsent } from "#lib/provenance/strictest.ts";
import { compactNumber } from "#lib/specimens/accession-number.ts";
import { type FragilityClassName, fragilityClassOf } from "#lib/specimens/classes.ts";
import { type SheetPlace, storedSheetPlace } from "#lib/specimens/drawing/sheet-place.ts";
import { seriesOfSheetColumns } from "#lib/specimens/queries/drawn-facts.ts";
import { toSpecimenInput } from "#lib/specimens/record.ts";
import type { LegalFacts, PreparationStepInput, Shown, SpecimenInput } from "#lib/specimens/schema.ts";
import { presentStates, showsTeeth, toothStructures } from "#lib/specimens/teeth.ts";

type Reader = Database | Transaction;

const borrowersScopes: readonly Scope[] = ["pictures, internal", "pictures, professional publication"];
const publicScopes: readonly Scope[] = ["pictures and models, openly online"];

type PicturedRow = { id: string; human: boolean; pictureId: string | null };

/** Ids of specimens whose picture the viewer may see. */
export async function picturesSeen(viewer: Viewer, rows: readonly PicturedRow[]): Promise<Set<string>> {
  const pictured = rows.filter((row) => row.pictureId !== null);
  if (isOfTheHouse(viewer)) return new Set(pictured.map(({ id }) => id));
  return await picturesAllowed(database(), rows, isBorrower(viewer) ? borrowersScopes : publicScopes);
}

/** Ids of specimens whose picture may stand on a paper that goes to a borrower, whoever prints it. */
export async function picturesForBorrowers(
  reader: Reader,
  rows: readonly PicturedRow[],
): Promise<Set<string>> {
  return await picturesAllowed(reader, rows, borrowersScopes);
}

/** Every donor of a human specimen has granted one of the scopes; an animal's picture is shown. */
async function picturesAllowed(
  reader: Reader,
  rows: readonly PicturedRow[],
  wanted: readonly Scope[],
): Promise<Set<string>> {
  const pictured = rows.filter((row) => row.pictureId !== null);
  const facts = await provenanceFactsOf(
    reader,
    pictured.filter((row) => row.human).map(({ id }) => id),
  );
  const day = today();
  const allowed = ({ id, human }: { id: string; human: boolean }) => {
    if (!human) return true;
    const donors = facts.get(id);
    if (!donors) return false;
    const { answers } = strictestConsent(donors, day);
    return wanted.some((scope) => answers[scope].answer === "granted");
  };
  return new Set(pictured.filter(allowed).map(({ id }) => id));
}

const byName = { select: { id: true, accessionNumber: true, title: true } } as const;

export type SpecimenName = { id: string; accessionNumber: string; title: string };

/** The full record; a guarded fact that the viewer may not see is not there at all. */
export type SpecimenSheet = Omit<SpecimenInput, "sex" | "ageBand" | "replacementCost" | "legal"> & {
  id: string;
  version: number;
  sex?: SpecimenInput["sex"];
  ageBand?: SpecimenInput["ageBand"];
  /** The time of death is a fact of the person. */
  legal: Omit<LegalFacts, "deathPeriod"> & { deathPeriod?: LegalFacts["deathPeriod"] };
  replacementCost?: SpecimenInput["replacementCost"];
  shown: (Shown & { english: string; latin: string })[];
  hasTeeth: boolean;
  preparationSteps: (PreparationStepInput & { id: string })[];
  whole: SpecimenName | null;
  parts: SpecimenName[];
  series: { id: string; code: string; title: string; number: number; thicknessMm: number } | null;
  /** Where a sheet lies in its series, for its drawing; null for what is none. */
  sheetPlace: SheetPlace | null;
  picture: { id: string; widthPx: number | null; heightPx: number | null } | null;
};

const mostParts = 500;

export async function getSpecimen(viewer: Viewer, id: string): Promise<SpecimenSheet> {
  if (!Id.safeParse(id).success) throw notFound("specimen");
  const row = await database().specimen.findUnique({
    where: { id },
    include: {
      components: { orderBy: { name: "asc" } },
      formerNumbers: { orderBy: [{ kind: "asc" }, { number: "asc" }] },
      hazards: { orderBy: { substance: "asc" } },
      shows: { include: { structure: true }, orderBy: [{ structure: { english: "asc" } }, { side: "asc" }] },
      preparationSteps: { orderBy: [{ startedOn: { sort: "asc", nulls: "last" } }, { id: "asc" }] },
      whole: byName,
      parts: { ...byName, orderBy: { accessionNumber: "asc" }, take: mostParts },
      series: { select: { id: true, ...seriesOfSheetColumns } },
      picture: { select: { id: true, widthPx: true, heightPx: true } },
    },
  });
  if (!row) throw notFound("specimen");
  const { sex, ageBand, replacementCost, legal, ...open } = toSpecimenInput(row);
  const { deathPeriod, ...openInLaw } = legal;
  const seesPerson = !row.human || maySee(viewer, "personFacts");
  const seen = await picturesSeen(viewer, [row]);
  return {
    ...open,
    id: row.id,
    version: row.version,
    ...(seesPerson ? { sex, ageBand } : {}),
    legal: seesPerson ? { ...openInLaw, deathPeriod } : openInLaw,
    ...(maySee(viewer, "replacementCost", { institutionId: null }) ? { replacementCost } : {}),
    shown: row.shows.map(({ structure, structureId, side, seen: grade, state, remark }) => ({
      structureId,
      side: side as Shown["side"],
      seen: grade as Shown["seen"],
      state: state as Shown["state"],
      remark,
      english: structure.english,
      latin: structure.latin,
    })),
    hasTeeth: showsTeeth(
      row.shows.map(({ structureId, state }) => ({ structureId, state: state as Shown["state"] })),
    ),
    preparationSteps: row.preparationSteps.map((step) => ({
      id: step.id,
      step: step.step as PreparationStepInput["step"],
      startedOn: toDateTextOrNull(step.startedOn),
      endedOn: toDateTextOrNull(step.endedOn),
      note: step.note,
    })),
    whole: row.whole,
    parts: row.parts,
    series:
      row.series && row.numberInSeries !== null
        ? {
            id: row.series.id,
            code: row.series.code,
            title: row.series.title,
            number: row.numberInSeries,
            thicknessMm: row.sheetThicknessMm ?? row.series.thicknessMm,
          }
        : null,
    sheetPlace: storedSheetPlace(row.series, row.numberInSeries),
    picture: seen.has(row.id) ? row.picture : null,
  };
}

/** The bytes of a specimen's picture, for who may see it. */
export async function getPicture(
  viewer: Viewer,
  specimenId: string,
): Promise<{ mediaType: string; content: Uint8Array; sha256: string }> {
  if (!Id.safeParse(specimenId).success) throw notFound("picture");
  const row = await database().specimen.findUnique({
    where: { id: specimenId },
    select: {
      id: true,
      human: true,
      pictureId: true,
      picture: { select: { mediaType: true, content: true, sha256: true } },
    },
  });
  if (!row?.picture || !(await picturesSeen(viewer, [row])).has(row.id)) throw notFound("picture");
  return row.picture;
}

/** Specimens that have or had this number, however its strokes and spaces are written; at most twenty. */
export async function findByNumber(
  _viewer: Viewer,
  number: string,
): Promise<(SpecimenName & { matched: string })[]> {
  const compact = compactNumber(number);
  if (compact === "" || compact.length > 60) return [];
  const rows = await database().specimen.findMany({
    where: { searchKey: { contains: ` ${compact} ` } },
    select: { ...byName.select, formerNumbers: { select: { number: true } } },
    orderBy: { accessionNumber: "asc" },
    take: 200,
  });
  return rows
    .flatMap(({ formerNumbers, ...name }) => {
      const numbers = [name.accessionNumber, ...formerNumbers.map((former) => former.number)];
      const matched = numbers.find((candidate) => compactNumber(candidate) === compact);
      return matched === undefined ? [] : [{ ...name, matched }];
    })
    .slice(0, 20);
}

/** What rules, crates, limits and papers ask of a specimen. */
export type SpecimenFacts = Omit<SpecimenInput, "formerNumbers"> & {
  id: string;
  seriesId: string | null;
  seriesCode: string | null;
  numberInSeries: number | null;
  /** Thickness of a sheet: its own, or that of its series. */
  sheetThicknessMm: number | null;
  hasTeeth: boolean;
  fragilityClass: FragilityClassName;
};

/** Facts for a command or query that has already authorised; guarded ones included. Ids that do not exist have no entry. */
export async function specimenFactsOf(
  reader: Reader,
  specimenIds: readonly string[],
): Promise<Map<string, SpecimenFacts>> {
  const rows = await reader.specimen.findMany({
    where: { id: { in: [...new Set(specimenIds)] } },
    include: {
      components: { orderBy: { name: "asc" } },
      hazards: { orderBy: { substance: "asc" } },
      series: { select: { code: true, thicknessMm: true } },
      shows: {
        where: { structureId: { in: [...toothStructures] }, state: { in: [...presentStates] } },
        select: { structureId: true },
        take: 1,
      },
    },
    orderBy: { accessionNumber: "asc" },
  });
  return new Map(
    rows.map(({ series, shows: teeth, ...row }) => {
      const { formerNumbers: _none, ...facts } = toSpecimenInput({ ...row, formerNumbers: [] });
      const { id, seriesId, numberInSeries } = row;
      const sheetThicknessMm = row.sheetThicknessMm ?? series?.thicknessMm ?? null;
      const hasTeeth = teeth.length > 0;
      const fragilityClass = fragilityClassOf({ ...facts, hasTeeth });
      return [
        id,
        {
          ...facts,
          id,
          seriesId,
          seriesCode: series?.code ?? null,
          numberInSeries,
          sheetThicknessMm,
          hasTeeth,
          fragilityClass,
        },
      ];
    }),
  );
}

/** The numbers that each series holds, in their order; for a command or query that has already authorised. */
export async function sheetNumbersOf(
  reader: Reader,
  seriesIds: readonly string[],
): Promise<Map<string, number[]>> {
  const rows = await reader.specimen.findMany({
    where: { seriesId: { in: [...new Set(seriesIds)] }, numberInSeries: { not: null } },
    select: { seriesId: true, numberInSeries: true },
    orderBy: { numberInSeries: "asc" },
  });
  const numbers = new Map<string, number[]>();
  for (const { seriesId, numberInSeries } of rows)
    if (seriesId !== null && numberInSeries !== null)
      numbers.set(seriesId, [...(numbers.get(seriesId) ?? []), numberInSeries]);
  return numbers;
}
