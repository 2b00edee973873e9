/**
 * "Something that shows all of this between these days": which specimens of the
 * catalogue are the best set, what of it each shows, and why something stays
 * unshown. A structure is shown by what is recorded of it or of what follows from
 * it, as in the list of specimens. What could not be lent for the purpose, before
 * the audience or in the country, as far as is known, is not proposed: it is named
 * with why. The rules on venue, days and cover answer on the slip.
 */
import { z } from "zod";
import { type StructureLabel, structureLabels } from "#lib/anatomy/queries.ts";
import { earliestStart } from "#lib/loans/asked-days.ts";
import {
  daysFreeWith,
  type ProposedSet,
  proposedSet,
  type TravellingCandidate,
} from "#lib/loans/proposed-set.ts";
import { beforeAskingOf, venueAskedFor } from "#lib/loans/queries/before-asking.ts";
import { readableFindings, sightOfLoan } from "#lib/loans/sight.ts";
import { mostCandidates, mostWanted } from "#lib/loans/wanted.ts";
import { practiceHere } from "#lib/people/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, DateText, daysBetween } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { parseSearch } from "#lib/specimens/filter.ts";
import { type SpecimenInput, seenGrades, uses } from "#lib/specimens/schema.ts";
import type { BeforeAsking } from "#lib/suitability/before-asking.ts";
import {
  type BufferDays,
  bufferDaysOf,
  busyRange,
  type Days,
  travelSizeOf,
} from "#lib/suitability/period.ts";
import { audiences, type Finding, faultOfDays, purposes } from "#lib/suitability/schema.ts";
import { nextFreeStart } from "#lib/whereabouts/free-periods.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";

export const SetQuestion = z
  .object({
    structureIds: z
      .array(z.string().regex(/^[a-z0-9-]{1,120}$/, "structure.unknown"))
      .min(1)
      .max(mostWanted, "set.too-many"),
    startsOn: DateText,
    endsOn: DateText,
    /** Only what may be handled, or whatever may at least be looked at. */
    use: z.enum(uses),
    purpose: z.enum(purposes).default("teaching"),
    audience: z.enum(audiences).default("enrolled students"),
    paidAdmission: z.boolean().default(false),
    /** Where it would go; null stands for somewhere in the country of the centre. */
    venueId: Id.nullable().default(null),
    /** Human specimens only, or animals only; left out for both. */
    human: z.boolean().optional(),
    /** Sheets of series among them. */
    sheets: z.boolean().default(false),
  })
  .check(({ value, issues }) => {
    const message = faultOfDays(value);
    if (message !== null) issues.push({ code: "custom", input: value.endsOn, path: ["endsOn"], message });
  });

/** How far ahead it is looked for days on which something is free. */
const LOOK_AHEAD_DAYS = 1_100;

type Seen = (typeof seenGrades)[number];
/** How much a grade counts where two sets are as small; the order is that of the list, the figures are ours. */
const worth: Record<Seen, number> = {
  "fully exposed": 1,
  "partly exposed": 0.75,
  "in section": 0.5,
  "landmark only": 0.25,
};
/** What only follows from the wanted structure counts for less than the structure itself. */
const worthOfPart = 0.5;

type CandidateRow = Pick<SpecimenInput, "kind" | "massKg" | "mountedMassKg" | "use"> & {
  id: string;
  accessionNumber: string;
  title: string;
  scientificName: string;
  human: boolean;
  preparation: SpecimenInput["preparation"];
  shows: { structureId: string; isItself: boolean; grade: number }[];
};

/** Every specimen that shows some of it, what shows most first; one more than are compared. */
async function rowsShowing(
  structureIds: readonly string[],
  { sheets, human }: Pick<z.infer<typeof SetQuestion>, "sheets" | "human">,
): Promise<CandidateRow[]> {
  return await database().$queryRaw<CandidateRow[]>`
    WITH hits AS (
      SELECT shown.specimen_id, wanted.id AS structure_id, bool_or(shown.structure_id = wanted.id) AS is_itself,
        min(array_position(${[...seenGrades]}::text[], shown.seen)) AS grade
      FROM unnest(${[...structureIds]}::text[]) AS wanted (id)
      JOIN (SELECT DISTINCT ancestor_id, descendant_id FROM structure_ancestor
        WHERE ancestor_id = ANY(${[...structureIds]}::text[])) below ON below.ancestor_id = wanted.id
      JOIN shown ON shown.structure_id = below.descendant_id AND shown.state IN ('shown', 'variant')
      GROUP BY shown.specimen_id, wanted.id)
    SELECT s.id::text AS id, s.accession_number AS "accessionNumber", s.title, s.human,
      s.scientific_name AS "scientificName", s.kind, s.preparation, s.use,
      s.mass_kg AS "massKg", s.mounted_mass_kg AS "mountedMassKg",
      json_agg(json_build_object('structureId', structure_id, 'isItself', is_itself, 'grade', grade)) AS shows
    FROM hits JOIN specimen s ON s.id = hits.specimen_id
    WHERE (${sheets} OR s.series_id IS NULL) AND (${human ?? null}::boolean IS NULL OR s.human = ${human ?? null}::boolean)
    GROUP BY s.id ORDER BY count(*) DESC, min(grade), s.accession_number LIMIT ${mostCandidates + 1}`;
}

export type SetSpecimen = {
  id: string;
  accessionNumber: string;
  title: string;
  human: boolean;
  scientificName: string;
  preparation: SpecimenInput["preparation"];
  use: SpecimenInput["use"];
  /** Which of the wanted it shows, and how well at best. */
  shows: (StructureLabel & { seen: Seen })[];
  /** Papers without which it does not go; as far as the viewer may read of them. */
  papersWanted: Finding[];
};

/** What shows some of it and is free, and is not proposed. */
export type KeptBack = {
  id: string;
  accessionNumber: string;
  title: string;
  because: Finding[];
};

/**
 * Why something is not in the set: nothing in the catalogue shows it; what shows it may only be looked at, or could not
 * be lent for this purpose; what shows it cannot be there so soon, or is promised; it is free, but not with the days
 * that the others need.
 */
export const unshownReasons = [
  "nothing shows it",
  "only to be looked at",
  "not to be lent so",
  "too soon",
  "not free",
  "not with the others",
] as const;
export type Unshown = {
  structure: StructureLabel;
  reason: (typeof unshownReasons)[number];
  /** The first day of delivery on which something that shows it is free for as many days, and what that is. */
  next: { deliverFrom: DateText; id: string; accessionNumber: string } | null;
};

export type SetProposal = {
  days: Days;
  /** The days that would be kept, those around the loan included. */
  kept: Days;
  wanted: StructureLabel[];
  specimens: SetSpecimen[];
  keptBack: KeptBack[];
  unshown: Unshown[];
  /** The country for which it was judged. */
  countryCode: string;
  isSmallest: boolean;
  atLeast: number;
  /** How many specimens show some of it, may be lent and used as asked and are free; of very many only the first are compared. */
  compared: number;
  isAll: boolean;
  /** The first day on which anything could be delivered, where the asked days begin before it. */
  tooSoon: DateText | null;
};

type Candidate = TravellingCandidate & { row: CandidateRow; deliverFrom: DateText; standing: BeforeAsking };

/** A specimen with what the calendar and the rules say of it. */
function toCandidate(
  row: CandidateRow,
  standing: BeforeAsking,
  busy: readonly Days[],
  days: Days,
  day: DateText,
  mayHurry: boolean,
  around: BufferDays,
): Candidate {
  const ownDays = around[travelSizeOf(row)];
  const own = { daysBefore: ownDays, daysAfter: ownDays };
  const earliest = mayHurry ? addDays(day, 1) : earliestStart(day, own);
  const startsOn = [days.startsOn, earliest].sort().at(-1) ?? earliest;
  const shift = { startsOn, endsOn: addDays(startsOn, daysBetween(days.startsOn, days.endsOn)) };
  return {
    id: row.id,
    row,
    standing,
    ownDays,
    freeWithDays: daysFreeWith(busy, days, Object.values(around), day),
    deliverFrom: addDays(nextFreeStart(busy, busyRange({ ...shift, ...own })), ownDays),
    shows: row.shows.map(({ structureId, isItself, grade }) => ({
      structureId,
      seen: worth[seenGrades[grade - 1] ?? "landmark only"] * (isItself ? 1 : worthOfPart),
    })),
  };
}

function whyUnshown(
  structure: StructureLabel,
  candidates: readonly Candidate[],
  use: z.infer<typeof SetQuestion>["use"],
  /** Numbers of days around for which there is still time. */
  possible: readonly number[],
): Unshown {
  const showing = candidates.filter(({ shows }) =>
    shows.some(({ structureId }) => structureId === structure.id),
  );
  if (showing.length === 0) return { structure, reason: "nothing shows it", next: null };
  const fit = showing.filter(({ row }) => isUsable(row, use));
  if (fit.length === 0) return { structure, reason: "only to be looked at", next: null };
  const usable = fit.filter(couldBeLent);
  if (usable.length === 0) return { structure, reason: "not to be lent so", next: null };
  const [first] = [...usable].sort((one, other) => (one.deliverFrom < other.deliverFrom ? -1 : 1));
  const inTime = usable.filter(({ ownDays }) => possible.includes(ownDays));
  return {
    structure,
    reason: inTime.length === 0 ? "too soon" : inTime.some(isFree) ? "not with the others" : "not free",
    next: first
      ? { deliverFrom: first.deliverFrom, id: first.id, accessionNumber: first.row.accessionNumber }
      : null,
  };
}

const isFree = ({ ownDays, freeWithDays }: Candidate) => freeWithDays !== null && freeWithDays >= ownDays;
const couldBeLent = ({ standing }: Candidate) => standing.keptBackBy.length === 0;

const isUsable = (row: Pick<CandidateRow, "use">, use: z.infer<typeof SetQuestion>["use"]) =>
  use === "viewing only" || row.use === "handling";

/** No set has fewer than this, where only the widest specimens were compared. */
function boundOfMany(set: ProposedSet | null, wanted: number, candidates: readonly Candidate[]): number {
  const widest = Math.max(1, ...candidates.map(({ shows }) => shows.length));
  return set === null ? 0 : Math.ceil((wanted - set.notShown.length) / widest);
}

/** @throws {Refusal} "invalid", with a sentence for each field */
export async function proposeSet(viewer: Viewer, asked: z.input<typeof SetQuestion>): Promise<SetProposal> {
  const { structureIds, use, sheets, human, venueId, purpose, audience, paidAdmission, ...days } =
    parseSearch(SetQuestion, asked);
  const day = today();
  const venue = await venueAskedFor(database(), viewer, venueId);
  const mayHurry = !isBorrower(viewer);
  const labels = await structureLabels(database(), structureIds);
  const wanted = [...new Set(structureIds)].flatMap((id) => labels.get(id) ?? []);
  const found = await rowsShowing(
    wanted.map(({ id }) => id),
    { sheets, human },
  );
  const rows = found.slice(0, mostCandidates);
  const buffers = bufferDaysOf(await practiceHere());
  const levels: readonly number[] = Object.values(buffers);
  const mostAround = Math.max(...levels);
  const busy = await busyPeriodsOf(
    database(),
    rows.map(({ id }) => id),
    addDays(days.startsOn, -mostAround),
    addDays(days.endsOn, mostAround + LOOK_AHEAD_DAYS),
  );
  const standings = await beforeAskingOf(
    database(),
    rows.map(({ id }) => id),
    venue,
    { ...days, purpose, audience, paidAdmission, teachingUse: use === "handling" ? "handling" : "viewing" },
    day,
  );
  const candidates = rows.flatMap((row) => {
    const standing = standings.get(row.id);
    return standing ? [toCandidate(row, standing, busy.get(row.id) ?? [], days, day, mayHurry, buffers)] : [];
  });
  const fit = candidates.filter(({ row }) => isUsable(row, use));
  const usable = fit.filter(couldBeLent);
  const possible = levels.filter((level) => mayHurry || addDays(day, level) <= days.startsOn);
  const isAll = found.length <= mostCandidates;
  const set = proposedSet(
    wanted.map(({ id }) => id),
    usable,
    possible,
  );
  const bound = isAll ? (set?.atLeast ?? 0) : boundOfMany(set, wanted.length, candidates);
  const chosen = new Set(set?.chosen ?? []);
  const notShown = new Set(set?.notShown ?? wanted.map(({ id }) => id));
  const around = set?.daysAround ?? Math.min(...levels);
  const sight = sightOfLoan(viewer, { institutionId: venue.institutionId });
  return {
    days,
    kept: busyRange({ ...days, daysBefore: around, daysAfter: around }),
    wanted,
    specimens: candidates
      .filter(({ id }) => chosen.has(id))
      .map(({ row: { shows, ...row }, standing }) => ({
        id: row.id,
        accessionNumber: row.accessionNumber,
        title: row.title,
        human: row.human,
        scientificName: row.scientificName,
        preparation: row.preparation,
        use: row.use,
        shows: wanted.flatMap((structure) => {
          const hit = shows.find(({ structureId }) => structureId === structure.id);
          return hit ? [{ ...structure, seen: seenGrades[hit.grade - 1] ?? "landmark only" }] : [];
        }),
        papersWanted: readableFindings(standing.papersWanted, sight),
      })),
    keptBack: fit
      .filter((one) => !couldBeLent(one) && isFree(one) && possible.includes(one.ownDays))
      .map(({ row: { id, accessionNumber, title }, standing }) => ({
        id,
        accessionNumber,
        title,
        because: readableFindings(standing.keptBackBy, sight),
      })),
    countryCode: venue.countryCode,
    unshown: wanted
      .filter(({ id }) => notShown.has(id))
      .map((structure) => whyUnshown(structure, candidates, use, possible)),
    isSmallest: bound === chosen.size,
    atLeast: bound,
    compared: usable.filter(isFree).length,
    isAll,
    tooSoon: possible.length === 0 ? addDays(day, Math.min(...levels)) : null,
  };
}
