/** The enquiry slip: what was noted, what it is for, and what the rules would say, before anything is asked. */
import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import { Masthead, NextBox, PlainPage, RecordPage, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { Strip } from "#app/_parts/strip.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { askAgainWords } from "#app/_words/en/borrow.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import { nextThings, nextTitle } from "#app/(signed-in)/loans/[id]/next-things.tsx";
import { SuitabilitySection } from "#app/(signed-in)/loans/[id]/suitability/suitability-section.tsx";
import { noteOnSlip, saveAndSubmit, saveRequest, takeOffSlip } from "#app/(signed-in)/slip/actions.ts";
import { keptOfBorrower } from "#app/(signed-in)/slip/kept-of-borrower.ts";
import { RequestForm } from "#app/(signed-in)/slip/request-form.tsx";
import { isVenueChosen, requestVenues, startOfRequest } from "#app/(signed-in)/slip/request-venues.ts";
import { TakenOff } from "#app/(signed-in)/slip/taken-off.tsx";
import { findSlip } from "#lib/loans/queries/list-loans.ts";
import { listLoanSpecimens } from "#lib/loans/queries/loan-specimens.ts";
import { getLoan, type LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { freePeriodsOf } from "#lib/whereabouts/queries.ts";

export const metadata: Metadata = { title: words.title };

const toSpecimens = (
  <Link className="act" href="/specimens">
    {words.findSpecimens}
  </Link>
);

/** Numbers of what an earlier loan had and this slip has not; none where the address names no loan of theirs. */
async function leftOut(viewer: Viewer, earlierId: string | undefined, loan: LoanSheet): Promise<string[]> {
  if (earlierId === undefined) return [];
  const onIt = new Set(loan.lines.map(({ specimenId }) => specimenId));
  try {
    const earlier = await listLoanSpecimens(viewer, earlierId);
    return [...earlier.values()].flatMap((one) => (onIt.has(one.id) ? [] : [one.accessionNumber])).sort();
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

async function NotedSpecimens({
  viewer,
  loan,
  off,
  left,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  /** What was just taken off. */
  off: string | undefined;
  /** Numbers of what an earlier loan had and is not free now. */
  left: readonly string[];
}) {
  const from = today();
  const until = addDays(from, 365);
  const ids = loan.lines.map((line) => line.specimenId);
  const free = await freePeriodsOf(viewer, ids, from, until);
  return (
    <Section id="specimens" title={words.specimens}>
      {left.length > 0 && <p role="status">{askAgainWords.leftOut(left)}</p>}
      <TakenOff viewer={viewer} specimenId={off} specimenIds={ids} putBack={noteOnSlip} />
      <DataTable
        caption={loanWords.tables.specimens}
        captionHidden
        rows={loan.lines}
        rowKey={(line) => line.id}
        empty={<EmptyState action={toSpecimens}>{words.none}</EmptyState>}
        columns={[
          {
            key: "number",
            label: loanWords.number,
            cell: (line) => (
              <Link className="mono" href={`/specimens/${line.specimenId}`}>
                {line.accessionNumber}
              </Link>
            ),
          },
          { key: "title", label: loanWords.title, cell: (line) => line.title },
          {
            key: "free",
            label: words.free,
            cell: (line) => (
              <Strip
                label={line.accessionNumber}
                from={from}
                until={until}
                free={free.get(line.specimenId) ?? []}
              />
            ),
          },
          {
            key: "off",
            label: words.takeOff,
            cell: (line) => (
              <ActForm
                action={takeOffSlip.bind(null, loan.id, line.specimenId)}
                label={`${words.takeOff}: ${line.accessionNumber}`}
                button={words.takeOff}
                look="plain"
              />
            ),
          },
        ]}
      />
      {loan.lines.length > 0 && (
        <p className="no-print">
          <Link href="/specimens">{words.findSpecimens}</Link>
        </p>
      )}
    </Section>
  );
}

export default async function SlipPage({ searchParams }: { searchParams: Promise<Search> }) {
  const viewer = await requireViewer("/slip");
  if (!mayDo(viewer, "openLoan")) notFound();
  if (!isBorrower(viewer)) redirect("/loans?phase=slips");
  const slip = await findSlip(viewer);
  if (!slip)
    return (
      <PlainPage>
        <Masthead title={words.title} />
        <EmptyState action={toSpecimens}>{words.none}</EmptyState>
      </PlainPage>
    );
  const loan = await getLoan(viewer, slip.id);
  const search = await searchParams;
  const off = parameterOf(search, "off");
  const left = await leftOut(viewer, parameterOf(search, "like"), loan);
  const venues = await requestVenues(viewer, loan.borrower.id);
  const venue = isVenueChosen(loan.request, venues) ? loan.venue.name : words.venueOpen;
  const specimens = await listLoanSpecimens(viewer, slip.id);
  const sheets = new Set([...specimens.values()].flatMap((one) => (one.seriesCode === null ? [] : [one.id])));
  return (
    <RecordPage
      masthead={
        <Masthead
          number={loan.number}
          title={words.title}
          latin={`${loanWords.count(loan.lines.length)}, ${venue}`}
          standing={
            <p>
              <StateMark outcome="neutral">{loanWords.states[loan.state]}</StateMark>
            </p>
          }
        />
      }
      next={<NextBox things={nextThings(loan, viewer)} title={nextTitle(loan.state)} />}
      index={[
        { id: "specimens", label: words.specimens, count: loan.lines.length },
        { id: "request", label: words.request },
        { id: "suitability", label: words.suitability },
      ]}
    >
      <NotedSpecimens viewer={viewer} loan={loan} off={off} left={left} />
      <Section id="request" title={words.request}>
        <RequestForm
          loanId={loan.id}
          start={startOfRequest(loan.request, venues)}
          keptVenueId={loan.request.venueId}
          venues={venues}
          buffers={loan}
          earliest={loan.earliestStart}
          planned={loan.time.plan?.earliestDelivery ?? null}
          currency={(await centreSettings()).currency}
          kept={await keptOfBorrower(viewer, loan.borrower.id)}
          save={saveRequest.bind(null, loan.id)}
          submit={loan.lines.length > 0 ? saveAndSubmit.bind(null, loan.id) : undefined}
        />
      </Section>
      <SuitabilitySection
        viewer={viewer}
        loan={loan}
        sheets={sheets}
        about={words.suitabilityAbout(loan.venue.name, loan.request.purpose !== "")}
      />
    </RecordPage>
  );
}
