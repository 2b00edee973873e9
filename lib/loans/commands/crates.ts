/**
 * Planning a loan's crates from what the catalogue knows of its specimens, and
 * sealing them. A crate is sealed only with everything in it that it is to hold,
 * each with its components; a seal moves its specimens from accepted to packed.
 */

import { linesIn, numbersInWords, requireState } from "#lib/loans/at-hand.ts";
import { moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { PlanCratesInput, SealInput } from "#lib/loans/inputs.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { command, type Work } from "#lib/people/command.ts";
import { venueFactsOf } from "#lib/people/queries.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { writeCrateEvents } from "#lib/shipments/commands.ts";
import { requireMayHappen } from "#lib/shipments/crate-state.ts";
import { crateOf } from "#lib/shipments/queries.ts";
import { specimenFactsOf } from "#lib/specimens/queries.ts";
import { type CrateQuestion, crateQuestionOf, planCrate } from "#lib/suitability/crate-case.ts";
import { crateGroups } from "#lib/suitability/crate-groups.ts";
import type { CratePlan } from "#lib/transport/crate-plan.ts";

/** Takes away what was planned before. What was packed already stays, and is not planned anew. */
async function clearPlannedCrates({ transaction }: Work, loanId: string): Promise<void> {
  const used = await transaction.crate.findFirst({
    where: { loanId, events: { some: {} } },
    select: { code: true },
  });
  if (used) throw new Refusal("conflict", "crate.already-packed", { crate: used.code });
  await transaction.crate.deleteMany({ where: { loanId } });
}

/** @throws {Refusal} for what no crate of the tables takes */
function requirePlan(specimens: readonly { accessionNumber: string }[], question: CrateQuestion): CratePlan {
  const plan = planCrate(question);
  if (plan === null)
    throw new Refusal("conflict", "crate.beyond-tables", { specimens: numbersInWords(specimens) });
  return plan;
}

export type PlannedCrate = { id: Id; code: string; specimens: number };

export const planCrates = command(
  "planCrates",
  PlanCratesInput,
  async (work, input): Promise<PlannedCrate[]> => {
    const loan = await takeLoan(work, input.loanId, "planCrates");
    requireState(loan, statesInPreparation);
    const lines = linesIn(loan, "accepted");
    if (lines.length === 0) throw new Refusal("conflict", "crate.nothing-to-pack");
    await clearPlannedCrates(work, loan.id);
    const { passages } = await venueFactsOf(work.transaction, loan.venueId);
    const specimens = await specimenFactsOf(
      work.transaction,
      lines.map((line) => line.specimenId),
    );
    const own = new Map(input.own.map((figures) => [figures.specimenId, figures]));
    const questions = lines.map((line) => {
      const specimen = specimens.get(line.specimenId);
      const figures = own.get(line.specimenId);
      const question = specimen
        ? crateQuestionOf(specimen, {
            passages,
            carrierClass: input.carrierClass,
            count: 1,
            fragilityClass: figures?.fragilityClass ?? undefined,
            curatorPeakG: figures?.peakG ?? undefined,
          })
        : null;
      return { line, specimen, question };
    });
    const unmeasured = questions.filter(({ question }) => question === null);
    if (unmeasured.length > 0)
      throw new Refusal("conflict", "crate.size-not-known", {
        specimens: numbersInWords(unmeasured.map(({ line }) => line)),
      });
    const groups = crateGroups(
      questions.flatMap(({ specimen, question }) => (specimen && question ? [{ specimen, question }] : [])),
    );
    const crates = groups.map(({ specimens: packed, question }, index) => ({
      id: newId(),
      code: `${loan.number}/${index + 1}`,
      specimenIds: packed.map((specimen) => specimen.id),
      question,
      plan: requirePlan(packed, question),
    }));
    await work.transaction.crate.createMany({
      data: crates.map(({ id, code, question, plan }) => ({
        id,
        loanId: loan.id,
        code,
        kind: plan.kind,
        outerLengthMm: Math.ceil(plan.crate.outer.lengthMm),
        outerWidthMm: Math.ceil(plan.crate.outer.widthMm),
        outerHeightMm: Math.ceil(plan.crate.outer.heightMm),
        grossMassKg: plan.crate.grossMassKg,
        plan: { question, plan } satisfies { question: CrateQuestion; plan: object },
      })),
    });
    await work.transaction.crateContent.createMany({
      data: crates.flatMap(({ id: crateId, specimenIds }) =>
        specimenIds.map((specimenId, index) => ({ crateId, specimenId, position: index + 1 })),
      ),
    });
    return crates.map(({ id, code, specimenIds }) => ({ id, code, specimens: specimenIds.length }));
  },
);

export const sealCrate = command("sealCrate", SealInput, async (work, { crateId, sealNumber, packed }) => {
  const crate = await crateOf(work.transaction, crateId);
  const loan = await takeLoan(work, crate.loanId, "sealCrate");
  requireState(loan, statesInPreparation);
  if (crate.contents.length === 0) throw new Refusal("conflict", "crate.nothing-to-pack");
  const inHand = new Map(packed.map((one) => [one.specimenId, one]));
  const missing = crate.contents.filter(({ specimenId }) => !inHand.has(specimenId));
  if (missing.length > 0)
    throw new Refusal("conflict", "crate.incomplete", {
      crate: crate.code,
      specimens: numbersInWords(missing),
    });
  const belongs = new Set(crate.contents.map(({ specimenId }) => specimenId));
  const strangers = packed.filter(({ specimenId }) => !belongs.has(specimenId)).length;
  if (strangers > 0)
    throw new Refusal("conflict", "crate.holds-others", { crate: crate.code, specimens: strangers });
  const apart = crate.contents.filter(
    ({ specimenId }) => inHand.get(specimenId)?.componentsComplete !== true,
  );
  if (apart.length > 0)
    throw new Refusal("conflict", "crate.component-missing", {
      crate: crate.code,
      specimens: numbersInWords(apart),
    });
  if (crate.state !== "packed") requireMayHappen(crate, "packed");
  await writeCrateEvents(work, [
    { crateId, kind: "packed" },
    { crateId, kind: "sealed", sealNumber },
  ]);
  const here = linesIn(loan, "accepted").filter((line) => belongs.has(line.specimenId));
  await moveLines(work, here, "packed");
});
