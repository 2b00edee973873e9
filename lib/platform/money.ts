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

/** A sum of more than nothing, in whole minor units. @param most the largest that is believed */
export function minorUnits(most: number) {
  return z
    .number({ error: "amount.unreadable" })
    .int({ error: ({ code }) => (code === "invalid_type" ? "amount.not-whole" : "amount.too-large") })
    .min(1, "amount.nothing")
    .max(most, "amount.too-large");
}
