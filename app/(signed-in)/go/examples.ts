/** What may be typed into the field that goes anywhere: for each person, only what leads somewhere for them. */

import { exampleWords as words } from "#app/_words/en/go.ts";
import { exampleAct } from "#app/(signed-in)/go/acts.ts";
import { listLoans } from "#lib/loans/queries/list-loans.ts";
import { maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";

export type Example = { typed: string; meaning: string };

export async function goExamples(viewer: Viewer): Promise<Example[]> {
  const seesLoans = isBorrower(viewer) || maySee(viewer, "allLoans");
  const [specimens, loans] = await Promise.all([
    listSpecimens(viewer, { withoutSheets: true }, { size: 1 }),
    seesLoans ? listLoans(viewer, {}, { limit: 1 }) : null,
  ]);
  const specimen = specimens.rows[0];
  const loan = loans?.rows[0];
  const { institutionId } = viewer;
  const opensInstitution = isBorrower(viewer)
    ? maySee(viewer, "facilityFacts", { institutionId })
    : maySee(viewer, "institutions") && maySee(viewer, "facilityFacts");
  return [
    ...(specimen ? [{ typed: specimen.accessionNumber, meaning: words.specimen }] : []),
    { typed: "n. medianus", meaning: words.structure },
    ...(loan ? [{ typed: loan.number, meaning: words.loan }] : []),
    ...(loan && opensInstitution ? [{ typed: loan.borrower, meaning: words.institution }] : []),
    { typed: exampleAct(viewer), meaning: words.act },
  ];
}
