/** The lines of the loan: each specimen, where it stands, its check on this loan, and the way on or off. */
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { toneOfLine, loanWords as words } from "#app/_words/en/loan-pages.ts";
import { formatDate } from "#app/_words/format.ts";
import { noteByNumber, takeOffLoan } from "#app/(signed-in)/loans/[id]/actions.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { NoteForm } from "#app/(signed-in)/loans/[id]/note-form.tsx";
import { mayChangeSpecimens } from "#lib/loans/loan-state.ts";
import { occasionsFor } from "#lib/loans/occasions.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

type Line = LoanSheet["lines"][number];

/** States from which a line is taken off; from a slip it goes without a trace. */
const mayLeave: readonly LineState[] = ["noted", "requested", "accepted", "packed"];

function LineCheck({ line }: { line: Line }) {
  const check = line.checks?.home ?? line.checks?.out;
  if (!check) return <span className="quiet">{words.notChecked}</span>;
  return (
    <>
      {words.grade} {check.grade}, {formatDate(check.checkedOn)}
    </>
  );
}

export function SpecimensSection({ viewer, loan }: { viewer: Viewer; loan: LoanSheet }) {
  const subject = { institutionId: loan.borrower.id };
  const removes = mayDo(viewer, "removeSpecimen", subject);
  const checks = mayDo(viewer, "recordCheck", subject);
  const notes = mayDo(viewer, "noteSpecimen", subject) && mayChangeSpecimens(loan.state);
  const isChecked = (line: Line) => checks && occasionsFor(line.state, isBorrower(viewer)).length > 0;
  const acts = (line: Line) => (
    <span className={styles.row}>
      {isChecked(line) && (
        <Link className="no-print" href={`/loans/${loan.id}/check/${line.specimenId}`}>
          {words.check}
          <span className="visually-hidden"> {line.accessionNumber}</span>
        </Link>
      )}
      {removes && mayLeave.includes(line.state) && (
        <ActForm
          action={takeOffLoan.bind(null, loan.id, line.specimenId)}
          label={`${line.state === "noted" ? words.takeOff : words.withdraw}: ${line.accessionNumber}`}
          button={line.state === "noted" ? words.takeOff : words.withdraw}
          look="plain"
        />
      )}
    </span>
  );
  const hasActs = loan.lines.some((line) => isChecked(line) || (removes && mayLeave.includes(line.state)));
  return (
    <Section
      id="specimens"
      title={words.sections.specimens}
      margin={
        removes &&
        loan.lines.some((line) => line.state !== "noted" && mayLeave.includes(line.state)) && (
          <MarginNote title={words.withdraw}>{words.withdrawCaution}</MarginNote>
        )
      }
    >
      <DataTable<Line>
        caption={words.tables.specimens}
        captionHidden
        rows={loan.lines}
        rowKey={(line) => line.id}
        dense={loan.lines.length > 20}
        empty={<EmptyState>{words.noSpecimens}</EmptyState>}
        columns={[
          {
            key: "number",
            label: words.number,
            cell: (line) => (
              <Link className="mono" href={`/specimens/${line.specimenId}`}>
                {line.accessionNumber}
              </Link>
            ),
          },
          { key: "title", label: words.title, cell: (line) => line.title },
          {
            key: "state",
            label: words.state,
            cell: (line) => (
              <StateMark outcome={toneOfLine[line.state]}>{words.lineStates[line.state]}</StateMark>
            ),
          },
          {
            key: "since",
            label: words.since,
            cell: (line) => <Moment at={line.stateSince} />,
          },
          ...(loan.sight.checks
            ? [{ key: "check", label: words.lastCheck, cell: (line: Line) => <LineCheck line={line} /> }]
            : []),
          ...(hasActs ? [{ key: "acts", label: words.acts, cell: acts }] : []),
        ]}
      />
      {notes && <NoteForm action={noteByNumber.bind(null, loan.id)} />}
    </Section>
  );
}
