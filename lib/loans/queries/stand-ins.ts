/**
 * Specimens that could stand in for one that is asked for: those that show most of
 * what it shows, are of the same kind of being, and are free for all its days. What
 * the rules say of them is judged once one is on the request.
 */

import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { busyRange } from "#lib/suitability/period.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";

/** Compared for their days; the best of them are shown. */
const mostCompared = 60;
const mostShown = 10;

export type StandIn = {
  id: string;
  accessionNumber: string;
  title: string;
  preparation: string;
  use: string;
  /** How many of the structures it shows as well. */
  shared: number;
};

export type StandIns = {
  loan: { id: string; number: string };
  specimen: { id: string; accessionNumber: string; title: string };
  /** How many structures the specimen shows. */
  shows: number;
  rows: StandIn[];
};

type Row = StandIn & { sharedLong: bigint };

/** @throws {Refusal} "not-found" for a loan that is not theirs, or a specimen that is not on it */
export async function findStandIns(viewer: Viewer, loanId: string, specimenId: string): Promise<StandIns> {
  await requireLoanFile(viewer, loanId);
  if (!Id.safeParse(specimenId).success) throw notFound("specimen");
  const line = await database().loanLine.findUnique({
    where: { loanId_specimenId: { loanId, specimenId } },
    include: {
      loan: true,
      specimen: {
        select: { id: true, accessionNumber: true, title: true, human: true, use: true },
      },
    },
  });
  if (!line) throw notFound("specimen");
  const { loan, specimen } = line;
  const { human, use, ...named } = specimen;
  const shows = await database().shown.findMany({
    where: { specimenId },
    distinct: ["structureId"],
    select: { structureId: true },
  });
  const structureIds = shows.map(({ structureId }) => structureId);
  const rows = await database().$queryRaw<Row[]>`
    SELECT s.id, s.accession_number AS "accessionNumber", s.title, s.preparation, s.use,
           count(DISTINCT w.structure_id) AS "sharedLong"
    FROM shown w JOIN specimen s ON s.id = w.specimen_id
    WHERE w.structure_id = ANY(${structureIds}) AND s.human = ${human} AND s.id <> ${specimenId}::uuid
      AND NOT EXISTS (SELECT 1 FROM loan_line l WHERE l.loan_id = ${loanId}::uuid AND l.specimen_id = s.id)
    GROUP BY s.id
    ORDER BY count(DISTINCT w.structure_id) DESC, (s.use = ${use}) DESC, s.accession_number
    LIMIT ${mostCompared}`;
  const days = busyRange({
    startsOn: toDateText(loan.startsOn),
    endsOn: toDateText(loan.endsOn),
    daysBefore: loan.daysBefore,
    daysAfter: loan.daysAfter,
  });
  const ids = rows.map(({ id }) => id);
  const busy = await busyPeriodsOf(database(), ids, days.startsOn, days.endsOn);
  const free = rows.filter(({ id }) => (busy.get(id) ?? []).length === 0).slice(0, mostShown);
  return {
    loan: { id: loan.id, number: loan.number },
    specimen: named,
    shows: structureIds.length,
    rows: free.map(({ sharedLong, ...row }) => ({ ...row, shared: Number(sharedLong) })),
  };
}
