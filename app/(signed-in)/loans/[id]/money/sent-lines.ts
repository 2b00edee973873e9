/** What the forms of money have sent, read by the rows that drew them; a wrong field is named with its line. */
import { digitsOf, textIn } from "#app/_parts/sent-fields.ts";
import { type NumberKind, readMinor, readNumber } from "#app/_parts/typed-number.ts";
import { moneyWords as words } from "#app/_words/en/money.ts";
import { numberSentence } from "#app/_words/number-problem.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { LineRow } from "#app/(signed-in)/loans/[id]/money/rows.ts";
import { type Decimal, decimalFrom } from "#lib/costing/exact.ts";
import type { CostLine, Exchange, LineDraft } from "#lib/costing/schema.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const refuse = (path: string, message: string) =>
  new Refusal("invalid", "input.invalid", {}, [{ path, message }]);

/** @throws {Refusal} whose sentence begins with the name of the field */
function readable(fields: FormData, name: string, label: string, kind: NumberKind): string {
  const text = textIn(fields, name);
  const wrong = numberSentence(text, kind);
  if (wrong !== undefined) throw refuse(name, `${label}: ${wrong}`);
  return text;
}

/** A decimal that is not negative; nothing where the field is empty. */
export function decimalIn(fields: FormData, name: string, label: string): Decimal {
  const value = readNumber(readable(fields, name, label, "measure")) ?? 0;
  if (!(value >= 0 && value < 1e9)) throw refuse(name, `${label}: ${sentence("costing.decimal")}`);
  return decimalFrom(value);
}

/** An amount in minor units; nothing where the field is empty. */
export function amountIn(fields: FormData, name: string, label: string, currency: string): number {
  const decimals = digitsOf(currency);
  const minor = readMinor(readable(fields, name, label, { decimals }), decimals) ?? 0;
  if (minor < 0) throw refuse(name, `${label}: ${sentence("amount.negative")}`);
  return minor;
}

/** A line as the form has it now. */
export function lineIn(fields: FormData, { key, label, line }: LineRow): LineDraft {
  const { price } = line;
  const field = (name: string) => words.fieldOf(label, name);
  const taxPercent = decimalIn(fields, `tax-${key}`, field(words.taxRate));
  switch (price.kind) {
    case "counted":
      return {
        ...line,
        taxPercent,
        price: {
          ...price,
          quantity: decimalIn(fields, `quantity-${key}`, field(words.quantity)),
          rateMinor: amountIn(fields, `rate-${key}`, field(words.rate), line.currency),
        },
      };
    case "share":
      return {
        ...line,
        taxPercent,
        price: {
          ...price,
          share: decimalIn(fields, `share-${key}`, field(words.shareOf)),
          times: price.unit === "once" ? price.times : decimalIn(fields, `times-${key}`, field(words.times)),
        },
      };
    case "stated":
      return {
        ...line,
        taxPercent,
        price: {
          ...price,
          minor: amountIn(fields, `amount-${key}`, field(words.amount), line.currency),
        },
      };
  }
}

const rowsOf = (fields: FormData, prefix: string) =>
  [...fields.keys()].filter((name) => name.startsWith(prefix)).map((name) => name.slice(prefix.length));

/** The further lines; a row without an amount is left out. */
export function otherLinesIn(fields: FormData): LineDraft[] {
  return rowsOf(fields, "other-amount-").flatMap((key): LineDraft[] => {
    const label = words.rowOf(words.lines.other, Number(key) + 1);
    const currency = textIn(fields, `other-currency-${key}`).toUpperCase();
    const minor = amountIn(fields, `other-amount-${key}`, words.fieldOf(label, words.amount), currency);
    if (minor === 0) return [];
    const note = textIn(fields, `other-text-${key}`);
    if (note === "") throw refuse(`other-text-${key}`, words.otherWithoutText(label));
    const taxPercent = decimalIn(fields, `other-tax-${key}`, words.fieldOf(label, words.taxRate));
    return [{ code: "other", note, currency, price: { kind: "stated", minor }, taxPercent }];
  });
}

export function exchangeIn(fields: FormData, to: string): Exchange[] {
  return rowsOf(fields, "exchange-from-").flatMap((key): Exchange[] => {
    const from = textIn(fields, `exchange-from-${key}`).toUpperCase();
    const label = words.rowOf(words.exchange, Number(key) + 1);
    if (from === "" || textIn(fields, `exchange-rate-${key}`) === "") return [];
    const rate = decimalIn(fields, `exchange-rate-${key}`, words.fieldOf(label, words.exchangeRate));
    return [{ from, to, rate, on: textIn(fields, `exchange-on-${key}`) }];
  });
}

/** A line of a statement begins with what was quoted; it is stated, not reckoned. */
export function statedRow(line: CostLine, index: number, minor: number, currency: string): LineRow {
  const { code, note, taxPercent } = line;
  return {
    key: String(index),
    label: note === "" ? words.lines[code] : code === "other" ? note : `${words.lines[code]}, ${note}`,
    line: { code, note, currency, taxPercent, price: { kind: "stated", minor } },
  };
}
