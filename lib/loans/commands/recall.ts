/**
 * Asking specimens back before the loan ends. It bars nothing: the way home is
 * open as ever. What is recalled stays on the list of what is due until it is on
 * its way. For the donors' office this is an act of consent; for its own need the
 * centre gives notice.
 */
import { recallNoticeAgreed } from "#lib/agreements/frozen-terms.ts";
import { signingParties } from "#lib/agreements/signing.ts";
import { linesIn, requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { earliestReturnBy } from "#lib/loans/extension.ts";
import { RecallInput } from "#lib/loans/time-inputs.ts";
import { outStates } from "#lib/loans/transitions.ts";
import { command, type Work } from "#lib/people/command.ts";
import { practiceOf } from "#lib/people/practice.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { toDate } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

/** The notice that both have signed; the house's own figure where the agreement names none. */
async function noticeOf({ transaction }: Work, loanId: Id): Promise<number> {
  const versions = await transaction.agreement.findMany({
    where: { loanId, AND: signingParties.map((party) => ({ signatures: { some: { party } } })) },
    orderBy: { version: "desc" },
    select: { terms: true },
    take: 1,
  });
  const agreed = versions.map(({ terms }) => recallNoticeAgreed(terms))[0] ?? null;
  return agreed ?? practiceOf((await centreSettings(transaction)).practice).recallNoticeDays;
}

export const recallLoan = command("recallLoan", RecallInput, async (work, input): Promise<Id> => {
  const { loanId, specimenIds, ground, returnBy, ...said } = input;
  const { transaction, viewer, today, now } = work;
  const loan = await takeLoan(work, loanId, "recallLoan");
  requireState(loan, ["travelling out", "at venue"]);
  const onlyForDonors = !viewer.roles.some((role) => role === "registrar" || role === "collection manager");
  if (onlyForDonors && ground !== "consent withdrawn")
    throw new Refusal("forbidden", "recall.other-ground", { ground });
  const away = linesIn(loan, ...outStates);
  const known = new Set(away.map((line) => line.specimenId));
  if (specimenIds.some((id) => !known.has(id))) throw notFound("specimen");
  const earliest = earliestReturnBy(ground, today, await noticeOf(work, loanId));
  if (returnBy < earliest)
    throw new Refusal("invalid", "recall.too-soon", { earliest, ground }, [
      { path: "returnBy", message: "recall.too-soon-field" },
    ]);
  const id = newId();
  await transaction.recall.create({
    data: {
      id,
      loanId,
      specimenIds: [...new Set(specimenIds)],
      ground,
      ...said,
      returnBy: toDate(returnBy),
      accountId: viewer.accountId,
      recalledAt: now,
    },
  });
  await writeLetters(work, loanId, "recalled", { returnBy, count: new Set(specimenIds).size });
  return id;
});
