/** Home: receiving, counting the return, the check beside the one before it left, checking in, closing. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { close } from "#app/(signed-in)/loans/[id]/actions.ts";
import { ReturnedSpecimen } from "#app/(signed-in)/loans/[id]/check/returned-specimen.tsx";
import { ClosingBlock } from "#app/(signed-in)/loans/[id]/closing/closing-block.tsx";
import {
  atDoor,
  cratesHolding,
  isRested,
  linesOf,
} from "#app/(signed-in)/loans/[id]/crates/crates-on-way.tsx";
import { ReceiveForm } from "#app/(signed-in)/loans/[id]/journey/arrival-forms.tsx";
import { CountReturnForm } from "#app/(signed-in)/loans/[id]/journey/home-forms.tsx";
import { countHome, receive } from "#app/(signed-in)/loans/[id]/journey/road-actions.ts";
import { RestTable } from "#app/(signed-in)/loans/[id]/journey/venue-section.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import type { ClosingSheet } from "#lib/loans/queries/closing.ts";
import type { LoanSpecimen } from "#lib/loans/queries/loan-specimens.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { CrateSheet } from "#lib/shipments/queries.ts";

type Line = LoanSheet["lines"][number];

const contentsOf = (crates: readonly CrateSheet[]) =>
  new Set(crates.flatMap((crate) => crate.contents.map(({ specimenId }) => specimenId)));

/** Who is counted: what lies in crates that have rested, and what was missing and may have been found. */
function toCount(loan: LoanSheet, rested: readonly CrateSheet[]): Line[] {
  const inside = contentsOf(rested);
  return [
    ...linesOf(loan, "resting at home").filter((line) => inside.has(line.specimenId)),
    ...linesOf(loan, "missing"),
  ];
}

export function HomeSection({
  viewer,
  loan,
  specimens,
  now,
  checked,
  closing,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  specimens: ReadonlyMap<string, LoanSpecimen>;
  now: string;
  /** The check that was just signed, as the address names it. */
  checked: string | undefined;
  closing: ClosingSheet | null;
  fold?: string | undefined;
}) {
  const coming = cratesHolding(loan, "travelling home");
  const closed = cratesHolding(loan, "resting at home").filter((crate) => crate.state === "resting closed");
  const closedIds = contentsOf(closed);
  const rested = closed.filter((crate) => isRested(crate, now));
  const counted = toCount(loan, rested);
  const back = linesOf(loan, "resting at home", "checked in", "closed").filter(
    (line) => !closedIds.has(line.specimenId) || line.state !== "resting at home",
  );
  const receives = mayDo(viewer, "receiveHome") && coming.length > 0;
  const counts = mayDo(viewer, "countReturn") && counted.length > 0;
  const isHeldOpen = closing?.missing?.some(({ outcome }) => outcome === "bar") ?? false;
  const closes = mayDo(viewer, "closeLoan") && loan.state === "checked in" && !isHeldOpen;
  const nothing = back.length === 0 && closed.length === 0 && !receives && !counts;
  return (
    <Section
      id="home"
      title={loanWords.sections.home}
      fold={fold}
      margin={
        closed.length > 0 && (
          <MarginNote title={words.resting} source={words.restSource}>
            {words.restWhy}
          </MarginNote>
        )
      }
    >
      {nothing && <EmptyState>{words.nothingHome}</EmptyState>}
      {receives && (
        <div className="no-print">
          <ReceiveForm
            action={receive.bind(null, loan.id, "home")}
            direction="home"
            crates={coming.map(atDoor)}
          />
        </div>
      )}
      {closed.length > 0 && <RestTable crates={closed} now={now} />}
      {counts && (
        <div className={`no-print ${styles.block}`}>
          <CountReturnForm
            action={countHome.bind(null, loan.id)}
            specimens={counted.map((line) => ({
              specimenId: line.specimenId,
              accessionNumber: line.accessionNumber,
              title: line.title,
              components: specimens.get(line.specimenId)?.components ?? [],
            }))}
          />
        </div>
      )}
      {rested.length < closed.length && mayDo(viewer, "countReturn") && (
        <p className="quiet">{words.waitRest}</p>
      )}
      {back.map((line) => (
        <ReturnedSpecimen
          key={line.id}
          viewer={viewer}
          loan={loan}
          line={line}
          specimen={specimens.get(line.specimenId)}
          checked={checked}
        />
      ))}
      {closing && <ClosingBlock viewer={viewer} loan={loan} closing={closing} />}
      {closes && (
        <div className={`no-print ${styles.block}`}>
          <ActForm action={close.bind(null, loan.id)} label={words.close} button={words.close}>
            <h3>{words.close}</h3>
            <p>{words.closeAbout}</p>
          </ActForm>
        </div>
      )}
    </Section>
  );
}
