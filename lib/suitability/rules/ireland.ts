/**
 * Ireland: IE1 to IE3, by the act of 2024 on human tissue. IE1 a licence for
 * public display, IE2 prior authorisation of what comes in for anatomical
 * examination, on loan as well, IE3 what the licence holder's register has to
 * hold of each specimen. Parts of the act commence on their own days: ask.
 */
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isExport, isPublicShow } from "#lib/suitability/rules/case.ts";
import { isExamined } from "#lib/suitability/rules/legal-facts.ts";
import { permitFor, verdictOnLicence, verdictOnPermit } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const judgeDisplay = (request: RequestFacts): Verdict =>
  isPublicShow(request)
    ? verdictOnLicence(request, ["public display"], "bar")
    : { outcome: "clear", fact: "permits.not-public" };

const judgeImport = (subject: SpecimenCase, request: RequestFacts): Verdict =>
  verdictOnPermit(
    permitFor(subject, request, ["import"]),
    request,
    {
      fits: "law.import-paper",
      vague: "law.import-paper-vague",
      days: "law.import-paper-days",
      country: "law.import-paper-country",
      missing: "law.ireland-no-authorisation",
      wayOut: "way.prior-authorisation",
    },
    "bar",
  );

/** What the register wants and the record lacks. */
export function lackingInRegister({ specimen, provenance }: SpecimenCase): string[] {
  const { consents, donorsWithoutConsent } = provenance;
  return [
    ...(specimen.legal.originCountry === null ? ["origin"] : []),
    ...(consents.length === 0 || donorsWithoutConsent > 0 ? ["consent"] : []),
    ...(specimen.legal.deathPapers === true ? [] : ["death certificate"]),
  ];
}

function judgeRegister(subject: SpecimenCase): Verdict {
  const lacking = lackingInRegister(subject);
  return lacking.length === 0
    ? { outcome: "clear", fact: "law.ireland-register" }
    : {
        outcome: "attend",
        fact: "law.ireland-register-lacks",
        parameters: { lacking: lacking.join(", ") },
        wayOut: "way.evidence-bundle",
      };
}

export function judgeIreland(subject: SpecimenCase, request: RequestFacts): Finding[] {
  if (!subject.specimen.human || request.venue.countryCode !== "IE") return [];
  const find = findingsFor(subject.specimen.id, "permits");
  const findings = [find("IE1", judgeDisplay(request))];
  if (isExport(request) && isExamined(request)) findings.push(find("IE2", judgeImport(subject, request)));
  return [...findings, find("IE3", judgeRegister(subject))];
}
