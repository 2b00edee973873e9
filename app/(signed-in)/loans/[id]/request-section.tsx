/** What the borrower asked for, as it was stated, and the way to change or withdraw it while that is possible. */
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Period, Unknown } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { keptFactsWords as keptWords } from "#app/_words/en/borrow.ts";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { formatDate, formatMoney } from "#app/_words/format.ts";
import { countryName } from "#app/_words/readable.ts";
import { withdrawLoan } from "#app/(signed-in)/loans/[id]/actions.ts";
import { AskAgain } from "#app/(signed-in)/slip/ask-again.tsx";
import { mayChangeSpecimens, statesBeforeRelease } from "#lib/loans/loan-state.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export function RequestSection({
  viewer,
  loan,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  fold?: string | undefined;
}) {
  const { request, borrower, venue } = loan;
  const subject = { institutionId: borrower.id };
  const isTeaching = request.purpose === "teaching";
  const isShown = request.purpose === "exhibition" || request.audience === "general public";
  const contact = [request.contactName, request.contactEmail, request.contactPhone]
    .filter(Boolean)
    .join(", ");
  return (
    <Section id="request" title={words.sections.request} fold={fold}>
      <Facts
        facts={[
          [
            words.borrower,
            maySee(viewer, "institutions") ? (
              <Link key="borrower" href={`/institutions/${borrower.id}`}>
                {borrower.name}
              </Link>
            ) : (
              borrower.name
            ),
          ],
          [words.venue, `${venue.name}, ${venue.address}, ${countryName(venue.countryCode)}`],
          [
            words.purpose,
            request.purpose === "" ? <Unknown key="purpose" /> : words.purposes[request.purpose],
          ],
          isTeaching && [words.teachingUse, words.teachingUses[request.teachingUse]],
          [words.audience, request.audience],
          isShown && [words.admission, request.paidAdmission ? words.paid : words.free],
          isShown && [words.displayStyle, request.displayStyle],
          [words.pictures, request.pictures.length === 0 ? words.noPictures : request.pictures.join(", ")],
          [
            words.activities,
            request.activities.length === 0 ? words.noActivities : request.activities.join(", "),
          ],
          [words.days, <Period key="days" startsOn={request.startsOn} endsOn={request.endsOn} />],
          typeof request.opensOn === "string" && [keptWords.opensOn, formatDate(request.opensOn)],
          [
            keptWords.confirmedOn,
            loan.factsConfirmedAt === null ? (
              keptWords.notConfirmed
            ) : (
              <Moment key="confirmed" at={loan.factsConfirmedAt} long />
            ),
          ],
          loan.heldUntil !== null && [keptWords.held, <Moment key="held" at={loan.heldUntil} long />],
          [words.contact, contact === "" ? <Unknown key="contact" /> : contact],
          loan.sight.costs && [
            words.statedCover,
            request.cover === null ? <Unknown key="cover" /> : formatMoney(request.cover),
          ],
          request.note !== "" && [words.note, request.note],
          [words.opened, <Moment key="opened" at={loan.createdAt} long />],
          [
            words.submittedOn,
            loan.submittedAt === null ? (
              words.notSubmitted
            ) : (
              <Moment key="submitted" at={loan.submittedAt} long />
            ),
          ],
        ]}
      />
      {mayDo(viewer, "stateRequest", subject) && mayChangeSpecimens(loan.state) && (
        <p className="no-print">
          <Link className="act outline" href={`/loans/${loan.id}/request`}>
            {words.changeRequest}
          </Link>
        </p>
      )}
      <AskAgain viewer={viewer} loan={loan} />
      {mayDo(viewer, "withdrawRequest", subject) && statesBeforeRelease.includes(loan.state) && (
        <details className="no-print">
          <summary>{words.withdrawLoan}</summary>
          <ActForm
            action={withdrawLoan.bind(null, loan.id)}
            label={words.withdrawLoan}
            button={words.withdrawLoan}
            look="outline"
          >
            <p>{words.withdrawLoanCaution}</p>
          </ActForm>
        </details>
      )}
    </Section>
  );
}
