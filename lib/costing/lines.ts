/**
 * The lines that a loan would have by the centre's fee scale: quantities from the
 * loan's facts where they are known, rates from the scale. It is what a quotation
 * begins with; whoever draws it up changes quantities and rates and adds lines.
 * Hours and distances that nobody has stated are left at nothing, never guessed.
 * The line for return and emergency recall is always there.
 */
import { type Decimal, decimalOf, dividedBy, exactOf, roundHalfUp, times } from "#lib/costing/exact.ts";
import {
  type CostLine,
  type CountedCode,
  countedCodes,
  type FeeScale,
  type LineDraft,
  mandatoryCode,
  unitOf,
} from "#lib/costing/schema.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import type { purposes } from "#lib/suitability/schema.ts";

export type LoanForCosting = {
  purpose: (typeof purposes)[number];
  specimens: number;
  /** Outer sizes of the crates that are planned. */
  crates: readonly { outerLengthMm: number; outerWidthMm: number; outerHeightMm: number }[];
  isAbroad: boolean;
  /** From delivery to the return-by. */
  stayDays: number;
  /** Days on the way, out and home. */
  transitDays: number;
  /** Replacement costs for cover, by currency. */
  costs: readonly { minor: number; currency: string }[];
  /** The borrower takes out its own cover. */
  coversItself: boolean;
  /** Hours of treatment before it leaves, as the conservator has estimated them; nought where nobody has. */
  treatmentHours: Decimal;
};

/** Condition checks of one specimen, out and home together; the centre's own habit, changed on the paper. */
const checkHoursPerSpecimen = 1;

/** Outer volume in cubic metres, to the litre, half up. */
function cubicMetres(crates: LoanForCosting["crates"]): string {
  const mm3 = crates.reduce(
    (all, crate) =>
      all + BigInt(crate.outerLengthMm) * BigInt(crate.outerWidthMm) * BigInt(crate.outerHeightMm),
    0n,
  );
  return decimalOf(roundHalfUp({ over: mm3, under: 1_000_000n }), 3);
}

/** What each counted line costs by the scale, for one unit. */
export function scaleRates(scale: FeeScale, purpose: LoanForCosting["purpose"]): Record<CountedCode, number> {
  const { rates, loanFees } = scale;
  const byDistance = rates.kilometre;
  return {
    "loan fee": loanFees[purpose].baseMinor,
    "further specimens": loanFees[purpose].furtherMinor,
    preparation: rates.preparation,
    "condition check": rates["condition check"],
    "new crate": rates["new crate"],
    "crate volume": rates["crate volume"],
    "reused crate": rates["reused crate"],
    mount: rates.mount,
    packing: rates.packing,
    "transport out by distance": byDistance,
    "transport out": rates.stage,
    "transport home by distance": byDistance,
    "transport home": rates.stage,
    "courier days": rates["courier days"],
    "courier fare": 0,
    permits: rates.permits,
    customs: rates.customs,
    installation: rates.installation,
    "return and recall": recallMinor(scale, rates.stage),
  };
}

/** A share of the way home, at least what the scale says. */
export function recallMinor({ recall }: Pick<FeeScale, "recall">, wayHomeMinor: number): number {
  const share = roundHalfUp(dividedBy(times(exactOf(wayHomeMinor), exactOf(recall.percent)), exactOf(100)));
  return Math.max(recall.leastMinor, share);
}

/** What is counted, as far as the loan says it; nought where nobody has stated it. */
function quantitiesOf(scale: FeeScale, loan: LoanForCosting): Partial<Record<CountedCode, string>> {
  const { included } = scale.loanFees[loan.purpose];
  const crossings = loan.isAbroad ? "2" : "0";
  return {
    "loan fee": "1",
    "further specimens": String(Math.max(0, loan.specimens - included)),
    preparation: loan.treatmentHours,
    "condition check": String(loan.specimens * checkHoursPerSpecimen),
    "new crate": String(loan.crates.length),
    "crate volume": cubicMetres(loan.crates),
    "transport out": "1",
    "transport home": "1",
    customs: crossings,
    "return and recall": "1",
  };
}

/** Every line that the scale knows, those of nothing too, in the order of a paper. */
export function linesByScale(scale: FeeScale, loan: LoanForCosting): LineDraft[] {
  const rates = scaleRates(scale, loan.purpose);
  const quantities = quantitiesOf(scale, loan);
  const counted = countedCodes.map(
    (code): LineDraft => ({
      code,
      note: "",
      currency: scale.currency,
      price: {
        kind: "counted",
        quantity: quantities[code] ?? "0",
        unit: unitOf[code],
        rateMinor: rates[code],
      },
      taxPercent: scale.taxPercent[code],
    }),
  );
  const { cover } = scale;
  const often = { transit: "2", day: String(loan.transitDays) } as const;
  const stayed = { transit: "1", day: String(loan.stayDays) } as const;
  const premiums = loan.costs.flatMap(({ minor, currency }): LineDraft[] => [
    {
      code: "cover on the way",
      note: "",
      currency,
      price: {
        kind: "share",
        ofMinor: minor,
        share: cover.transitPerMille,
        per: "mille",
        times: loan.coversItself ? "0" : often[cover.transitBasis],
        unit: cover.transitBasis,
      },
      taxPercent: scale.taxPercent["cover on the way"],
    },
    {
      code: "cover of the stay",
      note: "",
      currency,
      price: {
        kind: "share",
        ofMinor: minor,
        share: cover.stayPerMille,
        per: "mille",
        times: loan.coversItself ? "0" : stayed[cover.stayBasis],
        unit: cover.stayBasis === "day" ? "day" : "once",
      },
      taxPercent: scale.taxPercent["cover of the stay"],
    },
  ]);
  const contingency: LineDraft = {
    code: "contingency",
    note: "",
    currency: scale.currency,
    price: {
      kind: "share",
      ofMinor: 0,
      share: scale.contingencyPercent,
      per: "cent",
      times: "1",
      unit: "once",
    },
    taxPercent: scale.taxPercent.contingency,
  };
  return [...counted, ...premiums, contingency];
}

/** Whether a line asks for nothing: such lines stand in the form and on no paper. */
export function isOfNothing({ price }: Pick<LineDraft, "price">): boolean {
  switch (price.kind) {
    case "counted":
      return price.quantity === "0" || price.rateMinor === 0;
    case "share":
      return price.times === "0" || price.share === "0";
    case "stated":
      return price.minor === 0;
  }
}

/** Lines as they stand on a quotation. @throws {Refusal} where bringing everything home is not among them */
export function linesOfQuotation(lines: readonly LineDraft[]): LineDraft[] {
  const asked = lines.filter((line) => !isOfNothing(line));
  if (!asked.some(({ code }) => code === mandatoryCode))
    throw new Refusal("invalid", "costing.recall-missing");
  return asked;
}

/** What went into a line, without what it came to: a later paper begins with it. */
export function draftOfLine({ code, note, currency, price, taxPercent }: CostLine): LineDraft {
  return { code, note, currency, price, taxPercent };
}
