/** Changing what was asked for, while that is possible; a submitted request is taken in anew. */
import type { Metadata } from "next";
import Link from "next/link";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import { readLoan } from "#app/(signed-in)/loans/[id]/read-loan.ts";
import { saveAndSubmit, saveRequest } from "#app/(signed-in)/slip/actions.ts";
import { keptOfBorrower } from "#app/(signed-in)/slip/kept-of-borrower.ts";
import { RequestForm } from "#app/(signed-in)/slip/request-form.tsx";
import { requestVenues } from "#app/(signed-in)/slip/request-venues.ts";
import { mayChangeSpecimens } from "#lib/loans/loan-state.ts";
import { authorise, mayDo } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { notFound } from "#lib/platform/refusal.ts";

export const metadata: Metadata = { title: words.request };

export default async function RequestPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/loans/${id}/request`);
  const loan = await orNotFound(async () => {
    const sheet = await readLoan(viewer, id);
    authorise(viewer, "stateRequest", { institutionId: sheet.borrower.id });
    if (!mayChangeSpecimens(sheet.state)) throw notFound("request");
    return sheet;
  });
  const submits =
    loan.state === "enquiry" &&
    loan.lines.length > 0 &&
    mayDo(viewer, "submitRequest", { institutionId: loan.borrower.id });
  return (
    <PlainPage>
      <Masthead
        number={loan.number}
        title={words.request}
        latin={`${loan.borrower.name}, ${loan.venue.name}`}
        standing={<Link href={`/loans/${id}`}>{words.back}</Link>}
      />
      <RequestForm
        loanId={id}
        start={loan.request}
        keptVenueId={loan.request.venueId}
        venues={await requestVenues(viewer, loan.borrower.id)}
        buffers={loan}
        earliest={loan.earliestStart}
        planned={loan.time.plan?.earliestDelivery ?? null}
        currency={(await centreSettings()).currency}
        kept={await keptOfBorrower(viewer, loan.borrower.id)}
        save={saveRequest.bind(null, id)}
        submit={submits ? saveAndSubmit.bind(null, id) : undefined}
      />
    </PlainPage>
  );
}
