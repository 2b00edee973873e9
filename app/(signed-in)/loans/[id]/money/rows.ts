/**
 * The rows of the two forms of money: each line that can be asked for, with the
 * names of its fields and what stands in them at first. The same rows draw a form
 * and read what it has sent, so that neither knows more than the other.
 */
import { moneyWords as words } from "#app/_words/en/money.ts";
import type { CostingContent, CostLine, Exchange, LineDraft } from "#lib/costing/schema.ts";
import { majorText } from "#lib/platform/money.ts";

/** How many rows of a kind stand open beyond those that are filled. */
const spare = 2;

/** One line in the form: what it is, and what stands in its fields. */
export type LineRow = { key: string; label: string; line: LineDraft };
export type OtherRow = { key: string; text: string; amount: string; currency: string; tax: string };
export type ExchangeRow = { key: string; from: string; rate: string; on: string };

const slug = (code: string) => code.replaceAll(" ", "-");

/** Premiums stand once for each currency of the replacement costs. */
export function keyOfLine({ code, currency, price }: LineDraft): string {
  return price.kind === "share" && code !== "contingency" ? `${slug(code)}-${currency}` : slug(code);
}

const isPremium = (line: LineDraft) => line.price.kind === "share" && line.code !== "contingency";

/** Whether a line of a paper that was drawn up has its own row in the form. */
function isSame(row: LineDraft, kept: LineDraft): boolean {
  return (
    row.code === kept.code &&
    row.currency === kept.currency &&
    row.price.kind === kept.price.kind &&
    kept.note === ""
  );
}

/** Nothing of a line that the paper before left out. */
function asNothing(line: LineDraft): LineDraft {
  const { price } = line;
  if (price.kind === "counted") return { ...line, price: { ...price, quantity: "0" } };
  return price.kind === "share" ? { ...line, price: { ...price, times: "0" } } : line;
}

/** What was on the paper before, with the sums of today. */
function asBefore(row: LineDraft, kept: LineDraft): LineDraft {
  if (row.price.kind === "share" && kept.price.kind === "share")
    return { ...kept, price: { ...kept.price, ofMinor: row.price.ofMinor } };
  return kept;
}

/** The lines of a new quotation: as the paper before had them, or else by the scale. */
export function lineRows(byScale: readonly LineDraft[], before: CostingContent | null): LineRow[] {
  return byScale.map((row) => {
    const kept = before?.lines.find((line) => isSame(row, line));
    const line = before === null ? row : kept ? asBefore(row, kept) : asNothing(row);
    const label = isPremium(row) ? `${words.lines[row.code]}, ${row.currency}` : words.lines[row.code];
    const { code, note, currency, price, taxPercent } = line;
    return { key: keyOfLine(row), label, line: { code, note, currency, price, taxPercent } };
  });
}

function toOther(line: CostLine, index: number): OtherRow {
  const named =
    line.code === "other" ? line.note : [words.lines[line.code], line.note].filter(Boolean).join(", ");
  return {
    key: String(index),
    text: named,
    amount: majorText(line.priceMinor, line.currency),
    currency: line.currency,
    tax: line.taxPercent,
  };
}

/** Rows for what no other row stands for, and some that are open. */
export function otherRows(kept: readonly CostLine[], currency: string, tax: string): OtherRow[] {
  const filled = kept.map(toOther);
  const open = Array.from({ length: spare }, (_, index) => ({
    key: String(filled.length + index),
    text: "",
    amount: "",
    currency,
    tax,
  }));
  return [...filled, ...open];
}

/** What stood on a quotation and has no row of its own in the form. */
export function withoutRow(byScale: readonly LineDraft[], before: CostingContent | null): CostLine[] {
  return (before?.lines ?? []).filter((line) => !byScale.some((row) => isSame(row, line)));
}

/** @param needed currencies that have to be exchanged */
export function exchangeRows(kept: readonly Exchange[], needed: readonly string[]): ExchangeRow[] {
  const filled = kept.map(({ from, rate, on }) => ({ from, rate, on }));
  const wanted = needed
    .filter((from) => !filled.some((row) => row.from === from))
    .map((from) => ({ from, rate: "", on: "" }));
  const open = Array.from({ length: spare }, () => ({ from: "", rate: "", on: "" }));
  return [...filled, ...wanted, ...open].map((row, index) => ({ key: String(index), ...row }));
}
