/** At the venue: receiving the crates, the rest before opening, opening and counting, sending home. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { LocalTime } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { troubleWords } from "#app/_words/en/trouble.ts";
import { formatMoment } from "#app/_words/format.ts";
import {
  atDoor,
  CrateHistory,
  cratesHolding,
  isRested,
  linesOf,
} from "#app/(signed-in)/loans/[id]/crates/crates-on-way.tsx";
import { OpenCrateForm, ReceiveForm } from "#app/(signed-in)/loans/[id]/journey/arrival-forms.tsx";
import { SendHomeForm } from "#app/(signed-in)/loans/[id]/journey/home-forms.tsx";
import { openAndCount, receive, send } from "#app/(signed-in)/loans/[id]/journey/road-actions.ts";
import { TroubleForm } from "#app/(signed-in)/loans/[id]/journey/trouble-form.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { tellTrouble } from "#app/(signed-in)/loans/[id]/messages/message-actions.ts";
import { occasionsFor } from "#lib/loans/occasions.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { needsNewSeal } from "#lib/shipments/crate-state.ts";
import type { CrateSheet } from "#lib/shipments/queries.ts";

/** The rest of one crate, in words and shape. */
export function RestMark({ crate, now }: { crate: CrateSheet; now: string }) {
  return isRested(crate, now) ? (
    <StateMark outcome="clear">{words.mayOpen}</StateMark>
  ) : (
    <>
      <StateMark outcome="attend">{words.restingUntil(formatMoment(crate.notBefore ?? now))}</StateMark>
      <LocalTime at={crate.notBefore ?? now} />
    </>
  );
}

export function RestTable({ crates, now }: { crates: readonly CrateSheet[]; now: string }) {
  return (
    <DataTable
      caption={words.resting}
      rows={crates}
      rowKey={(crate) => crate.id}
      columns={[
        { key: "code", label: words.code, cell: (crate) => <span className="mono">{crate.code}</span> },
        { key: "rest", label: words.notBefore, cell: (crate) => <RestMark crate={crate} now={now} /> },
      ]}
    />
  );
}

export function VenueSection({
  viewer,
  loan,
  now,
  phone,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  now: string;
  /** Where somebody of the centre is reached at once. */
  phone: string;
  fold?: string | undefined;
}) {
  const subject = { institutionId: loan.borrower.id };
  const coming = cratesHolding(loan, "travelling out");
  const resting = cratesHolding(loan, "resting at venue").filter((crate) => crate.state === "resting closed");
  const away = linesOf(loan, "travelling out", "resting at venue", "at venue");
  const arrived = loan.crates.flatMap((crate) =>
    crate.events
      .filter((event) => event.kind === "arrived" || event.kind === "opened")
      .map((event) => ({ ...event, code: crate.code })),
  );
  const receives = mayDo(viewer, "receiveLoan", subject) && coming.length > 0;
  const opens = mayDo(viewer, "openCrate", subject);
  const sends = mayDo(viewer, "sendHome", subject) && away.length > 0;
  const held = linesOf(loan, "travelling out", "resting at venue", "at venue", "travelling home");
  const tells = isBorrower(viewer) && mayDo(viewer, "writeMessage", subject) && held.length > 0;
  const checks = mayDo(viewer, "recordCheck", subject);
  const home = loan.stages.find((stage) => stage.direction === "home");
  return (
    <Section
      id="venue"
      title={loanWords.sections.venue}
      fold={fold}
      margin={
        <>
          {resting.length > 0 && (
            <MarginNote title={words.resting} source={words.restSource}>
              {words.restWhy}
            </MarginNote>
          )}
          {tells && <MarginNote title={troubleWords.title} source={troubleWords.source} />}
          {sends && <MarginNote title={words.sendHome}>{words.sendHomeAbout}</MarginNote>}
        </>
      }
    >
      {receives && (
        <div className="no-print">
          <ReceiveForm
            action={receive.bind(null, loan.id, "out")}
            direction="out"
            crates={coming.map(atDoor)}
          />
        </div>
      )}
      {resting.length > 0 && <RestTable crates={resting} now={now} />}
      {opens &&
        resting
          .filter((crate) => isRested(crate, now))
          .map((crate) => (
            <div key={crate.id} className={`no-print ${styles.block}`}>
              <OpenCrateForm
                action={openAndCount.bind(null, loan.id, crate.id)}
                crate={crate}
                specimens={crate.contents
                  .filter(({ specimenId }) =>
                    linesOf(loan, "resting at venue").some((line) => line.specimenId === specimenId),
                  )
                  .map((content) => ({ ...content, components: [] }))}
              />
            </div>
          ))}
      {sends && (
        <details className={`no-print ${styles.block}`} open={loan.isOverdue}>
          <summary>{words.sendHome}</summary>
          <SendHomeForm
            action={send.bind(null, loan.id)}
            away={away}
            crates={loan.crates.filter(
              (crate) =>
                needsNewSeal(crate.state) &&
                crate.contents.some(({ specimenId }) => away.some((line) => line.specimenId === specimenId)),
            )}
            carrier={home?.carrier ?? null}
          />
        </details>
      )}
      {tells && (
        <details className={`no-print ${styles.block}`} id="trouble">
          <summary>{troubleWords.title}</summary>
          <TroubleForm
            action={tellTrouble.bind(null, loan.id)}
            specimens={held}
            phone={phone}
            checks={held
              .filter(({ state }) => checks && occasionsFor(state, true).length > 0)
              .map(({ accessionNumber, specimenId }) => ({
                accessionNumber,
                address: `/loans/${loan.id}/check/${specimenId}`,
              }))}
          />
        </details>
      )}
      <CrateHistory events={arrived} empty={words.nothingAtVenue} />
    </Section>
  );
}
