/** Money: a currency that is one, and whole minor units of more than nothing. */
import { expect, test } from "vitest";
import { CurrencyCode, majorText, minorDigits, minorUnits } from "#lib/platform/money.ts";

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

test.each([
  ["EUR", 2, 123_450, "1234.50"],
  ["EUR", 2, 5, "0.05"],
  ["JPY", 0, 1_234, "1234"],
  ["BHD", 3, 5, "0.005"],
  ["KWD", 3, 1_234_567, "1234.567"],
  // two decimals by the standard, none by the habit of many programs
  ["AFN", 2, 100, "1.00"],
  ["IQD", 3, 1_000, "1.000"],
  ["EUR", 2, -7, "-0.07"],
])("%s has %i decimals: %i is written %s", (currency, digits, minor, text) => {
  expect(minorDigits(currency)).toBe(digits);
  expect(majorText(minor, currency)).toBe(text);
});

test("half a minor unit is no amount", () => {
  expect(() => majorText(1.5, "EUR")).toThrow(RangeError);
});
