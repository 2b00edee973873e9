/**
 * Tariff codes: their shape, the headings that a form offers, and the countries of a
 * stage in which one may be decided. A code is always somebody's decision for one
 * country; nothing here derives it from what a specimen is.
 */
import { z } from "zod";
import { CountryCode } from "#lib/platform/countries.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";

/**
 * Subheadings of 9705, collections and collectors' pieces.
 * @source Harmonized System, edition 2022, heading 9705: 9705.21 human specimens and parts thereof, 9705.22 extinct or
 *   endangered species and parts thereof, 9705.29 other; read in the tariff schedule of the United States
 */
export const offeredHeadings = ["9705.21", "9705.22", "9705.29"] as const;
export type OfferedHeading = (typeof offeredHeadings)[number];

/** Six figures of the Harmonized System, and as many pairs or fours as a country adds. */
export const TariffCodeText = z
  .string()
  .trim()
  .regex(/^\d{4}[. ]?\d{2}(?:[. ]?\d{1,4}){0,3}$/, "tariff.code-shape");

const text = (most: number) => z.string().trim().max(most);

export const TariffInput = z.object({
  stageId: Id,
  countryCode: CountryCode,
  specimenIds: z.array(Id).min(1, "tariff.no-specimens").max(500),
  code: TariffCodeText,
  decidedBy: text(160).min(1),
  decidedOn: DateText,
  note: text(500),
});
export type TariffInput = z.infer<typeof TariffInput>;

/** The countries that a stage touches, its two ends first; one or none where it leaves none. */
export function tariffCountries(
  ends: readonly [from: string, to: string],
  through: readonly string[],
): string[] {
  const touched = [...new Set([...ends, ...through])];
  return touched.length > 1 ? touched : [];
}
