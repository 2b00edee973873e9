/**
 * A withdrawal: that none came in, or when it came and counts. Before one is
 * recorded, and after, it stands here which loans it concerns and what becomes of
 * each, so that nobody learns it from the borrower.
 */
import Link from "next/link";
import { ActionForm } from "#app/_parts/action-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { formatDate } from "#app/_words/format.ts";
import { saveWithdrawal } from "#app/(signed-in)/donors/actions.ts";
import { effectOfWithdrawal, type LentLine } from "#lib/desk/lent.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import type { ConsentRecord } from "#lib/provenance/queries.ts";

function Follows({ lent, caption }: { lent: readonly LentLine[]; caption: string }) {
  const rows = lent.flatMap((line) => {
    const effect = effectOfWithdrawal(line.state);
    return effect === null ? [] : [{ ...line, effect }];
  });
  return (
    <>
      <DataTable
        caption={caption}
        rows={rows}
        rowKey={({ loanId, specimenId }) => `${loanId} ${specimenId}`}
        empty={<EmptyState>{words.followsNothing}</EmptyState>}
        columns={[
          {
            key: "specimen",
            label: words.lentSpecimen,
            cell: (row) => (
              <Link className="mono" href={`/specimens/${row.specimenId}`}>
                {row.accessionNumber}
              </Link>
            ),
          },
          { key: "effect", label: words.lentEffect, cell: (row) => <b>{words.effects[row.effect]}</b> },
          {
            key: "loan",
            label: words.lentLoan,
            cell: (row) => (
              <Link className="mono" href={`/loans/${row.loanId}`}>
                {row.loanNumber}
              </Link>
            ),
          },
          { key: "state", label: words.lentState, cell: (row) => loanWords.lineStates[row.state] },
          { key: "with", label: words.lentTo, cell: (row) => `${row.borrower}, ${row.venue}` },
          { key: "until", label: words.lentUntil, cell: (row) => <DateText date={row.endsOn} /> },
        ]}
      />
      {rows.length > 0 && <p className="quiet">{words.followsRest}</p>}
    </>
  );
}

export function WithdrawalSection({
  viewer,
  code,
  current,
  lent,
}: {
  viewer: Viewer;
  code: string;
  current: ConsentRecord;
  lent: readonly LentLine[];
}) {
  const received = current.withdrawalReceivedOn;
  const mayRecord = received === null && mayDo(viewer, "withdrawConsent");
  return (
    <Section
      id="withdrawal"
      title={words.withdrawal}
      margin={mayRecord && <MarginNote title={words.withdrawAbout} />}
    >
      <p>
        {received === null
          ? words.withdrawalNone
          : words.withdrawalState(
              formatDate(received),
              formatDate(current.withdrawalEffectiveOn ?? received),
            )}
      </p>
      {(mayRecord || received !== null) && (
        <Follows lent={lent} caption={received === null ? words.followsBefore : words.followsAfter} />
      )}
      {mayRecord && (
        <ActionForm action={saveWithdrawal.bind(null, code)} label={words.withdraw} className="no-print">
          <FieldGrid>
            <TextField label={words.receivedOn} type="date" name="receivedOn" max={today()} required />
            <TextField label={words.effectiveOn} hint={words.effectiveHint} type="date" name="effectiveOn" />
          </FieldGrid>
          <FormActions>
            <button type="submit">{words.withdraw}</button>
          </FormActions>
        </ActionForm>
      )}
    </Section>
  );
}
