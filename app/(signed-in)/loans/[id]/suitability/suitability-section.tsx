/**
 * Suitability: each specimen under each group of rules, as word and shape, and in
 * the margin every finding that is not clear with its rule, fact, source and way
 * out. A cell leads to the first note that is about it.
 */
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Numbers } from "#app/_parts/numbers.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { keptRunWords } from "#app/_words/en/kept-runs.ts";
import { decisionWords } from "#app/_words/en/loan-acts.ts";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { setAsideWords } from "#app/_words/en/set-aside.ts";
import { formatDate } from "#app/_words/format.ts";
import { numbersInWords } from "#app/_words/number-range.ts";
import { setAside } from "#app/(signed-in)/loans/[id]/actions.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { EveryAnswer } from "#app/(signed-in)/loans/[id]/suitability/every-answer.tsx";
import { KeptRuns } from "#app/(signed-in)/loans/[id]/suitability/kept-runs.tsx";
import { ReasonsChoice } from "#app/(signed-in)/loans/[id]/suitability/reasons-choice.tsx";
import { SetAsideForm } from "#app/(signed-in)/loans/[id]/suitability/set-aside-form.tsx";
import { SuitabilityChanges } from "#app/(signed-in)/loans/[id]/suitability/suitability-changes.tsx";
import {
  type MatrixRow,
  matrixRows,
  type NamedLine,
  type Note,
  notesOf,
  withheld,
} from "#app/(signed-in)/loans/[id]/suitability/suitability-notes.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { officesOf } from "#lib/loans/offices.ts";
import type { KeptRun as KeptRunRow } from "#lib/loans/queries/kept-runs.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { ruleBook, ruleEntry } from "#lib/suitability/rules/book.ts";
import { mayGoAgainst } from "#lib/suitability/rules/set-aside.ts";
import { type RuleGroup, ruleGroups } from "#lib/suitability/schema.ts";
import type { Office } from "#lib/suitability/suitability.ts";

/** More notes than this stand under the matrix instead of beside it. */
const mostBeside = 2;
/** More notes than this are folded; bars never are. */
const mostNotes = 9;

const anchorOf = (index: number) => `finding-${index + 1}`;

/** What the notes need to know of the loan and of who reads. */
type Reading = { named: boolean; loanId: string; offices: readonly Office[]; language: PaperLanguage };

/** Whose word may go against a rule, in a sentence. */
function whoDecides(rule: string): string {
  // A rule of long ago may stand in the book no more.
  if (!ruleBook.some(({ id }) => id === rule)) return setAsideWords.nobodyDecides;
  const may = mayGoAgainst(rule).map((office) => decisionWords.offices[office].toLowerCase());
  return may.length === 0
    ? setAsideWords.nobodyDecides
    : setAsideWords.decides(may, ruleEntry(rule).needsEvidence);
}

function NoteText({ note, index, reading }: { note: Note; index: number; reading: Reading }) {
  const { named, loanId, offices, language } = reading;
  const isTold = note.code !== withheld;
  const isToldBar = note.outcome === "bar" && isTold;
  const may = isToldBar ? mayGoAgainst(note.rule) : [];
  const own = offices.filter((office) => may.includes(office));
  return (
    <div id={anchorOf(index)} className={styles.target}>
      <MarginNote
        outcome={note.outcome}
        title={words.groups[note.group]}
        source={note.source && `${words.rule} ${note.rule}. ${note.source}.`}
        act={
          own.length > 0 && (
            <SetAsideForm
              action={setAside.bind(null, loanId, note.rule, note.code, note.specimenIds)}
              offices={own}
              rule={note.rule}
              needsEvidence={ruleEntry(note.rule).needsEvidence}
            />
          )
        }
      >
        {named && (
          <>
            <Numbers numbers={note.numbers} />
            {note.fact && ": "}
          </>
        )}
        <span lang={language}>{note.fact}</span>{" "}
        <span className={styles.wayOut}>
          {words.wayOut} <span lang={language}>{note.wayOut}</span>
        </span>
        {isTold && <span style={{ display: "block" }}>{whoDecides(note.rule)}</span>}
        {note.setAside && (
          <span style={{ display: "block" }}>
            {setAsideWords.standsAgainst(note.setAside.by, decisionWords.offices[note.setAside.office])}{" "}
            {formatDate(note.setAside.on)}: {note.setAside.grounds}
            {note.setAside.evidence !== "" && ` (${note.setAside.evidence})`}
          </span>
        )}
      </MarginNote>
    </div>
  );
}

function Notes({ notes, reading, spread }: { notes: readonly Note[]; reading: Reading; spread: boolean }) {
  const bars = notes.filter((note) => note.outcome === "bar").length;
  const shown = Math.max(bars, Math.min(notes.length, mostNotes));
  const draw = (note: Note, index: number) => (
    <NoteText key={note.key} note={note} index={index} reading={reading} />
  );
  const laid = spread ? styles.spread : undefined;
  return (
    <>
      <div className={laid}>{notes.slice(0, shown).map(draw)}</div>
      {notes.length > shown && (
        <details>
          <summary>{words.moreNotes(notes.length - shown)}</summary>
          <div className={laid}>{notes.slice(shown).map((note, index) => draw(note, shown + index))}</div>
        </details>
      )}
    </>
  );
}

/** The place of the first note about one of the specimens under the group. */
function noteFor(notes: readonly Note[], row: MatrixRow, group: RuleGroup): number {
  const outcome = row.outcomes[group];
  return notes.findIndex(
    (note) =>
      note.group === group &&
      note.outcome === outcome &&
      note.specimenIds.some((id) => row.specimenIds.includes(id)),
  );
}

function Matrix({ rows, notes }: { rows: readonly MatrixRow[]; notes: readonly Note[] }) {
  return (
    <DataTable
      caption={words.tables.suitability}
      captionHidden
      dense
      rows={rows}
      rowKey={(row) => row.key}
      columns={[
        {
          key: "specimen",
          label: words.specimen,
          cell: (row) => <Numbers numbers={row.numbers} />,
        },
        ...ruleGroups.map((group) => ({
          key: group,
          label: words.groups[group],
          cell: (row: MatrixRow) => {
            const outcome = row.outcomes[group];
            const note = outcome === "clear" ? -1 : noteFor(notes, row, group);
            const mark = <StateMark outcome={outcome} />;
            return note < 0 ? (
              mark
            ) : (
              <a className={styles.cell} href={`#${anchorOf(note)}`}>
                {mark}
              </a>
            );
          },
        })),
      ]}
    />
  );
}

/** When an evaluation was last kept as it was, and which specimens of today it does not speak of. */
function KeptRun({ run, lines }: { run: NonNullable<LoanSheet["latestRun"]>; lines: readonly NamedLine[] }) {
  const kept = new Set(run.findings.map((finding) => finding.specimenId));
  const since = lines.filter((line) => !kept.has(line.specimenId)).map((line) => line.accessionNumber);
  return (
    <p className="quiet small">
      {words.keptRun(keptRunWords.occasions[run.occasion] ?? run.occasion)} <Moment at={run.runAt} long />.{" "}
      {since.length > 0 && words.keptRunWithout(numbersInWords(since))}
    </p>
  );
}

export function SuitabilitySection({
  viewer,
  loan,
  sheets,
  runs = [],
  about,
  fold,
  language = "en",
  mayChoose = false,
}: {
  viewer: Viewer;
  loan: Pick<LoanSheet, "id" | "state" | "lines" | "findings" | "matrix" | "sight" | "latestRun">;
  /** Which of the specimens are sheets of a series. */
  sheets: ReadonlySet<string>;
  /** Every evaluation that was kept; a slip has none. */
  runs?: readonly KeptRunRow[];
  /** What stands above the matrix. */
  about?: string;
  fold?: string | undefined;
  /** In which the reasons are told. */
  language?: PaperLanguage;
  /** Whether the reader may choose another one. */
  mayChoose?: boolean;
}) {
  const judged = new Set(Object.keys(loan.matrix));
  const lines: NamedLine[] = loan.lines.filter((line) => judged.has(line.specimenId));
  const notes = notesOf(loan.findings, lines, language);
  const rows = matrixRows(lines, loan.matrix, (id) => sheets.has(id));
  const spread = notes.length > mostBeside;
  const isOpen = statesBeforeRelease.includes(loan.state);
  const offices = isOpen && mayDo(viewer, "setAsideBar") ? officesOf(viewer) : [];
  const reading = { named: lines.length > 1, loanId: loan.id, offices, language };
  if (rows.length === 0)
    return (
      <Section id="suitability" title={words.sections.suitability}>
        <EmptyState>{words.notJudged}</EmptyState>
      </Section>
    );
  return (
    <Section
      id="suitability"
      title={words.sections.suitability}
      fold={fold}
      margin={
        <>
          {!spread && <Notes notes={notes} reading={reading} spread={false} />}
          {notes.length === 0 && <MarginNote outcome="clear" title={words.allClear} />}
          {!loan.sight.reasons && notes.length > 0 && <MarginNote title={words.outcomesOnly} />}
          <MarginNote title={words.notLawful} />
        </>
      }
    >
      {about && <p>{about}</p>}
      {mayChoose && <ReasonsChoice loanId={loan.id} current={language} />}
      <Matrix rows={rows} notes={notes} />
      {spread && <Notes notes={notes} reading={reading} spread />}
      <EveryAnswer findings={loan.findings} lines={lines} language={language} />
      {loan.latestRun && <KeptRun run={loan.latestRun} lines={lines} />}
      <KeptRuns runs={runs} lines={lines} language={language} />
      {loan.latestRun && isOpen && (
        <SuitabilityChanges run={loan.latestRun} findings={loan.findings} lines={lines} language={language} />
      )}
    </Section>
  );
}
