/**
 * Germany: DE1 to DE4. There is no single statute; courts ruled by the burial law
 * of single Laender. DE1 a preserved body in public is the order office's matter,
 * DE2 no artistic use, DE3 no dissection or preparation before visitors without
 * the donors' sufficient word, DE4 contexts of injustice are not shown in public.
 */

import type { Basis } from "#lib/provenance/schema.ts";
import { activityScopes } from "#lib/suitability/rules/activities.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isPublicShow, outcomeOfUnknown } from "#lib/suitability/rules/case.ts";
import { allOwnWord, diedBefore } from "#lib/suitability/rules/legal-facts.ts";
import { verdictOnLicence } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const judgeNotice = (request: RequestFacts): Verdict =>
  isPublicShow(request)
    ? verdictOnLicence(request, ["notice to the order office", "public display"], "attend")
    : { outcome: "clear", fact: "permits.not-public" };

function judgeArt({ displayStyle }: RequestFacts): Verdict {
  if (displayStyle === "artistic")
    return { outcome: "bar", fact: "law.germany-artistic", wayOut: "way.show-didactically" };
  return displayStyle === "promotional"
    ? { outcome: "attend", fact: "law.germany-promotional", wayOut: "way.show-didactically" }
    : { outcome: "clear", fact: "law.germany-didactic" };
}

/** DE3: dissection or preparation in front of visitors, against what every donor declared. */
function judgeDemonstration({ provenance }: SpecimenCase, request: RequestFacts): Verdict {
  const demonstration = "dissection before visitors";
  if (!isPublicShow(request) || !request.activities.includes(demonstration))
    return { outcome: "clear", fact: "law.germany-no-demonstration" };
  const shown = request.paidAdmission ? "public display, paid" : "public display, free";
  const isDeclared =
    allOwnWord(provenance) &&
    provenance.consents.every(
      ({ answers }) => answers[activityScopes[demonstration]] === "granted" && answers[shown] === "granted",
    );
  return isDeclared
    ? { outcome: "attend", fact: "law.germany-declared", wayOut: "way.ask-order-office" }
    : { outcome: "bar", fact: "law.germany-not-declared", wayOut: "way.strike-activity" };
}

const unfree: readonly Basis[] = ["order of an authority", "unclaimed"];

/** DE4: what came by injustice, or may have. */
function judgeInjustice(subject: SpecimenCase, request: RequestFacts): Verdict {
  const { specimen, provenance } = subject;
  const wayOut = "way.context-file";
  const inThoseYears = specimen.legal.deathPeriod === "1933 to 1945" && !allOwnWord(provenance);
  if (inThoseYears || provenance.consents.some(({ basis }) => unfree.includes(basis)))
    return {
      outcome: isPublicShow(request) ? "bar" : "attend",
      fact: "law.germany-injustice",
      wayOut,
    };
  if (allOwnWord(provenance) || diedBefore(subject, "1946-01-01") === false)
    return { outcome: "clear", fact: "law.germany-no-injustice" };
  return {
    outcome: outcomeOfUnknown(request, isPublicShow(request)),
    fact: "law.germany-context-not-known",
    wayOut,
  };
}

export function judgeGermany(subject: SpecimenCase, request: RequestFacts): Finding[] {
  if (!subject.specimen.human || request.venue.countryCode !== "DE") return [];
  const find = findingsFor(subject.specimen.id, "permits");
  return [
    find("DE1", judgeNotice(request)),
    find("DE2", judgeArt(request)),
    find("DE3", judgeDemonstration(subject, request)),
    find("DE4", judgeInjustice(subject, request)),
  ];
}
