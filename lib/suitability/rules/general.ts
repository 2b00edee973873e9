/**
 * The general rules of consent, for any country: G1 to G10 and G12 to G16, of
 * which G7 and G14 have a file of their own. Each is asked of every donor of a
 * specimen, and the strictest answer counts, which G13 says of a composite. Findings never name a
 * donor. A human specimen without a consent record takes the path of G2, and
 * what its donor would have allowed is not known.
 */

import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { Answer, Basis, ConsentFacts, Scope } from "#lib/provenance/schema.ts";
import { strictestConsent } from "#lib/provenance/strictest.ts";
import { judgeActivities, judgePictures } from "#lib/suitability/rules/activities.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import {
  findingsFor,
  isExport,
  isPublicShow,
  outcomeOfUnknown,
  practiceFor,
} from "#lib/suitability/rules/case.ts";
import { allOwnWord, heldSince } from "#lib/suitability/rules/legal-facts.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { type Outcome, strictestOutcome } from "#lib/workings/outcome.ts";

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
    withdrawalEffectiveOn !== null &&
    withdrawalEffectiveOn >= addDays(request.endsOn, practiceFor(request).consentMarginDays);
  const parameters = { effectiveOn: withdrawalEffectiveOn ?? withdrawalReceivedOn };
  return isAfterLoan
    ? { outcome: "attend", fact: "consent.withdrawal-later", parameters, wayOut: "way.ask-donor-officer" }
    : { outcome: "bar", fact: "consent.withdrawn", parameters, wayOut: "way.donor-officer-only" };
}

/** G3: while somebody claims the remains, or asks for them home, they stay. */
function judgeClaim({ provenance }: SpecimenCase): Verdict[] {
  return provenance.title?.status === "disputed"
    ? [{ outcome: "bar", fact: "consent.claim-pending", wayOut: "way.donor-officer-only" }]
    : [];
}

/** G4: the consent, and its review, against the return-by and a margin. */
function judgeTerm(consent: ConsentFacts, request: RequestFacts): Verdict {
  const neededUntil = addDays(request.endsOn, practiceFor(request).consentMarginDays);
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

const youngBands: readonly (string | null)[] = ["0–9", "10–19"];

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
  if (specimen.ageBand === null && !allOwnWord(provenance)) return because("consent.age-not-known");
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
  const neededUntil = addDays(request.endsOn, practiceFor(request).dispositionMarginDays);
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

/** G15: nobody's memory of the age makes a specimen old; without a date it is judged as recent. */
function judgeAge({ specimen }: SpecimenCase): Verdict {
  const since = heldSince({ specimen });
  if (since !== null) return { outcome: "clear", fact: "consent.age-of-specimen", parameters: { since } };
  const { madePeriod } = specimen.legal;
  return madePeriod === null
    ? { outcome: "attend", fact: "consent.age-of-specimen-not-known", wayOut: "way.provenance-file" }
    : { outcome: "clear", fact: "consent.age-of-specimen", parameters: { since: madePeriod } };
}

/** G13: a composite follows the strictest of its donors in everything that was judged before. */
function judgeComposite({ provenance }: SpecimenCase, judged: readonly Finding[]): Verdict[] {
  const donors = provenance.consents.length + provenance.donorsWithoutConsent;
  if (donors < 2) return [];
  const outcome = strictestOutcome(judged.map((finding) => finding.outcome));
  return [
    {
      outcome,
      fact: "consent.composite",
      parameters: { donors },
      ...(outcome === "clear" ? {} : { wayOut: "way.ask-donor-officer" }),
    },
  ];
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
  add("G3", judgeClaim(subject));
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
  add("G15", [judgeAge(subject)]);
  add("G16", [judgeStyle(request)]);
  add("G13", judgeComposite(subject, findings));
  return findings;
}
