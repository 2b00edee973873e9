/**
 * Papers of authorities. P1: an animal specimen that crosses a border needs a
 * paper under species protection (a permit, or the authority's statement that
 * none is needed) for the days and the country; whether a species is protected
 * is not known here, and not known is a bar to export. P2: human material that
 * crosses a border meets rules that differ by country, so it is always attend
 * unless papers for the country and the days are on record. Neither says that
 * something is lawful.
 */

import type { RequestFacts, SpecimenCase, Verdict } from "#lib/loans/rules/case.ts";
import { findingsFor, isExport, isPublicShow, outcomeOfUnknown } from "#lib/loans/rules/case.ts";
import type { Finding } from "#lib/loans/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { PermitInput } from "#lib/provenance/schema.ts";

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

function judgeSpecies({ specimen, provenance }: SpecimenCase, request: RequestFacts): Verdict {
  const isGrave = isExport(request) || isPublicShow(request);
  const parameters = { species: specimen.scientificName, country: request.venue.countryCode };
  const papers = provenance.permits.filter((permit) => permit.kind === "species protection (CITES)");
  const best = bestPermit(papers, request.venue.countryCode, request);
  if (best === null) {
    if (!isGrave) return { outcome: "clear", fact: "permits.no-border", parameters };
    return {
      outcome: outcomeOfUnknown(request, isExport(request)),
      fact: "permits.species-not-known",
      parameters,
      wayOut: "way.species-paper",
    };
  }
  const { number, authority, validUntil } = best.permit;
  const paper = { ...parameters, number, authority, validUntil };
  if (best.fit === "fits") return { outcome: "clear", fact: "permits.species-paper", parameters: paper };
  if (best.fit === "not-stated")
    return {
      outcome: "attend",
      fact: "permits.species-paper-vague",
      parameters: paper,
      wayOut: "way.species-paper",
    };
  return {
    outcome: isGrave ? "bar" : "attend",
    fact: best.fit === "other-days" ? "permits.species-paper-days" : "permits.species-paper-country",
    parameters: paper,
    wayOut: "way.species-paper",
  };
}

/** The papers of both sides of the border. */
function judgeBorder({ provenance }: SpecimenCase, request: RequestFacts): Verdict {
  const country = request.venue.countryCode;
  if (!isExport(request)) return { outcome: "clear", fact: "permits.no-border", parameters: { country } };
  const papers = (["export", "import"] as const).map((kind) =>
    bestPermit(
      provenance.permits.filter((permit) => permit.kind === kind),
      country,
      request,
    ),
  );
  const [outward, inward] = papers;
  if (outward?.fit === "fits" && inward?.fit === "fits")
    return {
      outcome: "clear",
      fact: "permits.border-papers",
      parameters: { country, outward: outward.permit.number, inward: inward.permit.number },
    };
  return {
    outcome: "attend",
    fact: "permits.border-not-known",
    parameters: { country },
    wayOut: "way.ask-authority-border",
  };
}

export function judgePermits(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const find = findingsFor(subject.specimen.id, "permits");
  return subject.specimen.human
    ? [find("P2", judgeBorder(subject, request))]
    : [find("P1", judgeSpecies(subject, request))];
}
