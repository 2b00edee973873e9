/**
 * Numbers as people type them: with a decimal point or a decimal comma, with or
 * without spaces between the thousands. An empty field is no number, and not
 * nought. Percentages are typed and shown; inside, a share is a fraction.
 */

/** @returns the number, null for an empty field, NaN for anything else */
export function readNumber(text: string): number | null {
  const typed = text.replace(/[\s\u00a0\u202f]/g, "").replace("\u2212", "-");
  if (typed === "") return null;
  const plain = typed.includes(".") ? typed : typed.replace(",", ".");
  return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d{1,3})?$/i.test(plain) ? Number(plain) : Number.NaN;
}

/** What stands in the field for a number; nothing for null and for what is no number. */
export function writeNumber(value: number | null | undefined): string {
  return value === null || value === undefined || !Number.isFinite(value) ? "" : String(value);
}

/** Two decimals more than a percentage is ever stated with, so that 0.29 is shown as 29 and kept as 0.29. */
const percentPrecision = 1e6;

export function percentToFraction(percent: number): number {
  return Math.round(percent * percentPrecision) / (percentPrecision * 100);
}

export function fractionToPercent(fraction: number): number {
  return Math.round(fraction * 100 * percentPrecision) / percentPrecision;
}
