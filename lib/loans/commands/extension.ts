/**
 * A longer loan: asked for by who borrows, answered by the registrar. It is granted
 * only where every rule is judged anew for the longer time and bars nothing, where
 * the days are free and kept in the same act, and where cover reaches or is asked
 * for. The agreement keeps its words until it is amended.
 */
import { requireState } from "#lib/loans/at-hand.ts";
import { keepDays } from "#lib/loans/commands/keep-days.ts";
import { keepRun, refuseAndKeep, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { type ExtensionReason, extensionReasons } from "#lib/loans/extension.ts";
import { extensionFactsOf } from "#lib/loans/queries/extension-facts.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { AnswerExtensionInput, AskExtensionInput } from "#lib/loans/time-inputs.ts";
import { command, type Work } from "#lib/people/command.ts";
import { type DateText, toDate, toDateText } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { faultOfDays } from "#lib/suitability/schema.ts";

/** Agreed, and not on its way home yet. */
export const mayBeExtended: readonly LoanState[] = ["agreed", "preparing", "travelling out", "at venue"];

export const askExtension = command("askExtension", AskExtensionInput, async (work, input): Promise<Id> => {
  const { loanId, endsOn, grounds } = input;
  const loan = await takeLoan(work, loanId, "askExtension");
  requireState(loan, mayBeExtended);
  const fault =
    endsOn > loan.endsOn ? faultOfDays({ startsOn: loan.startsOn, endsOn }) : "extension.not-longer";
  if (fault !== null) throw new Refusal("invalid", "input.invalid", {}, [{ path: "endsOn", message: fault }]);
  const open = await work.transaction.extension.findFirst({ where: { loanId, outcome: null } });
  if (open) throw new Refusal("conflict", "extension.asked-already", { endsOn: toDateText(open.endsOn) });
  const id = newId();
  await work.transaction.extension.create({
    data: { id, loanId, endsOn: toDate(endsOn), grounds, askedBy: work.viewer.name, askedAt: work.now },
  });
  await writeLetters(work, loanId, "extension-asked", { askedUntil: endsOn });
  return id;
});

/** @throws {Refusal} with the first reason against it, and how many there are */
function refuseReasons(reasons: readonly ExtensionReason[], coverAskedFor: boolean): void {
  const against = reasons.filter(
    ({ outcome, code }) => outcome === "bar" || (code === "extension.cover-ends" && !coverAskedFor),
  );
  const [first] = against;
  if (!first) return;
  throw new Refusal("conflict", first.code, { ...first.parameters, reasons: against.length });
}

/** Makes the loan longer, with everything that follows. @returns what still wants somebody */
async function grant(
  work: Work,
  loan: Awaited<ReturnType<typeof takeLoan>>,
  newEndsOn: DateText,
  coverAskedFor: boolean,
): Promise<ExtensionReason[]> {
  const { transaction, today } = work;
  await transaction.loan.update({ where: { id: loan.id }, data: { endsOn: toDate(newEndsOn) } });
  const taken = await keepDays(work, loan);
  const loanCase = await loanCaseOf(transaction, loan.id, today);
  const facts = await extensionFactsOf(transaction, loanCase, loan.endsOn, taken);
  const reasons = extensionReasons(facts);
  const judged = { stopped: "extension", findings: facts.findings, inputs: loanCase } as const;
  await refuseAndKeep(work, "answerExtension", loan.id, judged, () => refuseReasons(reasons, coverAskedFor));
  await keepRun(work, loan.id, "extension", facts.findings, loanCase);
  return reasons;
}

export const answerExtension = command(
  "answerExtension",
  AnswerExtensionInput,
  async (work, { extensionId, outcome, answer, coverAskedFor }): Promise<ExtensionReason[]> => {
    const { transaction, viewer, now } = work;
    const asked = await transaction.extension.findUnique({ where: { id: extensionId } });
    if (!asked) throw notFound("extension");
    const loan = await takeLoan(work, asked.loanId, "answerExtension");
    const current = await transaction.extension.findUniqueOrThrow({ where: { id: extensionId } });
    if (current.outcome !== null)
      throw new Refusal("conflict", "extension.answered-already", { outcome: current.outcome });
    if (outcome === "refused" && answer.length < 10)
      throw new Refusal("invalid", "input.invalid", {}, [{ path: "answer", message: "extension.say-why" }]);
    if (outcome === "granted") requireState(loan, mayBeExtended);
    const reasons =
      outcome === "granted" ? await grant(work, loan, toDateText(asked.endsOn), coverAskedFor) : [];
    await transaction.extension.update({
      where: { id: extensionId },
      data: { outcome, answer, answeredBy: viewer.name, answeredAt: now },
    });
    await writeLetters(work, loan.id, `extension-${outcome}`, { askedUntil: toDateText(asked.endsOn) });
    return reasons;
  },
);
