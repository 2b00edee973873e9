/** The days that plans are counted with, each beside the default and where it comes from. */
import type { Metadata } from "next";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { planScopeNames, planStepNames, planWords as words } from "#app/_words/en/loan-time.ts";
import { savePlanDays } from "#app/(signed-in)/centre/plan/actions.ts";
import {
  type CountedStep,
  countedFrom,
  countedSteps,
  type PlanScope,
  planDefaults,
  planScopes,
  sourceOfStep,
} from "#lib/loans/plan-defaults.ts";
import { getPlanDays } from "#lib/loans/queries/plan-days.ts";
import { mayDo } from "#lib/people/permission.ts";

export const metadata: Metadata = { title: words.settings };

export default async function PlanDaysPage() {
  const viewer = await requireViewer("/centre/plan");
  const days = await orNotFound(() => getPlanDays(viewer));
  const mayChange = mayDo(viewer, "configurePlan");
  const figure = (step: CountedStep, scope: PlanScope) =>
    mayChange ? (
      <input
        type="text"
        inputMode="numeric"
        name={`${step}.${scope}`}
        aria-label={`${planStepNames[step]}, ${planScopeNames[scope]}, ${words.daysBefore}`}
        defaultValue={days[step][scope]}
        style={{ width: "4.5rem", textAlign: "right" }}
      />
    ) : (
      days[step][scope]
    );
  const table = (
    <DataTable<CountedStep>
      caption={words.stepsCounted}
      captionHidden
      rows={countedSteps}
      rowKey={(step) => step}
      columns={[
        { key: "step", label: words.step, cell: (step) => planStepNames[step] },
        ...planScopes.map((scope) => ({
          key: scope,
          label: planScopeNames[scope],
          right: true,
          cell: (step: CountedStep) => figure(step, scope),
        })),
        {
          key: "from",
          label: words.countedFrom,
          cell: (step) => `${words.daysBefore} ${planStepNames[countedFrom[step]]}`,
        },
        {
          key: "source",
          label: words.standing,
          cell: (step) => {
            const { standing, source } = sourceOfStep(step);
            const figures = planScopes.map((scope) => planDefaults[step][scope]).join(", ");
            return (
              <span className="quiet small">{`${words.default} ${figures}: ${source} (${standing})`}</span>
            );
          },
        },
      ]}
    />
  );
  return (
    <PlainPage>
      <Masthead title={words.settings} />
      <p>{words.settingsAbout}</p>
      {mayChange ? (
        <ActForm action={savePlanDays} label={words.settingsEdit} button={words.settingsSave}>
          {table}
        </ActForm>
      ) : (
        table
      )}
      <p className="quiet">{words.noTravel}</p>
    </PlainPage>
  );
}
