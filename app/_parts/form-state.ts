/** What a form knows after it was sent: nothing yet, done, or refused with a sentence for each field. */
import type { RefusalKind } from "#lib/platform/refusal.ts";

export type FormIssue = { path: string; message: string };

export type FormState =
  | { state: "idle" }
  | { state: "done"; message: string }
  | { state: "refused"; kind: RefusalKind; message: string; issues: FormIssue[] };

export const idle: FormState = { state: "idle" };

/** The sentence for one field, if it was refused. */
export function issueOf(form: FormState, path: string): string | undefined {
  return form.state === "refused" ? form.issues.find((issue) => issue.path === path)?.message : undefined;
}
