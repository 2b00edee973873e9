/**
 * How and where a specimen is used. U1: what may only be viewed is not handled.
 * U2: hazardous preservatives and the hands and rooms around them. U3: a room
 * with somebody in it. U4: the borrower's standing. U5: what its earlier loans
 * came to. G11: the venue is the borrower's own, since lending on is barred, and a
 * specimen comes home before it goes to the next venue.
 */

import { busyRange } from "#lib/suitability/period.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isPublicShow } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const isHandled = (request: RequestFacts) =>
  request.purpose === "teaching" && request.teachingUse === "handling";

function judgeHandling({ specimen }: SpecimenCase, request: RequestFacts): Verdict {
  if (!isHandled(request)) return { outcome: "clear", fact: "use.viewing" };
  return specimen.use === "handling"
    ? { outcome: "clear", fact: "use.handling" }
    : { outcome: "bar", fact: "use.viewing-only", wayOut: "way.viewing-only" };
}

/** Substances that a gloved hand still takes up or breathes. */
const toHandle: readonly string[] = ["formaldehyde", "mercury", "arsenic", "lead pigment"];

function judgeHazards({ specimen }: SpecimenCase, request: RequestFacts): Verdict[] {
  const verdicts: Verdict[] = [];
  const substances = specimen.hazards
    .map((hazard) => hazard.substance)
    .filter((name) => toHandle.includes(name));
  if (isHandled(request) && substances.length > 0)
    verdicts.push({
      outcome: "attend",
      fact: "use.hazard-in-hand",
      parameters: { substances: substances.join(", ") },
      wayOut: "way.risk-assessment",
    });
  if (specimen.preparation === "fluid-preserved" && request.venue.spillProvision !== true)
    verdicts.push({
      outcome: "attend",
      fact: request.venue.spillProvision === null ? "use.spill-not-known" : "use.no-spill-provision",
      parameters: { fluid: specimen.fluidName },
      wayOut: "way.spill-tray",
    });
  return verdicts.length > 0 ? verdicts : [{ outcome: "clear", fact: "use.no-hazard" }];
}

function judgeRoom({ specimen }: SpecimenCase, request: RequestFacts): Verdict {
  const { venue } = request;
  const parameters = { venue: venue.name };
  if (specimen.human && isPublicShow(request) && venue.restrictedView !== true)
    return {
      outcome: "attend",
      fact: venue.restrictedView === null ? "use.view-not-known" : "use.open-view",
      parameters,
      wayOut: "way.content-notice",
    };
  if (venue.supervisedRoom === true) return { outcome: "clear", fact: "use.supervised", parameters };
  return {
    outcome: "attend",
    fact: venue.supervisedRoom === null ? "use.supervision-not-known" : "use.not-supervised",
    parameters,
    wayOut: "way.supervise",
  };
}

function judgeBorrower({ borrower }: RequestFacts): Verdict {
  if (borrower.standing === "on hold")
    return { outcome: "bar", fact: "use.borrower-on-hold", wayOut: "way.clear-standing" };
  return borrower.verified
    ? { outcome: "clear", fact: "use.borrower-known" }
    : { outcome: "attend", fact: "use.borrower-not-verified", wayOut: "way.verify-borrower" };
}

function judgeRecord({ borrower }: RequestFacts): Verdict {
  const { loans, late, damaged } = borrower.record;
  const parameters = { loans, late, damaged };
  if (loans === 0) return { outcome: "clear", fact: "use.no-earlier-loan" };
  return late === 0 && damaged === 0
    ? { outcome: "clear", fact: "use.good-record", parameters }
    : { outcome: "attend", fact: "use.record-with-marks", parameters, wayOut: "way.talk-to-borrower" };
}

/** Straight on from another borrower would be a next venue that no agreement names. */
function judgeVenue({ elsewhere }: SpecimenCase, request: RequestFacts): Verdict {
  const { borrower, venue } = request;
  const parameters = { venue: venue.name };
  if (elsewhere !== null && !elsewhere.missing && elsewhere.dueOn > busyRange(request).startsOn)
    return {
      outcome: "bar",
      fact: "use.next-venue",
      parameters: { ...parameters, loan: elsewhere.loanNumber, dueOn: elsewhere.dueOn },
      wayOut: "way.later-start",
    };
  return venue.institutionId === borrower.id
    ? { outcome: "clear", fact: "use.own-venue", parameters }
    : { outcome: "bar", fact: "use.lending-on", parameters, wayOut: "way.own-venue" };
}

export function judgeUse(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const find = findingsFor(subject.specimen.id, "use");
  return [
    find("U1", judgeHandling(subject, request)),
    ...judgeHazards(subject, request).map((verdict) => find("U2", verdict)),
    find("U3", judgeRoom(subject, request)),
    find("U4", judgeBorrower(request)),
    find("U5", judgeRecord(request)),
    find("G11", judgeVenue(subject, request)),
  ];
}
