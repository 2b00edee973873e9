/** The words of the offices on the request: which are asked for, what was said, and the form for who may speak. */

import { DataTable } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { decisionWords as words } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { giveWord } from "#app/(signed-in)/loans/[id]/actions.ts";
import { TreatmentBlock } from "#app/(signed-in)/loans/[id]/check/treatment-block.tsx";
import { DecisionForm } from "#app/(signed-in)/loans/[id]/decision/decision-form.tsx";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { officesOf } from "#lib/loans/offices.ts";
import type { DecisionRow, LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { Office } from "#lib/suitability/suitability.ts";

function VoiceMark({ word }: { word: DecisionRow | undefined }) {
  if (!word) return <StateMark outcome="neutral">{words.waiting}</StateMark>;
  if (word.outcome === "recuse") return <StateMark outcome="neutral">{words.recuses}</StateMark>;
  return word.outcome === "accept" ? (
    <StateMark outcome="clear">{words.accepts}</StateMark>
  ) : (
    <StateMark outcome="bar">{words.declines}</StateMark>
  );
}

/** After the decision a condition may turn out poor; the conservator still signs it off before it leaves. */
const mayBeSignedOff = ({ state, findings }: LoanSheet) =>
  statesInPreparation.includes(state) && findings.some((finding) => finding.fact === "condition.grade-poor");

/** In which offices the reader may say something on the loan as it stands. */
export function officesToSpeak(viewer: Viewer, loan: LoanSheet): readonly Office[] {
  const mine = mayDo(viewer, "decideLoan") ? officesOf(viewer) : [];
  if (loan.state === "requested") return mine;
  return mine.filter((office) => office === "conservator" && mayBeSignedOff(loan));
}

export function DecisionSection({
  viewer,
  loan,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  fold?: string | undefined;
}) {
  const { decisions, officesNeeded, state } = loan;
  const last = (office: Office) =>
    decisions.findLast((one) => one.counts && one.office === office && one.outcome !== "recuse");
  const isOpen = state === "requested";
  const asked = loan.lines.filter((line) => line.state === "requested");
  const offices = officesToSpeak(viewer, loan);
  return (
    <Section
      id="decision"
      title={loanWords.sections.decision}
      fold={fold}
      margin={isOpen && <MarginNote title={words.voices}>{words.about}</MarginNote>}
    >
      {isOpen && (
        <DataTable
          caption={words.voices}
          rows={officesNeeded}
          rowKey={(office) => office}
          columns={[
            { key: "office", label: words.office, cell: (office) => words.offices[office] },
            { key: "word", label: words.outcome, cell: (office) => <VoiceMark word={last(office)} /> },
          ]}
        />
      )}
      <DataTable<DecisionRow>
        caption={words.said}
        rows={decisions}
        rowKey={(row) => `${row.office} ${row.decidedAt}`}
        empty={<p className="quiet">{words.none}</p>}
        columns={[
          { key: "office", label: words.office, cell: (row) => words.offices[row.office] },
          {
            key: "word",
            label: words.outcome,
            cell: (row) => (
              <>
                <VoiceMark word={row} />
                {!row.counts && <span className="quiet small"> {words.earlier}</span>}
              </>
            ),
          },
          { key: "by", label: words.by, cell: (row) => row.decidedBy },
          { key: "on", label: words.on, cell: (row) => <Moment at={row.decidedAt} /> },
          {
            key: "grounds",
            label: words.grounds,
            cell: (row) => (
              <>
                {row.grounds}
                {row.conditions !== "" && (
                  <span style={{ display: "block" }}>
                    {words.conditions}: {row.conditions}
                  </span>
                )}
                {row.reference !== "" && (
                  <span className="quiet" style={{ display: "block" }}>
                    {words.reference}: {row.reference}
                  </span>
                )}
              </>
            ),
          },
        ]}
      />
      {offices.length > 0 && (
        <div className="no-print">
          <DecisionForm
            action={giveWord.bind(null, loan.id)}
            offices={offices}
            maySayNo={isOpen}
            asked={isOpen ? asked : []}
          />
        </div>
      )}
      <TreatmentBlock viewer={viewer} loan={loan} />
    </Section>
  );
}
