/**
 * Scotland: SC1, by section 6A of the Anatomy Act 1984. Public display of a body
 * or part that was used for anatomical examination anywhere, preserved or not, is
 * prohibited outside the section's conditions; without a licence on record it is
 * a bar. Whether a house is exempt is the authority's word.
 */
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isPublicShow, outcomeOfUnknown } from "#lib/suitability/rules/case.ts";
import { verdictOnLicence } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

function judgeDisplay({ specimen }: SpecimenCase, request: RequestFacts): Verdict {
  if (!isPublicShow(request)) return { outcome: "clear", fact: "permits.not-public" };
  if (request.venue.subdivisionCode === null)
    return {
      outcome: outcomeOfUnknown(request, true),
      fact: "law.scotland-or-not",
      parameters: { venue: request.venue.name },
      wayOut: "way.name-subdivision",
    };
  if (specimen.legal.anatomicalExamination === false)
    return { outcome: "attend", fact: "law.scotland-not-examined", wayOut: "way.ask-regulator" };
  return verdictOnLicence(request, ["public display"], "bar");
}

export function judgeScotland(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const { countryCode, subdivisionCode } = request.venue;
  const mayBeThere = countryCode === "GB" && (subdivisionCode === null || subdivisionCode === "GB-SCT");
  if (!subject.specimen.human || !mayBeThere) return [];
  if (subdivisionCode === null && !isPublicShow(request)) return [];
  return [findingsFor(subject.specimen.id, "permits")("SC1", judgeDisplay(subject, request))];
}
