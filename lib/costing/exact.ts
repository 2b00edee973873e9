/**
 * Arithmetic of money without a floating point: a decimal is kept as text, a
 * computation as a fraction of two whole numbers of any size, and only the end of
 * it is rounded. One rule everywhere: half a minor unit and more goes up, away from
 * nought for a sum that is owed back. Nothing else in the room rounds money.
 */
import { z } from "zod";

/** A decimal of at most nine digits on either side, in its one way to be written: "2.5", never "2.50". */
export const Decimal = z
  .string()
  .regex(/^(0|[1-9]\d{0,8})(\.\d{0,8}[1-9])?$/, { error: "costing.decimal", abort: true })
  .max(19);
export type Decimal = z.infer<typeof Decimal>;

/** A fraction: `over` divided by `under`. */
export type Exact = { over: bigint; under: bigint };

/** @throws {RangeError} for a text that is no such decimal */
export function exactOf(decimal: Decimal | number | bigint): Exact {
  if (typeof decimal === "bigint") return { over: decimal, under: 1n };
  if (typeof decimal === "number") {
    if (!Number.isSafeInteger(decimal)) throw new RangeError("A number here is whole.");
    return { over: BigInt(decimal), under: 1n };
  }
  if (!Decimal.safeParse(decimal).success) throw new RangeError(`"${decimal}" is no decimal.`);
  const [whole = "0", fraction = ""] = decimal.split(".");
  return { over: BigInt(whole + fraction), under: 10n ** BigInt(fraction.length) };
}

export function times(...factors: readonly Exact[]): Exact {
  return factors.reduce(
    (product, { over, under }) => ({ over: product.over * over, under: product.under * under }),
    { over: 1n, under: 1n },
  );
}

export function dividedBy(dividend: Exact, divisor: Exact): Exact {
  if (divisor.over <= 0n) throw new RangeError("What divides is more than nothing.");
  return { over: dividend.over * divisor.under, under: dividend.under * divisor.over };
}

/** Half and more goes up, by size: 0.5 is 1 and −0.5 is −1. @throws {RangeError} beyond what a whole number holds exactly */
export function roundHalfUp({ over, under }: Exact): number {
  if (under <= 0n) throw new RangeError("A fraction has a divisor of more than nothing.");
  const size = over < 0n ? -over : over;
  const whole = (2n * size + under) / (2n * under);
  const rounded = Number(over < 0n ? -whole : whole) + 0;
  if (!Number.isSafeInteger(rounded)) throw new RangeError("The sum is too large.");
  return rounded;
}

/** A decimal of whole `scale`-ths, written in its one way: (2500, 3) is "2.5". */
export function decimalOf(whole: number, scale: number): Decimal {
  if (!Number.isSafeInteger(whole) || whole < 0) throw new RangeError("A decimal is not negative.");
  const digits = String(whole).padStart(scale + 1, "0");
  const fraction = scale === 0 ? "" : digits.slice(-scale).replace(/0+$/, "");
  const head = scale === 0 ? digits : digits.slice(0, -scale);
  return fraction === "" ? head : `${head}.${fraction}`;
}

/** A number as people type it, as the decimal that they meant; nine decimals at most. @throws {RangeError} outside */
export function decimalFrom(value: number): Decimal {
  if (!(value >= 0 && value < 1e9)) throw new RangeError("A decimal lies between 0 and a thousand million.");
  const text = value.toFixed(value < 1e6 ? 9 : 6);
  return text.replace(/\.?0+$/, "") || "0";
}
