/**
 * The one wrapper that turns a command into a Server Action. It finds the viewer,
 * runs the command and gives the form its next state: a refusal becomes a
 * sentence and issues by field, and nothing that was typed is lost. A bug is not
 * caught.
 */
import "server-only";
import { redirect } from "next/navigation";
import type { FormState } from "#app/_parts/form-state.ts";
import { formStateOf } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { Refusal } from "#lib/platform/refusal.ts";

/** What an action ends with: a word on the page, or another page. */
export type ActionResult = { message?: string; goTo?: string };

/** @param work runs the command; its answer says what to show or where to go */
export async function runAction(work: (viewer: Viewer) => Promise<ActionResult>): Promise<FormState> {
  let result: ActionResult;
  try {
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    result = await work(viewer);
  } catch (error) {
    if (error instanceof Refusal) return formStateOf(error);
    throw error;
  }
  if (result.goTo) redirect(result.goTo);
  return { state: "done", message: result.message ?? sentence("action.done", {}) };
}
