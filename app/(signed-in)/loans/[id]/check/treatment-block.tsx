/** Hours of treatment before the specimens leave: what is estimated, by whom, and the form for who may. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { FieldGrid, SelectField, TextField } from "#app/_parts/fields.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { treatmentWords as words } from "#app/_words/en/treatment.ts";
import { keepTreatment } from "#app/(signed-in)/loans/[id]/check/treatment-actions.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { type TreatmentRow, treatmentOf } from "#lib/loans/queries/treatment.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

function Estimates({ rows }: { rows: readonly TreatmentRow[] }) {
  return (
    <DataTable<TreatmentRow>
      caption={words.caption}
      captionHidden
      dense
      rows={rows}
      rowKey={(row) => row.specimenId}
      columns={[
        {
          key: "specimen",
          label: words.specimen,
          cell: (row) => <span className="mono">{row.accessionNumber}</span>,
        },
        {
          key: "hours",
          label: words.hours,
          right: true,
          cell: (row) => row.estimate?.hours ?? <span className="quiet">{words.none}</span>,
        },
        { key: "work", label: words.work, cell: (row) => row.estimate?.work },
        {
          key: "by",
          label: words.by,
          cell: (row) =>
            row.estimate && (
              <>
                {row.estimate.by}, <DateText date={row.estimate.on} short />
              </>
            ),
        },
      ]}
    />
  );
}

export async function TreatmentBlock({ viewer, loan }: { viewer: Viewer; loan: LoanSheet }) {
  const sheet = loan.submittedAt === null ? null : await treatmentOf(viewer, loan.id);
  if (sheet === null || sheet.rows.length === 0) return null;
  const isOpen = statesBeforeRelease.includes(loan.state);
  const isEstimated = sheet.rows.some(({ estimate }) => estimate !== null);
  if (!isOpen && !isEstimated) return null;
  const live = sheet.rows.filter(({ specimenId }) =>
    loan.lines.some((line) => line.specimenId === specimenId && line.state !== "withdrawn"),
  );
  return (
    <div className={styles.block}>
      <h3>{words.title}</h3>
      {isEstimated ? (
        <>
          <Estimates rows={sheet.rows} />
          <p className="quiet small">
            {words.together(sheet.together)} {words.about}
          </p>
        </>
      ) : (
        <p className="quiet">{words.noneYet}</p>
      )}
      {isOpen && mayDo(viewer, "estimateTreatment") && (
        <details className="no-print">
          <summary>{words.estimate}</summary>
          <ActForm
            action={keepTreatment.bind(null, loan.id)}
            label={words.estimate}
            button={words.save}
            look="outline"
          >
            <FieldGrid>
              <SelectField
                label={words.specimen}
                name="specimenId"
                options={live.map(({ specimenId, accessionNumber }) => [specimenId, accessionNumber])}
              />
              <TextField label={words.hours} hint={words.hoursHint} name="hours" inputMode="decimal" />
              <TextField label={words.work} name="work" maxLength={500} />
            </FieldGrid>
          </ActForm>
        </details>
      )}
    </div>
  );
}
