/** One crate of the loan: what it holds, its plan as it was kept, what happened to it. */
import { CrateFacts, CrateWorkings } from "#app/_parts/crate-facts.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Numbers } from "#app/_parts/numbers.tsx";
import { OuterSides } from "#app/_parts/outer-sides.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { crateWords } from "#app/_words/en/crate.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { formatNumber } from "#app/_words/format.ts";
import { numbersInWords } from "#app/_words/number-range.ts";
import type { CrateSheet } from "#lib/shipments/queries.ts";
import { CratePlan, type explainCratePlan } from "#lib/transport/crate-plan.ts";

export const contentsOf = (crate: Pick<CrateSheet, "contents">) =>
  numbersInWords(crate.contents.map((content) => content.accessionNumber));

const toneOf = {
  planned: "neutral",
  packed: "attend",
  sealed: "clear",
  "with the carrier": "attend",
  "resting closed": "attend",
  opened: "neutral",
  empty: "neutral",
} as const;

export function CrateStateMark({ state }: { state: CrateSheet["state"] }) {
  return <StateMark outcome={toneOf[state]}>{loanWords.crateStates[state]}</StateMark>;
}

/** The plan as it was kept; nothing for one that was kept in another shape. */
function keptPlan(plan: unknown): CratePlan | null {
  const read = CratePlan.safeParse((plan as { plan?: unknown } | null)?.plan);
  return read.success ? read.data : null;
}

export function sealWords({
  sealNumber,
  sealHolds,
}: Pick<CrateSheet, "sealNumber" | "sealHolds">): string | null {
  if (sealNumber === null) return null;
  if (sealHolds === null) return sealNumber;
  return `${sealNumber}, ${sealHolds ? words.sealHolds : words.sealBroken}`;
}

export function CrateFigures({ crate, open }: { crate: CrateSheet; open: boolean }) {
  const plan = keptPlan(crate.plan);
  return (
    <details open={open}>
      <summary>
        <span className="mono">{crate.code}</span>, {contentsOf(crate)}
      </summary>
      <Facts
        facts={[
          [words.state, <CrateStateMark key="state" state={crate.state} />],
          crate.notBefore !== null && [words.notBefore, <Moment key="notBefore" at={crate.notBefore} long />],
          [words.seal, sealWords(crate) ?? "–"],
        ]}
      />
      <DataTable
        caption={words.holds}
        rows={crate.contents}
        rowKey={(row) => row.specimenId}
        columns={[
          { key: "position", label: words.position, right: true, cell: (row) => row.position },
          {
            key: "number",
            label: loanWords.number,
            cell: (row) => <span className="mono">{row.accessionNumber}</span>,
          },
          { key: "title", label: loanWords.title, cell: (row) => row.title },
        ]}
      />
      {plan && <CrateFacts plan={plan} />}
      <DataTable
        caption={words.whatHappened}
        rows={crate.events}
        rowKey={(event) => event.id}
        empty={<span />}
        columns={[
          { key: "at", label: loanWords.when, cell: (event) => <Moment at={event.at} /> },
          { key: "kind", label: words.state, cell: (event) => event.kind },
          {
            key: "seal",
            label: words.seal,
            cell: (event) =>
              [
                event.sealNumber,
                event.sealIntact === null ? null : event.sealIntact ? words.sealHolds : words.sealBroken,
              ]
                .filter(Boolean)
                .join(", "),
          },
          { key: "damage", label: words.outsideDamage, cell: (event) => event.outsideDamage },
        ]}
      />
      <p className="quiet small">{crateWords.untested}</p>
    </details>
  );
}

export function CrateOverview({ crates }: { crates: readonly CrateSheet[] }) {
  return (
    <DataTable
      caption={words.crates}
      rows={crates}
      rowKey={(crate) => crate.id}
      columns={[
        { key: "code", label: words.code, cell: (crate) => <span className="mono">{crate.code}</span> },
        {
          key: "holds",
          label: words.holds,
          cell: (crate) => <Numbers numbers={crate.contents.map((content) => content.accessionNumber)} />,
        },
        { key: "kind", label: words.kind, cell: (crate) => crate.kind.replaceAll("-", " ") },
        {
          key: "outer",
          label: `${words.outer}, mm`,
          right: true,
          cell: (crate) => <OuterSides crate={crate} />,
        },
        {
          key: "gross",
          label: `${words.gross}, kg`,
          cell: () => null,
          figure: (crate) => formatNumber(crate.grossMassKg, 1),
        },
        { key: "seal", label: words.seal, cell: (crate) => sealWords(crate) ?? "" },
        { key: "state", label: words.state, cell: (crate) => <CrateStateMark state={crate.state} /> },
      ]}
    />
  );
}

/** The workings of one crate in the margin, folded under its code. */
export function CrateMargin({
  crate,
  margin,
}: {
  crate: Pick<CrateSheet, "code">;
  margin: ReturnType<typeof explainCratePlan>["margin"];
}) {
  return (
    <details>
      <summary>{words.workingsOf(crate.code)}</summary>
      <CrateWorkings margin={margin} />
    </details>
  );
}
