/** The tariff codes that the carrier's agent had decided for the way out, at each end of it. */
import { decideTariffCode } from "#lib/loans/commands/tariff.ts";
import { tariffCodesOf } from "#lib/loans/queries/tariff-codes.ts";
import { now } from "#lib/platform/clock.ts";
import { toDateText } from "#lib/platform/dates.ts";
import type { LoanTale } from "#seed/loading/loan-tale.ts";

export async function decideCodesOf(tale: LoanTale): Promise<void> {
  const registrar = tale.as("registrar");
  const sheet = (await tariffCodesOf(registrar, tale.id)).find(({ direction }) => direction === "out");
  for (const { countryCode, specimens } of sheet?.open ?? [])
    for (const human of [true, false]) {
      const specimenIds = specimens.filter((one) => one.human === human).map(({ id }) => id);
      if (sheet === undefined || specimenIds.length === 0) continue;
      await decideTariffCode(registrar, {
        stageId: sheet.stageId,
        countryCode,
        specimenIds,
        code: human ? "9705.21" : "9705.29",
        decidedBy: "The carrier's customs agent",
        decidedOn: toDateText(now()),
        note: "",
      });
    }
}
