/** The crates with their figures and workings, and the two stages of the way with the carrier's link. */

import { EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { countryName } from "#app/_words/readable.ts";
import {
  CrateFigures,
  CrateMargin,
  CrateOverview,
} from "#app/(signed-in)/loans/[id]/crates/crate-figures.tsx";
import { PlanCratesForm, SealForm } from "#app/(signed-in)/loans/[id]/crates/crate-forms.tsx";
import { giveLink, savePlan, saveStage, seal } from "#app/(signed-in)/loans/[id]/journey/road-actions.ts";
import { CarrierLinkForm, StageForm } from "#app/(signed-in)/loans/[id]/journey/stage-forms.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { TariffCodes } from "#app/(signed-in)/loans/[id]/papers/tariff-codes.tsx";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { CrateSheet, StageSheet } from "#lib/shipments/queries.ts";
import type { Direction } from "#lib/shipments/schema.ts";
import { explainCratePlan } from "#lib/transport/crate-plan.ts";

const beforeReturn: readonly LoanState[] = [
  ...statesInPreparation,
  "travelling out",
  "at venue",
  "travelling home",
];
const ended: readonly LoanState[] = ["closed", "declined", "withdrawn"];
/** With more crates than this, or once they have left, the figures of each are folded. */
const unfolded = 1;

function Stage({ stage, direction }: { stage: StageSheet | undefined; direction: Direction }) {
  if (!stage)
    return (
      <p>
        {words[direction]}: <span className="quiet">{words.notPlanned}</span>
      </p>
    );
  return (
    <>
      <h3>{words[direction]}</h3>
      <Facts
        facts={[
          [
            words.carrier,
            stage.carrierEmail === "" ? stage.carrier : `${stage.carrier}, ${stage.carrierEmail}`,
          ],
          stage.vehicle !== "" && [words.vehicle, stage.vehicle],
          stage.through.length > 0 && [words.through, stage.through.map(countryName).join(", ")],
          [words.departsOn, <DateText key="departs" date={stage.departsOn} />],
          [words.arrivesOn, <DateText key="arrives" date={stage.arrivesOn} />],
        ]}
      />
    </>
  );
}

/** The stage, the form to plan it and the carrier's link, each where it may be done. */
function StageBlock({ viewer, loan, direction }: { viewer: Viewer; loan: LoanSheet; direction: Direction }) {
  const stage = loan.stages.find((one) => one.direction === direction);
  const plans =
    mayDo(viewer, "planStage") &&
    (direction === "out" ? statesInPreparation : beforeReturn).includes(loan.state);
  const links = stage && mayDo(viewer, "issueCarrierLink") && !ended.includes(loan.state);
  const { startsOn, endsOn } = loan.request;
  const usual =
    direction === "out"
      ? { departsOn: addDays(startsOn, -1), arrivesOn: startsOn }
      : { departsOn: addDays(endsOn, -1), arrivesOn: endsOn };
  return (
    <div className={styles.block}>
      <Stage stage={stage} direction={direction} />
      <div className="no-print">
        {plans && (
          <StageForm
            action={saveStage.bind(null, loan.id, direction)}
            direction={direction}
            stage={stage ?? null}
            usual={usual}
          />
        )}
        {links && (
          <CarrierLinkForm action={giveLink.bind(null, loan.id, stage.id)} stage={stage}>
            <p className="quiet small">{words.linkAbout}</p>
            {stage.linkExpiresAt !== null && (
              <p>
                {words.linkValid} <Moment at={stage.linkExpiresAt} long />.
              </p>
            )}
          </CarrierLinkForm>
        )}
      </div>
    </div>
  );
}

/** The workings of the question that the crate was planned from; nothing where it was kept in another shape. */
function Workings({ crate }: { crate: CrateSheet }) {
  const question = (crate.plan as { question?: unknown } | null)?.question;
  return question === undefined ? null : (
    <CrateMargin crate={crate} margin={explainCratePlan(question).margin} />
  );
}

const canBeSealed: readonly CrateSheet["state"][] = ["planned", "packed"];

export function CratesSection({
  viewer,
  loan,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  fold?: string | undefined;
}) {
  const { crates } = loan;
  const isOpen = statesInPreparation.includes(loan.state);
  const packed = crates.some((crate) => crate.events.length > 0);
  const waiting = loan.lines.filter((line) => line.state === "accepted");
  const plans = isOpen && mayDo(viewer, "planCrates") && !packed && waiting.length > 0;
  const seals = isOpen && mayDo(viewer, "sealCrate");
  const open = crates.filter((crate) => canBeSealed.includes(crate.state) && crate.contents.length > 0);
  return (
    <Section
      id="crates"
      title={loanWords.sections.crates}
      fold={fold}
      margin={crates.map((crate) => <Workings key={crate.id} crate={crate} />)}
    >
      {crates.length === 0 && <EmptyState>{words.noCrates}</EmptyState>}
      {crates.length > 0 && <CrateOverview crates={crates} />}
      {crates.map((crate) => (
        <CrateFigures key={crate.id} crate={crate} open={isOpen && crates.length <= unfolded} />
      ))}
      {plans && (
        <div className="no-print">
          <PlanCratesForm
            action={savePlan.bind(null, loan.id)}
            specimens={waiting}
            again={crates.length > 0}
          />
        </div>
      )}
      {seals && open.length > 0 && (
        <div className={`no-print ${styles.block}`}>
          <h3>{words.packAndSeal}</h3>
          {open.map((crate) => (
            <SealForm key={crate.id} action={seal.bind(null, loan.id, crate.id)} crate={crate} />
          ))}
        </div>
      )}
      <StageBlock viewer={viewer} loan={loan} direction="out" />
      <StageBlock viewer={viewer} loan={loan} direction="home" />
      <TariffCodes viewer={viewer} loan={loan} />
    </Section>
  );
}
