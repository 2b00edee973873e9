/** Money: a currency that is one, and whole minor units of more than nothing. */
import { expect, test } from "vitest";
import { CurrencyCode, minorUnits } from "#lib/platform/money.ts";

const said = (schema: { safeParse: (value: unknown) => { error?: { issues: { message: string }[] } } }) => {
  return (value: unknown) => schema.safeParse(value).error?.issues.map(({ message }) => message) ?? [];
};
const ofCurrency = said(CurrencyCode);
const ofAmount = said(minorUnits(1_000_000));

test.each(["EUR", "NOK", "GBP", "JPY", "KWD", "XOF", "XCG", "ZWG"])("%s is money", (code) => {
  expect(ofCurrency(code)).toEqual([]);
});

// Never a code, no longer one, a metal, a unit of account, for tests, for no currency at all.
test.each(["XXZ", "DEM", "HRK", "BGN", "ANG", "XAU", "XDR", "XTS", "XXX", "CLF"])("%s is none", (code) => {
  expect(ofCurrency(code)).toEqual(["currency.unknown"]);
});

test.each(["eur", "EURO", "€", "", "EU1"])("%j is not even written like a currency", (code) => {
  expect(ofCurrency(code)).toEqual(["currency.three-letters"]);
});

test("every currency but the youngest is known to the program that writes amounts", () => {
  const known = Intl.supportedValuesOf("currency");
  expect(known.filter((code) => CurrencyCode.safeParse(code).success).length).toBeGreaterThan(145);
});

test.each([
  [1, []],
  [1_000_000, []],
  [0, ["amount.nothing"]],
  [-1, ["amount.nothing"]],
  [1_000_001, ["amount.too-large"]],
  [Number.NaN, ["amount.unreadable"]],
  [null, ["amount.unreadable"]],
  ["12", ["amount.unreadable"]],
  [1.5, ["amount.not-whole"]],
])("of an amount of %s it is said: %j", (amount, messages) => {
  expect(ofAmount(amount)).toEqual(messages);
});

test("an amount beyond counting is too large, however it is looked at", () => {
  expect(new Set(ofAmount(1e300))).toEqual(new Set(["amount.too-large"]));
});
