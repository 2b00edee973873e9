/** The plan counted backwards: a table of last days, the same on a line of time, and what may be moved or marked. */
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { FieldGrid, SelectField, TextField } from "#app/_parts/fields.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { planStepNames, planWords as words } from "#app/_words/en/loan-time.ts";
import { sentence } from "#app/_words/sentences.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { markStep, moveStep } from "#app/(signed-in)/loans/[id]/plan/plan-actions.ts";
import { PlanStrip } from "#app/(signed-in)/loans/[id]/plan/plan-strip.tsx";
import type { PlanRow } from "#lib/loans/backward-plan.ts";
import { markedByHand } from "#lib/loans/plan-facts.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { type Act, mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

function Stand({ row }: { row: PlanRow }) {
  if (row.done !== null) return <StateMark outcome="clear">{words.done}</StateMark>;
  const word = { bar: words.passed, attend: words.soon, clear: words.later }[row.outcome];
  return <StateMark outcome={row.outcome === "clear" ? "neutral" : row.outcome}>{word}</StateMark>;
}

function CountedFrom({ row }: { row: PlanRow }) {
  const remarks = [
    row.moved ? words.moved : null,
    row.stated ? (row.step === "opening" ? words.statedDay : words.stated) : null,
    row.done?.byHand ? words.byHand : null,
  ];
  const counted =
    row.stated || row.moved || row.countedFrom === null || row.days === null
      ? null
      : words.before(row.days, planStepNames[row.countedFrom]);
  return <span className="quiet">{[counted, ...remarks].filter(Boolean).join(", ")}</span>;
}

/** The act that clears a step; steps without one are only looked at. */
const actOf: Partial<Record<PlanRow["step"], Act>> = {
  decision: "decideLoan",
  "indemnity form": "markPlanStep",
  "crate order": "planCrates",
  certificate: "recordCover",
  "condition out": "recordCheck",
  pack: "sealCrate",
  depart: "planStage",
  arrive: "planStage",
  install: "markPlanStep",
  opening: "movePlanStep",
};

/** The one place where a step is cleared; nothing where it is done, or where the act is not the reader's. */
function stepLink(row: PlanRow, sections: ReadonlySet<string>, may: (act: Act) => boolean) {
  const [address, label] = words.seeStep[row.step];
  const act = actOf[row.step];
  if (row.done !== null || !sections.has(address.slice(1)) || (act !== undefined && !may(act))) return null;
  return <Link href={address}>{label}</Link>;
}

function MoveForm({ loanId, rows }: { loanId: string; rows: readonly PlanRow[] }) {
  const movable = rows.filter(({ step, done, stated }) => done === null && (!stated || step === "opening"));
  // with every step behind it there is nothing that an opening day could still move
  if (movable.length === 0) return null;
  const options = [
    ...movable.map(({ step }) => [step, planStepNames[step]] as const),
    ...(rows.some(({ step }) => step === "opening") ? [] : [["opening", planStepNames.opening] as const]),
  ];
  return (
    <details className="no-print">
      <summary>{words.move}</summary>
      <ActForm action={moveStep.bind(null, loanId)} label={words.move} button={words.moveButton}>
        <p>{words.moveHint}</p>
        <FieldGrid>
          <SelectField label={words.moveStep} name="step" options={options} />
          <TextField label={words.moveTo} hint={words.giveBack} name="to" type="date" />
        </FieldGrid>
      </ActForm>
    </details>
  );
}

function MarkForm({ loanId, rows, today }: { loanId: string; rows: readonly PlanRow[]; today: string }) {
  const options = rows
    .filter(({ step, done }) => markedByHand.includes(step) && (done === null || done.byHand))
    .map(({ step }) => [step, planStepNames[step]] as const);
  if (options.length === 0) return null;
  return (
    <details className="no-print">
      <summary>{words.mark}</summary>
      <ActForm action={markStep.bind(null, loanId)} label={words.mark} button={words.markButton}>
        <FieldGrid>
          <SelectField label={words.moveStep} name="step" options={options} />
          <TextField
            label={words.markOn}
            hint={words.markHint}
            name="doneOn"
            type="date"
            defaultValue={today}
          />
        </FieldGrid>
      </ActForm>
    </details>
  );
}

export function PlanSection({
  viewer,
  loan,
  today,
  sections,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  today: string;
  /** The sections that stand on this page. */
  sections: ReadonlySet<string>;
  fold?: string | undefined;
}) {
  const { plan } = loan.time;
  if (plan === null) return null;
  // The check before it leaves is the house's own.
  const may = (act: Act) =>
    !(act === "recordCheck" && isBorrower(viewer)) && mayDo(viewer, act, { institutionId: loan.borrower.id });
  const hasOpening = plan.rows.some(({ step }) => step === "opening");
  return (
    <Section
      id="plan"
      title={loanWords.sections.plan}
      fold={fold}
      margin={
        <>
          {plan.conflicts.map(({ code, step, parameters }) => (
            <MarginNote
              key={`${code} ${step}`}
              outcome="bar"
              title={sentence(code, { ...parameters, step })}
            />
          ))}
          <MarginNote title={words.counted(plan.scope)} source={words.source}>
            {words.noTravel}
          </MarginNote>
        </>
      }
    >
      <p>{words.about}</p>
      {!hasOpening && <p className="quiet">{words.fromDelivery}</p>}
      {loan.state === "enquiry" && (
        <Facts facts={[[words.earliest, <DateText key="earliest" date={plan.earliestDelivery} />]]} />
      )}
      <PlanStrip rows={plan.rows} today={today} />
      <DataTable<PlanRow>
        caption={words.caption}
        captionHidden
        dense
        rows={plan.rows}
        rowKey={(row) => row.step}
        columns={[
          { key: "step", label: words.step, cell: (row) => planStepNames[row.step] },
          { key: "last", label: words.lastDay, cell: (row) => <DateText date={row.lastDay} short /> },
          {
            key: "state",
            label: words.state,
            cell: (row) => (
              <span className={styles.nowrap}>
                <Stand row={row} />
              </span>
            ),
          },
          {
            key: "done",
            label: words.doneOn,
            cell: (row) => row.done?.on && <DateText date={row.done.on} short />,
          },
          { key: "counted", label: words.countedFrom, cell: (row) => <CountedFrom row={row} /> },
          {
            key: "act",
            label: words.act,
            cell: (row) => stepLink(row, sections, may),
          },
        ]}
      />
      {mayDo(viewer, "movePlanStep") && <MoveForm loanId={loan.id} rows={plan.rows} />}
      {mayDo(viewer, "markPlanStep") && <MarkForm loanId={loan.id} rows={plan.rows} today={today} />}
    </Section>
  );
}
