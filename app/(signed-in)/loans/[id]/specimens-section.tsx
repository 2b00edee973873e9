/** The lines of the loan: each specimen, where it stands, its checks on this loan, and the way on or off. */
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { toneOfLine, loanWords as words } from "#app/_words/en/loan-pages.ts";
import { standInWords } from "#app/_words/en/stand-ins.ts";
import { formatDate } from "#app/_words/format.ts";
import { noteByNumber, putBack } from "#app/(signed-in)/loans/[id]/actions.ts";
import { CheckSigned, ChecksOnLoan } from "#app/(signed-in)/loans/[id]/check/checks-on-loan.tsx";
import { LeaveForm } from "#app/(signed-in)/loans/[id]/journey/leave-form.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { NoteForm } from "#app/(signed-in)/loans/[id]/note-form.tsx";
import { TakenOff } from "#app/(signed-in)/slip/taken-off.tsx";
import { occasionNames } from "#lib/condition/schema.ts";
import { mayChangeSpecimens } from "#lib/loans/loan-state.ts";
import { occasionsFor } from "#lib/loans/occasions.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

type Line = LoanSheet["lines"][number];

/** More rows than this stand close. */
const readAtAGlance = 8;

/** States from which a line is taken off; from a slip it goes without a trace. */
const mayLeave: readonly LineState[] = ["noted", "requested", "accepted", "packed"];

function LineCheck({ line }: { line: Line }) {
  const check = line.checks?.all.at(-1)?.check;
  if (!check) return <span className="quiet">{words.notChecked}</span>;
  return (
    <>
      {words.grade} {check.grade}, {formatDate(check.checkedOn)}, {occasionNames[check.occasion]}
    </>
  );
}

/** A line that was added to a request after it was submitted is on it, and nothing is held for it. */
function LineStands({ line, loan }: { line: Line; loan: LoanSheet }) {
  const waits = line.state === "noted" && loan.state !== "enquiry";
  return (
    <StateMark outcome={waits ? "attend" : toneOfLine[line.state]}>
      {waits ? words.notedSince : words.lineStates[line.state]}
    </StateMark>
  );
}

/** That a line was withdrawn, where the reader comes back to. */
function Withdrawn({ loan, specimenId }: { loan: LoanSheet; specimenId: string | undefined }) {
  const line = loan.lines.find((one) => one.specimenId === specimenId && one.state === "withdrawn");
  if (!line) return null;
  return (
    <p role="status" className="form-done">
      {words.withdrawnDone(line.accessionNumber)}
    </p>
  );
}

export function SpecimensSection({
  viewer,
  loan,
  off,
  withdrawn,
  checked,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  /** What was just taken off, withdrawn, or the check that was just signed, as the address names it. */
  off: string | undefined;
  withdrawn: string | undefined;
  checked: string | undefined;
}) {
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
      {notes && (line.state === "noted" || line.state === "requested") && (
        <Link className="no-print" href={`/loans/${loan.id}/stand-ins/${line.specimenId}`}>
          {standInWords.link}
          <span className="visually-hidden"> {line.accessionNumber}</span>
        </Link>
      )}
      {removes && mayLeave.includes(line.state) && <LeaveForm loan={loan} line={line} />}
    </span>
  );
  const hasActs = loan.lines.some((line) => isChecked(line) || (removes && mayLeave.includes(line.state)));
  return (
    <Section id="specimens" title={words.sections.specimens}>
      {notes && (
        <TakenOff
          viewer={viewer}
          specimenId={off}
          specimenIds={loan.lines.map((line) => line.specimenId)}
          putBack={putBack.bind(null, loan.id)}
        />
      )}
      <Withdrawn loan={loan} specimenId={withdrawn} />
      <CheckSigned lines={loan.lines} checkId={checked} isHome={false} />
      <DataTable<Line>
        caption={words.tables.specimens}
        captionHidden
        rows={loan.lines}
        rowKey={(line) => line.id}
        dense={loan.lines.length > readAtAGlance}
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
            cell: (line) => <LineStands line={line} loan={loan} />,
          },
          {
            key: "since",
            label: words.since,
            cell: (line) => <Moment at={line.stateSince} />,
          },
          ...(loan.sight.checks
            ? [{ key: "check", label: words.lastCheck, cell: (line: Line) => <LineCheck line={line} /> }]
            : []),
          ...(hasActs ? [{ key: "acts", label: words.acts, onCard: "bare" as const, cell: acts }] : []),
        ]}
      />
      {loan.sight.checks && <ChecksOnLoan lines={loan.lines} />}
      {notes && <NoteForm action={noteByNumber.bind(null, loan.id)} />}
    </Section>
  );
}
