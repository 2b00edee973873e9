/**
 * Whether a consent is in force on a day. A paper holds through the day it names
 * as its last; a withdrawal counts from the day it takes effect, or from the day
 * it came in where no later day was stated. Once it has ended, a consent never
 * comes back: a new form is a new consent.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { ConsentFacts } from "#lib/provenance/schema.ts";

export const consentStates = ["in force", "withdrawal received", "withdrawn", "expired"] as const;
export type ConsentState = (typeof consentStates)[number];

/** The dates that decide. */
export type ConsentDates = Pick<
  ConsentFacts,
  "validUntil" | "reviewDueOn" | "withdrawalReceivedOn" | "withdrawalEffectiveOn"
>;

export type ConsentStatus = {
  state: ConsentState;
  /** Whether what was granted still counts on the day. */
  inForce: boolean;
  /** Whether somebody should have looked at it again by the day. */
  reviewDue: boolean;
  /** The first day on which it no longer counts; null while no end is known. */
  endsOn: DateText | null;
};

/** The first day on which a withdrawal counts, or null without one. */
export function withdrawnFrom(consent: ConsentDates): DateText | null {
  return consent.withdrawalEffectiveOn ?? consent.withdrawalReceivedOn;
}

export function consentStatusOn(consent: ConsentDates, day: DateText): ConsentStatus {
  const withdrawn = withdrawnFrom(consent);
  const lapses = consent.validUntil === null ? null : addDays(consent.validUntil, 1);
  const [endsOn = null] = [withdrawn, lapses].filter((day) => day !== null).sort();
  const state = stateOn(consent, withdrawn, lapses, day);
  return {
    state,
    inForce: state === "in force" || state === "withdrawal received",
    reviewDue: consent.reviewDueOn !== null && consent.reviewDueOn <= day,
    endsOn,
  };
}

function stateOn(
  consent: ConsentDates,
  withdrawn: DateText | null,
  lapses: DateText | null,
  day: DateText,
): ConsentState {
  if (withdrawn !== null && withdrawn <= day) return "withdrawn";
  if (lapses !== null && lapses <= day) return "expired";
  if (consent.withdrawalReceivedOn !== null && consent.withdrawalReceivedOn <= day)
    return "withdrawal received";
  return "in force";
}
