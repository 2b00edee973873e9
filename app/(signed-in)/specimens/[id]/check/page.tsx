/** A check of a specimen in the house, outside any loan. */
import type { Metadata } from "next";
import { CheckForm } from "#app/_parts/check-form.tsx";
import { checkMaterial } from "#app/_parts/check-material.tsx";
import { offerOccasions } from "#app/_parts/check-occasions.ts";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { saveCheck } from "#app/(signed-in)/specimens/[id]/check/actions.ts";
import { checksOf } from "#lib/condition/queries.ts";
import { authorise } from "#lib/people/permission.ts";
import { today } from "#lib/platform/clock.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";

export const metadata: Metadata = { title: labels.title };

export default async function CheckPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/specimens/${id}/check`);
  const { specimen, last } = await orNotFound(async () => {
    // A borrower checks on a loan of its own, which has a page for it.
    authorise(viewer, "recordCheck", { institutionId: null });
    return { specimen: await getSpecimen(viewer, id), last: (await checksOf(viewer, id))[0] ?? null };
  });
  return (
    <PlainPage>
      <Masthead number={specimen.accessionNumber} title={specimen.title} latin={labels.title} />
      <CheckForm
        {...checkMaterial(specimen, last)}
        specimenId={id}
        loanId={null}
        occasions={offerOccasions(["periodic", "incident"], specimen, last?.checkedOn ?? null)}
        today={today()}
        who={viewer.name}
        save={saveCheck}
        back={`/specimens/${id}#condition`}
      />
    </PlainPage>
  );
}
