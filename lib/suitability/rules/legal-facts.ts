/**
 * What several rules of law read from the same facts: whose word stands behind a
 * specimen, since when it is held, whether it is imported where it goes, and
 * whether the way crosses the border of the European Union. Null is not known,
 * and every rule that reads it has to say what that means.
 */

import type { DateText } from "#lib/platform/dates.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { Basis, ConsentFacts } from "#lib/provenance/schema.ts";
import { liesBefore, yearsBefore } from "#lib/specimens/legal-periods.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";

const ownWordBases: readonly Basis[] = ["donor in life", "will"];

export const isOwnWord = ({ basis }: Pick<ConsentFacts, "basis">) => ownWordBases.includes(basis);

/** Every donor is known and spoke for themselves. */
export function allOwnWord({ consents, donorsWithoutConsent }: SpecimenCase["provenance"]): boolean {
  return consents.length > 0 && donorsWithoutConsent === 0 && consents.every(isOwnWord);
}

/** Since when it is held as a specimen, as far back as anybody says. */
export function heldSince({ specimen }: Pick<SpecimenCase, "specimen">): DateText | null {
  const { legal, acquiredOn, preparedOn } = specimen;
  return legal.heldSince ?? [acquiredOn, preparedOn].filter((day) => day !== null).sort()[0] ?? null;
}

/**
 * Whether every donor died before a day. A period answers where one is stated; a
 * form that a donor signed on or after the day says no; else it is not known.
 */
export function diedBefore({ specimen, provenance }: SpecimenCase, day: DateText): boolean | null {
  const byPeriod = liesBefore(specimen.legal.deathPeriod, day);
  if (byPeriod !== null) return byPeriod;
  const signed = provenance.consents.filter(isOwnWord).map(({ signedOn }) => signedOn);
  return signed.some((signedOn) => signedOn !== null && signedOn >= day) ? false : null;
}

/** Whether the death lies so many full years before the loan. */
export const diedYearsBefore = (subject: SpecimenCase, request: RequestFacts, years: number) =>
  diedBefore(subject, yearsBefore(request.startsOn, years));

/** Whether the thing itself was made before a day. */
export function madeBefore({ specimen }: Pick<SpecimenCase, "specimen">, day: DateText): boolean | null {
  return specimen.preparedOn === null
    ? liesBefore(specimen.legal.madePeriod, day)
    : specimen.preparedOn < day;
}

/** Whether the specimen is imported material in the venue's country. What came from there is not. */
export function isImportedAtVenue({ specimen }: SpecimenCase, request: RequestFacts): boolean | null {
  const { originCountry, imported } = specimen.legal;
  const there = request.venue.countryCode;
  if (originCountry === there) return false;
  return request.lenderCountry === there ? imported : true;
}

/** Teaching and research look at a body as anatomical examination does. */
export const isExamined = ({ purpose }: Pick<RequestFacts, "purpose">) =>
  purpose === "teaching" || purpose === "research";

/** Members of the European Union: 27 countries since 2020-02-01. */
const union: ReadonlySet<string> = new Set(
  "AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK".split(" "),
);
export const isInUnion = (country: string) => union.has(country);

/** The way out crosses the border of the Union, in one direction; null where it does not. */
export function unionCrossing({
  lenderCountry,
  venue,
}: Pick<RequestFacts, "lenderCountry" | "venue">): "out" | "in" | null {
  const from = isInUnion(lenderCountry);
  if (from === isInUnion(venue.countryCode)) return null;
  return from ? "out" : "in";
}

/** First and last day away, with the days around the loan. */
export function daysAway({ startsOn, endsOn, daysBefore, daysAfter }: RequestFacts) {
  return { from: addDays(startsOn, -daysBefore), to: addDays(endsOn, daysAfter) };
}
