/** One loan on one sheet, from the slip to the close. */
import type { Metadata } from "next";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import { Masthead, NextBox, RecordPage } from "#app/_parts/record-page.tsx";
import type { IndexEntry } from "#app/_parts/section-index.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { facilityWords } from "#app/_words/en/facility.ts";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { formatRange } from "#app/_words/format.ts";
import { AgreementSection } from "#app/(signed-in)/loans/[id]/agreement/agreement-section.tsx";
import { ClaimsSection } from "#app/(signed-in)/loans/[id]/claims/claims-section.tsx";
import { CoverSection } from "#app/(signed-in)/loans/[id]/cover/cover-section.tsx";
import { CratesSection } from "#app/(signed-in)/loans/[id]/crates/crates-section.tsx";
import { DecisionSection, officesToSpeak } from "#app/(signed-in)/loans/[id]/decision/decision-section.tsx";
import { foldedSections } from "#app/(signed-in)/loans/[id]/folded-sections.ts";
import { HappenedSection } from "#app/(signed-in)/loans/[id]/happened-section.tsx";
import { CustodySection } from "#app/(signed-in)/loans/[id]/journey/custody-section.tsx";
import { HomeSection } from "#app/(signed-in)/loans/[id]/journey/home-section.tsx";
import { ReleaseSection } from "#app/(signed-in)/loans/[id]/journey/release-section.tsx";
import { VenueSection } from "#app/(signed-in)/loans/[id]/journey/venue-section.tsx";
import { MessagesSection } from "#app/(signed-in)/loans/[id]/messages/messages-section.tsx";
import { hasMoney, MoneySection } from "#app/(signed-in)/loans/[id]/money/money-section.tsx";
import { nextThings, nextTitle } from "#app/(signed-in)/loans/[id]/next-things.tsx";
import { PapersSection } from "#app/(signed-in)/loans/[id]/papers/papers-section.tsx";
import { DatesSection } from "#app/(signed-in)/loans/[id]/plan/dates-section.tsx";
import { hasLonger, LongerSection } from "#app/(signed-in)/loans/[id]/plan/longer-section.tsx";
import { PlanSection } from "#app/(signed-in)/loans/[id]/plan/plan-section.tsx";
import { readLoan } from "#app/(signed-in)/loans/[id]/read-loan.ts";
import { RequestSection } from "#app/(signed-in)/loans/[id]/request-section.tsx";
import { SpecimensSection } from "#app/(signed-in)/loans/[id]/specimens-section.tsx";
import { FacilitySection } from "#app/(signed-in)/loans/[id]/suitability/facility-section.tsx";
import { LimitsSection } from "#app/(signed-in)/loans/[id]/suitability/limits-section.tsx";
import { reasonsLanguage } from "#app/(signed-in)/loans/[id]/suitability/reasons-language.ts";
import { SuitabilitySection } from "#app/(signed-in)/loans/[id]/suitability/suitability-section.tsx";
import { LoanStateMark } from "#app/(signed-in)/loans/loan-table.tsx";
import { listLetters } from "#lib/desk/queries/letters.ts";
import { isLive, lineStatesSinceRelease } from "#lib/loans/loan-state.ts";
import { listClaims } from "#lib/loans/queries/claims.ts";
import { findClosing } from "#lib/loans/queries/closing.ts";
import { findMoney } from "#lib/loans/queries/costings.ts";
import { facilityOfLoan } from "#lib/loans/queries/facility-needs.ts";
import { listKeptRuns } from "#lib/loans/queries/kept-runs.ts";
import { listLoanHandovers } from "#lib/loans/queries/loan-handovers.ts";
import { listLoanSpecimens } from "#lib/loans/queries/loan-specimens.ts";
import { messagesOf } from "#lib/loans/queries/messages.ts";
import { isToBeHeld } from "#lib/loans/queries/reminders.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { papersOfLoan } from "#lib/papers/queries/loan-papers.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { listInsurances } from "#lib/people/queries/facility.ts";
import { centreSettings } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { now, today } from "#lib/platform/clock.ts";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Search> };

export async function generateMetadata({ params }: Pick<Props, "params">): Promise<Metadata> {
  const { id } = await params;
  const viewer = await requireViewer(`/loans/${id}`);
  const loan = await orNotFound(() => readLoan(viewer, id));
  return { title: `${loan.number} ${loan.request.title || words.noTitle}` };
}

const onTheWayHome: readonly LineState[] = [
  "travelling home",
  "resting at home",
  "checked in",
  "closed",
  "missing",
];

const hasLine = (loan: LoanSheet, states: readonly LineState[]) =>
  loan.lines.some((line) => states.includes(line.state));

/** Which sections the loan has come to. */
function sectionsOf(loan: LoanSheet) {
  const decided = !["enquiry", "requested"].includes(loan.state) || loan.decisions.length > 0;
  const accepted =
    loan.agreements.length > 0 || loan.gates.length > 0 || hasLine(loan, lineStatesSinceRelease);
  return {
    decision: loan.state === "requested" || decided,
    cover: loan.submittedAt !== null,
    agreement: accepted,
    crates: accepted || loan.crates.length > 0,
    papers: accepted || loan.stages.length > 0,
    release: loan.gates.length > 0,
    venue: hasLine(loan, lineStatesSinceRelease),
    home: hasLine(loan, onTheWayHome),
    custody: hasLine(loan, lineStatesSinceRelease),
    messages: loan.submittedAt !== null,
  };
}

/** What it is for, in a word; nothing where no purpose is chosen yet. */
function useOf({ purpose, teachingUse }: LoanSheet["request"]): string | null {
  if (purpose === "") return null;
  return purpose === "teaching" ? words.teachingUses[teachingUse] : words.purposes[purpose];
}

/** What the borrower holds, for who may record it as cover of this loan. */
async function insurancesFor(viewer: Viewer, { borrower: { id: institutionId } }: LoanSheet) {
  return mayDo(viewer, "recordCover", { institutionId }) ? await listInsurances(viewer, institutionId) : [];
}

function standsAt(loan: LoanSheet) {
  const missing = loan.lines.filter((line) => line.state === "missing").length;
  return <LoanStateMark row={{ state: loan.state, missing, isOverdue: loan.isOverdue }} />;
}

export default async function LoanPage({ params, searchParams }: Props) {
  const { id } = await params;
  const search = await searchParams;
  const viewer = await requireViewer(`/loans/${id}`);
  const loan = await orNotFound(() => readLoan(viewer, id));
  const specimens = await listLoanSpecimens(viewer, id);
  const moment = now().toISOString();
  const has = sectionsOf(loan);
  const runs = await listKeptRuns(viewer, id);
  const money = await findMoney(viewer, id);
  const facility = await facilityOfLoan(viewer, id);
  const { papers, issuable, languages } = has.papers
    ? await papersOfLoan(viewer, id)
    : { papers: [], issuable: [], languages: [] };
  const claims = has.custody ? await listClaims(viewer, id) : [];
  const handovers = has.custody ? await listLoanHandovers(viewer, id) : [];
  const messages = has.messages ? await messagesOf(viewer, id) : [];
  const letters = has.messages ? (await listLetters(viewer, { loanId: id }, { limit: 100 })).rows : [];
  const mayHold = has.custody && (await isToBeHeld(viewer, id));
  const live = loan.lines.filter((line) => isLive(line.state) || line.state === "closed");
  const limited = live.flatMap((line) => specimens.get(line.specimenId) ?? []);
  const sheets = new Set([...specimens.values()].flatMap((one) => (one.seriesCode === null ? [] : [one.id])));
  const fold = foldedSections({ ...loan, speaks: officesToSpeak(viewer, loan).length > 0 });
  const { request } = loan;
  const reasons = parameterOf(search, "reasons");
  const use = useOf(request);
  const wayOut = loan.stages.find((stage) => stage.direction === "out");
  const entry = (name: keyof typeof words.sections, count?: number): IndexEntry => ({
    id: name,
    label: words.sections[name],
    count,
  });
  const index = [
    entry("suitability"),
    entry("request"),
    entry("specimens", live.length),
    entry("dates"),
    loan.time.plan !== null && entry("plan"),
    has.decision && entry("decision"),
    has.cover && entry("cover"),
    hasMoney(loan, money) && entry("money", money.quotations.length + money.statements.length || undefined),
    has.agreement && entry("agreement", loan.agreements.length || undefined),
    entry("limits"),
    facility !== null && { id: "facility", label: facilityWords.needsTitle },
    has.crates && entry("crates", loan.crates.length || undefined),
    has.release && entry("release"),
    has.venue && entry("venue"),
    hasLonger(loan) && entry("longer"),
    has.home && entry("home"),
    has.custody && loan.sight.costs && entry("claims", claims.length || undefined),
    has.custody && entry("custody"),
    has.papers && entry("papers", papers.filter(({ isNewest }) => isNewest).length || undefined),
    has.messages && entry("messages", messages.length || undefined),
    maySee(viewer, "audit") && entry("happened"),
  ].filter((one): one is IndexEntry => Boolean(one));

  return (
    <RecordPage
      masthead={
        <Masthead
          number={loan.number}
          title={`${request.title || words.noTitle}, ${loan.borrower.name}`}
          latin={[words.count(live.length), use, formatRange(request.startsOn, request.endsOn)]
            .filter(Boolean)
            .join(", ")}
          standing={standsAt(loan)}
        />
      }
      next={<NextBox things={nextThings(loan, viewer)} title={nextTitle(loan.state)} />}
      index={index}
    >
      <SuitabilitySection
        viewer={viewer}
        loan={loan}
        sheets={sheets}
        runs={runs}
        fold={reasons === undefined ? fold.suitability : undefined}
        language={reasonsLanguage(reasons, viewer, loan.borrower)}
        mayChoose
      />
      <RequestSection viewer={viewer} loan={loan} fold={fold.request} />
      <SpecimensSection
        viewer={viewer}
        loan={loan}
        off={parameterOf(search, "off")}
        withdrawn={parameterOf(search, "withdrawn")}
        checked={parameterOf(search, "checked")}
      />
      <DatesSection loan={loan} today={today()} fold={fold.dates} />
      <PlanSection
        viewer={viewer}
        loan={loan}
        today={today()}
        sections={new Set(index.map(({ id: section }) => section))}
        fold={fold.plan}
      />
      {has.decision && <DecisionSection viewer={viewer} loan={loan} fold={fold.decision} />}
      {has.cover && (
        <CoverSection
          viewer={viewer}
          loan={loan}
          insurances={await insurancesFor(viewer, loan)}
          fold={fold.cover}
        />
      )}
      {hasMoney(loan, money) && <MoneySection viewer={viewer} loan={loan} money={money} today={today()} />}
      {has.agreement && <AgreementSection viewer={viewer} loan={loan} fold={fold.agreement} />}
      <LimitsSection specimens={limited} fold={fold.limits} />
      {facility !== null && <FacilitySection facility={facility} today={today()} fold={fold.facility} />}
      {has.crates && <CratesSection viewer={viewer} loan={loan} fold={fold.crates} />}
      {has.release && (
        <ReleaseSection
          loanId={loan.id}
          gates={loan.gates}
          specimens={live.length}
          carrier={wayOut?.carrier ?? null}
          mayDispatch={mayDo(viewer, "dispatchLoan")}
        />
      )}
      {has.venue && (
        <VenueSection
          viewer={viewer}
          loan={loan}
          now={moment}
          phone={(await centreSettings()).phone}
          fold={fold.venue}
        />
      )}
      {hasLonger(loan) && <LongerSection viewer={viewer} loan={loan} today={today()} fold={fold.longer} />}
      {has.home && (
        <HomeSection
          viewer={viewer}
          loan={loan}
          specimens={specimens}
          now={moment}
          checked={parameterOf(search, "checked")}
          closing={await findClosing(viewer, loan.id)}
          fold={fold.home}
        />
      )}
      {has.custody && loan.sight.costs && (
        <ClaimsSection
          viewer={viewer}
          loan={{ ...loan, lines: loan.lines.filter((line) => lineStatesSinceRelease.includes(line.state)) }}
          claims={claims}
          currency={(await centreSettings()).currency}
        />
      )}
      {has.custody && <CustodySection handovers={handovers} />}
      {has.papers && (
        <PapersSection loanId={loan.id} papers={papers} issuable={issuable} languages={languages} />
      )}
      {has.messages && (
        <MessagesSection
          loanId={loan.id}
          messages={messages}
          letters={letters}
          mayWrite={mayDo(viewer, "writeMessage", { institutionId: loan.borrower.id })}
          mayHold={mayHold}
        />
      )}
      {maySee(viewer, "audit") && <HappenedSection viewer={viewer} loan={loan} fold={fold.happened} />}
    </RecordPage>
  );
}
