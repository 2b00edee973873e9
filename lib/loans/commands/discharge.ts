/**
 * Writing down that customs has discharged what crossed its border: the day, the
 * office, its reference, and by whom it was written down. It is recorded at any time
 * after the specimens have left; without it the file of such a loan is not closed.
 */
import { customsCountries, DischargeInput } from "#lib/loans/closing.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { lineStatesSinceRelease } from "#lib/loans/loan-state.ts";
import { command, refuseDaysToCome } from "#lib/people/command.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { toDate, toDateText } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export const recordCustomsDischarge = command(
  "recordCustomsDischarge",
  DischargeInput,
  async (work, { loanId, dischargedOn, office, reference, note }) => {
    const { transaction, viewer, now } = work;
    const loan = await takeLoan(work, loanId, "recordCustomsDischarge");
    if (!loan.lines.some(({ state }) => lineStatesSinceRelease.includes(state)))
      throw new Refusal("conflict", "loan.not-now", { state: loan.state, loan: loan.number });
    refuseDaysToCome(work, { dischargedOn });
    const { venue, stages } = await transaction.loan.findUniqueOrThrow({
      where: { id: loan.id },
      select: {
        venue: { select: { countryCode: true } },
        stages: { select: { direction: true, departsOn: true, through: true } },
      },
    });
    const countries = customsCountries({
      lenderCountry: (await centreSettings(transaction)).countryCode,
      venueCountry: venue.countryCode,
      through: stages.flatMap(({ through }) => through),
    });
    if (countries.length === 0) throw new Refusal("conflict", "discharge.no-border", { loan: loan.number });
    const out = stages.find(({ direction }) => direction === "out");
    if (out && dischargedOn < toDateText(out.departsOn))
      throw new Refusal("invalid", "input.invalid", {}, [
        { path: "dischargedOn", message: "discharge.before-it-left" },
      ]);
    await transaction.customsDischarge.create({
      data: {
        id: newId(),
        loanId: loan.id,
        dischargedOn: toDate(dischargedOn),
        office,
        reference,
        note,
        accountId: viewer.accountId,
        recordedAt: now,
      },
    });
  },
);
