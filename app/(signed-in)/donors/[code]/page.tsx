/**
 * One donor under the pseudonym: what was allowed and what stands against it now,
 * earlier forms, the specimens, and the sealed record with the looks into it.
 */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Happened } from "#app/_parts/happened.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import {
  MarginNote,
  Masthead,
  NextBox,
  type NextThing,
  RecordPage,
  Section,
} from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import { formatDate } from "#app/_words/format.ts";
import { ConsentSheet, formName } from "#app/(signed-in)/donors/[code]/consent-section.tsx";
import { SealedRecordPanel } from "#app/(signed-in)/donors/[code]/sealed-record.tsx";
import { WithdrawalSection } from "#app/(signed-in)/donors/[code]/withdrawal-section.tsx";
import { openRecord, saveSealedRecord } from "#app/(signed-in)/donors/actions.ts";
import { ConsentStateMark } from "#app/(signed-in)/donors/consent-marks.tsx";
import { effectOfWithdrawal, isAway, type LentLine } from "#lib/desk/lent.ts";
import { happenedTo, type RowOfRecord } from "#lib/desk/queries/happened.ts";
import { listLentOfDonor } from "#lib/desk/queries/lent.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type ConsentRecord, type DonorSheet, getDonor } from "#lib/provenance/queries.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

type Props = { params: Promise<{ code: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { code } = await params;
  const viewer = await requireViewer(`/donors/${code}`);
  return { title: (await orNotFound(() => getDonor(viewer, code))).code };
}

function recordFormLink(viewer: Viewer, code: string) {
  return (
    mayDo(viewer, "recordConsent") && (
      <Link className="act outline no-print" href={`/donors/${code}/consent/new`}>
        {words.recordForm}
      </Link>
    )
  );
}

/** More loans than these are told in the section on the withdrawal alone. */
const mostLent = 5;

/** What the withdrawal asks of the loans that claim this donor's specimens. */
function lentThings(lent: readonly LentLine[], outcome: Outcome): NextThing[] {
  const concerned = lent.flatMap((line) => {
    const effect = effectOfWithdrawal(line.state);
    return effect === null ? [] : [{ line, effect }];
  });
  const things = concerned.slice(0, mostLent).map(
    ({ line, effect }): NextThing => ({
      key: `lent ${line.loanId} ${line.specimenId}`,
      outcome: isAway(line) ? outcome : "attend",
      text: words.lentNext(line.accessionNumber, words.effects[effect], line.loanNumber, line.borrower),
      action: (
        <Link className="act plain" href={`/loans/${line.loanId}`}>
          {words.openLoan(line.loanNumber)}
        </Link>
      ),
    }),
  );
  const rest = concerned.length - things.length;
  if (rest > 0)
    things.push({
      key: "lent more",
      outcome: "attend",
      text: words.moreLentNext(rest),
      action: (
        <a className="act plain" href="#withdrawal">
          {words.seeAll}
        </a>
      ),
    });
  return things;
}

function thingsNext(
  viewer: Viewer,
  donor: DonorSheet,
  current: ConsentRecord | undefined,
  lent: readonly LentLine[],
): NextThing[] {
  const form = recordFormLink(viewer, donor.code);
  if (!current) return [{ key: "none", outcome: "attend", text: words.noConsentNext, action: form }];
  const { status, disposition, dispositionDueOn } = current;
  const things: NextThing[] = [];
  if (status.state === "withdrawn")
    things.push({ key: "state", outcome: "bar", text: words.withdrawnNext }, ...lentThings(lent, "bar"));
  if (status.state === "expired")
    things.push({ key: "state", outcome: "bar", text: words.expiredNext, action: form });
  if (status.state === "withdrawal received" && status.endsOn)
    things.push(
      { key: "state", outcome: "attend", text: words.withdrawalNext(formatDate(status.endsOn)) },
      ...lentThings(lent, "attend"),
    );
  if (status.reviewDue)
    things.push({ key: "review", outcome: "attend", text: words.reviewNext, action: form });
  if (dispositionDueOn !== null)
    things.push({
      key: "disposition",
      outcome: "attend",
      text: words.dispositionNext(words.dispositionNames[disposition], formatDate(dispositionDueOn)),
    });
  if (!donor.sealedRecordKept && mayDo(viewer, "keepSealedRecord"))
    things.push({
      key: "sealed",
      outcome: "attend",
      text: words.noSealedNext,
      action: (
        <a className="act outline" href="#sealed">
          {words.keepTitle}
        </a>
      ),
    });
  return things;
}

export default async function DonorPage({ params }: Props) {
  const { code } = await params;
  const viewer = await requireViewer(`/donors/${code}`);
  const donor = await orNotFound(() => getDonor(viewer, code));
  const lent = await listLentOfDonor(viewer, code);
  const current = donor.consents.find(({ superseded }) => !superseded);
  const earlier = donor.consents.filter(({ superseded }) => superseded);
  const happened = maySee(viewer, "audit")
    ? await happenedTo(viewer, [
        { table: "donor", key: code },
        { table: "donor_identity", key: code },
        { table: "donor_look", key: code },
        ...donor.consents.flatMap(({ id }): RowOfRecord[] => [
          { table: "consent", key: id },
          { table: "consent_answer", key: id, andBelow: true },
        ]),
      ])
    : null;
  return (
    <RecordPage
      masthead={
        <Masthead
          number={code}
          title={words.donor}
          standing={
            <p>
              <ConsentStateMark status={current?.status ?? null} />
            </p>
          }
        />
      }
      next={<NextBox things={thingsNext(viewer, donor, current, lent)} />}
      index={[
        { id: "consent", label: words.consent },
        ...(current ? [{ id: "withdrawal", label: words.withdrawal }] : []),
        { id: "earlier", label: words.earlier, count: earlier.length },
        { id: "specimens", label: words.specimens, count: donor.specimens.length },
        { id: "sealed", label: words.sealed },
        ...(donor.looks ? [{ id: "looks", label: words.looks, count: donor.looks.length }] : []),
        ...(happened ? [{ id: "happened", label: words.happened }] : []),
      ]}
    >
      <Section
        id="consent"
        title={words.consent}
        margin={
          <>
            <MarginNote title={words.unknownNote} />
            {current && current.verifiedOn === null && (
              <MarginNote outcome="attend" title={words.notVerified} />
            )}
          </>
        }
      >
        {current ? <ConsentSheet consent={current} /> : <EmptyState>{words.currentNone}</EmptyState>}
        {recordFormLink(viewer, code)}
      </Section>
      {current && <WithdrawalSection viewer={viewer} code={code} current={current} lent={lent} />}
      <Section id="earlier" title={words.earlier}>
        {earlier.length === 0 && <p className="quiet">{words.earlierNone}</p>}
        {earlier.map((consent) => (
          <details key={consent.id}>
            <summary>
              {formName(consent)}, {words.bases[consent.basis]}
            </summary>
            <ConsentSheet consent={consent} />
          </details>
        ))}
      </Section>
      <Section id="specimens" title={words.specimens}>
        <DataTable
          caption={words.specimensCaption}
          captionHidden
          rows={donor.specimens}
          rowKey={({ id }) => id}
          empty={<EmptyState>{words.noSpecimens}</EmptyState>}
          columns={[
            {
              key: "number",
              label: words.number,
              cell: ({ id, accessionNumber }) => (
                <Link className="mono" href={`/specimens/${id}`}>
                  {accessionNumber}
                </Link>
              ),
            },
            { key: "title", label: words.specimenTitle, cell: ({ title }) => title },
          ]}
        />
      </Section>
      <Section id="sealed" title={words.sealed}>
        <SealedRecordPanel
          kept={donor.sealedRecordKept}
          open={mayDo(viewer, "openSealedRecord") ? openRecord.bind(null, code) : null}
          keep={mayDo(viewer, "keepSealedRecord") ? saveSealedRecord.bind(null, code) : null}
        />
      </Section>
      {donor.looks && (
        <Section id="looks" title={words.looks}>
          <DataTable
            caption={words.looksCaption}
            rows={donor.looks}
            rowKey={({ by, lookedAt }) => `${by} ${lookedAt.toISOString()}`}
            empty={<p className="quiet">{words.looksNone}</p>}
            columns={[
              {
                key: "when",
                label: words.lookedAt,
                cell: ({ lookedAt }) => <Moment at={lookedAt.toISOString()} />,
              },
              { key: "who", label: words.lookedBy, cell: ({ by }) => by },
              { key: "why", label: words.lookReason, cell: ({ reason }) => reason },
            ]}
          />
        </Section>
      )}
      {happened && (
        <Section id="happened" title={words.happened}>
          <Happened entries={happened} />
        </Section>
      )}
    </RecordPage>
  );
}
