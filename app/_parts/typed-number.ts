/**
 * Numbers as people of many countries type them: a decimal point or a decimal
 * comma; between the thousands a blank of any width, an apostrophe, or the mark
 * that is not the decimal one. An empty field is no number, and not nought.
 *
 * "30.000" is thirty to some and thirty thousand to others. Where a number of
 * thousandths is usual, it is thirty; where the field can have no decimals, thirty
 * thousand; elsewhere it is refused, and the field says how to write either.
 *
 * Percentages are typed and shown; inside, a share is a fraction.
 */

/**
 * What a field is for: a measure that may well have thousandths, such as a mass in kg; a large
 * measure, of which thousands are usual and thousandths are not, such as a width in mm; or an
 * amount of money, by the decimals of its currency.
 */
export type NumberKind = "measure" | "large measure" | { decimals: number };

/** Fields by the unit in their name. What a lift or a ramp bears is counted in hundreds of kilograms. */
export function kindOfField(name: string): NumberKind {
  return /(Mm|Lx|PerLumen|Count|loadKg)$/.test(name) ? "large measure" : "measure";
}

/** A number taken apart. It is ambiguous when its one mark may stand for decimals or between thousands. */
type Parts = { sign: string; whole: string; fraction: string; exponent: string; isAmbiguous: boolean };

/** Apostrophes as keyboards and word processors make them. */
const apostrophe = /['\u2018\u2019\u02bc]/g;
const grouped = /^[1-9]\d{0,2}(_\d{3})+$/;
/** In India commas part off three digits, and then two and two. */
const groupedInPairs = /^[1-9]\d?(_\d{2})*_\d{3}$/;

/** Digits between which only one mark for groups stands. @returns the digits, or null where the groups are none */
function ungroup(text: string, mark: string): string | null {
  const marked = text.replaceAll(mark, "_");
  if (!marked.includes("_")) return marked;
  const isGrouped = grouped.test(marked) || (mark === "," && groupedInPairs.test(marked));
  return isGrouped ? marked.replaceAll("_", "") : null;
}

function takeApart(text: string): Parts | null {
  const trimmed = text.trim().replace("\u2212", "-");
  const [, sign = "", body = "", exponent = ""] = /^([-+]?)\s*(.*?)(e[-+]?\d{1,3})?$/iu.exec(trimmed) ?? [];
  const plain = body.replace(/\s/gu, " ").replace(apostrophe, "'");
  if (!/^[\d.,' ]*\d[\d.,' ]*$/.test(plain)) return null;
  const marks = [...plain.replace(/\d/g, "")];
  const [first = ""] = marks;
  const last = marks.at(-1) ?? "";
  const kinds = new Set(marks);
  const isDecimal = (mark: string) => mark === "." || mark === ",";
  const count = (mark: string) => marks.filter((each) => each === mark).length;
  if (kinds.size > 2) return null;
  const parts = (whole: string | null, fraction: string, isAmbiguous = false): Parts | null =>
    whole === null || !/^\d*$/.test(fraction) ? null : { sign, whole, fraction, exponent, isAmbiguous };
  if (kinds.size === 0) return parts(plain, "");
  const [before = "", after = ""] = [
    plain.slice(0, plain.lastIndexOf(last)),
    plain.slice(plain.lastIndexOf(last) + 1),
  ];
  if (kinds.size === 2)
    // The last mark is the decimal one, the other stands between the thousands.
    return isDecimal(last) && count(last) === 1 && first !== last
      ? parts(ungroup(before, first), after)
      : null;
  if (!isDecimal(last) || count(last) > 1) return parts(ungroup(plain, last), "");
  const mayBeThousands = exponent === "" && /^[1-9]\d{0,2}$/.test(before) && /^\d{3}$/.test(after);
  return parts(before, after, mayBeThousands);
}

const decimalsOf = (kind: NumberKind) => (typeof kind === "object" ? kind.decimals : null);

/** The parts as the kind of field reads them; null where they stay ambiguous or say more than it can hold. */
function settle(parts: Parts | null, kind: NumberKind): Parts | null {
  if (parts === null) return null;
  const decimals = decimalsOf(kind);
  if (parts.isAmbiguous && decimals === 0)
    return { ...parts, whole: parts.whole + parts.fraction, fraction: "", isAmbiguous: false };
  if (parts.isAmbiguous && decimals !== 3 && kind !== "measure") return null;
  if (decimals !== null && (parts.exponent !== "" || parts.fraction.replace(/0+$/, "").length > decimals))
    return null;
  return parts;
}

const numberOf = ({ sign, whole, fraction, exponent }: Parts) =>
  Number(`${sign}${whole || "0"}.${fraction || "0"}${exponent}`);

/** @returns the number, null for an empty field, NaN for anything else */
export function readNumber(text: string, kind: NumberKind = "measure"): number | null {
  if (text.trim() === "") return null;
  const parts = settle(takeApart(text), kind);
  return parts === null ? Number.NaN : numberOf(parts);
}

/** @returns whole minor units of a currency with so many decimals, null for an empty field, NaN for anything else */
export function readMinor(text: string, decimals: number): number | null {
  if (text.trim() === "") return null;
  const parts = settle(takeApart(text), { decimals });
  if (parts === null) return Number.NaN;
  const digits = parts.fraction.slice(0, decimals).padEnd(decimals, "0");
  return Number(`${parts.sign}${parts.whole}${digits}`) + 0;
}

/** Why a field could not be read: it is no number, it may be either of two, or it has decimals that do not exist. */
export type NumberProblem =
  | { why: "not a number" }
  | { why: "two readings"; large: string; small: string }
  | { why: "too many decimals"; decimals: number };

/** @returns null for what can be read, and for an empty field */
export function numberProblem(text: string, kind: NumberKind = "measure"): NumberProblem | null {
  if (text.trim() === "") return null;
  const parts = takeApart(text);
  if (parts === null) return { why: "not a number" };
  if (settle(parts, kind) !== null) return null;
  const { sign, whole, fraction, exponent, isAmbiguous } = parts;
  const decimals = decimalsOf(kind);
  if (isAmbiguous) {
    const shown = decimals === null ? `${fraction}0` : fraction.slice(0, decimals);
    return { why: "two readings", large: `${sign}${whole}${fraction}`, small: `${sign}${whole}.${shown}` };
  }
  return decimals === null || exponent !== ""
    ? { why: "not a number" }
    : { why: "too many decimals", decimals };
}

/** What stands in the field for a number, so that it is read as the same again; nothing for what is no number. */
export function writeNumber(value: number | null | undefined, kind: NumberKind = "measure"): string {
  if (value === null || value === undefined || !Number.isFinite(value)) return "";
  const written = String(value);
  return takeApart(written)?.isAmbiguous && kind === "large measure" ? `${written}0` : written;
}

/** Two decimals more than a percentage is ever stated with, so that 0.29 is shown as 29 and kept as 0.29. */
const percentPrecision = 1e6;

export function percentToFraction(percent: number): number {
  return Math.round(percent * percentPrecision) / (percentPrecision * 100);
}

export function fractionToPercent(fraction: number): number {
  return Math.round(fraction * 100 * percentPrecision) / percentPrecision;
}
