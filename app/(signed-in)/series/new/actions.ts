"use server";
/** Recording a series with its sheets. */

import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { recordSeries } from "#lib/specimens/commands/record-series.ts";
import type { SeriesRecord } from "#lib/specimens/sheet-template.ts";

export async function saveSeries(values: SeriesRecord): Promise<FormState> {
  return await runAction(async (viewer) => ({ goTo: `/series/${(await recordSeries(viewer, values)).id}` }));
}
