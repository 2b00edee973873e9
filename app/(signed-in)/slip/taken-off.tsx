/** What was just taken off a slip, with the way to put it back. It works without a script: the address names it. */
import { ActForm } from "#app/_parts/act-form.tsx";
import type { FormAction } from "#app/_parts/action-form.tsx";
import { slipWords as words } from "#app/_words/en/slip.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";

/** Null for what an address names that is no specimen. */
async function numberOf(viewer: Viewer, specimenId: string): Promise<string | null> {
  try {
    return (await getSpecimen(viewer, specimenId)).accessionNumber;
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
}

export async function TakenOff({
  viewer,
  specimenId,
  specimenIds,
  putBack,
}: {
  viewer: Viewer;
  /** What the address names as taken off. */
  specimenId: string | undefined;
  /** What is on it now: put back already, nothing is said. */
  specimenIds: readonly string[];
  putBack: FormAction;
}) {
  if (specimenId === undefined || specimenIds.includes(specimenId)) return null;
  const number = await numberOf(viewer, specimenId);
  if (number === null) return null;
  return (
    <div className="form-done no-print" role="status">
      <ActForm action={putBack} label={`${words.putBack}: ${number}`} button={words.putBack} look="outline">
        <input type="hidden" name="specimenId" value={specimenId} />
        <p>{words.takenOff(number)}</p>
      </ActForm>
    </div>
  );
}
