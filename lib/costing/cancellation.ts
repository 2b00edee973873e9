/**
 * What it costs to call a loan off after its quotation was accepted: a share of the
 * quoted total, by the days that were left until dispatch. The steps run from the
 * earliest day to the last; before the earliest nothing is due. On the day of
 * dispatch and later the last step counts. The share is rounded once, half up.
 */
import { z } from "zod";
import { Decimal, dividedBy, exactOf, roundHalfUp, times } from "#lib/costing/exact.ts";
import { CancellationScale } from "#lib/costing/schema.ts";
import { DateText, daysBetween } from "#lib/platform/dates.ts";
import { CurrencyCode, majorText } from "#lib/platform/money.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

/** The share that is due so many days before dispatch; steps from the earliest to the latest. */
export function shareDue(scale: z.infer<typeof CancellationScale>, daysBefore: number): Decimal {
  const left = Math.max(0, daysBefore);
  const reached = scale.filter((step) => left <= step.daysBefore);
  return reached.at(-1)?.percent ?? "0";
}

export const cancellationCharge = working({
  id: "cancellation-charge",
  title: "Charge for a cancellation",
  about: "What is due when a loan is called off after its quotation was accepted.",
  input: z.object({
    totalMinor: z
      .number()
      .int()
      .min(0)
      .max(100_000_000_000)
      .meta({ title: "Total of the quotation", unit: "minor units" }),
    currency: CurrencyCode.meta({ title: "Currency" }),
    scale: CancellationScale.meta({ title: "Steps" }),
    dispatchOn: DateText.meta({ title: "Day of dispatch" }),
    cancelledOn: DateText.meta({ title: "Day of the cancellation" }),
  }),
  output: z.object({
    daysBefore: z.number().int().meta({ title: "Days before dispatch", unit: "d" }),
    percent: Decimal.meta({ title: "Share due" }),
    chargeMinor: z.number().int().meta({ title: "Charge", unit: "minor units" }),
  }),
  sources: [cite("practice", "cancellation scale"), cite("derived")],
  cautions: [
    "The share is taken of the total with its tax. Whether a charge for a cancellation bears tax differs: check with the local authority.",
  ],
  compute({ totalMinor, currency, scale, dispatchOn, cancelledOn }, note) {
    const daysBefore = note(
      "days before dispatch",
      daysBetween(cancelledOn, dispatchOn),
      "d",
      "dispatch − cancellation",
    );
    const percent = note("share due", shareDue(scale, daysBefore), "%", "the last step that is reached");
    const chargeMinor = roundHalfUp(dividedBy(times(exactOf(totalMinor), exactOf(percent)), exactOf(100)));
    note(
      "charge",
      majorText(chargeMinor, currency),
      currency,
      `${majorText(totalMinor, currency)} × ${percent} %`,
    );
    return { daysBefore, percent, chargeMinor };
  },
});
