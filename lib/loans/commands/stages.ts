/**
 * Planning the two stages of a loan, and giving a carrier its link. Every day of a
 * stage is booked with it; days that somebody else has refuse the plan. A way home
 * that is late already is planned all the same, for nothing bars it, and keeps
 * what days are left. A carrier has no account: the link's token is told once and only its hash is kept; it runs out
 * a week after the planned arrival.
 */

import { z } from "zod";
import { requireState } from "#lib/loans/at-hand.ts";
import { keepDays } from "#lib/loans/commands/keep-days.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { loanStates } from "#lib/loans/schema.ts";
import { command, commands } from "#lib/people/command.ts";
import { addDays, toDate, toDateText } from "#lib/platform/dates.ts";
import { randomToken, sha256Hex } from "#lib/platform/hash.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { StageInput } from "#lib/shipments/schema.ts";

const beforeReturn = [...statesInPreparation, "travelling out", "at venue", "travelling home"] as const;
const LINK_DAYS_AFTER_ARRIVAL = 7;

/** Plans a stage, or plans it anew while it has not begun. @returns the stage's id */
export const planStage = command("planStage", StageInput, async (work, input): Promise<Id> => {
  const { loanId, direction, departsOn, arrivesOn, ...facts } = input;
  const loan = await takeLoan(work, loanId, "planStage");
  requireState(loan, direction === "out" ? statesInPreparation : beforeReturn);
  if (arrivesOn < work.today) throw new Refusal("conflict", "stage.past", { arrivesOn });
  const data = { ...facts, departsOn: toDate(departsOn), arrivesOn: toDate(arrivesOn) };
  const stage = await work.transaction.stage.upsert({
    where: { loanId_direction: { loanId, direction } },
    create: { id: newId(), loanId, direction, ...data },
    update: data,
  });
  const [taken] = await keepDays(work, loan);
  const isLate = direction === "home" && loan.endsOn <= work.today;
  if (taken && !isLate) throw new Refusal("conflict", "stage.days-taken", { ...taken, direction });
  return stage.id;
});

export type CarrierLink = { token: string; expiresAt: string };

const giveLink = command(
  "issueCarrierLink",
  z.object({ stageId: Id }),
  async (work, { stageId }): Promise<CarrierLink> => {
    const stage = await work.transaction.stage.findUnique({ where: { id: stageId } });
    if (!stage) throw notFound("stage");
    const loan = await takeLoan(work, stage.loanId, "issueCarrierLink");
    requireState(
      loan,
      loanStates.filter((state) => !["closed", "declined", "withdrawn"].includes(state)),
    );
    const expiresAt = toDate(addDays(toDateText(stage.arrivesOn), LINK_DAYS_AFTER_ARRIVAL));
    if (expiresAt <= work.now)
      throw new Refusal("conflict", "stage.past", { arrivesOn: toDateText(stage.arrivesOn) });
    const token = randomToken();
    await work.transaction.stage.update({
      where: { id: stageId },
      data: { linkHash: sha256Hex(token), linkExpiresAt: expiresAt },
    });
    return { token, expiresAt: expiresAt.toISOString() };
  },
);

/**
 * Gives a new link; the one before no longer opens. An idempotency key is not
 * taken: its receipt would keep the token, of which only the hash may be kept.
 */
export const issueCarrierLink: typeof giveLink = Object.assign(
  (...[viewer, input]: Parameters<typeof giveLink>) => giveLink(viewer, input),
  { act: giveLink.act, input: giveLink.input, within: giveLink.within },
);
commands.set(issueCarrierLink.act, issueCarrierLink as never);
