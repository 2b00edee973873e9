/**
 * Reads of the catalogue. Everyone signed in may search it; facts of a person,
 * costs and pictures are left out where the viewer may not see them. Costs belong
 * to a loan for who borrows, so a borrower never reads them here; a picture of a
 * human specimen is shown to a borrower only where every donor allowed pictures.
 */
import type { z } from "zod";
import { Prisma } from "#.generated/prisma/client.ts";
import { type StructureLabel, structuresMeant, structuresMeantForgiving } from "#lib/anatomy/queries.ts";
import { maySee, requireSight } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { now, today } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { toDateTextOrNull } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { provenanceFactsOf } from "#lib/provenance/queries.ts";
import { strictestConsent } from "#lib/provenance/strictest.ts";
import { compactNumber } from "#lib/specimens/accession-number.ts";
import { type FragilityClassName, fragilityClassOf } from "#lib/specimens/classes.ts";
import {
  keyCondition,
  likeTextCondition,
  oftenStatement,
  plainConditions,
  showsCondition,
  textCondition,
} from "#lib/specimens/conditions.ts";
import {
  type Evidence,
  readPageKey,
  SpecimenFilter,
  SpecimenPage,
  writePageKey,
} from "#lib/specimens/filter.ts";
import { toSpecimenInput } from "#lib/specimens/record.ts";
import {
  type PreparationStepInput,
  type Shown,
  type SpecimenInput,
  seenGrades,
} from "#lib/specimens/schema.ts";

type Reader = Database | Transaction;

export type SpecimenListRow = {
  id: string;
  accessionNumber: string;
  title: string;
  latinTitle: string;
  kind: SpecimenInput["kind"];
  preparation: SpecimenInput["preparation"];
  human: boolean;
  scientificName: string;
  use: SpecimenInput["use"];
  side: SpecimenInput["side"];
  seriesCode: string | null;
  numberInSeries: number | null;
  /** Null without a picture, and where the viewer may not see it. */
  pictureId: string | null;
  /** What of the searched structure it shows; empty when its number or title was found. */
  shows: (StructureLabel & { side: Shown["side"]; seen: Shown["seen"]; state: Shown["state"] })[];
};

export type SpecimenList = {
  rows: SpecimenListRow[];
  next: string | null;
  previous: string | null;
  /** The structures that the text was taken to mean. */
  meant: StructureLabel[];
};

type PageRow = Omit<SpecimenListRow, "shows">;

/** Searched structures and text of one filter: as written, and only if that finds nothing, forgivingly. */
async function readSearch(viewer: Viewer, filter: SpecimenFilter) {
  const text = filter.text ?? "";
  const literal = text === "" ? null : textCondition(text);
  if (literal === null) return { meant: [], textPart: null };
  const meant = await structuresMeant(viewer, text);
  if (meant.length > 0) return { meant, textPart: literal };
  const found = await database().$queryRaw<unknown[]>`SELECT 1 FROM specimen s WHERE ${literal} LIMIT 1`;
  if (found.length > 0) return { meant, textPart: literal };
  // A number is right or it is another number.
  const textPart = /\p{N}/u.test(text) ? null : likeTextCondition(text);
  return { meant: await structuresMeantForgiving(viewer, text), textPart };
}

async function shows(structureIds: readonly string[], evidence: Evidence): Promise<Prisma.Sql> {
  const [counted] = await database().$queryRaw<{ often: boolean }[]>(oftenStatement(structureIds, evidence));
  return showsCondition(structureIds, evidence, counted?.often ?? false);
}

const pageColumns = Prisma.sql`s.id, s.accession_number AS "accessionNumber", s.title, s.latin_title AS "latinTitle",
  s.kind, s.preparation, s.human, s.scientific_name AS "scientificName", s.use, s.side,
  s.number_in_series AS "numberInSeries", s.picture_id AS "pictureId", series.code AS "seriesCode"`;

/**
 * Specimens by accession number. A text is looked for in numbers and titles and, by the vocabulary of anatomy,
 * in what specimens are recorded as showing; what is recorded as removed or absent does not count as shown.
 */
export async function listSpecimens(
  viewer: Viewer,
  asked: z.input<typeof SpecimenFilter> = {},
  page: z.input<typeof SpecimenPage> = {},
): Promise<SpecimenList> {
  const filter = parseInput(SpecimenFilter, asked);
  const { after, before, size } = parseInput(SpecimenPage, page);
  if (filter.placeId !== undefined) requireSight(viewer, "storeLocation");
  const backwards = before !== undefined;
  const key = before ?? after;
  const conditions = plainConditions(filter, now());
  if (key !== undefined) conditions.push(keyCondition(readPageKey(key), backwards));
  if (filter.structureId !== undefined) conditions.push(await shows([filter.structureId], filter.evidence));

  const { meant, textPart } = await readSearch(viewer, filter);
  const meantIds = meant.map(({ id }) => id);
  const searched = textPart !== null || (filter.text ?? "") !== "";
  const ways: Prisma.Sql[] = [];
  if (textPart !== null && filter.evidence === "recorded") ways.push(textPart);
  if (meantIds.length > 0) ways.push(await shows(meantIds, filter.evidence));
  if (!searched) ways.push(Prisma.sql`TRUE`);

  const found =
    ways.length === 0
      ? []
      : await database().$queryRaw<PageRow[]>(pageStatement(ways, conditions, backwards, size + 1));
  const more = found.length > size;
  const rows = found.slice(0, size);
  if (backwards) rows.reverse();
  const ids = rows.map(({ id }) => id);
  const sought = [
    ...new Set([...meantIds, ...(filter.structureId === undefined ? [] : [filter.structureId])]),
  ];
  const matched = await matchedStructures(ids, filter.evidence === "recorded" ? sought : []);
  const seen = await picturesSeen(viewer, rows);
  const [first, last] = [rows[0], rows.at(-1)];
  return {
    rows: rows.map((row) => ({
      ...row,
      pictureId: seen.has(row.id) ? row.pictureId : null,
      shows: matched.get(row.id) ?? [],
    })),
    next: last && (backwards || more) ? writePageKey(last) : null,
    previous: first && (backwards ? more : after !== undefined) ? writePageKey(first) : null,
    meant: meant.map(({ id, english, latin, kind }) => ({ id, english, latin, kind })),
  };
}

/** The first rows of each way, merged: each way finds its own by the index that suits it. */
function pageStatement(
  ways: readonly Prisma.Sql[],
  conditions: readonly Prisma.Sql[],
  backwards: boolean,
  limit: number,
): Prisma.Sql {
  const order = backwards ? Prisma.sql`DESC` : Prisma.sql`ASC`;
  const branches = ways.map(
    (way) => Prisma.sql`(
      SELECT ${pageColumns} FROM specimen s LEFT JOIN series ON series.id = s.series_id
      WHERE ${Prisma.join([way, ...conditions], " AND ")}
      ORDER BY s.accession_number ${order}, s.id ${order} LIMIT ${limit})`,
  );
  return Prisma.sql`SELECT * FROM (${Prisma.join(branches, " UNION ")}) found
    ORDER BY "accessionNumber" ${order}, id ${order} LIMIT ${limit}`;
}

/** What each specimen of a page shows of the searched structures, the best seen first. */
async function matchedStructures(
  specimenIds: readonly string[],
  structureIds: readonly string[],
): Promise<Map<string, SpecimenListRow["shows"]>> {
  if (specimenIds.length === 0 || structureIds.length === 0) return new Map();
  type Row = SpecimenListRow["shows"][number] & { specimenId: string };
  const rows = await database().$queryRaw<Row[]>`
    SELECT shown.specimen_id AS "specimenId", structure.id, structure.english, structure.latin, structure.kind,
      shown.side, shown.seen, shown.state
    FROM shown JOIN structure ON structure.id = shown.structure_id
    WHERE shown.specimen_id = ANY(${[...specimenIds]}::uuid[]) AND shown.state IN ('shown', 'variant')
      AND shown.structure_id IN (SELECT descendant_id FROM structure_ancestor WHERE ancestor_id = ANY(${[...structureIds]}))
    ORDER BY array_position(${[...seenGrades]}::text[], shown.seen), structure.english`;
  const bySpecimen = new Map<string, SpecimenListRow["shows"]>();
  for (const { specimenId, ...shown } of rows) {
    const list = bySpecimen.get(specimenId);
    if (list) list.push(shown);
    else bySpecimen.set(specimenId, [shown]);
  }
  return bySpecimen;
}

/** Ids of specimens whose picture the viewer may see. */
async function picturesSeen(
  viewer: Viewer,
  rows: readonly { id: string; human: boolean; pictureId: string | null }[],
): Promise<Set<string>> {
  const pictured = rows.filter((row) => row.pictureId !== null);
  if (!isBorrower(viewer)) return new Set(pictured.map(({ id }) => id));
  const facts = await provenanceFactsOf(
    database(),
    pictured.filter((row) => row.human).map(({ id }) => id),
  );
  const day = today();
  const allowed = ({ id, human }: { id: string; human: boolean }) => {
    if (!human) return true;
    const donors = facts.get(id);
    if (!donors) return false;
    const { answers } = strictestConsent(donors, day);
    return [answers["pictures, internal"], answers["pictures, professional publication"]].some(
      ({ answer }) => answer === "granted",
    );
  };
  return new Set(pictured.filter(allowed).map(({ id }) => id));
}

const byName = { select: { id: true, accessionNumber: true, title: true } } as const;

export type SpecimenName = { id: string; accessionNumber: string; title: string };

/** The full record; a guarded fact that the viewer may not see is not there at all. */
export type SpecimenSheet = Omit<SpecimenInput, "sex" | "ageBand" | "replacementCost"> & {
  id: string;
  version: number;
  sex?: SpecimenInput["sex"];
  ageBand?: SpecimenInput["ageBand"];
  replacementCost?: SpecimenInput["replacementCost"];
  shown: (Shown & { english: string; latin: string })[];
  preparationSteps: (PreparationStepInput & { id: string })[];
  whole: SpecimenName | null;
  parts: SpecimenName[];
  series: { id: string; code: string; title: string; number: number; thicknessMm: number } | null;
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
      series: { select: { id: true, code: true, title: true, thicknessMm: true } },
      picture: { select: { id: true, widthPx: true, heightPx: true } },
    },
  });
  if (!row) throw notFound("specimen");
  const { sex, ageBand, replacementCost, ...open } = toSpecimenInput(row);
  const seen = await picturesSeen(viewer, [row]);
  return {
    ...open,
    id: row.id,
    version: row.version,
    ...(!row.human || maySee(viewer, "personFacts") ? { sex, ageBand } : {}),
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
            ...row.series,
            number: row.numberInSeries,
            thicknessMm: row.sheetThicknessMm ?? row.series.thicknessMm,
          }
        : null,
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
    },
    orderBy: { accessionNumber: "asc" },
  });
  return new Map(
    rows.map(({ series, ...row }) => {
      const { formerNumbers: _none, ...facts } = toSpecimenInput({ ...row, formerNumbers: [] });
      const { id, seriesId, numberInSeries } = row;
      const sheetThicknessMm = row.sheetThicknessMm ?? series?.thicknessMm ?? null;
      const fragilityClass = fragilityClassOf(facts);
      return [
        id,
        {
          ...facts,
          id,
          seriesId,
          seriesCode: series?.code ?? null,
          numberInSeries,
          sheetThicknessMm,
          fragilityClass,
        },
      ];
    }),
  );
}
