/**
 * Where a quotation stands: answered, put out of force by a newer one, past its last
 * day, or open. An answer that was given in time stays what it was.
 */
import type { quotationAnswers } from "#lib/costing/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";

export const quotationStates = ["open", "accepted", "refused", "expired", "superseded"] as const;
export type QuotationState = (typeof quotationStates)[number];

export function quotationState({
  answer,
  isNewest,
  validUntil,
  today,
}: {
  answer: (typeof quotationAnswers)[number] | null;
  isNewest: boolean;
  /** The last day on which it can be accepted. */
  validUntil: DateText;
  today: DateText;
}): QuotationState {
  if (answer !== null) return answer;
  if (!isNewest) return "superseded";
  return validUntil < today ? "expired" : "open";
}
