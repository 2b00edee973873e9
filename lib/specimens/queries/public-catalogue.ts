/**
 * The catalogue for who is not signed in, where the centre has opened it. Of what
 * may be published it tells number, title, species, preparation, allowed use and what it shows;
 * nothing of donors, places, costs, condition or other numbers. The picture of a
 * human specimen is there only where every donor allowed it openly online.
 */
import { z } from "zod";
import { openCatalogueOf } from "#lib/people/queries.ts";
import { publicViewer, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { parseSearch, SpecimenFilter, type SpecimenPage } from "#lib/specimens/filter.ts";
import { listSpecimens, type SpecimenListRow } from "#lib/specimens/queries/list-specimens.ts";
import { getPicture } from "#lib/specimens/queries.ts";

/** What the public may ask by; the calendar is not among it. */
const PublicFilter = z.object({
  text: SpecimenFilter.shape.text,
  preparation: SpecimenFilter.shape.preparation,
  human: SpecimenFilter.shape.human,
  use: SpecimenFilter.shape.use,
  regionId: SpecimenFilter.shape.regionId,
  systemId: SpecimenFilter.shape.systemId,
  species: SpecimenFilter.shape.species,
});

export type PublicRow = Pick<
  SpecimenListRow,
  "id" | "accessionNumber" | "title" | "latinTitle" | "preparation" | "use" | "human" | "scientificName"
> & {
  /** English names of what is recorded as shown, by name. */
  structures: string[];
  /** Whether the public may see a picture of it. */
  hasPicture: boolean;
};
export type PublicList = {
  centre: { name: string; email: string };
  rows: PublicRow[];
  next: string | null;
  previous: string | null;
};

async function structuresOf(ids: readonly string[]): Promise<Map<string, string[]>> {
  const rows = await database().shown.findMany({
    where: { specimenId: { in: [...ids] }, state: { in: ["shown", "variant"] } },
    select: { specimenId: true, structure: { select: { english: true } } },
    orderBy: { structure: { english: "asc" } },
  });
  const names = new Map<string, Set<string>>(ids.map((id) => [id, new Set()]));
  for (const { specimenId, structure } of rows) names.get(specimenId)?.add(structure.english);
  return new Map([...names].map(([id, each]) => [id, [...each]]));
}

/** Found by one of its other numbers and by nothing else: those are the house's own. */
const isByOtherNumber = ({ hit, accessionNumber, shows }: SpecimenListRow) =>
  shows.length === 0 &&
  (hit?.by === "number and title" || (hit?.by === "number" && hit.number !== accessionNumber));

/** @throws {Refusal} "not-found" where the catalogue is not open to the public */
export async function listPublicSpecimens(
  _viewer: Viewer | null,
  asked: z.input<typeof PublicFilter> = {},
  page: z.input<typeof SpecimenPage> = {},
): Promise<PublicList> {
  const centre = await openCatalogueOf(database());
  const filter = { ...parseSearch(PublicFilter, asked), publishable: true, withoutSheets: true };
  const { rows, next, previous } = await listSpecimens(publicViewer, filter, page);
  const told = rows.filter((row) => !isByOtherNumber(row));
  const structures = await structuresOf(told.map(({ id }) => id));
  return {
    centre,
    rows: told.map(
      ({ id, accessionNumber, title, latinTitle, preparation, use, human, scientificName, pictureId }) => ({
        id,
        accessionNumber,
        title,
        latinTitle,
        preparation,
        use,
        human,
        scientificName,
        structures: structures.get(id) ?? [],
        hasPicture: pictureId !== null,
      }),
    ),
    next,
    previous,
  };
}

/** The animal species of what may be published, by scientific name. */
export async function listPublicSpecies(_viewer: Viewer | null): Promise<string[]> {
  await openCatalogueOf(database());
  const rows = await database().specimen.findMany({
    where: { publishable: true, human: false, seriesId: null },
    select: { scientificName: true },
    distinct: ["scientificName"],
    orderBy: { scientificName: "asc" },
  });
  return rows.map(({ scientificName }) => scientificName);
}

/**
 * The picture of what may be published.
 * @param choice whether this visitor has chosen to see pictures of human specimens
 * @throws {Refusal} "not-found" for every other specimen
 */
export async function getPublicPicture(
  _viewer: Viewer | null,
  specimenId: string,
  choice: { showsHuman: boolean },
): ReturnType<typeof getPicture> {
  await openCatalogueOf(database());
  if (!Id.safeParse(specimenId).success) throw notFound("picture");
  const row = await database().specimen.findUnique({
    where: { id: specimenId },
    select: { publishable: true, human: true },
  });
  if (!row?.publishable || (row.human && !choice.showsHuman)) throw notFound("picture");
  return await getPicture(publicViewer, specimenId);
}

/** The centre behind an open catalogue, or null where none is open. */
export async function findOpenCatalogue(_viewer: Viewer | null): Promise<PublicList["centre"] | null> {
  try {
    return await openCatalogueOf(database());
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
}
