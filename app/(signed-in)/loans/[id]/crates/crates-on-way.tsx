/** Crates by where their specimens are, and what was seen of them on arrival. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { contentsOf } from "#app/(signed-in)/loans/[id]/crates/crate-figures.tsx";
import type { CrateAtDoor } from "#app/(signed-in)/loans/[id]/journey/arrival-forms.tsx";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LineState } from "#lib/loans/schema.ts";
import type { CrateHappening, CrateSheet } from "#lib/shipments/queries.ts";

export function linesOf(loan: Pick<LoanSheet, "lines">, ...states: LineState[]): LoanSheet["lines"] {
  return loan.lines.filter((line) => states.includes(line.state));
}

/** The crates in which a specimen lies whose line is in one of the states. */
export function cratesHolding(
  loan: Pick<LoanSheet, "lines" | "crates">,
  ...states: LineState[]
): CrateSheet[] {
  const ids = new Set(linesOf(loan, ...states).map((line) => line.specimenId));
  return loan.crates.filter((crate) => crate.contents.some(({ specimenId }) => ids.has(specimenId)));
}

export function isRested(crate: Pick<CrateSheet, "notBefore">, now: string): boolean {
  return crate.notBefore === null || crate.notBefore <= now;
}

export const atDoor = (crate: CrateSheet): CrateAtDoor => ({
  id: crate.id,
  code: crate.code,
  holds: contentsOf(crate),
  sealNumber: crate.sealNumber,
});

function SealLook({ sealIntact }: { sealIntact: boolean | null }) {
  if (sealIntact === null) return <span className="quiet">{words.notLooked}</span>;
  return (
    <StateMark outcome={sealIntact ? "clear" : "bar"}>
      {sealIntact ? words.sealHolds : words.sealBroken}
    </StateMark>
  );
}

export function CrateHistory({
  events,
  empty,
}: {
  events: readonly (CrateHappening & { code: string })[];
  empty: string;
}) {
  return (
    <DataTable
      caption={words.whatHappened}
      rows={events}
      rowKey={(event) => event.id}
      empty={<p className="quiet">{empty}</p>}
      columns={[
        { key: "code", label: words.code, cell: (event) => <span className="mono">{event.code}</span> },
        { key: "at", label: loanWords.when, cell: (event) => <Moment at={event.at} /> },
        { key: "what", label: words.state, cell: (event) => event.kind },
        { key: "by", label: words.by, cell: (event) => event.by },
        {
          key: "seal",
          label: words.seal,
          cell: (event) => (event.kind === "arrived" ? <SealLook sealIntact={event.sealIntact} /> : ""),
        },
        { key: "damage", label: words.outsideDamage, cell: (event) => event.outsideDamage },
        {
          key: "counts",
          label: words.countOf,
          cell: (event) =>
            event.counts.length === 0
              ? ""
              : words.counts(
                  event.counts.filter((count) => count.present).length,
                  event.counts.length,
                  event.counts.map((count) => count.remark).filter((remark) => remark !== ""),
                ),
        },
      ]}
    />
  );
}
