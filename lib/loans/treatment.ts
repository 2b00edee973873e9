/**
 * Hours of treatment before a specimen leaves, as the conservator estimates them.
 * Hours are decimals as text with at most two places, so that their sum is exact and
 * goes into a quotation as it stands. Nothing is estimated where nobody has: nought
 * hours are a word, and no hours are none.
 */
import { z } from "zod";
import { Decimal, decimalOf, exactOf, roundHalfUp, times } from "#lib/costing/exact.ts";
import { Id } from "#lib/platform/identity.ts";

/** A specimen takes a working year at most. */
const mostHours = 2_000;

export const TreatmentHours = Decimal.refine((hours) => (hours.split(".")[1] ?? "").length <= 2, {
  error: "treatment.hours-places",
  abort: true,
})
  .refine((hours) => Number(hours) <= mostHours, "treatment.hours-many")
  .meta({ title: "Hours of treatment", unit: "h" });
export type TreatmentHours = z.infer<typeof TreatmentHours>;

export const TreatmentInput = z
  .object({
    loanId: Id,
    specimenId: Id,
    /** Null takes the estimate back. */
    hours: TreatmentHours.nullable(),
    /** What is to be done. */
    work: z.string().trim().max(500),
  })
  .check(({ value, issues }) => {
    if (value.hours !== null && Number(value.hours) > 0 && value.work === "")
      issues.push({ code: "custom", input: value.work, path: ["work"], message: "treatment.work-missing" });
  });
export type TreatmentInput = z.infer<typeof TreatmentInput>;

const hundredths = exactOf(100);

/** The sum, exactly. */
export function hoursTogether(hours: readonly TreatmentHours[]): Decimal {
  const whole = hours.reduce((sum, one) => sum + roundHalfUp(times(exactOf(one), hundredths)), 0);
  return decimalOf(whole, 2);
}
