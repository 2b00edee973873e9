/** A check of one specimen on a loan, beside the one before it: which occasion follows from where it is. */
import type { Metadata } from "next";
import { CheckForm } from "#app/_parts/check-form.tsx";
import { checkMaterial } from "#app/_parts/check-material.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { readLoan } from "#app/(signed-in)/loans/[id]/read-loan.ts";
import { saveCheck } from "#app/(signed-in)/specimens/[id]/check/actions.ts";
import { checksOf } from "#lib/condition/queries.ts";
import { occasionsFor } from "#lib/loans/occasions.ts";
import { authorise } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";

export const metadata: Metadata = { title: labels.title };

type Props = { params: Promise<{ id: string; specimenId: string }> };

export default async function LoanCheckPage({ params }: Props) {
  const { id, specimenId } = await params;
  const viewer = await requireViewer(`/loans/${id}/check/${specimenId}`);
  const { loan, specimen, last, occasions } = await orNotFound(async () => {
    const sheet = await readLoan(viewer, id);
    authorise(viewer, "recordCheck", { institutionId: sheet.borrower.id });
    const line = sheet.lines.find((one) => one.specimenId === specimenId);
    const allowed = line ? occasionsFor(line.state, isBorrower(viewer)) : [];
    if (!line || allowed.length === 0) throw notFound("check");
    // Home again, it is looked at beside what was seen before it left.
    const before = allowed[0] === "home" ? line.checks?.out : undefined;
    return {
      loan: sheet,
      specimen: await getSpecimen(viewer, specimenId),
      last: before ?? (await checksOf(viewer, specimenId))[0] ?? null,
      occasions: allowed,
    };
  });
  const back = occasions[0] === "home" ? `#home-${specimenId}` : "#specimens";
  return (
    <PlainPage>
      <Masthead
        number={specimen.accessionNumber}
        title={specimen.title}
        latin={`${labels.title}, ${loan.number}`}
      />
      <CheckForm
        {...checkMaterial(specimen, last)}
        specimenId={specimenId}
        loanId={id}
        occasions={occasions}
        today={today()}
        who={viewer.name}
        save={saveCheck}
        back={`/loans/${id}${back}`}
      />
    </PlainPage>
  );
}
