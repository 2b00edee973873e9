/**
 * Money as it is kept everywhere: whole minor units, such as cents, of a currency
 * by its three letters. What is wrong with an amount is said without a figure:
 * people type major units and would not know minor ones again.
 */
import { z } from "zod";

/**
 * Money that a certificate can be written in.
 * @source ISO 4217, list one, up to amendment 180 (in force from 1 January 2026): BGN has gone, ANG gave way to
 *   XCG, ZWL to ZWG. Left out are its codes that are no money of a country: funds, metals, units of account, tests.
 */
const current: ReadonlySet<string> = new Set(
  [
    "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLP",
    "CNY COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG",
    "HUF IDR ILS INR IQD IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL",
    "MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR",
    "RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD",
    "TZS UAH UGX USD UYU UZS VED VES VND VUV WST XAF XCD XCG XOF XPF YER ZAR ZMW ZWG",
  ].flatMap((line) => line.split(" ")),
);

/** ISO 4217, upper case. */
export const CurrencyCode = z
  .string()
  .regex(/^[A-Z]{3}$/, { error: "currency.three-letters", abort: true })
  .refine((code) => current.has(code), "currency.unknown");
export type CurrencyCode = z.infer<typeof CurrencyCode>;

/**
 * Decimals of the currencies that have not two of them.
 * @source ISO 4217, list one, column "minor unit", as the data that browsers are built with repeat it
 */
const otherDigits = new Map<string, number>([
  ..."BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF"
    .split(" ")
    .map((code) => [code, 0] as const),
  ..."BHD IQD JOD KWD LYD OMR TND".split(" ").map((code) => [code, 3] as const),
]);

/** How many decimals the minor unit of a currency stands for: 2 for EUR, 0 for JPY, 3 for BHD. */
export function minorDigits(currency: string): number {
  return otherDigits.get(currency) ?? 2;
}

/** Whole minor units as a plain decimal text: 123450 EUR is "1234.50", 5 BHD "0.005". */
export function majorText(minor: number, currency: string): string {
  if (!Number.isSafeInteger(minor)) throw new RangeError("An amount is whole minor units.");
  const places = minorDigits(currency);
  const digits = String(Math.abs(minor)).padStart(places + 1, "0");
  const sign = minor < 0 ? "-" : "";
  if (places === 0) return `${sign}${digits}`;
  return `${sign}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

/** A sum of more than nothing, in whole minor units. @param most the largest that is believed */
export function minorUnits(most: number) {
  return z
    .number({ error: "amount.unreadable" })
    .int({ error: ({ code }) => (code === "invalid_type" ? "amount.not-whole" : "amount.too-large") })
    .min(1, "amount.nothing")
    .max(most, "amount.too-large");
}
