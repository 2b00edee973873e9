/** Stating from whom a specimen comes, whose it is, and which papers it has. */
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { MarginNote, Masthead, RecordPage, Section } from "#app/_parts/record-page.tsx";
import { type MarkTone, StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { specimenProvenanceWords as words } from "#app/_words/en/specimen-provenance.ts";
import { formatDate } from "#app/_words/format.ts";
import { AnswerMark } from "#app/(signed-in)/donors/consent-marks.tsx";
import {
  saveDonors,
  savePermit,
  saveTitle,
  takeBackPermit,
} from "#app/(signed-in)/specimens/[id]/provenance/actions.ts";
import {
  DonorsForm,
  PermitForm,
  TakeBackForm,
  TitleForm,
} from "#app/(signed-in)/specimens/[id]/provenance/provenance-forms.tsx";
import { type PaperState, paperStateOn } from "#lib/people/facility-gaps.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { getProvenance, type ProvenanceSheet } from "#lib/provenance/queries.ts";
import { type PermitRecord, scopes } from "#lib/provenance/schema.ts";

export const metadata: Metadata = { title: words.title };

function Codes({ codes }: { codes: readonly string[] }) {
  return codes.map((code) => (
    <Link key={code} className="mono" href={`/donors/${code}`} style={{ marginRight: "0.9rem" }}>
      {code}
    </Link>
  ));
}

function Donors({ viewer, sheet }: { viewer: Viewer; sheet: ProvenanceSheet }) {
  const { linkedDonorCodes: linked, donorCodes: all, strictest } = sheet;
  const through = all?.filter((code) => !linked?.includes(code)) ?? [];
  const unknown = sheet.donorsWithoutConsent ?? 0;
  return (
    <Section
      id="donors"
      title={words.donors}
      margin={
        sheet.human && (
          <>
            {sheet.donorCount === 0 && <MarginNote outcome="attend" title={words.nobodyKnown} />}
            {unknown > 0 && <MarginNote outcome="attend" title={words.withoutConsent(unknown)} />}
          </>
        )
      }
    >
      {!sheet.human && <p>{words.animal}</p>}
      {sheet.human && linked && (
        <>
          <p>{words.donorsAbout}</p>
          <Facts
            facts={[
              [words.linked, linked.length > 0 ? <Codes key="linked" codes={linked} /> : words.nobodyLinked],
              through.length > 0 && [words.throughParts, <Codes key="through" codes={through} />],
            ]}
          />
        </>
      )}
      {sheet.human &&
        (linked && mayDo(viewer, "linkDonor") ? (
          <DonorsForm action={saveDonors.bind(null, sheet.specimenId)} codes={linked} />
        ) : (
          <p className="quiet">{words.notForYou}</p>
        ))}
      {strictest && (
        <DataTable
          caption={words.strictest}
          rows={scopes}
          rowKey={(scope) => scope}
          columns={[
            { key: "scope", label: words.scope, cell: (scope) => scope },
            {
              key: "answer",
              label: words.answer,
              cell: (scope) => <AnswerMark answer={strictest.answers[scope].answer} />,
            },
            {
              key: "by",
              label: words.decidedBy,
              cell: (scope) => <span className="quiet">{strictest.answers[scope].donorCode}</span>,
            },
          ]}
        />
      )}
    </Section>
  );
}

const permitTones: Record<PaperState, MarkTone> = {
  valid: "clear",
  "not yet valid": "attend",
  lapsed: "bar",
  "no end stated": "attend",
};

/** How a paper stands: by its own days, or by the day on which it was taken back, and why. */
function PermitState({ permit, day }: { permit: PermitRecord; day: string }) {
  const { withdrawnOn, withdrawnBecause } = permit;
  if (withdrawnOn === null) {
    const state = paperStateOn(permit, day);
    return <StateMark outcome={permitTones[state]}>{words.paperStates[state]}</StateMark>;
  }
  const isOver = withdrawnOn <= day;
  const since = formatDate(withdrawnOn);
  return (
    <div style={{ minWidth: "14rem" }}>
      <StateMark outcome={isOver ? "bar" : "attend"}>
        {isOver ? words.takenBackOn(since) : words.endsOn(since)}
      </StateMark>
      , {words.because(withdrawnBecause)}
    </div>
  );
}

function Permits({ viewer, sheet, day }: { viewer: Viewer; sheet: ProvenanceSheet; day: string }) {
  const revocable = sheet.permitRecords.filter(
    ({ withdrawnOn, validUntil }) => withdrawnOn === null && (validUntil === null || validUntil >= day),
  );
  return (
    <Section
      id="permits"
      title={words.permits}
      margin={
        !sheet.human &&
        sheet.permits.length === 0 && <MarginNote outcome="attend" title={words.permitsMissing} />
      }
    >
      <p>{words.permitsAbout}</p>
      <DataTable
        caption={words.permitsCaption}
        captionHidden
        rows={sheet.permitRecords}
        rowKey={({ id }) => id}
        empty={<EmptyState>{words.noPermits}</EmptyState>}
        columns={[
          { key: "kind", label: words.kind, cell: ({ kind }) => words.permitKinds[kind] },
          {
            key: "number",
            label: words.number,
            cell: ({ number }) => <span className="mono">{number}</span>,
          },
          { key: "authority", label: words.authority, cell: ({ authority }) => authority },
          {
            key: "territories",
            label: words.territories,
            cell: ({ territories }) => territories.join(", ") || words.everywhere,
          },
          { key: "until", label: words.validUntil, cell: ({ validUntil }) => <DateText date={validUntil} /> },
          { key: "state", label: words.state, cell: (permit) => <PermitState permit={permit} day={day} /> },
        ]}
      />
      {mayDo(viewer, "recordPermit") && (
        <>
          <h3>{words.addPermit}</h3>
          <PermitForm action={savePermit.bind(null, sheet.specimenId)} />
        </>
      )}
      {mayDo(viewer, "withdrawPermit") && revocable.length > 0 && (
        <>
          <h3>{words.takeBack}</h3>
          <p>{words.takeBackAbout}</p>
          <TakeBackForm
            action={takeBackPermit.bind(null, sheet.specimenId)}
            permits={revocable}
            today={day}
          />
        </>
      )}
    </Section>
  );
}

export default async function SpecimenProvenancePage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/specimens/${id}/provenance`);
  const edits = (["linkDonor", "recordPermit", "recordTitle"] as const).some((act) => mayDo(viewer, act));
  if (!edits) notFound();
  const sheet = await orNotFound(() => getProvenance(viewer, id));
  const day = today();
  return (
    <RecordPage
      masthead={
        <Masthead
          number={sheet.accessionNumber}
          title={words.title}
          standing={<Link href={`/specimens/${id}`}>{words.backToSpecimen}</Link>}
        />
      }
      index={[
        { id: "donors", label: words.donors },
        { id: "title", label: words.ownership },
        { id: "permits", label: words.permits, count: sheet.permitRecords.length },
      ]}
    >
      <Donors viewer={viewer} sheet={sheet} />
      <Section
        id="title"
        title={words.ownership}
        margin={sheet.title === null && <MarginNote outcome="attend" title={words.noTitle} />}
      >
        <p>{words.ownershipAbout}</p>
        {sheet.title && (
          <Facts
            facts={[
              [words.status, words.titleStatuses[sheet.title.status]],
              sheet.title.ownerName !== "" && [words.ownerName, sheet.title.ownerName],
              sheet.title.leaveReference !== "" && [words.leaveReference, sheet.title.leaveReference],
              [words.recordedOn, <DateText key="stated" date={sheet.title.recordedOn} />],
            ]}
          />
        )}
        {mayDo(viewer, "recordTitle") && (
          <TitleForm action={saveTitle.bind(null, id)} title={sheet.title} today={day} />
        )}
      </Section>
      <Permits viewer={viewer} sheet={sheet} day={day} />
    </RecordPage>
  );
}
