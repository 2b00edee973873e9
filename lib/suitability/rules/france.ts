/**
 * France. FR1: a court of cassation held a commercial exhibition of human bodies
 * unlawful, since remains are treated with respect, dignity and decency. FR2: for
 * a showing or teaching without charge, courts asked for proof of origin and of
 * consent given in life. Both send the reader to the local authority.
 */
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";

export function judgeFrance({ specimen }: SpecimenCase, request: RequestFacts): Finding[] {
  if (!specimen.human || request.venue.countryCode !== "FR") return [];
  const find = findingsFor(specimen.id, "permits");
  if (request.paidAdmission || request.displayStyle === "promotional")
    return [find("FR1", { outcome: "bar", fact: "law.france-commercial", wayOut: "way.no-charge" })];
  return [
    find("FR1", { outcome: "clear", fact: "law.france-not-commercial" }),
    find("FR2", { outcome: "attend", fact: "law.france-proof", wayOut: "way.evidence-bundle" }),
  ];
}
