/**
 * "Something that shows all of this between these days": which specimens of the
 * catalogue are the best set, what of it each shows, and why something stays
 * unshown. A structure is shown by what is recorded of it or of what follows from
 * it, as in the list of specimens. What the rules say of the borrower's purpose and
 * venue is another question, and is answered on the slip.
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
import { mostCandidates, mostWanted } from "#lib/loans/wanted.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, DateText, daysBetween } from "#lib/platform/dates.ts";
import { parseSearch } from "#lib/specimens/filter.ts";
import { type SpecimenInput, seenGrades, uses } from "#lib/specimens/schema.ts";
import { bufferDays, busyRange, type Days, travelSizeOf } from "#lib/suitability/period.ts";
import { faultOfDays } from "#lib/suitability/schema.ts";
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
    /** Human specimens only, or animals only; left out for both. */
    human: z.boolean().optional(),
    /** Sheets of series among them. */
    sheets: z.boolean().default(false),
  })
  .check(({ value, issues }) => {
    const message = faultOfDays(value);
    if (message !== null) issues.push({ code: "custom", input: value.endsOn, path: ["endsOn"], message });
  });

const levels = Object.values(bufferDays);
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
};

/**
 * Why something is not in the set: nothing in the catalogue shows it; what shows it may only be looked at; what shows
 * it cannot be there so soon, or is promised; it is free, but not with the days that the others need.
 */
export const unshownReasons = [
  "nothing shows it",
  "only to be looked at",
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
  unshown: Unshown[];
  isSmallest: boolean;
  atLeast: number;
  /** How many specimens show some of it, may be used as asked and are free; of very many only the first are compared. */
  compared: number;
  isAll: boolean;
  /** The first day on which anything could be delivered, where the asked days begin before it. */
  tooSoon: DateText | null;
};

type Candidate = TravellingCandidate & { row: CandidateRow; deliverFrom: DateText };

/** A specimen with what the calendar says of it. */
function toCandidate(
  row: CandidateRow,
  busy: readonly Days[],
  days: Days,
  day: DateText,
  mayHurry: boolean,
): Candidate {
  const ownDays = bufferDays[travelSizeOf(row)];
  const around = { daysBefore: ownDays, daysAfter: ownDays };
  const earliest = mayHurry ? addDays(day, 1) : earliestStart(day, around);
  const startsOn = [days.startsOn, earliest].sort().at(-1) ?? earliest;
  const shift = { startsOn, endsOn: addDays(startsOn, daysBetween(days.startsOn, days.endsOn)) };
  return {
    id: row.id,
    row,
    ownDays,
    freeWithDays: daysFreeWith(busy, days, levels, day),
    deliverFrom: addDays(nextFreeStart(busy, busyRange({ ...shift, ...around })), ownDays),
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
  const usable = showing.filter(({ row }) => isUsable(row, use));
  if (usable.length === 0) return { structure, reason: "only to be looked at", next: null };
  const [first] = [...usable].sort((one, other) => (one.deliverFrom < other.deliverFrom ? -1 : 1));
  const inTime = usable.filter(({ ownDays }) => possible.includes(ownDays));
  const isFree = inTime.some(({ ownDays, freeWithDays }) => freeWithDays !== null && freeWithDays >= ownDays);
  return {
    structure,
    reason: inTime.length === 0 ? "too soon" : isFree ? "not with the others" : "not free",
    next: first
      ? { deliverFrom: first.deliverFrom, id: first.id, accessionNumber: first.row.accessionNumber }
      : null,
  };
}

const isUsable = (row: Pick<CandidateRow, "use">, use: z.infer<typeof SetQuestion>["use"]) =>
  use === "viewing only" || row.use === "handling";

/** No set has fewer than this, where only the widest specimens were compared. */
function boundOfMany(set: ProposedSet | null, wanted: number, candidates: readonly Candidate[]): number {
  const widest = Math.max(1, ...candidates.map(({ shows }) => shows.length));
  return set === null ? 0 : Math.ceil((wanted - set.notShown.length) / widest);
}

/** @throws {Refusal} "invalid", with a sentence for each field */
export async function proposeSet(viewer: Viewer, asked: z.input<typeof SetQuestion>): Promise<SetProposal> {
  const { structureIds, use, sheets, human, ...days } = parseSearch(SetQuestion, asked);
  const day = today();
  const mayHurry = !isBorrower(viewer);
  const labels = await structureLabels(database(), structureIds);
  const wanted = [...new Set(structureIds)].flatMap((id) => labels.get(id) ?? []);
  const found = await rowsShowing(
    wanted.map(({ id }) => id),
    { sheets, human },
  );
  const rows = found.slice(0, mostCandidates);
  const mostAround = Math.max(...levels);
  const busy = await busyPeriodsOf(
    database(),
    rows.map(({ id }) => id),
    addDays(days.startsOn, -mostAround),
    addDays(days.endsOn, mostAround + LOOK_AHEAD_DAYS),
  );
  const candidates = rows.map((row) => toCandidate(row, busy.get(row.id) ?? [], days, day, mayHurry));
  const usable = candidates.filter(({ row }) => isUsable(row, use));
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
  return {
    days,
    kept: busyRange({ ...days, daysBefore: around, daysAfter: around }),
    wanted,
    specimens: candidates
      .filter(({ id }) => chosen.has(id))
      .map(({ row: { shows, ...row } }) => ({
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
      })),
    unshown: wanted
      .filter(({ id }) => notShown.has(id))
      .map((structure) => whyUnshown(structure, candidates, use, possible)),
    isSmallest: bound === chosen.size,
    atLeast: bound,
    compared: usable.filter(({ ownDays, freeWithDays }) => freeWithDays !== null && freeWithDays >= ownDays)
      .length,
    isAll,
    tooSoon: possible.length === 0 ? addDays(day, Math.min(...levels)) : null,
  };
}
