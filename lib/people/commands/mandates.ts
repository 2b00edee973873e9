/**
 * Giving and revoking mandates, and asking for one where somebody signs or
 * decides. Nobody gives one to themselves. A mandate is never rewritten: a change
 * is a revocation and a new one.
 */
import { command, type Work } from "#lib/people/command.ts";
import {
  type AtStake,
  type Mandate,
  type MandateAct,
  MandateInput,
  mandateFor,
  RevokeMandateInput,
} from "#lib/people/mandates.ts";
import { mandatesOf } from "#lib/people/queries/mandates.ts";
import { toDate, toDateOrNull } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

export const giveMandate = command("giveMandate", MandateInput, async (work, input): Promise<Id> => {
  const { transaction, viewer } = work;
  const { limit, validFrom, validUntil, ...facts } = input;
  if (facts.accountId === viewer.accountId) throw new Refusal("conflict", "mandate.own");
  const account = await transaction.account.findUnique({ where: { id: facts.accountId } });
  if (!account) throw notFound("account");
  const id = newId();
  await transaction.mandate.create({
    data: {
      id,
      ...facts,
      acts: [...new Set(facts.acts)],
      limitMinor: limit?.minor ?? null,
      limitCurrency: limit?.currency ?? null,
      validFrom: toDate(validFrom),
      validUntil: toDateOrNull(validUntil),
      givenBy: viewer.name,
    },
  });
  return id;
});

export const revokeMandate = command("revokeMandate", RevokeMandateInput, async (work, { mandateId }) => {
  const changed = await work.transaction.mandate.updateMany({
    where: { id: mandateId, revokedOn: null },
    data: { revokedOn: toDate(work.today) },
  });
  if (changed.count === 0) throw notFound("mandate");
});

/** @throws {Refusal} "conflict" with what the person's mandates lack */
export async function requireMandate(
  { transaction, viewer, today }: Work,
  act: MandateAct,
  atStake: AtStake,
): Promise<Mandate> {
  const mandates = await mandatesOf(transaction, viewer.accountId);
  const answer = mandateFor(mandates, { act, day: today, atStake });
  if ("fault" in answer) throw new Refusal("conflict", answer.fault, { act });
  return answer.mandate;
}
