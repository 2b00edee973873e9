/**
 * Writing down which tariff code somebody decided for specimens of a stage in one
 * country, with who and when. A new decision takes the place of the old; the audit
 * keeps both. Papers that were issued before keep what they said.
 */
import { requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { isLive } from "#lib/loans/loan-state.ts";
import { loanStates } from "#lib/loans/schema.ts";
import { TariffInput, tariffCountries } from "#lib/loans/tariff.ts";
import { command, refuseDaysToCome } from "#lib/people/command.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

const open = loanStates.filter((state) => !["closed", "declined", "withdrawn"].includes(state));

export const decideTariffCode = command("decideTariffCode", TariffInput, async (work, input) => {
  const { stageId, countryCode, code, decidedBy, decidedOn, note } = input;
  const { transaction } = work;
  const stage = await transaction.stage.findUnique({
    where: { id: stageId },
    include: { loan: { select: { venue: { select: { countryCode: true } } } } },
  });
  if (!stage) throw notFound("stage");
  const loan = await takeLoan(work, stage.loanId, "decideTariffCode");
  requireState(loan, open);
  refuseDaysToCome(work, { decidedOn });
  const { countryCode: house } = await centreSettings(transaction);
  if (!tariffCountries([house, stage.loan.venue.countryCode], stage.through).includes(countryCode))
    throw new Refusal("conflict", "tariff.country-off-way", { country: countryCode });
  const specimenIds = [...new Set(input.specimenIds)];
  const live = new Set(loan.lines.filter(({ state }) => isLive(state)).map((line) => line.specimenId));
  if (specimenIds.some((id) => !live.has(id))) throw notFound("specimen");
  const decision = { code, decidedBy, decidedOn: toDate(decidedOn), note };
  const before = await transaction.tariffCode.findMany({
    where: { stageId, countryCode, specimenId: { in: specimenIds } },
    select: { id: true, specimenId: true },
  });
  const known = new Set(before.map(({ specimenId }) => specimenId));
  await transaction.tariffCode.updateMany({
    where: { id: { in: before.map(({ id }) => id) } },
    data: decision,
  });
  await transaction.tariffCode.createMany({
    data: specimenIds
      .filter((id) => !known.has(id))
      .map((specimenId) => ({ id: newId(), stageId, countryCode, specimenId, ...decision })),
  });
});
