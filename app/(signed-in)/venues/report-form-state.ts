/** What the report's form knows after it was sent: the answer, everything that was typed, and the lines that were added. */
import { type FormState, idle } from "#app/_parts/form-state.ts";
import type { ReportList, Typed } from "#app/(signed-in)/venues/report-sent.ts";

export type ReportFormState = {
  answer: FormState;
  typed: Typed | null;
  /** Empty lines below those that are filled. */
  extra: Record<ReportList, number>;
};

export const freshReport: ReportFormState = {
  answer: idle,
  typed: null,
  extra: { passages: 2, licences: 1 },
};
