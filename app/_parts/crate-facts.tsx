/** The figures of a crate plan, and in the margin the working of each. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { WorkingNote } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { crateWords as words } from "#app/_words/en/crate.ts";
import { formatNumber, formatSize } from "#app/_words/format.ts";
import type { CratePlan, explainCratePlan } from "#lib/transport/crate-plan.ts";

const plainWords = (code: string) => code.replaceAll("-", " ");

/** The outcome with every reason for it. Where nobody has chosen a venue there is no way in to judge. */
function PlanOutcome({ plan, hasVenue }: { plan: CratePlan; hasVenue: boolean }) {
  const reasonWords = plan.reasons.map((reason) =>
    reason === "way-in-not-known" && !hasVenue ? words.noVenue : words.reasons[reason],
  );
  return (
    <>
      <StateMark outcome={plan.outcome} />
      {reasonWords.map((reason) => (
        <span key={reason} style={{ display: "block" }}>
          {reason}
        </span>
      ))}
    </>
  );
}

/** Who lifts it, what each filter allows, and what to mind. */
function HandlingWords({ handling }: { handling: CratePlan["handling"] }) {
  const kilograms = (massKg: number) => formatNumber(Math.round(massKg * 10) / 10);
  return (
    <>
      {plainWords(handling.mode)}
      <span className="small quiet" style={{ display: "block" }}>
        {words.handlingFilters(
          kilograms(handling.onePersonFilterKg),
          kilograms(handling.twoPersonFilterKg),
          kilograms(handling.onePersonHigherKg),
          kilograms(handling.twoPersonHigherKg),
        )}
      </span>
      {handling.cautions.map((caution) => (
        <span key={caution} className="small" style={{ display: "block" }}>
          {words.cautions[caution]}
        </span>
      ))}
    </>
  );
}

/** @param hasVenue false where the crate is reckoned before any venue is chosen */
export function CrateFacts({ plan, hasVenue = true }: { plan: CratePlan; hasVenue?: boolean }) {
  const { crate, cushion, innerCase } = plan;
  return (
    <>
      <Facts
        facts={[
          [words.outcome, <PlanOutcome key="outcome" plan={plan} hasVenue={hasVenue} />],
          [words.kind, plainWords(plan.kind)],
          plan.sheetSupport !== null && [words.support, plainWords(plan.sheetSupport)],
          [words.fragility, `${formatNumber(plan.peakG)} g`],
          [words.dropHeight, `${formatNumber(plan.dropHeightMm)} mm`],
          [words.foam, `${plainWords(cushion.foam)}, ${formatNumber(cushion.foamDensityKgM3)} kg/m³`],
          [words.thickness, `${formatNumber(cushion.thicknessMm)} mm, ${formatNumber(cushion.peakG, 1)} g`],
          [
            words.bearing,
            cushion.faces.map((face) => (
              <span key={face.face} style={{ display: "block" }}>
                {plainWords(face.face)}: {formatNumber(face.bearingAreaMm2 / 100, 0)} cm²
              </span>
            )),
          ],
          [words.inner, formatSize(crate.inner)],
          [words.outer, formatSize(crate.outer)],
          [
            words.wall,
            `plywood ${formatNumber(crate.wall.plywoodMm)} mm, battens ${formatNumber(crate.wall.battenWidthMm)} × ${formatNumber(crate.wall.battenDepthMm)} mm, ${crate.wall.skidCount} skids ${formatNumber(crate.wall.skidHeightMm)} mm high`,
          ],
          [
            words.gross,
            `${formatNumber(crate.grossMassKg, 1)} kg (${words.contents.toLowerCase()} ${formatNumber(innerCase.massKg, 1)} kg)`,
          ],
          [words.volumetric, `${formatNumber(plan.volumetricMassKg, 1)} kg`],
          [words.handling, <HandlingWords key="handling" handling={plan.handling} />],
        ]}
      />
      {plan.passages.length > 0 && (
        <DataTable
          caption={words.passages}
          rows={plan.passages.map((passage, index) => ({
            ...passage,
            key: `${index} ${passage.name ?? passage.kind}`,
          }))}
          rowKey={(row) => row.key}
          columns={[
            { key: "name", label: words.passage, cell: (row) => row.name ?? plainWords(row.kind) },
            { key: "answer", label: words.answer, cell: (row) => <StateMark outcome={row.outcome} /> },
            { key: "fact", label: words.state, cell: (row) => plainWords(row.fact) },
            {
              key: "spare",
              label: words.spare,
              right: true,
              cell: (row) => (row.spareMm === null ? "–" : `${formatNumber(row.spareMm, 0)} mm`),
            },
          ]}
        />
      )}
    </>
  );
}

export function CrateWorkings({ margin }: { margin: ReturnType<typeof explainCratePlan>["margin"] }) {
  const { sheetSupport, passages, ...others } = margin;
  const titles: Record<keyof typeof others, string> = {
    fragility: words.fragility,
    dropHeight: words.dropHeight,
    innerCase: words.inner,
    cushion: words.thickness,
    crate: words.outer,
    volumetricMass: words.volumetric,
    handling: words.handling,
  };
  return (
    <>
      {Object.entries(titles).map(([key, title]) => (
        <WorkingNote key={key} title={title} working={others[key as keyof typeof others]} />
      ))}
      {sheetSupport && <WorkingNote title={words.support} working={sheetSupport} />}
      {passages.map((working, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: passages stand in the order of the way
        <WorkingNote key={index} title={`${words.passage} ${index + 1}`} working={working} />
      ))}
    </>
  );
}
