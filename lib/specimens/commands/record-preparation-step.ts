/** Adding a step to the making of a specimen. A step that is still under way has no end. */
import type { z } from "zod";
import { command } from "#lib/people/command.ts";
import { toDateOrNull } from "#lib/platform/dates.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { PreparationStepInput } from "#lib/specimens/schema.ts";

export const PreparationStepRecord = PreparationStepInput.extend({ specimenId: Id }).check(
  ({ value, issues }) => {
    if (value.startedOn !== null && value.endedOn !== null && !(value.startedOn <= value.endedOn))
      issues.push({ code: "custom", input: value, path: ["endedOn"], message: "step.ends-before-start" });
  },
);
export type PreparationStepRecord = z.infer<typeof PreparationStepRecord>;

export const recordPreparationStep = command(
  "recordPreparationStep",
  PreparationStepRecord,
  async ({ transaction }, input) => {
    const { specimenId, step, startedOn, endedOn, note } = input;
    const specimen = await transaction.specimen.findUnique({
      where: { id: specimenId },
      select: { id: true },
    });
    if (!specimen) throw notFound("specimen");
    const id = newId();
    await transaction.preparationStep.create({
      data: {
        id,
        specimenId,
        step,
        startedOn: toDateOrNull(startedOn),
        endedOn: toDateOrNull(endedOn),
        note,
      },
    });
    return { id };
  },
);
