/**
 * What the donors' consent means for one loan, as codes that go into the schedule of
 * the agreement. Strictest of all donors; no donor, no number and no date of a
 * donor's life appears. An animal specimen has none. What is planned (pictures,
 * sampling, casting and scanning) is allowed for all specimens of the loan or for
 * none.
 */
import type { Restriction } from "#lib/agreements/frozen-terms.ts";
import { type StrictestConsent, strictestConsent } from "#lib/provenance/strictest.ts";
import { allowedActivities, allowedPictures } from "#lib/suitability/rules/activities.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { type LoanInput, plannedPictures } from "#lib/suitability/schema.ts";

type AskedOf = Pick<SpecimenCase, "specimen" | "provenance">;

type Bare = Extract<Restriction, { parameters: Record<string, never> }>["code"];

/** A restriction that says all by its code. */
const bare = (code: Bare): Restriction => ({ code, parameters: {} });

function ofAudience({ audience }: StrictestConsent): Restriction[] {
  const { limit, unknown } = audience;
  const restrictions = unknown ? [bare("restriction.audience-not-known")] : [];
  if (limit === "professionals only" || limit === "enrolled students")
    restrictions.push({ code: "restriction.audience-within", parameters: { audience: limit } });
  return restrictions;
}

function ofUse(consent: StrictestConsent): Restriction[] {
  const granted = (scope: keyof StrictestConsent["answers"]) => consent.answers[scope].answer === "granted";
  const isPublic = granted("public display, free");
  const isForAdmission = granted("public display, paid") && !consent.nonCommercialOnly;
  return [
    ...(granted("handling by learners") ? [] : [bare("restriction.not-handled")]),
    ...(isPublic ? [] : [bare("restriction.not-public")]),
    ...(isPublic && !isForAdmission ? [bare("restriction.not-for-admission")] : []),
    ...(granted("sampling") ? [] : [bare("restriction.not-sampled")]),
    ...(granted("casting and scanning") ? [] : [bare("restriction.not-cast-or-scanned")]),
  ];
}

function ofPlace({ territoriesAllowed, territoriesRefused }: StrictestConsent): Restriction[] {
  const restrictions: Restriction[] = [];
  if (territoriesAllowed?.length === 0) restrictions.push(bare("restriction.no-country-in-common"));
  else if (territoriesAllowed !== null)
    restrictions.push({ code: "restriction.only-in", parameters: { countries: territoriesAllowed } });
  if (territoriesRefused.length > 0)
    restrictions.push({ code: "restriction.not-in", parameters: { countries: territoriesRefused } });
  return restrictions;
}

function ofPictures({ answers, identifiable }: StrictestConsent): Restriction[] {
  const allowed = allowedPictures(answers, [...plannedPictures]);
  const pictures = plannedPictures.filter((picture) => !allowed.includes(picture));
  const restrictions: Restriction[] = [];
  if (pictures.length > 0)
    restrictions.push({ code: "restriction.no-pictures-for", parameters: { pictures } });
  if (identifiable) restrictions.push(bare("restriction.recognisable"));
  return restrictions;
}

function ofTime({ validUntil, dispositionDue }: StrictestConsent): Restriction[] {
  const restrictions: Restriction[] = [];
  if (validUntil !== null)
    restrictions.push({ code: "restriction.consent-ends", parameters: { endsOn: validUntil.value } });
  if (dispositionDue !== null)
    restrictions.push({ code: "restriction.owed-back", parameters: dispositionDue.value });
  return restrictions;
}

/** Restrictions of one specimen. */
export function consentRestrictions(
  { specimen, provenance }: AskedOf,
  { today }: Pick<RequestFacts, "today">,
): Restriction[] {
  if (!specimen.human) return [];
  const consent = strictestConsent(provenance, today);
  return [
    ...ofAudience(consent),
    ...ofUse(consent),
    ...ofPlace(consent),
    ...ofPictures(consent),
    ...ofTime(consent),
  ];
}

/** The planned pictures that every human specimen of the loan allows. */
export function picturesAllowedForAll(
  subjects: readonly AskedOf[],
  request: RequestFacts,
): LoanInput["pictures"] {
  return request.pictures.filter((picture) =>
    subjects.every(
      ({ specimen, provenance }) =>
        !specimen.human ||
        allowedPictures(strictestConsent(provenance, request.today).answers, [picture]).length === 1,
    ),
  );
}

/** The planned activities that every specimen of the loan may be subjected to. */
export function activitiesAllowedForAll(
  subjects: readonly AskedOf[],
  request: RequestFacts,
): LoanInput["activities"] {
  return subjects.reduce<LoanInput["activities"]>(
    (allowed, subject) => allowedActivities(subject, request, allowed),
    request.activities,
  );
}
