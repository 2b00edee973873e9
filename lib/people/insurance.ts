/**
 * Cover that an institution holds beyond one loan: kept once and offered for each.
 * Its last day is the first on which it no longer covers.
 */
import { z } from "zod";
import { CountryCode } from "#lib/platform/countries.ts";
import { DateText, daysBetween } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode, minorUnits } from "#lib/platform/money.ts";

const text = (most: number) => z.string().trim().min(1).max(most);

export const InsuranceInput = z
  .object({
    id: Id.nullable(),
    institutionId: Id,
    insurer: text(160),
    policyNumber: text(80),
    minor: minorUnits(1_000_000_000_000),
    currency: CurrencyCode,
    validFrom: DateText,
    /** The first day that it no longer covers. */
    validUntil: DateText,
    coversTransit: z.boolean(),
    territories: z.array(CountryCode).min(1).max(60),
  })
  .refine(({ validFrom, validUntil }) => validFrom < validUntil, {
    path: ["validUntil"],
    message: "insurance.period-reversed",
  });
export type InsuranceInput = z.infer<typeof InsuranceInput>;

/** Days before its end on which an insurance is announced. */
export const insuranceWarningDays = [60, 30, 7] as const;

/** The warning that has come: 60, 30 or 7 days ahead, 0 once it has ended; null while it is far. */
export function insuranceWarningOn(validUntil: DateText, today: DateText): 60 | 30 | 7 | 0 | null {
  const days = daysBetween(today, validUntil);
  if (days <= 0) return 0;
  return insuranceWarningDays.findLast((warning) => days <= warning) ?? null;
}
