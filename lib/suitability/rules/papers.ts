/**
 * Papers against the days of a loan: permits of a specimen and licences of a
 * venue. A paper for other days or another country is none; one that does not say
 * from where or until when is not known to serve, which is attend. What the lack
 * of a paper means is the rule's to say.
 */

import type { Licence } from "#lib/people/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { PermitInput } from "#lib/provenance/schema.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

type Days = { startsOn: DateText; endsOn: DateText };

export const permitFits = ["fits", "not-stated", "other-days", "other-country"] as const;
export type PermitFit = (typeof permitFits)[number];

/** Whether a paper covers a country and every day up to the return-by. What it does not state is not known. */
export function fitOfPermit(permit: PermitInput, country: string, { startsOn, endsOn }: Days): PermitFit {
  const { territories, validFrom, validUntil } = permit;
  if (territories.length > 0 && !territories.includes(country)) return "other-country";
  if ((validFrom !== null && validFrom > startsOn) || (validUntil !== null && validUntil < endsOn))
    return "other-days";
  return territories.length === 0 || validUntil === null ? "not-stated" : "fits";
}

/** The paper that fits best, with how it fits. */
export function bestPermit(permits: readonly PermitInput[], country: string, days: Days) {
  const rated = permits.map((permit) => ({ permit, fit: fitOfPermit(permit, country, days) }));
  return rated.sort((a, b) => permitFits.indexOf(a.fit) - permitFits.indexOf(b.fit))[0] ?? null;
}

/** The best permit of one of these kinds for the venue's country and the days of the loan. */
export function permitFor(
  { provenance }: Pick<SpecimenCase, "provenance">,
  request: Pick<RequestFacts, "venue" | "startsOn" | "endsOn">,
  kinds: readonly PermitInput["kind"][],
) {
  return bestPermit(
    provenance.permits.filter(({ kind }) => kinds.includes(kind)),
    request.venue.countryCode,
    request,
  );
}

type PaperWords = {
  fits: string;
  vague: string;
  days: string;
  country: string;
  missing: string;
  wayOut: string;
};

/** A permit as a verdict: clear where it fits, attend where it does not say, and else what its lack means. */
export function verdictOnPermit(
  best: ReturnType<typeof bestPermit>,
  request: Pick<RequestFacts, "venue">,
  words: PaperWords,
  onLack: Outcome,
): Verdict {
  const { wayOut } = words;
  const country = request.venue.countryCode;
  if (best === null) return { outcome: onLack, fact: words.missing, parameters: { country }, wayOut };
  const { number, authority, validUntil, kind } = best.permit;
  const parameters = { country, number, authority, validUntil, kind };
  if (best.fit === "fits") return { outcome: "clear", fact: words.fits, parameters };
  if (best.fit === "not-stated") return { outcome: "attend", fact: words.vague, parameters, wayOut };
  return {
    outcome: onLack,
    fact: best.fit === "other-days" ? words.days : words.country,
    parameters,
    wayOut,
  };
}

/** Whether a licence covers the days; null when it does not say until when. */
export function licenceCovers(licence: Licence, startsOn: DateText, endsOn: DateText): boolean | null {
  const { validFrom, validUntil } = licence;
  if ((validFrom !== null && validFrom > startsOn) || (validUntil !== null && validUntil < endsOn))
    return false;
  return validUntil === null ? null : true;
}

/**
 * The venue's licence of one of these kinds as a verdict. A missing one is the
 * outcome for lack; one for other days as well, unless the rule says otherwise.
 */
export function verdictOnLicence(
  { venue, startsOn, endsOn }: Pick<RequestFacts, "venue" | "startsOn" | "endsOn">,
  kinds: readonly Licence["kind"][],
  onLack: Outcome,
  onOtherDays: Outcome = onLack,
): Verdict {
  const wayOut = "way.record-licence";
  const told = { venue: venue.name, country: venue.countryCode, licence: kinds.join(" / ") };
  const rated = venue.licences
    .filter(({ kind }) => kinds.includes(kind))
    .map((licence) => ({ licence, covers: licenceCovers(licence, startsOn, endsOn) }));
  const best =
    rated.find(({ covers }) => covers === true) ?? rated.find(({ covers }) => covers === null) ?? rated[0];
  if (best === undefined) return { outcome: onLack, fact: "law.licence-missing", parameters: told, wayOut };
  const { number, authority, validUntil, kind } = best.licence;
  const parameters = { ...told, licence: kind, number, authority, validUntil };
  if (best.covers === true) return { outcome: "clear", fact: "law.licence", parameters };
  return best.covers === null
    ? { outcome: "attend", fact: "law.licence-vague", parameters, wayOut }
    : { outcome: onOtherDays, fact: "law.licence-days", parameters, wayOut };
}
