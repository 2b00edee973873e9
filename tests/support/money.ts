/** A fee scale with figures that are easy to reckon by hand, and lines of a paper. */
import { type CountedCode, type FeeScale, type LineDraft, lineCodes, unitOf } from "#lib/costing/schema.ts";

const fee = { baseMinor: 25_000, included: 2, furtherMinor: 6_000 };

export function aFeeScale(said: Partial<FeeScale> = {}): FeeScale {
  return {
    currency: "EUR",
    loanFees: { teaching: fee, exhibition: fee, research: fee, "picture-taking": fee },
    rates: {
      preparation: 5_800,
      "condition check": 5_800,
      "new crate": 12_000,
      "crate volume": 64_000,
      "reused crate": 4_500,
      mount: 8_500,
      packing: 4_635,
      kilometre: 185,
      stage: 42_000,
      "courier days": 18_000,
      permits: 6_500,
      customs: 9_500,
      installation: 5_200,
    },
    cover: { transitPerMille: "0.35", transitBasis: "transit", stayPerMille: "0.0041", stayBasis: "day" },
    recall: { percent: "40", leastMinor: 30_000 },
    contingencyPercent: "5",
    taxPercent: Object.fromEntries(lineCodes.map((code) => [code, "25"])) as FeeScale["taxPercent"],
    validDays: 30,
    cancellation: [
      { daysBefore: 60, percent: "10" },
      { daysBefore: 30, percent: "25" },
      { daysBefore: 14, percent: "50" },
      { daysBefore: 0, percent: "80" },
    ],
    ...said,
  };
}

export function aCountedLine(
  code: CountedCode,
  quantity: string,
  rateMinor: number,
  said: Partial<LineDraft> = {},
): LineDraft {
  return {
    code,
    note: "",
    currency: "EUR",
    price: { kind: "counted", quantity, unit: unitOf[code], rateMinor },
    taxPercent: "25",
    ...said,
  };
}

export function aStatedLine(note: string, minor: number, said: Partial<LineDraft> = {}): LineDraft {
  return {
    code: "other",
    note,
    currency: "EUR",
    price: { kind: "stated", minor },
    taxPercent: "25",
    ...said,
  };
}

/** The least that a quotation holds. */
export const someLines = (): LineDraft[] => [
  aCountedLine("loan fee", "1", 25_000),
  aCountedLine("return and recall", "1", 30_000),
];
