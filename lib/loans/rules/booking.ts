/**
 * Whether a specimen is free on every day that the loan needs it, the days for
 * packing, travel, rest and checks included. B1: nobody else's booking. B2: time
 * enough before the first day. B3: home from where it was. Ranges are half-open:
 * the day that ends one booking may begin the next.
 */

import { busyRange } from "#lib/loans/period.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/loans/rules/case.ts";
import { findingsFor } from "#lib/loans/rules/case.ts";
import type { Finding } from "#lib/loans/schema.ts";
import { daysBetween } from "#lib/platform/dates.ts";

function judgeDays({ taken }: SpecimenCase, request: RequestFacts): Verdict {
  const { startsOn, endsOn } = busyRange(request);
  if (taken === null)
    return { outcome: "clear", fact: "free.days", parameters: { from: startsOn, to: endsOn } };
  return {
    outcome: "bar",
    fact: taken.freeFrom === null ? "free.taken" : "free.taken-until",
    parameters: { from: startsOn, to: endsOn, freeFrom: taken.freeFrom },
    wayOut: taken.freeFrom === null ? "way.substitute" : "way.later-or-substitute",
  };
}

function judgeLeadTime(request: RequestFacts): Verdict {
  const days = daysBetween(request.today, request.startsOn);
  const parameters = { days, usual: request.daysBefore };
  return days >= request.daysBefore
    ? { outcome: "clear", fact: "free.lead-time", parameters }
    : { outcome: "attend", fact: "free.lead-time-short", parameters, wayOut: "way.later-start" };
}

function judgeElsewhere({ elsewhere }: SpecimenCase, request: RequestFacts): Verdict {
  if (elsewhere === null) return { outcome: "clear", fact: "free.at-home" };
  const { loanNumber, missing, dueOn } = elsewhere;
  const parameters = { loan: loanNumber, dueOn };
  if (missing) return { outcome: "bar", fact: "free.missing", parameters, wayOut: "way.substitute" };
  return dueOn <= request.today
    ? { outcome: "attend", fact: "free.overdue", parameters, wayOut: "way.call-home" }
    : { outcome: "attend", fact: "free.away", parameters, wayOut: "way.watch-return" };
}

export function judgeBooking(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const find = findingsFor(subject.specimen.id, "free");
  return [
    find("B1", judgeDays(subject, request)),
    find("B2", judgeLeadTime(request)),
    find("B3", judgeElsewhere(subject, request)),
  ];
}
