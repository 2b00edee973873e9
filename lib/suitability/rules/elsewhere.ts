/**
 * Places for which no rule of its own is kept. D1: many countries ask a venue for
 * a licence before human material is shown in public. P2: human material meets
 * papers at most borders. Which countries, and for what, is not decided here: what
 * is on record is named, what is missing is attend, and both send the reader to
 * the local authority.
 */
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isExport, isPublicShow } from "#lib/suitability/rules/case.ts";
import { isExamined } from "#lib/suitability/rules/legal-facts.ts";
import { permitFor, verdictOnLicence } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

/** Countries whose own rules speak of public display. */
const speakOfDisplay: readonly string[] = ["GB", "IE", "DE", "FR", "US"];

/** Whether the country's own rules speak of what comes over its border. */
function speaksOfImport({ venue, purpose }: Pick<RequestFacts, "venue" | "purpose">): boolean {
  const { countryCode, subdivisionCode } = venue;
  if (countryCode === "GB") return subdivisionCode !== "GB-SCT";
  return countryCode === "US" || (countryCode === "IE" && isExamined({ purpose }));
}

const judgeDisplay = (request: RequestFacts): Verdict =>
  isPublicShow(request)
    ? verdictOnLicence(request, ["public display"], "attend")
    : { outcome: "clear", fact: "permits.not-public" };

/** The papers of both sides of the border. */
function judgeBorder(subject: SpecimenCase, request: RequestFacts): Verdict {
  const country = request.venue.countryCode;
  if (!isExport(request)) return { outcome: "clear", fact: "permits.no-border", parameters: { country } };
  const outward = permitFor(subject, request, ["export"]);
  const inward = permitFor(subject, request, ["import"]);
  if (outward?.fit === "fits" && inward?.fit === "fits")
    return {
      outcome: "clear",
      fact: "law.border-papers",
      parameters: { country, outward: outward.permit.number, inward: inward.permit.number },
    };
  return {
    outcome: "attend",
    fact: "law.border-not-known",
    parameters: { country },
    wayOut: "way.ask-authority-border",
  };
}

export function judgeElsewhere(subject: SpecimenCase, request: RequestFacts): Finding[] {
  if (!subject.specimen.human) return [];
  const find = findingsFor(subject.specimen.id, "permits");
  const { countryCode } = request.venue;
  const hasOwn = speakOfDisplay.includes(countryCode);
  const isJudgedThere = isExport(request) && speaksOfImport(request);
  return [
    ...(hasOwn ? [] : [find("D1", judgeDisplay(request))]),
    ...(isJudgedThere ? [] : [find("P2", judgeBorder(subject, request))]),
  ];
}
