/**
 * The loans that claim specimens now: of some specimens, and of everything that
 * comes from one donor. A part follows the donors of its whole where it has none
 * of its own, and a whole those of its parts, as consent itself does.
 */
import { type LentLine, orderLent } from "#lib/desk/lent.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { endedStates } from "#lib/loans/transitions.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { provenanceFactsOf } from "#lib/provenance/queries.ts";

const mostLines = 1_000;

async function linesOf(specimenIds: readonly string[]): Promise<LentLine[]> {
  if (specimenIds.length === 0) return [];
  const rows = await database().loanLine.findMany({
    where: {
      specimenId: { in: [...specimenIds] },
      state: { notIn: ["noted", "checked in", ...endedStates] },
      loan: { submittedAt: { not: null } },
    },
    include: {
      specimen: { select: { accessionNumber: true, title: true } },
      loan: {
        select: {
          number: true,
          startsOn: true,
          endsOn: true,
          borrower: { select: { name: true } },
          venue: { select: { name: true } },
          stages: { select: { direction: true } },
        },
      },
    },
    take: mostLines,
  });
  return orderLent(
    rows.map(({ specimenId, loanId, state, specimen, loan }) => ({
      specimenId,
      accessionNumber: specimen.accessionNumber,
      title: specimen.title,
      loanId,
      loanNumber: loan.number,
      borrower: loan.borrower.name,
      venue: loan.venue.name,
      state: state as LineState,
      startsOn: toDateText(loan.startsOn),
      endsOn: toDateText(loan.endsOn),
      homeStagePlanned: loan.stages.some(({ direction }) => direction === "home"),
    })),
  );
}

/** The lines that claim these specimens, what is away first. */
export async function listLentOf(viewer: Viewer, specimenIds: readonly string[]): Promise<LentLine[]> {
  requireSight(viewer, "allLoans");
  return await linesOf(specimenIds);
}

/** Every specimen that follows the word of a donor. */
async function specimensUnder(code: string): Promise<string[]> {
  const linked = await database().specimenDonor.findMany({
    where: { donorCode: code },
    select: { specimenId: true },
  });
  const related = await database().$queryRaw<{ id: string }[]>`
    WITH RECURSIVE
      linked AS (SELECT specimen_id AS id FROM specimen_donor WHERE donor_code = ${code}),
      below (id) AS (
        SELECT id FROM linked
        UNION SELECT specimen.id FROM below JOIN specimen ON specimen.whole_id = below.id
      ),
      above (id) AS (
        SELECT id FROM linked
        UNION SELECT specimen.whole_id FROM above JOIN specimen ON specimen.id = above.id
          WHERE specimen.whole_id IS NOT NULL
      )
    SELECT id::text AS id FROM below UNION SELECT id::text FROM above`;
  const facts = await provenanceFactsOf(
    database(),
    related.map(({ id }) => id),
  );
  const following = [...facts].flatMap(([id, { consents }]) =>
    consents.some(({ donorCode }) => donorCode === code) ? [id] : [],
  );
  return [...new Set([...linked.map(({ specimenId }) => specimenId), ...following])];
}

/** The lines that claim anything of a donor, what is away first. */
export async function listLentOfDonor(viewer: Viewer, code: string): Promise<LentLine[]> {
  requireSight(viewer, "donorCode");
  requireSight(viewer, "allLoans");
  return await linesOf(await specimensUnder(code));
}
