/**
 * What the donors' consent means for one loan, in words that go into the schedule
 * of the agreement. Strictest of all donors; no donor, no number and no date of a
 * donor's life appears. An animal specimen has none.
 */

import type { RequestFacts, SpecimenCase } from "#lib/loans/rules/case.ts";
import { allowedPictures } from "#lib/loans/rules/general.ts";
import { plannedPictures } from "#lib/loans/schema.ts";
import { type StrictestConsent, strictestConsent } from "#lib/provenance/strictest.ts";

export const countryName = (code: string): string =>
  new Intl.DisplayNames(["en"], { type: "region", fallback: "code" }).of(code) ?? code;

const countries = (codes: readonly string[]) => codes.map(countryName).join(", ");

function ofAudience({ audience }: StrictestConsent): string[] {
  if (audience.unknown)
    return ["The donor's wish about the audience is not known: only the stated audience."];
  if (audience.limit === "professionals only") return ["Shown to professionals only."];
  if (audience.limit === "enrolled students") return ["Shown to enrolled students and professionals only."];
  return [];
}

function ofUse(consent: StrictestConsent): string[] {
  const { answers } = consent;
  const words: string[] = [];
  if (answers["handling by learners"].answer !== "granted") words.push("Not handled by learners.");
  if (answers["public display, free"].answer !== "granted") words.push("Not shown to the general public.");
  else if (answers["public display, paid"].answer !== "granted" || consent.nonCommercialOnly)
    words.push("Not shown where admission is charged.");
  if (answers.sampling.answer !== "granted") words.push("Not sampled.");
  if (answers["casting and scanning"].answer !== "granted") words.push("Not cast or scanned.");
  return words;
}

function ofPlace({ territoriesAllowed, territoriesRefused }: StrictestConsent): string[] {
  const words: string[] = [];
  if (territoriesAllowed !== null) words.push(`Only in: ${countries(territoriesAllowed)}.`);
  if (territoriesRefused.length > 0) words.push(`Not in: ${countries(territoriesRefused)}.`);
  return words;
}

function ofTime({ validUntil, dispositionDue }: StrictestConsent): string[] {
  const words: string[] = [];
  if (validUntil !== null) words.push(`The consent holds until ${validUntil.value}.`);
  if (dispositionDue !== null)
    words.push(`Owed back (${dispositionDue.value.disposition}) by ${dispositionDue.value.dueOn}.`);
  return words;
}

/** Restrictions of one specimen, as sentences. */
export function consentRestrictions(
  { specimen, provenance }: Pick<SpecimenCase, "specimen" | "provenance">,
  request: RequestFacts,
): string[] {
  if (!specimen.human) return [];
  const consent = strictestConsent(provenance, request.today);
  const pictures = allowedPictures(consent.answers, [...plannedPictures]);
  const notAllowed = plannedPictures.filter((picture) => !pictures.includes(picture));
  return [
    ...ofAudience(consent),
    ...ofUse(consent),
    ...ofPlace(consent),
    ...(notAllowed.length > 0 ? [`No pictures for these uses: ${notAllowed.join(", ")}.`] : []),
    ...(consent.identifiable
      ? ["The person could be recognised: no picture of the whole specimen leaves the venue."]
      : []),
    ...ofTime(consent),
  ];
}

/** The planned pictures that every human specimen of the loan allows. */
export function picturesAllowedForAll(
  subjects: readonly Pick<SpecimenCase, "specimen" | "provenance">[],
  request: RequestFacts,
): string[] {
  return request.pictures.filter((picture) =>
    subjects.every(
      ({ specimen, provenance }) =>
        !specimen.human ||
        allowedPictures(strictestConsent(provenance, request.today).answers, [picture]).length === 1,
    ),
  );
}
