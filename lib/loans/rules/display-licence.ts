/**
 * D1: several countries ask the venue for a licence before human material is
 * shown in public. Which do, and for what, is not decided here: a licence on
 * record for the days is named, a missing one is attend, and both send the reader
 * to the local authority.
 */

import type { RequestFacts, SpecimenCase, Verdict } from "#lib/loans/rules/case.ts";
import { findingsFor, isPublicShow } from "#lib/loans/rules/case.ts";
import type { Finding } from "#lib/loans/schema.ts";
import type { Licence } from "#lib/people/schema.ts";

/** Whether a licence covers the days; null when it does not say from or until when. */
export function licenceCovers(licence: Licence, startsOn: string, endsOn: string): boolean | null {
  const { validFrom, validUntil } = licence;
  if ((validFrom !== null && validFrom > startsOn) || (validUntil !== null && validUntil < endsOn))
    return false;
  return validUntil === null ? null : true;
}

function verdictOnLicence(request: RequestFacts): Verdict {
  const { venue, startsOn, endsOn } = request;
  const parameters = { venue: venue.name, country: venue.countryCode };
  const licences = venue.licences.filter((licence) => licence.kind === "public display");
  const rated = licences.map((licence) => ({ licence, covers: licenceCovers(licence, startsOn, endsOn) }));
  const fitting = rated.find(({ covers }) => covers === true);
  if (fitting) {
    const { number, authority, validUntil } = fitting.licence;
    return {
      outcome: "clear",
      fact: "permits.display-licence",
      parameters: { ...parameters, number, authority, validUntil },
    };
  }
  const [nearest] = [...rated].sort((a, b) => Number(a.covers === false) - Number(b.covers === false));
  if (!nearest)
    return {
      outcome: "attend",
      fact: "permits.display-licence-missing",
      parameters,
      wayOut: "way.ask-authority-display",
    };
  return {
    outcome: "attend",
    fact: nearest.covers === null ? "permits.display-licence-vague" : "permits.display-licence-days",
    parameters: { ...parameters, number: nearest.licence.number, validUntil: nearest.licence.validUntil },
    wayOut: "way.ask-authority-display",
  };
}

export function judgeDisplayLicence({ specimen }: SpecimenCase, request: RequestFacts): Finding[] {
  if (!specimen.human) return [];
  const find = findingsFor(specimen.id, "permits");
  if (!isPublicShow(request)) return [find("D1", { outcome: "clear", fact: "permits.not-public" })];
  return [find("D1", verdictOnLicence(request))];
}
