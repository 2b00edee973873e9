/** Who may sign or decide what, up to what cost, until when. */
import type { Metadata } from "next";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { mandateWords as words } from "#app/_words/en/mandates.ts";
import { formatMoney } from "#app/_words/format.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { revoke } from "#app/(signed-in)/mandates/actions.ts";
import { MandateForm } from "#app/(signed-in)/mandates/mandate-form.tsx";
import { countsOn } from "#lib/people/mandates.ts";
import { mayDo } from "#lib/people/permission.ts";
import { listMandates, listSignatories, type MandateRow } from "#lib/people/queries/mandates.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { today } from "#lib/platform/clock.ts";

export const metadata: Metadata = { title: words.title };

/** The form keeps its distance from the list above it. */
const below = { margin: "1.8rem 0 0.4rem" } as const;

function State({ row, day }: { row: MandateRow; day: string }) {
  if (countsOn(row, day)) return <StateMark outcome="clear">{words.counts}</StateMark>;
  const word = row.revokedOn !== null ? words.revoked : row.validFrom > day ? words.toCome : words.over;
  return <StateMark outcome="neutral">{word}</StateMark>;
}

export default async function MandatesPage() {
  const viewer = await requireViewer("/mandates");
  const rows = await orNotFound(() => listMandates(viewer));
  const mayGive = mayDo(viewer, "giveMandate");
  const signatories = mayGive ? await listSignatories(viewer) : [];
  const { currency } = await centreSettings();
  const day = today();
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <p>{words.about}</p>
      <DataTable<MandateRow>
        caption={words.caption}
        rows={rows}
        rowKey={({ id }) => id}
        empty={<EmptyState>{words.none}</EmptyState>}
        columns={[
          { key: "name", label: words.name, cell: ({ name }) => name },
          {
            key: "institution",
            label: words.institution,
            cell: ({ institution }) => institution ?? <span className="quiet">{words.theHouse}</span>,
          },
          {
            key: "acts",
            label: words.acts,
            cell: ({ acts }) => acts.map((act) => words.actWords[act]).join(", "),
          },
          {
            key: "limit",
            label: words.limit,
            cell: ({ limit }) =>
              limit === null ? words.noLimit : <span className={styles.nowrap}>{formatMoney(limit)}</span>,
          },
          { key: "from", label: words.from, cell: ({ validFrom }) => <DateText date={validFrom} short /> },
          {
            key: "until",
            label: words.until,
            cell: ({ validUntil, revokedOn }) => {
              const end = revokedOn ?? validUntil;
              return end === null ? (
                <span className="quiet">{words.untilRevoked}</span>
              ) : (
                <DateText date={end} short />
              );
            },
          },
          {
            key: "reference",
            label: words.reference,
            cell: ({ reference, givenBy }) => (
              <>
                {reference}
                <span className="quiet small" style={{ display: "block" }}>
                  {words.recordedBy(givenBy)}
                </span>
              </>
            ),
          },
          { key: "state", label: words.state, cell: (row) => <State row={row} day={day} /> },
          ...(mayGive
            ? [
                {
                  key: "revoke",
                  label: "",
                  onCard: "bare" as const,
                  cell: ({ id, name, revokedOn, validUntil }: MandateRow) =>
                    revokedOn === null &&
                    (validUntil === null || day < validUntil) && (
                      <details className={`no-print ${styles.aside}`}>
                        <summary>
                          {words.revokeShort}
                          <span className="visually-hidden">: {name}</span>
                        </summary>
                        <ActForm
                          action={revoke.bind(null, id)}
                          label={words.revoke(name)}
                          button={words.revokeShort}
                          look="outline"
                        >
                          <p>{words.revokeFollows}</p>
                        </ActForm>
                      </details>
                    ),
                },
              ]
            : []),
        ]}
      />
      {mayGive && (
        <section className={`no-print ${styles.form}`} aria-labelledby="give">
          <h2 id="give" style={below}>
            {words.give}
          </h2>
          <p>{words.giveAbout}</p>
          <MandateForm signatories={signatories} currency={currency} today={day} />
        </section>
      )}
    </PlainPage>
  );
}
