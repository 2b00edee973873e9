/** A check of one specimen on a loan, beside the one before it: which occasion follows from where it is. */
import type { Metadata } from "next";
import { CheckForm } from "#app/_parts/check-form.tsx";
import { checkMaterial } from "#app/_parts/check-material.tsx";
import { offerOccasions } from "#app/_parts/check-occasions.ts";
import { LocalTime } from "#app/_parts/moment.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { saveCheckOnLoan } from "#app/(signed-in)/loans/[id]/check/[specimenId]/actions.ts";
import { readLoan } from "#app/(signed-in)/loans/[id]/read-loan.ts";
import { checkBeside } from "#lib/condition/beside.ts";
import { checksOf } from "#lib/condition/queries.ts";
import type { Occasion } from "#lib/condition/schema.ts";
import { checkedLineOf, occasionFloor, occasionsFor } from "#lib/loans/occasions.ts";
import { authorise } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";

export const metadata: Metadata = { title: labels.title };

type Props = { params: Promise<{ id: string; specimenId: string }> };

/** Home from the loan, it is looked at beside what was seen before it left; anything else is of the house by then. */
const likeliest = (occasions: readonly Occasion[]): readonly Occasion[] =>
  occasions.includes("home") ? ["home"] : occasions;

export default async function LoanCheckPage({ params }: Props) {
  const { id, specimenId } = await params;
  const viewer = await requireViewer(`/loans/${id}/check/${specimenId}`);
  const { loan, specimen, checks, stands, occasions } = await orNotFound(async () => {
    const sheet = await readLoan(viewer, id);
    authorise(viewer, "recordCheck", { institutionId: sheet.borrower.id });
    const line = sheet.lines.find((one) => one.specimenId === specimenId);
    const standing = line && checkedLineOf(line, sheet.crates, sheet.decisions);
    const allowed = standing
      ? likeliest(occasionsFor(standing.state, isBorrower(viewer), standing.closedCrate !== null))
      : [];
    if (!standing || allowed.length === 0) throw notFound("check");
    return {
      loan: sheet,
      specimen: await getSpecimen(viewer, specimenId),
      checks: await checksOf(viewer, specimenId),
      stands: standing,
      occasions: allowed,
    };
  });
  const [occasion = "incident"] = occasions;
  const { closedCrate } = stands;
  return (
    <PlainPage>
      <Masthead
        number={specimen.accessionNumber}
        title={specimen.title}
        latin={`${labels.title}, ${loan.number}`}
      />
      <CheckForm
        {...checkMaterial(specimen, checkBeside({ loanId: id, occasion }, checks))}
        specimenId={specimenId}
        loanId={id}
        occasions={offerOccasions(occasions, specimen, checks[0]?.checkedOn ?? null, (one) =>
          occasionFloor(one, stands, isBorrower(viewer)),
        )}
        occasionNote={
          closedCrate && (
            <>
              {labels.crateClosed(closedCrate.code, closedCrate.notBefore)}
              {closedCrate.notBefore !== null && <LocalTime at={closedCrate.notBefore} />}
            </>
          )
        }
        today={today()}
        who={viewer.name}
        save={saveCheckOnLoan}
        back={`/loans/${id}${occasion === "home" ? `#home-${specimenId}` : "#specimens"}`}
      />
    </PlainPage>
  );
}
