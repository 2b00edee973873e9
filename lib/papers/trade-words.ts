/** What the papers of money and customs say by themselves; one value of this type for each language. */
import type { CostingKind, CostUnit, LineCode, roundingRules } from "#lib/costing/schema.ts";

/** What a quantity is counted in, for one and for several. */
type Counted = { one: string; other: string };

/** Words with {names} are filled by `fill`. */
export type TradeWords = {
  /** Names of the papers. */
  names: Readonly<Record<CostingKind | "pro-forma invoice" | "carnet list", string>>;
  cost: {
    /** Filled with the version of the costing and its day. */
    about: Readonly<Record<CostingKind, string>>;
    parties: string;
    lender: string;
    borrower: string;
    contact: string;
    loan: string;
    purpose: string;
    days: string;
    daysText: string;
    specimens: string;
    venue: string;
    validUntil: string;
    validUntilText: string;
    lines: string;
    line: string;
    reckoned: string;
    tax: string;
    net: string;
    netSum: string;
    /** {quantity} of something at a {rate}. */
    counted: string;
    share: string;
    shareOften: string;
    exchanged: string;
    per: Readonly<Record<"cent" | "mille", string>>;
    units: Readonly<Record<CostUnit | "transit", Counted>>;
    codes: Readonly<Record<LineCode, string>>;
    taxes: string;
    taxAt: string;
    taxNet: string;
    taxTax: string;
    taxGross: string;
    total: string;
    holds: string;
    recovery: string;
    recoveryText: string;
    agreed: string;
    agreedText: Readonly<Record<CostingKind, string>>;
    rounding: string;
    roundingText: Readonly<Record<(typeof roundingRules)[number], string>>;
    rates: string;
    ratesText: string;
    calledOff: string;
    calledOffLead: string;
    daysLeft: string;
    dueShare: string;
    dayOfDispatch: string;
    daysOrFewer: string;
    note: string;
    against: string;
    quoted: string;
    actual: string;
    difference: string;
    noLine: string;
    costingHash: string;
  };
};
