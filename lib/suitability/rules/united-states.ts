/**
 * United States: US1 to US6. Gifts of bodies follow the law of each state, so US1
 * asks for the named purpose; US2 San Francisco, US3 Hawaii and US4 California
 * have words of their own on displays; US5 and US6 stand at the border. Whether a
 * measure was enacted is itself a question for counsel.
 */

import type { Scope } from "#lib/provenance/schema.ts";
import { strictestConsent } from "#lib/provenance/strictest.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isExport, isPublicShow, outcomeOfUnknown } from "#lib/suitability/rules/case.ts";
import { allOwnWord, diedYearsBefore } from "#lib/suitability/rules/legal-facts.ts";
import { permitFor, verdictOnPermit } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const isMoneyMade = ({ paidAdmission, displayStyle }: RequestFacts) =>
  paidAdmission || displayStyle === "promotional";

const answerTo = ({ provenance }: SpecimenCase, scope: Scope, { today }: RequestFacts) =>
  strictestConsent(provenance, today).answers[scope].answer;

/** US1: the purposes of a gift do not name display by themselves. */
function judgeGift(subject: SpecimenCase, request: RequestFacts): Verdict {
  if (!isPublicShow(request) && request.purpose !== "exhibition")
    return { outcome: "clear", fact: "law.us-named-purpose", parameters: { purpose: request.purpose } };
  const scope: Scope = request.paidAdmission ? "public display, paid" : "public display, free";
  const answer = answerTo(subject, scope, request);
  if (answer === "granted") return { outcome: "clear", fact: "law.us-display-named" };
  return {
    outcome:
      isMoneyMade(request) || answer === "refused" ? "bar" : outcomeOfUnknown(request, isPublicShow(request)),
    fact: "law.us-display-not-named",
    wayOut: "way.evidence-bundle",
  };
}

/** US2: San Francisco asks for valid written authority where a display takes money. */
function judgeSanFrancisco(subject: SpecimenCase, request: RequestFacts): Verdict {
  if (!isMoneyMade(request)) return { outcome: "clear", fact: "law.us-no-money" };
  if (diedYearsBefore(subject, request, 100) === true)
    return { outcome: "clear", fact: "law.us-over-hundred" };
  const wayOut = "way.evidence-bundle";
  if (request.borrower.kind === "museum" || request.borrower.kind === "medical school")
    return { outcome: "attend", fact: "law.us-presumed-house", wayOut };
  const { consents } = subject.provenance;
  const isWritten =
    answerTo(subject, "public display, paid", request) === "granted" &&
    consents.every(({ signedOn, verifiedOn }) => signedOn !== null && verifiedOn !== null);
  return isWritten && allOwnWord(subject.provenance)
    ? { outcome: "attend", fact: "law.us-authority-to-judge", wayOut }
    : { outcome: "bar", fact: "law.us-no-authority", wayOut };
}

/** US3: a measure of 2009 against commercial displays in Hawaii. */
function judgeHawaii(subject: SpecimenCase, request: RequestFacts): Verdict {
  if (!isMoneyMade(request)) return { outcome: "clear", fact: "law.us-no-money" };
  return diedYearsBefore(subject, request, 80) === true
    ? { outcome: "attend", fact: "law.us-over-eighty", wayOut: "way.ask-counsel" }
    : { outcome: "bar", fact: "law.us-commercial-hawaii", wayOut: "way.ask-counsel" };
}

/** US4: signs at the entrance and a catalogue of consent files, as a bill wanted them. */
const judgeCalifornia = (request: RequestFacts): Verdict =>
  isPublicShow(request)
    ? { outcome: "attend", fact: "law.us-california-signs", wayOut: "way.signs-at-entrance" }
    : { outcome: "clear", fact: "permits.not-public" };

/** Clean dry bone is no human remains to the rule on imports. */
const isDryBone = ({ specimen }: SpecimenCase) =>
  specimen.kind === "skeleton or bone" &&
  (specimen.preparation === "dry" || specimen.preparation === "mounted skeleton");

/** US5: body parts for science or exhibition come in with papers that they carry no infection. */
function judgeEntry(subject: SpecimenCase, request: RequestFacts): Verdict {
  if (subject.specimen.legal.containsCells === false || isDryBone(subject))
    return { outcome: "clear", fact: "law.us-not-remains" };
  return verdictOnPermit(
    permitFor(subject, request, ["import"]),
    request,
    {
      fits: "law.import-paper",
      vague: "law.import-paper-vague",
      days: "law.import-paper-days",
      country: "law.import-paper-country",
      missing: "law.us-not-infectious",
      wayOut: "way.ask-authority-border",
    },
    "attend",
  );
}

/** US6: the customs code is a broker's decision, written down. */
function judgeTariff({ specimen, tariffCountries }: SpecimenCase): Verdict {
  if (specimen.legal.containsCells === false) return { outcome: "clear", fact: "law.us-no-tissue" };
  return tariffCountries.includes("US")
    ? { outcome: "clear", fact: "law.us-tariff-decided" }
    : { outcome: "attend", fact: "law.us-tariff-open", wayOut: "way.ask-broker" };
}

/** A town in a state, or a state that nobody named while money is taken. */
function localRules(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const find = findingsFor(subject.specimen.id, "permits");
  const { subdivisionCode: state, town } = request.venue;
  const place = (town === "" ? request.borrower.town : town).trim().toLowerCase();
  const findings: Finding[] = [];
  const notKnown = {
    fact: "law.us-state-not-known",
    parameters: { venue: request.venue.name },
    wayOut: "way.name-subdivision",
  };
  if (state === null) {
    if (!isPublicShow(request)) return [];
    const outcome = outcomeOfUnknown(request, true);
    return [
      find("US2", { ...notKnown, outcome }),
      find("US3", { ...notKnown, outcome }),
      find("US4", { ...notKnown, outcome: "attend" }),
    ];
  }
  if (state === "US-CA") {
    if (place === "san francisco") findings.push(find("US2", judgeSanFrancisco(subject, request)));
    findings.push(find("US4", judgeCalifornia(request)));
  }
  if (state === "US-HI") findings.push(find("US3", judgeHawaii(subject, request)));
  return findings;
}

export function judgeUnitedStates(subject: SpecimenCase, request: RequestFacts): Finding[] {
  if (request.venue.countryCode !== "US") return [];
  const find = findingsFor(subject.specimen.id, "permits");
  const { human } = subject.specimen;
  return [
    ...(human ? [find("US1", judgeGift(subject, request)), ...localRules(subject, request)] : []),
    ...(human && isExport(request) ? [find("US5", judgeEntry(subject, request))] : []),
    ...(isExport(request) ? [find("US6", judgeTariff(subject))] : []),
  ];
}
