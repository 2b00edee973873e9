"use server";
/** Writes of a venue's page: its facility report, the word that nothing has changed, a logger's file. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { isTicked, numberIn, textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { formatNumber } from "#app/_words/format.ts";
import type { ReportFormState } from "#app/(signed-in)/venues/report-form-state.ts";
import { fieldOfIssue, readReport, type SentReport, typedIn } from "#app/(signed-in)/venues/report-sent.ts";
import { type DateOrder, dateOrders } from "#lib/environment/logger-clock.ts";
import { fileClimateRecord } from "#lib/loans/commands/climate-record.ts";
import { fileFacilityReport } from "#lib/people/commands/facility.ts";
import type { FacilityAnswersInput } from "#lib/people/facility-report.ts";
import { getVenueSheet } from "#lib/people/queries/facility.ts";
import { today } from "#lib/platform/clock.ts";
import { Refusal } from "#lib/platform/refusal.ts";

/** Lines that are added at once. */
const someMore = 3;

export async function fileReport(
  venueId: string,
  follows: number,
  before: ReportFormState,
  fields: FormData,
): Promise<ReportFormState> {
  const typed = typedIn(fields);
  const more = textIn(fields, "more");
  if (more === "passages" || more === "licences")
    return {
      answer: { state: "done", message: words.rowsKept },
      typed,
      extra: { ...before.extra, [more]: before.extra[more] + someMore },
    };
  let lines: SentReport["lines"] = { passages: [], licences: [] };
  const answer = await runAction(async (viewer) => {
    const sent = readReport(fields);
    lines = sent.lines;
    await fileFacilityReport(viewer, {
      venueId,
      follows,
      reportedOn: textIn(fields, "reportedOn"),
      reportedBy: textIn(fields, "reportedBy"),
      answers: sent.answers as FacilityAnswersInput,
    });
    revalidatePath("/", "layout");
    return { goTo: `/venues/${venueId}` };
  });
  if (answer.state !== "refused") return { ...before, answer, typed };
  const issues = answer.issues.map((issue) => ({ ...issue, path: fieldOfIssue(issue.path, lines) }));
  return { answer: { ...answer, issues }, typed, extra: before.extra };
}

export async function confirmReport(
  venueId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const { reports } = await getVenueSheet(viewer, venueId);
    const [newest] = reports;
    if (newest === undefined) throw new Refusal("conflict", "facility.nothing-to-confirm");
    if (!isTicked(fields, "unchanged"))
      throw new Refusal("invalid", "input.invalid", {}, [
        { path: "unchanged", message: "facility.not-ticked" },
      ]);
    await fileFacilityReport(viewer, {
      venueId,
      // What was seen is what is confirmed: a version that came meanwhile is looked at first.
      follows: numberIn(fields, "follows") ?? 0,
      reportedOn: today(),
      reportedBy: viewer.name,
      answers: newest.answers,
    });
    revalidatePath("/", "layout");
    return { goTo: `/venues/${venueId}` };
  });
}

export async function fileRecord(venueId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const file = fields.get("content");
    const content = file instanceof File ? new Uint8Array(await file.arrayBuffer()) : new Uint8Array();
    const order = textIn(fields, "dateOrder");
    const { readings } = await fileClimateRecord(viewer, {
      venueId,
      name: textIn(fields, "name"),
      content,
      utcOffsetMinutes: textIn(fields, "clock") === "" ? null : Number(textIn(fields, "clock")),
      dateOrder: dateOrders.find((one): one is DateOrder => one === order) ?? null,
    });
    revalidatePath(`/venues/${venueId}`, "layout");
    return { message: words.filed(formatNumber(readings)) };
  });
}
