/**
 * The general rules of consent, for any country: G1 to G10, G12 and G14 to G16.
 * Each is asked of every donor of a specimen, and the strictest answer counts, so
 * a composite follows the strictest of its donors (G13). Findings never name a
 * donor. A human specimen without a consent record takes the path of G2, and
 * what its donor would have allowed is not known.
 */

import type { RequestFacts, SpecimenCase, Verdict } from "#lib/loans/rules/case.ts";
import { findingsFor, isExport, isPublicShow, outcomeOfUnknown } from "#lib/loans/rules/case.ts";
import { bestPermit } from "#lib/loans/rules/permits.ts";
import type { Finding, LoanInput } from "#lib/loans/schema.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { Answer, Basis, ConsentFacts, Scope } from "#lib/provenance/schema.ts";
import { strictestConsent } from "#lib/provenance/strictest.ts";
import { type Outcome, strictestOutcome } from "#lib/workings/outcome.ts";

/** Days that a consent must outlast the return-by, and a disposition must wait after it (worked out here). */
export const CONSENT_MARGIN_DAYS = 30;
export const DISPOSITION_MARGIN_DAYS = 60;

const pictureScopes: Record<LoanInput["pictures"][number], Scope> = {
  internal: "pictures, internal",
  "professional publication": "pictures, professional publication",
  online: "pictures and models, openly online",
  press: "mass media",
};

type Asked = { scope: Scope; isGrave: boolean };

/** What the request asks of a donor, scope by scope. */
export function scopesAsked(request: RequestFacts): Asked[] {
  const { purpose, audience, paidAdmission, teachingUse } = request;
  const asked = new Map<Scope, boolean>();
  const ask = (scope: Scope, isGrave: boolean) => asked.set(scope, isGrave);
  const isForAnyone = audience === "general public";
  if (purpose === "teaching") {
    if (isForAnyone) ask("school and public education", true);
    else ask("professional teaching", false);
    if (teachingUse === "handling") ask("handling by learners", isForAnyone);
  }
  if (purpose === "research") ask("research", false);
  if (purpose === "picture-taking") ask("pictures, internal", false);
  if (purpose === "exhibition" && !isForAnyone && !paidAdmission) ask("professional teaching", false);
  if (paidAdmission) ask("public display, paid", true);
  else if (isForAnyone && purpose !== "teaching") ask("public display, free", true);
  return [...asked].map(([scope, isGrave]) => ({ scope, isGrave }));
}

/** Every scope's strictest answer of all donors on a day. */
export type DonorsAnswers = ReturnType<typeof strictestConsent>["answers"];

/** One scope's answer as a verdict. Only what was granted is clear. */
function verdictOnScope(answer: Answer, scope: Scope, onUnknown: Outcome): Verdict {
  const parameters = { scope };
  if (answer === "granted") return { outcome: "clear", fact: "consent.granted", parameters };
  if (answer === "refused")
    return { outcome: "bar", fact: "consent.refused", parameters, wayOut: "way.use-within-consent" };
  return {
    outcome: onUnknown,
    fact: answer === "not asked" ? "consent.not-asked" : "consent.not-known",
    parameters,
    wayOut: "way.ask-oversight",
  };
}

/** G1: purpose and audience against the granted scopes. A free showing refused is a paid one refused too. */
function judgeScopes(answers: DonorsAnswers, request: RequestFacts): Verdict[] {
  const verdicts = scopesAsked(request).map(({ scope, isGrave }) =>
    verdictOnScope(answers[scope].answer, scope, outcomeOfUnknown(request, isGrave)),
  );
  if (request.paidAdmission && answers["public display, free"].answer === "refused")
    verdicts.push(verdictOnScope("refused", "public display, free", "bar"));
  return verdicts;
}

const audiencesWithin = {
  "professionals only": ["professionals"],
  "enrolled students": ["professionals", "enrolled students"],
  anyone: ["professionals", "enrolled students", "general public"],
} as const;

/** G1: the donor's own limit of audience. */
function judgeAudience(consent: ConsentFacts, request: RequestFacts): Verdict {
  const parameters = { audience: request.audience, limit: consent.audience };
  if (consent.audience === "unknown")
    return {
      outcome: outcomeOfUnknown(request, isPublicShow(request)),
      fact: "consent.audience-not-known",
      parameters,
      wayOut: "way.ask-oversight",
    };
  const within: readonly string[] = audiencesWithin[consent.audience];
  return within.includes(request.audience)
    ? { outcome: "clear", fact: "consent.audience-within", parameters }
    : { outcome: "bar", fact: "consent.audience-outside", parameters, wayOut: "way.use-within-consent" };
}

/** G3: what was withdrawn does not go out; effective only after the loan is home, it is attend. */
function judgeWithdrawal(consent: ConsentFacts, request: RequestFacts): Verdict {
  const { withdrawalReceivedOn, withdrawalEffectiveOn } = consent;
  if (withdrawalReceivedOn === null && withdrawalEffectiveOn === null)
    return { outcome: "clear", fact: "consent.not-withdrawn" };
  const isAfterLoan =
    withdrawalEffectiveOn !== null && withdrawalEffectiveOn >= addDays(request.endsOn, CONSENT_MARGIN_DAYS);
  const parameters = { effectiveOn: withdrawalEffectiveOn ?? withdrawalReceivedOn };
  return isAfterLoan
    ? { outcome: "attend", fact: "consent.withdrawal-later", parameters, wayOut: "way.ask-donor-officer" }
    : { outcome: "bar", fact: "consent.withdrawn", parameters, wayOut: "way.donor-officer-only" };
}

/** G4: the consent, and its review, against the return-by and a margin. */
function judgeTerm(consent: ConsentFacts, request: RequestFacts): Verdict {
  const neededUntil = addDays(request.endsOn, CONSENT_MARGIN_DAYS);
  const ends = (day: DateText | null) => day !== null && day < neededUntil;
  if (ends(consent.validUntil))
    return {
      outcome: "bar",
      fact: "consent.ends",
      parameters: { validUntil: consent.validUntil, neededUntil },
      wayOut: "way.earlier-return",
    };
  if (ends(consent.reviewDueOn))
    return {
      outcome: "attend",
      fact: "consent.review-due",
      parameters: { reviewDueOn: consent.reviewDueOn, neededUntil },
      wayOut: "way.ask-donor-officer",
    };
  return { outcome: "clear", fact: "consent.outlasts-loan", parameters: { neededUntil } };
}

/** G5: the country of the venue against the donor's lists. */
function judgeTerritory(consent: ConsentFacts, request: RequestFacts): Verdict {
  const country = request.venue.countryCode;
  const { territoriesAllowed: allowed, territoriesRefused: refused } = consent;
  const parameters = { country };
  if (refused.includes(country) || (allowed.length > 0 && !allowed.includes(country)))
    return { outcome: "bar", fact: "consent.territory-outside", parameters, wayOut: "way.other-venue" };
  return { outcome: "clear", fact: "consent.territory-within", parameters };
}

/** G5: one country on the way, which a donor may have refused, or left off a list that names others. */
function judgeTransit(consent: ConsentFacts, country: string): Verdict {
  const { territoriesAllowed: allowed, territoriesRefused: refused } = consent;
  const parameters = { country };
  if (refused.includes(country))
    return { outcome: "bar", fact: "consent.transit-refused", parameters, wayOut: "way.other-route" };
  if (allowed.length > 0 && !allowed.includes(country))
    return {
      outcome: "attend",
      fact: "consent.transit-not-listed",
      parameters,
      wayOut: "way.other-route-or-ask",
    };
  return { outcome: "clear", fact: "consent.transit-within", parameters };
}

/** G6: money, and use of the likeness to sell something. */
function judgeCommerce(
  answers: DonorsAnswers,
  consents: readonly ConsentFacts[],
  request: RequestFacts,
): Verdict[] {
  const verdicts: Verdict[] = [];
  const bar = (fact: string): Verdict => ({ outcome: "bar", fact, wayOut: "way.no-admission-charge" });
  if (request.paidAdmission) {
    if (answers["public display, paid"].answer !== "granted")
      verdicts.push(bar("consent.paid-display-not-granted"));
    if (consents.some((consent) => consent.nonCommercialOnly))
      verdicts.push(bar("consent.non-commercial-only"));
  }
  if (request.displayStyle === "promotional" && answers["commercial use of likeness"].answer !== "granted")
    verdicts.push({ outcome: "bar", fact: "consent.likeness-not-granted", wayOut: "way.no-promotion" });
  return verdicts.length > 0 ? verdicts : [{ outcome: "clear", fact: "consent.not-commercial" }];
}

/** Pictures that every donor has granted, of those that are planned. */
export function allowedPictures(
  answers: DonorsAnswers,
  planned: LoanInput["pictures"],
): LoanInput["pictures"] {
  return planned.filter((picture) => answers[pictureScopes[picture]].answer === "granted");
}

/** G7: pictures beyond consent are barred as a use; the loan itself may go on without them. */
function judgePictures(answers: DonorsAnswers, request: RequestFacts): Verdict[] {
  if (request.pictures.length === 0) return [{ outcome: "clear", fact: "consent.no-pictures" }];
  return request.pictures.map((picture): Verdict => {
    const answer = answers[pictureScopes[picture]].answer;
    if (answer === "granted")
      return { outcome: "clear", fact: "consent.pictures-granted", parameters: { picture } };
    const fact = answer === "refused" ? "consent.pictures-refused" : "consent.pictures-not-known";
    return { outcome: "attend", fact, parameters: { picture }, wayOut: "way.without-these-pictures" };
  });
}

const youngBands: readonly (string | null)[] = ["0–9", "10–19"];
const ownWord: readonly Basis[] = ["donor in life", "will"];

/** G8: who could be recognised, and who could not speak for themselves. */
function judgePerson({ specimen, provenance }: SpecimenCase, request: RequestFacts): Verdict {
  const { consents, donorsWithoutConsent } = provenance;
  const allOnRecord = consents.length > 0 && donorsWithoutConsent === 0;
  const because = (fact: string): Verdict => ({
    outcome: outcomeOfUnknown(request, isPublicShow(request)),
    fact,
    wayOut: "way.two-persons",
  });
  if (consents.some((consent) => consent.basis === "foetal, by parents")) return because("consent.foetal");
  if (youngBands.includes(specimen.ageBand)) return because("consent.minor");
  if (consents.some((consent) => consent.identifiable)) return because("consent.identifiable");
  const allOwnWord = allOnRecord && consents.every((consent) => ownWord.includes(consent.basis));
  if (specimen.ageBand === null && !allOwnWord) return because("consent.age-not-known");
  if (!allOnRecord) return because("consent.recognisable-not-known");
  return { outcome: "clear", fact: "consent.not-recognisable" };
}

const withoutOwnWord: readonly Basis[] = ["unclaimed", "order of an authority", "historical or unknown"];

/** G9: bodies that came without anybody's free word. */
function judgeBasis(consent: ConsentFacts, request: RequestFacts): Verdict {
  const parameters = { basis: consent.basis };
  if (!withoutOwnWord.includes(consent.basis)) return { outcome: "clear", fact: "consent.basis", parameters };
  return {
    outcome: isPublicShow(request) ? "bar" : "attend",
    fact: "consent.basis-without-own-word",
    parameters,
    wayOut: "way.ask-oversight",
  };
}

/** G12: what is owed back must be home in time. */
function judgeDisposition(consent: ConsentFacts, request: RequestFacts): Verdict {
  const { disposition, dispositionDueOn: dueOn } = consent;
  const neededUntil = addDays(request.endsOn, DISPOSITION_MARGIN_DAYS);
  if (dueOn !== null && dueOn < neededUntil)
    return {
      outcome: "bar",
      fact: "consent.disposition-due",
      parameters: { disposition, dueOn, neededUntil },
      wayOut: "way.earlier-return",
    };
  if (disposition === "unknown" || (disposition !== "retain indefinitely" && dueOn === null))
    return {
      outcome: "attend",
      fact: "consent.disposition-not-known",
      parameters: { disposition },
      wayOut: "way.ask-donor-officer",
    };
  return { outcome: "clear", fact: "consent.disposition-later", parameters: { disposition, dueOn } };
}

/** G16: showing people as art or advertisement; German courts have forbidden it. */
function judgeStyle(request: RequestFacts): Verdict {
  const { displayStyle: style, venue } = request;
  const parameters = { style, country: venue.countryCode };
  if (style === "didactic") return { outcome: "clear", fact: "consent.style-didactic" };
  return {
    outcome: venue.countryCode === "DE" ? "bar" : "attend",
    fact: "consent.style",
    parameters,
    wayOut: "way.didactic-only",
  };
}

type Activity = LoanInput["activities"][number];
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
    ? strictestConsent(provenance, place.today).answers[activity].answer
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
function judgeActivities(subject: SpecimenCase, request: RequestFacts): Finding[] {
  return request.activities.map((activity) => {
    const verdict = judgeActivity(activity, subject, request);
    const group = verdict.fact.startsWith("permits.") ? "permits" : "consent";
    return findingsFor(subject.specimen.id, group)("G14", verdict);
  });
}

/** Of one rule's answers for several donors, the strictest. */
function strictest(verdicts: readonly Verdict[]): Verdict[] {
  const worst = strictestOutcome(verdicts.map((verdict) => verdict.outcome));
  return verdicts.filter((verdict) => verdict.outcome === worst).slice(0, 1);
}

/** All general rules of consent for one specimen. */
export function judgeConsent(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const { specimen, provenance } = subject;
  const find = findingsFor(specimen.id, "consent");
  if (!specimen.human)
    return [
      find("G1", {
        outcome: "clear",
        fact: "consent.animal",
        parameters: { species: specimen.scientificName },
      }),
      ...judgeActivities(subject, request),
    ];
  const { consents, donorsWithoutConsent } = provenance;
  const { answers } = strictestConsent(provenance, request.today);
  const findings: Finding[] = [];
  const add = (rule: Parameters<typeof find>[0], verdicts: readonly Verdict[]) => {
    for (const verdict of verdicts) findings.push(find(rule, verdict));
  };
  const ofEach = (judge: (consent: ConsentFacts, request: RequestFacts) => Verdict) =>
    strictest(consents.map((consent) => judge(consent, request)));

  if (consents.length > 0) add("G1", judgeScopes(answers, request));
  add("G1", ofEach(judgeAudience));
  if (consents.length === 0 || donorsWithoutConsent > 0)
    add("G2", [
      {
        outcome: isPublicShow(request) ? "bar" : "attend",
        fact: consents.length === 0 ? "consent.no-record" : "consent.no-record-of-one",
        parameters: { donors: donorsWithoutConsent },
        wayOut: "way.legacy-path",
      },
    ]);
  add("G3", ofEach(judgeWithdrawal));
  add("G4", ofEach(judgeTerm));
  add("G5", ofEach(judgeTerritory));
  for (const country of request.through)
    add(
      "G5",
      ofEach((consent) => judgeTransit(consent, country)),
    );
  if (isExport(request))
    add("G5", [verdictOnScope(answers.export.answer, "export", outcomeOfUnknown(request, true))]);
  add("G6", judgeCommerce(answers, consents, request));
  add("G7", judgePictures(answers, request));
  add("G8", [judgePerson(subject, request)]);
  add("G9", ofEach(judgeBasis));
  add("G10", [
    verdictOnScope(answers["lending to others"].answer, "lending to others", outcomeOfUnknown(request, true)),
  ]);
  add("G12", ofEach(judgeDisposition));
  findings.push(...judgeActivities(subject, request));
  if (specimen.acquiredOn === null && specimen.preparedOn === null)
    add("G15", [
      { outcome: "attend", fact: "consent.age-of-specimen-not-known", wayOut: "way.provenance-file" },
    ]);
  add("G16", [judgeStyle(request)]);
  return findings;
}
