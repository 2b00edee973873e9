/**
 * Setting a bar aside, for specimens of one loan. The bar has to stand now, the
 * office has to be one that the book names for its rule, and where the book asks
 * for evidence it is named. The way home needs none of this: it is never barred.
 */
import { z } from "zod";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { officesOf } from "#lib/loans/offices.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { command } from "#lib/people/command.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { ruleEntry } from "#lib/suitability/rules/book.ts";
import { offices } from "#lib/suitability/schema.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";

const text = (most: number) => z.string().trim().max(most);

export const SetAsideInput = z.object({
  loanId: Id,
  specimenIds: z.array(Id).min(1).max(500),
  rule: text(20).min(1),
  fact: text(80).min(1),
  office: z.enum(offices),
  grounds: text(2_000).min(10, "decision.grounds-short"),
  /** The paper that the word rests on. */
  evidence: text(300),
});
export type SetAsideInput = z.infer<typeof SetAsideInput>;

export const setAsideBar = command("setAsideBar", SetAsideInput, async (work, input) => {
  const { transaction, viewer, today, now } = work;
  const { specimenIds, ...word } = input;
  const { loanId, rule, fact, office } = word;
  if (!officesOf(viewer).includes(office))
    throw new Refusal("forbidden", "decision.not-your-office", { office });
  const loan = await takeLoan(work, loanId, "setAsideBar");
  const { request, subjects } = await loanCaseOf(transaction, loan.id, today);
  const barred = new Set(
    judgeSuitability(request, subjects)
      .filter((one) => one.outcome === "bar" && one.rule === rule && one.fact === fact)
      .map((one) => one.specimenId),
  );
  if (!specimenIds.every((id) => barred.has(id))) throw new Refusal("conflict", "suitability.no-such-bar");
  const { overriddenBy, needsEvidence } = ruleEntry(rule);
  if (!overriddenBy.includes(office))
    throw new Refusal("conflict", "suitability.not-to-set-aside", { rule, office });
  if (needsEvidence && input.evidence === "")
    throw new Refusal("invalid", "input.invalid", {}, [
      { path: "evidence", message: "suitability.evidence-missing" },
    ]);
  await transaction.ruleOverride.createMany({
    data: [...new Set(specimenIds)].map((specimenId) => ({
      id: newId(),
      ...word,
      specimenId,
      accountId: viewer.accountId,
      decidedBy: viewer.name,
      at: now,
    })),
  });
  await writeLetters(work, loan.id, "bar-set-aside");
});
