/**
 * Uses beyond showing: pictures (G7) and what takes from a specimen, copies its
 * form or takes it apart (G14). Each is barred as a use where a donor did not grant it, and G14 where
 * the centre's written permission is missing; the loan itself may go on without.
 */

import type { Scope } from "#lib/provenance/schema.ts";
import { type StrictestConsent, strictestConsent } from "#lib/provenance/strictest.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import { bestPermit } from "#lib/suitability/rules/papers.ts";
import type { Finding, LoanInput } from "#lib/suitability/schema.ts";

const pictureScopes: Record<LoanInput["pictures"][number], Scope> = {
  internal: "pictures, internal",
  "professional publication": "pictures, professional publication",
  online: "pictures and models, openly online",
  press: "mass media",
};

type DonorsAnswers = StrictestConsent["answers"];

/** Pictures that every donor has granted, of those that are planned. */
export function allowedPictures(
  answers: DonorsAnswers,
  planned: LoanInput["pictures"],
): LoanInput["pictures"] {
  return planned.filter((picture) => answers[pictureScopes[picture]].answer === "granted");
}

/** G7: pictures beyond consent are barred as a use; the loan itself may go on without them. */
export function judgePictures(answers: DonorsAnswers, request: RequestFacts): Verdict[] {
  if (request.pictures.length === 0) return [{ outcome: "clear", fact: "consent.no-pictures" }];
  return request.pictures.map((picture): Verdict => {
    const answer = answers[pictureScopes[picture]].answer;
    if (answer === "granted")
      return { outcome: "clear", fact: "consent.pictures-granted", parameters: { picture } };
    const fact = answer === "refused" ? "consent.pictures-refused" : "consent.pictures-not-known";
    return { outcome: "attend", fact, parameters: { picture }, wayOut: "way.without-these-pictures" };
  });
}

type Activity = LoanInput["activities"][number];

/** The donor's word that an activity needs. No form asks for a dissection before visitors: it takes tissue as sampling does. */
export const activityScopes: Record<Activity, Scope> = {
  sampling: "sampling",
  "casting and scanning": "casting and scanning",
  "dissection before visitors": "sampling",
};
type AskedOf = Pick<SpecimenCase, "specimen" | "provenance">;
type LoanPlace = Pick<RequestFacts, "today" | "startsOn" | "endsOn" | "venue">;

/**
 * The centre's written permission against the days of the loan. It needs to name
 * no country, since it is the centre's own; the end of its days is stated.
 */
function judgePermission(activity: Activity, { provenance }: AskedOf, place: LoanPlace): Verdict {
  const country = place.venue.countryCode;
  const papers = provenance.permits
    .filter(({ kind }) => kind === activity)
    .map((paper) => (paper.territories.length > 0 ? paper : { ...paper, territories: [country] }));
  const best = bestPermit(papers, country, place);
  const wayOut = "way.activity-permission";
  if (best === null)
    return { outcome: "attend", fact: "permits.activity-not-permitted", parameters: { activity }, wayOut };
  const { number, validUntil } = best.permit;
  const parameters = { activity, number, validUntil, country };
  if (best.fit === "fits") return { outcome: "clear", fact: "permits.activity-permitted", parameters };
  const fact =
    best.fit === "other-country" ? "permits.activity-permission-country" : "permits.activity-permission-days";
  return { outcome: "attend", fact, parameters, wayOut };
}

/** One activity: the word of every donor first, then the centre's permission. An animal has no donor. */
function judgeActivity(activity: Activity, subject: AskedOf, place: LoanPlace): Verdict {
  const { specimen, provenance } = subject;
  const answer = specimen.human
    ? strictestConsent(provenance, place.today).answers[activityScopes[activity]].answer
    : "granted";
  if (answer === "granted") return judgePermission(activity, subject, place);
  const fact = answer === "refused" ? "consent.activity-refused" : "consent.activity-not-known";
  return { outcome: "attend", fact, parameters: { activity }, wayOut: "way.without-this-activity" };
}

/** What a specimen may be subjected to of what is planned: granted by every donor, and permitted in writing. */
export function allowedActivities(
  subject: AskedOf,
  place: LoanPlace,
  planned: LoanInput["activities"],
): LoanInput["activities"] {
  return planned.filter((activity) => judgeActivity(activity, subject, place).outcome === "clear");
}

/** G14: an activity beyond consent or without permission is barred as a use; the loan itself may go on. */
export function judgeActivities(subject: SpecimenCase, request: RequestFacts): Finding[] {
  return request.activities.map((activity) => {
    const verdict = judgeActivity(activity, subject, request);
    const group = verdict.fact.startsWith("permits.") ? "permits" : "consent";
    return findingsFor(subject.specimen.id, group)("G14", verdict);
  });
}
