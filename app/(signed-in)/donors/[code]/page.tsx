/**
 * One donor under the pseudonym: what was allowed and what stands against it now,
 * earlier forms, the specimens, and the sealed record with the looks into it.
 */
import type { Metadata } from "next";
import Link from "next/link";
import { ActionForm } from "#app/_parts/action-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { Happened } from "#app/_parts/happened.tsx";
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
import { formatDate, formatMoment } from "#app/_words/format.ts";
import { ConsentSheet, formName } from "#app/(signed-in)/donors/[code]/consent-section.tsx";
import { SealedRecordPanel } from "#app/(signed-in)/donors/[code]/sealed-record.tsx";
import { openRecord, saveSealedRecord, saveWithdrawal } from "#app/(signed-in)/donors/actions.ts";
import { ConsentStateMark } from "#app/(signed-in)/donors/consent-marks.tsx";
import { happenedTo, type RowOfRecord } from "#lib/desk/queries/happened.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { type ConsentRecord, type DonorSheet, getDonor } from "#lib/provenance/queries.ts";

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

function thingsNext(viewer: Viewer, donor: DonorSheet, current: ConsentRecord | undefined): NextThing[] {
  const form = recordFormLink(viewer, donor.code);
  if (!current) return [{ key: "none", outcome: "attend", text: words.noConsentNext, action: form }];
  const { status, disposition, dispositionDueOn } = current;
  const things: NextThing[] = [];
  if (status.state === "withdrawn") things.push({ key: "state", outcome: "bar", text: words.withdrawnNext });
  if (status.state === "expired")
    things.push({ key: "state", outcome: "bar", text: words.expiredNext, action: form });
  if (status.state === "withdrawal received" && status.endsOn)
    things.push({
      key: "state",
      outcome: "attend",
      text: words.withdrawalNext(formatDate(status.endsOn)),
    });
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

function Withdrawal({
  viewer,
  donor,
  current,
}: {
  viewer: Viewer;
  donor: DonorSheet;
  current: ConsentRecord;
}) {
  const received = current.withdrawalReceivedOn;
  const day = today();
  return (
    <Section
      id="withdrawal"
      title={words.withdrawal}
      margin={
        received === null && mayDo(viewer, "withdrawConsent") && <MarginNote title={words.withdrawAbout} />
      }
    >
      <p>
        {received === null
          ? words.withdrawalNone
          : words.withdrawalState(
              formatDate(received),
              formatDate(current.withdrawalEffectiveOn ?? received),
            )}
      </p>
      {received === null && mayDo(viewer, "withdrawConsent") && (
        <ActionForm
          action={saveWithdrawal.bind(null, donor.code)}
          label={words.withdraw}
          className="no-print"
        >
          <FieldGrid>
            <TextField label={words.receivedOn} type="date" name="receivedOn" max={day} required />
            <TextField
              label={words.effectiveOn}
              hint={words.effectiveHint}
              type="date"
              name="effectiveOn"
              required
            />
          </FieldGrid>
          <FormActions>
            <button type="submit">{words.withdraw}</button>
          </FormActions>
        </ActionForm>
      )}
    </Section>
  );
}

export default async function DonorPage({ params }: Props) {
  const { code } = await params;
  const viewer = await requireViewer(`/donors/${code}`);
  const donor = await orNotFound(() => getDonor(viewer, code));
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
      next={<NextBox things={thingsNext(viewer, donor, current)} />}
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
      {current && <Withdrawal viewer={viewer} donor={donor} current={current} />}
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
              { key: "when", label: words.lookedAt, cell: ({ lookedAt }) => formatMoment(lookedAt) },
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
