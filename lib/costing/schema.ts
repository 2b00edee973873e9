/**
 * The words of money in lending: the lines that a loan may cost, the centre's fee
 * scale, and the frozen form of a quotation and of a cost statement. Amounts are
 * whole minor units, rates and quantities decimals as text, so that nothing here is
 * ever a rounded fraction. Codes stand for words; papers and screens say them in a
 * language. For human specimens what is asked is the centre's own cost and no price.
 */
import { z } from "zod";
import { Decimal } from "#lib/costing/exact.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode } from "#lib/platform/money.ts";
import { purposes } from "#lib/suitability/schema.ts";

/** What is counted and multiplied by a rate, in the order of a paper. */
export const countedCodes = [
  "loan fee",
  "further specimens",
  "preparation",
  "condition check",
  "new crate",
  "crate volume",
  "reused crate",
  "mount",
  "packing",
  "transport out by distance",
  "transport out",
  "transport home by distance",
  "transport home",
  "courier days",
  "courier fare",
  "permits",
  "customs",
  "installation",
  "return and recall",
] as const;
export type CountedCode = (typeof countedCodes)[number];

/** What is a share of a sum: of the replacement cost for cover, or of the other lines. */
export const shareCodes = ["cover on the way", "cover of the stay", "contingency"] as const;
export const lineCodes = [...countedCodes, ...shareCodes, "other"] as const;
export const LineCode = z.enum(lineCodes);
export type LineCode = z.infer<typeof LineCode>;

export const costUnits = [
  "loan",
  "specimen",
  "hour",
  "crate",
  "cubic metre",
  "mount",
  "kilometre",
  "stage",
  "day",
  "journey",
  "permit",
  "entry",
] as const;
export type CostUnit = (typeof costUnits)[number];

export const unitOf: Readonly<Record<CountedCode, CostUnit>> = {
  "loan fee": "loan",
  "further specimens": "specimen",
  preparation: "hour",
  "condition check": "hour",
  "new crate": "crate",
  "crate volume": "cubic metre",
  "reused crate": "crate",
  mount: "mount",
  packing: "hour",
  "transport out by distance": "kilometre",
  "transport out": "stage",
  "transport home by distance": "kilometre",
  "transport home": "stage",
  "courier days": "day",
  "courier fare": "journey",
  permits: "permit",
  customs: "entry",
  installation: "hour",
  "return and recall": "loan",
};

/** No quotation is without it: what it costs to bring everything home at once. */
export const mandatoryCode = "return and recall" satisfies CountedCode;

/** Lines that are what the centre asks for lending itself; everything else is an expense. */
export const feeCodes: readonly LineCode[] = ["loan fee", "further specimens"];

const text = (most: number) => z.string().trim().max(most);
/** An amount that may be nothing. */
const amount = z
  .number({ error: "amount.unreadable" })
  .int({ error: ({ code }) => (code === "invalid_type" ? "amount.not-whole" : "amount.too-large") })
  .min(0, "amount.negative")
  .max(100_000_000_000, "amount.too-large");
export const Percent = Decimal.refine((decimal) => Number(decimal) <= 100, "costing.percent");
const PerMille = Decimal.refine((decimal) => Number(decimal) <= 1_000, "costing.per-mille");

/** How a premium is reckoned: once for each transit, or for each day. */
export const premiumBases = ["transit", "day"] as const;

const CancellationStep = z.strictObject({
  /** From so many days before dispatch on. */
  daysBefore: z.number().int().min(0).max(730),
  percent: Percent,
});
export type CancellationStep = z.infer<typeof CancellationStep>;

/** Steps from the earliest to the latest: the nearer dispatch is, the more is due. */
export const CancellationScale = z
  .array(CancellationStep)
  .min(1)
  .max(8)
  .check(({ value, issues }) => {
    value.forEach((step, index) => {
      const before = value[index - 1];
      if (before && !(step.daysBefore < before.daysBefore))
        issues.push({
          code: "custom",
          input: step,
          path: [index, "daysBefore"],
          message: "costing.cancellation-order",
        });
      if (before && !(Number(step.percent) >= Number(before.percent)))
        issues.push({
          code: "custom",
          input: step,
          path: [index, "percent"],
          message: "costing.cancellation-falls",
        });
    });
    const last = value.at(-1);
    if (last && last.daysBefore !== 0)
      issues.push({
        code: "custom",
        input: last,
        path: [value.length - 1, "daysBefore"],
        message: "costing.cancellation-ends",
      });
  });

export const FeeScale = z.strictObject({
  currency: CurrencyCode,
  /** The fee for a purpose, up to so many specimens, and for each further one. */
  loanFees: z.strictObject(
    Object.fromEntries(
      purposes.map((purpose) => [
        purpose,
        z.strictObject({
          baseMinor: amount,
          included: z.number().int().min(1).max(500),
          furtherMinor: amount,
        }),
      ]),
    ) as Record<
      (typeof purposes)[number],
      z.ZodObject<
        { baseMinor: typeof amount; included: z.ZodNumber; furtherMinor: typeof amount },
        z.core.$strict
      >
    >,
  ),
  /** What one unit of each line costs; loan fees stand above, what is not known here is nothing. */
  rates: z.strictObject({
    preparation: amount,
    "condition check": amount,
    "new crate": amount,
    "crate volume": amount,
    "reused crate": amount,
    mount: amount,
    packing: amount,
    /** A kilometre, and a stage of which the kilometres are not counted. */
    kilometre: amount,
    stage: amount,
    "courier days": amount,
    permits: amount,
    customs: amount,
    installation: amount,
  }),
  cover: z.strictObject({
    transitPerMille: PerMille,
    transitBasis: z.enum(premiumBases),
    stayPerMille: PerMille,
    stayBasis: z.enum(premiumBases),
  }),
  /** Return and emergency recall: a share of the way home, at least so much. */
  recall: z.strictObject({ percent: Percent, leastMinor: amount.min(1, "amount.nothing") }),
  /** Share of all expenses, for what nobody foresees. */
  contingencyPercent: Percent,
  taxPercent: z.strictObject(
    Object.fromEntries(lineCodes.map((code) => [code, Percent])) as Record<LineCode, typeof Percent>,
  ),
  /** How long a quotation can be accepted. */
  validDays: z.number().int().min(1).max(365),
  cancellation: CancellationScale,
});
export type FeeScale = z.infer<typeof FeeScale>;

/** A rate of exchange that somebody states: so many of the second for one of the first, on a day. */
export const Exchange = z.strictObject({
  from: CurrencyCode,
  to: CurrencyCode,
  rate: Decimal.refine((rate) => Number(rate) > 0, "costing.rate-nothing"),
  on: DateText,
});
export type Exchange = z.infer<typeof Exchange>;

const Party = z.strictObject({
  name: z.string(),
  address: z.string(),
  city: z.string(),
  countryCode: z.string(),
  email: z.string(),
  phone: z.string(),
});

/**
 * The one rule: each line is rounded to the minor unit of its price, half up; a price in another currency once
 * more when it is exchanged; tax is reckoned for each rate on the sum of its lines and rounded once, half up.
 */
export const roundingRules = ["half-up-line-net-tax-on-sum"] as const;

/** How a line came to its amount. */
export const LinePrice = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("counted"),
    quantity: Decimal,
    unit: z.enum(costUnits),
    rateMinor: amount,
  }),
  z.strictObject({
    kind: z.literal("share"),
    ofMinor: amount,
    share: Decimal,
    per: z.enum(["cent", "mille"]),
    /** How often: transits, days, or once. */
    times: Decimal,
    unit: z.enum(["transit", "day", "once"]),
  }),
  z.strictObject({ kind: z.literal("stated"), minor: amount }),
]);
export type LinePrice = z.infer<typeof LinePrice>;

/** What goes into a line; what it comes to is computed. */
export const LineDraft = z.strictObject({
  code: LineCode,
  /** What it is for, where the code does not say it. */
  note: text(160),
  /** The currency of the price. */
  currency: CurrencyCode,
  price: LinePrice,
  taxPercent: Percent,
});
export type LineDraft = z.infer<typeof LineDraft>;

export const CostLine = LineDraft.extend({
  /** In the currency of the price. */
  priceMinor: amount,
  /** In the currency of the paper. */
  netMinor: amount,
});
export type CostLine = z.infer<typeof CostLine>;

export const TaxSum = z.strictObject({ percent: Percent, netMinor: amount, taxMinor: amount });
export type TaxSum = z.infer<typeof TaxSum>;

export const costingKinds = ["quotation", "cost statement"] as const;
export type CostingKind = (typeof costingKinds)[number];

/** One line of what was quoted beside what it came to. */
export const ComparedLine = z.strictObject({
  code: LineCode,
  note: z.string(),
  quotedMinor: amount.nullable(),
  actualMinor: amount.nullable(),
  differenceMinor: z.number().int(),
});
export type ComparedLine = z.infer<typeof ComparedLine>;

/** The frozen content of a quotation or a cost statement: everything that its paper says. */
export const CostingContent = z.strictObject({
  format: z.literal("costing-1"),
  kind: z.enum(costingKinds),
  version: z.number().int().min(1),
  loan: z.strictObject({
    number: z.string(),
    title: z.string(),
    purpose: z.enum(purposes),
    startsOn: DateText,
    /** The first day that is no longer the loan. */
    returnBy: DateText,
    specimens: z.number().int().min(0),
    venue: z.string(),
  }),
  lender: Party,
  borrower: Party.extend({ contactName: z.string() }),
  drawnUpOn: DateText,
  /** The last day on which it can be accepted; null for a cost statement. */
  validUntil: DateText.nullable(),
  currency: CurrencyCode,
  /** Decimals of the currency. */
  minorDigits: z.number().int().min(0).max(4),
  /** Human specimens are on the loan: what is asked is the centre's cost, and no price of remains. */
  costRecovery: z.boolean(),
  rounding: z.enum(roundingRules),
  feeScaleVersion: z.number().int().min(1),
  lines: z.array(CostLine).max(60),
  exchange: z.array(Exchange).max(10),
  taxes: z.array(TaxSum).max(60),
  netMinor: amount,
  taxMinor: amount,
  totalMinor: amount,
  /** What a cancellation costs, in hundredths of the total of the quotation. */
  cancellation: CancellationScale,
  /** Of a cost statement: the quotation that was accepted, and how they differ. */
  against: z
    .strictObject({
      version: z.number().int().min(1),
      sha256: z.string(),
      totalMinor: amount,
      lines: z.array(ComparedLine).max(120),
      differenceMinor: z.number().int(),
    })
    .nullable(),
  note: z.string(),
});
export type CostingContent = z.infer<typeof CostingContent>;

const costingInput = {
  loanId: Id,
  lines: z.array(LineDraft).min(1, "costing.no-lines").max(60),
  exchange: z.array(Exchange).max(10),
  note: text(1_000),
};

export const QuotationInput = z.object({ ...costingInput, validUntil: DateText });
export type QuotationInput = z.infer<typeof QuotationInput>;

export const CostStatementInput = z.object(costingInput);
export type CostStatementInput = z.infer<typeof CostStatementInput>;

export const quotationAnswers = ["accepted", "refused"] as const;
export const AnswerInput = z.object({
  costingId: Id,
  outcome: z.enum(quotationAnswers),
  /** The fingerprint of what the one who answers has before their eyes. */
  sha256: z.string().regex(/^[0-9a-f]{64}$/, "agreement.hash-shape"),
  remark: text(1_000),
});
export type AnswerInput = z.infer<typeof AnswerInput>;
