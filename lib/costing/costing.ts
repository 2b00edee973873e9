/**
 * What a loan costs: lines, the tax on them, the total. Each line is rounded once,
 * half up, to the minor unit of its own currency; a line in another currency is
 * brought over at a stated rate and rounded once more; tax is reckoned for each rate
 * on the sum of the lines that bear it. Invariants: the lines add up to the net, the
 * net and the taxes to the total, to the last minor unit; the order of the lines
 * changes nothing; two currencies are never added without a stated rate.
 */
import { z } from "zod";
import { dividedBy, type Exact, exactOf, roundHalfUp, times } from "#lib/costing/exact.ts";
import {
  type CostLine,
  Exchange,
  feeCodes,
  LineDraft,
  type LinePrice,
  type TaxSum,
} from "#lib/costing/schema.ts";
import { CurrencyCode, majorText, minorDigits } from "#lib/platform/money.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

export type Totals = {
  lines: CostLine[];
  taxes: TaxSum[];
  netMinor: number;
  taxMinor: number;
  totalMinor: number;
};

const hundred = exactOf(100);
const perWhole = { cent: hundred, mille: exactOf(1_000) } as const;

/** What a line comes to in the currency of its price, rounded once. */
export function priceOf(price: LinePrice): number {
  switch (price.kind) {
    case "counted":
      return roundHalfUp(times(exactOf(price.quantity), exactOf(price.rateMinor)));
    case "share":
      return roundHalfUp(
        dividedBy(
          times(exactOf(price.ofMinor), exactOf(price.share), exactOf(price.times)),
          perWhole[price.per],
        ),
      );
    case "stated":
      return price.minor;
  }
}

/** The step from the minor units of one currency to those of another. */
function scaleBetween(from: string, to: string): Exact {
  const [before, after] = [minorDigits(from), minorDigits(to)];
  return { over: 10n ** BigInt(after), under: 10n ** BigInt(before) };
}

/**
 * An amount in another currency, at the rate that is stated for it.
 * @throws {Refusal} "costing.no-rate" where none is stated
 */
export function exchanged(
  minor: number,
  from: string,
  to: string,
  exchange: readonly Pick<Exchange, "from" | "to" | "rate">[],
): number {
  if (from === to) return minor;
  const stated = exchange.find((one) => one.from === from && one.to === to);
  if (!stated) throw new Refusal("invalid", "costing.no-rate", { from, to });
  return roundHalfUp(times(exactOf(minor), exactOf(stated.rate), scaleBetween(from, to)));
}

const sum = (amounts: readonly number[]) => roundHalfUp(exactOf(amounts.reduce((a, b) => a + BigInt(b), 0n)));

/** The sums by rate of tax, the lowest rate first. */
function taxesOf(lines: readonly CostLine[]): TaxSum[] {
  const rates = [...new Set(lines.map(({ taxPercent }) => taxPercent))].sort((a, b) => Number(a) - Number(b));
  return rates.map((percent) => {
    const netMinor = sum(lines.filter((line) => line.taxPercent === percent).map((line) => line.netMinor));
    const taxMinor = roundHalfUp(dividedBy(times(exactOf(netMinor), exactOf(percent)), hundred));
    return { percent, netMinor, taxMinor };
  });
}

export type CostingFacts = {
  currency: string;
  lines: readonly LineDraft[];
  exchange: readonly Pick<Exchange, "from" | "to" | "rate">[];
};

/**
 * Lines with their amounts, and the sums. A contingency is a share of all expenses
 * of the paper, whatever was given as its base.
 */
export function totalsOf({ currency, lines: drafts, exchange }: CostingFacts): Totals {
  const priced = (draft: LineDraft): CostLine => {
    const priceMinor = priceOf(draft.price);
    return { ...draft, priceMinor, netMinor: exchanged(priceMinor, draft.currency, currency, exchange) };
  };
  const others = drafts.filter((draft) => draft.code !== "contingency").map(priced);
  const expensesMinor = sum(
    others.filter((line) => !feeCodes.includes(line.code)).map((line) => line.netMinor),
  );
  const whole = others.values();
  const lines = drafts.map((draft): CostLine => {
    if (draft.code !== "contingency") return whole.next().value as CostLine;
    const { price } = draft;
    if (price.kind !== "share") return priced(draft);
    return priced({ ...draft, currency, price: { ...price, ofMinor: expensesMinor } });
  });
  const taxes = taxesOf(lines);
  const netMinor = sum(lines.map((line) => line.netMinor));
  const taxMinor = sum(taxes.map((tax) => tax.taxMinor));
  return { lines, taxes, netMinor, taxMinor, totalMinor: sum([netMinor, taxMinor]) };
}

/** How a price was reckoned, in figures and signs. */
function formulaOf({ price, currency }: LineDraft): string {
  switch (price.kind) {
    case "counted":
      return `${price.quantity} ${price.unit} × ${majorText(price.rateMinor, currency)} ${currency}`;
    case "share":
      return `${majorText(price.ofMinor, currency)} ${currency} × ${price.share} ${price.per === "cent" ? "%" : "‰"} × ${price.times}${price.unit === "once" ? "" : ` ${price.unit}`}`;
    case "stated":
      return "as stated";
  }
}

/** The whole of a quotation or a cost statement, line by line. */
export const loanCosting = working({
  id: "loan-costing",
  title: "Cost of a loan",
  about: "What lines of a quotation or a cost statement come to, with the tax for each rate and the total.",
  input: z.object({
    currency: CurrencyCode.meta({ title: "Currency of the paper" }),
    lines: z.array(LineDraft).min(1).max(60),
    exchange: z.array(Exchange).max(10).default([]),
  }),
  output: z.object({
    netMinor: z.number().int().meta({ title: "Net", unit: "minor units" }),
    taxMinor: z.number().int().meta({ title: "Tax", unit: "minor units" }),
    totalMinor: z.number().int().meta({ title: "Total", unit: "minor units" }),
  }),
  sources: [cite("derived"), cite("practice", "lines of a quotation")],
  cautions: [
    "Each line is rounded half up to the minor unit of its currency; tax is rounded once for each rate, on the sum of its lines.",
    "Which rate of tax a line bears is stated by who draws the paper up: check with the local authority.",
  ],
  compute({ currency, lines, exchange }, note) {
    const totals = totalsOf({ currency, lines, exchange });
    for (const line of totals.lines) {
      const foreign = line.currency !== currency;
      const rate = exchange.find((one) => one.from === line.currency && one.to === currency);
      note(
        line.note === "" ? line.code : `${line.code}: ${line.note}`,
        majorText(line.netMinor, currency),
        currency,
        foreign && rate
          ? `${formulaOf(line)}, at ${rate.rate} ${currency} for 1 ${line.currency} on ${rate.on}`
          : formulaOf(line),
      );
    }
    note("net", majorText(totals.netMinor, currency), currency, "sum of the lines");
    for (const { percent, netMinor, taxMinor } of totals.taxes)
      note(
        `tax at ${percent} %`,
        majorText(taxMinor, currency),
        currency,
        `${majorText(netMinor, currency)} × ${percent} %`,
      );
    note("total", majorText(totals.totalMinor, currency), currency, "net and tax");
    return { netMinor: totals.netMinor, taxMinor: totals.taxMinor, totalMinor: totals.totalMinor };
  },
});
