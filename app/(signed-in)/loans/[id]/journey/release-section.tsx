/** The gates of release, each with the facts that decide it, and the release itself with what it fixes. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { releaseWords as words } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { sentence } from "#app/_words/sentences.ts";
import { dispatch } from "#app/(signed-in)/loans/[id]/actions.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { allHold, type Gate } from "#lib/loans/gates.ts";

/** Of many facts of one kind the first are told, and how many there are more. */
const mostFacts = 4;

function GateFacts({ gate }: { gate: Gate }) {
  const rest = gate.facts.length - mostFacts;
  return (
    <>
      {gate.facts.slice(0, mostFacts).map((fact) => (
        <span key={`${fact.code} ${JSON.stringify(fact.parameters)}`} style={{ display: "block" }}>
          {sentence(fact.code, fact.parameters)}
        </span>
      ))}
      {rest > 0 && <span className="quiet">{words.more(rest)}</span>}
    </>
  );
}

export function ReleaseSection({
  loanId,
  gates,
  specimens,
  carrier,
  mayDispatch,
}: {
  loanId: string;
  gates: readonly Gate[];
  /** How many are to go. */
  specimens: number;
  carrier: string | null;
  mayDispatch: boolean;
}) {
  const ready = allHold(gates);
  return (
    <Section id="release" title={loanWords.sections.release}>
      <p>{words.about}</p>
      <DataTable
        caption={loanWords.tables.gates}
        captionHidden
        rows={gates}
        rowKey={(gate) => gate.gate}
        columns={[
          { key: "gate", label: words.gate, cell: (gate) => loanWords.gates[gate.gate] },
          {
            key: "state",
            label: loanWords.state,
            cell: (gate) => (
              <span className={styles.nowrap}>
                <StateMark outcome={gate.holds ? "clear" : "bar"}>
                  {gate.holds ? words.holds : words.holdsNot}
                </StateMark>
              </span>
            ),
          },
          { key: "facts", label: words.facts, cell: (gate) => <GateFacts gate={gate} /> },
        ]}
      />
      {mayDispatch &&
        (ready ? (
          <div className={`no-print ${styles.block}`}>
            <ActForm action={dispatch.bind(null, loanId)} label={words.dispatch} button={words.dispatch}>
              <h3>{words.dispatchTitle}</h3>
              <p>{words.dispatchFixed(specimens, carrier ?? "–")}</p>
            </ActForm>
          </div>
        ) : (
          <p className="quiet">{words.waits}</p>
        ))}
    </Section>
  );
}
