/**
 * Putting one specimen in the place of another, as long as the request has not
 * been decided. The one goes off and the other comes on in one act, and the new
 * line says for which it stands in where that one stays on record.
 */
import { z } from "zod";
import { liveLines, requireState } from "#lib/loans/at-hand.ts";
import { noteLines, settleBuffers, withdrawLines } from "#lib/loans/commands/note-specimen.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { command } from "#lib/people/command.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

export const SubstituteInput = z.object({ loanId: Id, specimenId: Id, standInId: Id });

export const substituteSpecimen = command(
  "substituteSpecimen",
  SubstituteInput,
  async (work, { loanId, specimenId, standInId }) => {
    const { transaction } = work;
    const loan = await takeLoan(work, loanId, "substituteSpecimen");
    requireState(loan, ["enquiry", "requested"]);
    const line = liveLines(loan).find((one) => one.specimenId === specimenId);
    if (!line) throw notFound("specimen");
    if ((await noteLines(work, loan, [standInId])) === 0) throw new Refusal("conflict", "loan.already-on-it");
    if (line.state === "noted") {
      await transaction.loanLine.delete({ where: { id: line.id } });
    } else {
      await withdrawLines(work, loan, [line]);
      await transaction.loanLine.update({
        where: { loanId_specimenId: { loanId, specimenId: standInId } },
        data: { substituteForId: line.id },
      });
    }
    await settleBuffers(work, loanId);
    if (loan.state === "requested") await writeLetters(work, loanId, "substituted");
  },
);
