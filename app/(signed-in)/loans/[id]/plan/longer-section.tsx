/** A longer loan, asked for and answered with reasons; and specimens asked back before the loan ends. */
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { CheckField, FieldGrid, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { recallWords, extensionWords as words } from "#app/_words/en/loan-time.ts";
import { recallLetterWords } from "#app/_words/en/recall-letter.ts";
import { numbersInWords } from "#app/_words/number-range.ts";
import { sentence } from "#app/_words/sentences.ts";
import { answerLonger, askLonger, recall } from "#app/(signed-in)/loans/[id]/plan/plan-actions.ts";
import { recallGrounds } from "#lib/loans/extension.ts";
import type { ExtensionRow, RecallRow } from "#lib/loans/queries/loan-time.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { outStates } from "#lib/loans/transitions.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { addDays } from "#lib/platform/dates.ts";

const extensible: readonly LoanSheet["state"][] = ["agreed", "preparing", "travelling out", "at venue"];

/** Whether the section has anything to show or to offer. */
export function hasLonger({ state, time }: LoanSheet): boolean {
  return extensible.includes(state) || time.extensions.length > 0 || time.recalls.length > 0;
}

const outcomes = { granted: "clear", refused: "bar" } as const;

function ExtensionState({ row }: { row: ExtensionRow }) {
  return row.outcome === null ? (
    <StateMark outcome="attend">{words.waiting}</StateMark>
  ) : (
    <StateMark outcome={outcomes[row.outcome]}>{words[row.outcome]}</StateMark>
  );
}

function Extensions({ rows }: { rows: readonly ExtensionRow[] }) {
  return (
    <DataTable<ExtensionRow>
      caption={words.asked}
      rows={rows}
      rowKey={(row) => row.id}
      empty={<p className="quiet">{words.none}</p>}
      columns={[
        { key: "ends", label: words.endsOn, cell: (row) => <DateText date={row.endsOn} /> },
        {
          key: "by",
          label: words.by,
          cell: (row) => (
            <>
              {row.askedBy}, <Moment at={row.askedAt} />
            </>
          ),
        },
        { key: "grounds", label: words.grounds, cell: (row) => row.grounds },
        { key: "state", label: words.answer, cell: (row) => <ExtensionState row={row} /> },
        {
          key: "answer",
          label: words.answeredBy,
          cell: (row) => row.answeredBy && [row.answeredBy, row.answer].filter(Boolean).join(": "),
        },
      ]}
    />
  );
}

function AskForm({ loan }: { loan: LoanSheet }) {
  return (
    <details className="no-print">
      <summary>{words.ask}</summary>
      <ActForm action={askLonger.bind(null, loan.id)} label={words.ask} button={words.askButton}>
        <FieldGrid>
          <TextField
            label={words.endsOn}
            name="endsOn"
            type="date"
            defaultValue={addDays(loan.request.endsOn, 28)}
          />
        </FieldGrid>
        <TextAreaField label={words.grounds} hint={words.groundsHint} name="grounds" required />
      </ActForm>
    </details>
  );
}

function AnswerForm({ loan, open }: { loan: LoanSheet; open: ExtensionRow }) {
  const isBarred = loan.time.reasons.some(({ outcome }) => outcome === "bar");
  return (
    <ActForm
      action={answerLonger.bind(null, loan.id, open.id)}
      label={words.answerTitle}
      button={words.answerButton}
    >
      <h3>{words.answerTitle}</h3>
      <FieldGrid>
        <SelectField
          label={words.outcome}
          name="outcome"
          defaultValue={isBarred ? "refused" : "granted"}
          options={[
            ["granted", words.grant],
            ["refused", words.refuse],
          ]}
        />
      </FieldGrid>
      <TextAreaField label={words.answerText} hint={words.answerHint} name="answer" />
      <CheckField label={words.coverAsked} name="coverAskedFor" />
    </ActForm>
  );
}

function Recalls({ loan }: { loan: LoanSheet }) {
  const numberOf = new Map(loan.lines.map((line) => [line.specimenId, line.accessionNumber]));
  return (
    <DataTable<RecallRow>
      caption={recallWords.recalled}
      rows={loan.time.recalls}
      rowKey={(row) => row.id}
      columns={[
        {
          key: "specimens",
          label: recallWords.specimens,
          cell: (row) =>
            numbersInWords(
              row.specimenIds.map((id) => numberOf.get(id) ?? "–"),
              3,
            ),
        },
        { key: "by", label: recallWords.returnBy, cell: (row) => <DateText date={row.returnBy} /> },
        {
          key: "ground",
          label: recallWords.ground,
          cell: (row) =>
            [recallWords.grounds[row.ground], row.stopUse && recallWords.stop].filter(Boolean).join(", "),
        },
        { key: "text", label: recallWords.text, cell: (row) => row.text },
        { key: "on", label: recallWords.on, cell: (row) => <Moment at={row.recalledAt} /> },
      ]}
    />
  );
}

function RecallForm({ viewer, loan, today }: { viewer: Viewer; loan: LoanSheet; today: string }) {
  const out = loan.lines.filter(({ state }) => outStates.includes(state));
  const affected = out.filter(({ specimenId }) => loan.time.withdrawn.includes(specimenId));
  const isWithdrawn = affected.length > 0;
  const mayAll = viewer.roles.some((role) => role === "registrar" || role === "collection manager");
  const grounds = mayAll ? recallGrounds : (["consent withdrawn"] as const);
  return (
    <details className="no-print" open={isWithdrawn}>
      <summary>{recallWords.title}</summary>
      <ActForm action={recall.bind(null, loan.id)} label={recallWords.button} button={recallWords.button}>
        <p>
          {isWithdrawn
            ? recallWords.withdrawn(
                numbersInWords(
                  affected.map((line) => line.accessionNumber),
                  5,
                ),
              )
            : recallWords.about}
        </p>
        <fieldset>
          <legend>{recallWords.specimens}</legend>
          {out.map((line) => (
            <CheckField
              key={line.specimenId}
              label={`${line.accessionNumber} ${line.title}`}
              name="specimenIds"
              value={line.specimenId}
              defaultChecked={!isWithdrawn || loan.time.withdrawn.includes(line.specimenId)}
            />
          ))}
        </fieldset>
        <FieldGrid>
          <SelectField
            label={recallWords.ground}
            name="ground"
            defaultValue={isWithdrawn || !mayAll ? "consent withdrawn" : "conditions broken"}
            options={grounds.map((ground) => [ground, recallWords.grounds[ground]] as const)}
          />
          <TextField
            label={recallWords.returnBy}
            name="returnBy"
            type="date"
            defaultValue={addDays(today, 14)}
          />
        </FieldGrid>
        <TextAreaField
          label={recallWords.text}
          hint={recallWords.textHint}
          name="text"
          required
          defaultValue={isWithdrawn ? recallWords.withdrawnText : ""}
        />
        <CheckField label={recallWords.stopUse} name="stopUse" defaultChecked={isWithdrawn} />
      </ActForm>
    </details>
  );
}

export function LongerSection({
  viewer,
  loan,
  today,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  today: string;
  fold?: string | undefined;
}) {
  const { time, state } = loan;
  const open = time.extensions.find(({ outcome }) => outcome === null);
  const subject = { institutionId: loan.borrower.id };
  const mayAnswer = open !== undefined && mayDo(viewer, "answerExtension");
  const mayRecall = mayDo(viewer, "recallLoan") && loan.lines.some((line) => outStates.includes(line.state));
  return (
    <Section
      id="longer"
      title={loanWords.sections.longer}
      fold={fold}
      margin={[
        ...(mayAnswer && time.reasons.length === 0
          ? [<MarginNote key="clear" outcome="clear" title={words.clear} source={words.reasons} />]
          : []),
        ...(mayAnswer ? time.reasons : []).map(({ outcome, code, parameters }) => (
          <MarginNote
            key={`${code} ${JSON.stringify(parameters)}`}
            outcome={outcome}
            title={sentence(code, parameters)}
            source={words.reasons}
          />
        )),
        ...(mayRecall
          ? [<MarginNote key="recall" title={recallWords.about} source={recallWords.source} />]
          : []),
      ]}
    >
      <Extensions rows={time.extensions} />
      {open === undefined && extensible.includes(state) && mayDo(viewer, "askExtension", subject) && (
        <AskForm loan={loan} />
      )}
      {mayAnswer && open && <AnswerForm loan={loan} open={open} />}
      {time.recalls.length > 0 && (
        <>
          <Recalls loan={loan} />
          <p className="no-print">
            <Link href={`/loans/${loan.id}/recall`}>{recallLetterWords.link}</Link>
          </p>
        </>
      )}
      {mayRecall && <RecallForm viewer={viewer} loan={loan} today={today} />}
    </Section>
  );
}
