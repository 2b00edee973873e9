/**
 * What stands beside the schedule of an agreement: each specimen's drawing as its record
 * makes it today, and its photograph where every donor lets a borrower see one. A paper
 * goes to the borrower whoever prints it. Read by who may read the loan's file, and only
 * of specimens that are on the loan.
 */
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { paperPicturesOf } from "#lib/papers/queries/paper-pictures.ts";
import type { SchedulePictures } from "#lib/papers/schedule-pictures.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { drawingRequestOf } from "#lib/specimens/drawing/request.ts";
import { drawnFactsOf } from "#lib/specimens/queries/drawn-facts.ts";
import { picturesForBorrowers } from "#lib/specimens/queries.ts";

/** Three hundred dots an inch on the thumbnail of a schedule. */
const longestSidePx = 200;

/** A number that no specimen of the loan bears any more has no entry, and is drawn from its row. */
export async function schedulePicturesOf(
  viewer: Viewer,
  loanId: string,
  accessionNumbers: readonly string[],
): Promise<SchedulePictures> {
  await requireLoanFile(viewer, loanId);
  const reader = database();
  const rows = await reader.specimen.findMany({
    where: { accessionNumber: { in: [...new Set(accessionNumbers)] }, loanLines: { some: { loanId } } },
    select: {
      id: true,
      accessionNumber: true,
      title: true,
      latinTitle: true,
      kind: true,
      preparation: true,
      scientificName: true,
      side: true,
      human: true,
      pictureId: true,
    },
  });
  const drawn = await drawnFactsOf(
    reader,
    rows.map(({ id }) => id),
  );
  const shown = await picturesForBorrowers(reader, rows);
  const pictures = await paperPicturesOf(
    reader,
    rows.flatMap(({ id, pictureId }) => (pictureId !== null && shown.has(id) ? [pictureId] : [])),
    longestSidePx,
  );
  return new Map(
    rows.map(({ id, accessionNumber, pictureId, ...record }) => [
      accessionNumber,
      {
        drawing: drawingRequestOf({
          ...record,
          accessionNumber,
          shown: drawn.get(id)?.shown ?? [],
          sheetPlace: drawn.get(id)?.sheetPlace ?? null,
        }),
        picture: pictureId !== null && shown.has(id) ? (pictures.get(pictureId) ?? null) : null,
      },
    ]),
  );
}
