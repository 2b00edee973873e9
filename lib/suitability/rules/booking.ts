/**
 * Whether a specimen is free on every day that the loan needs it, the days for
 * packing, travel, rest and checks included. B1: nobody else's booking. B2: time
 * enough before the first day. B3: home from where it was. B4: asked for early
 * enough. B5: no longer than such loans are. B6: rested since it was last lent.
 * Ranges are half-open: the day that ends one booking may begin the next.
 */

import { daysBetween } from "#lib/platform/dates.ts";
import { busyRange } from "#lib/suitability/period.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isExport, practiceFor } from "#lib/suitability/rules/case.ts";
import { type Finding, longestLoanDays } from "#lib/suitability/schema.ts";

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

/** Days of notice: for teaching in the country, for a show in it, and abroad. */
export function noticeDays(
  request: Pick<RequestFacts, "lenderCountry" | "venue" | "purpose" | "practice">,
): number {
  const { noticeAbroadDays, noticeNationalDays, noticeTeachingDays } = practiceFor(request);
  if (isExport(request)) return noticeAbroadDays;
  return request.purpose === "teaching" ? noticeTeachingDays : noticeNationalDays;
}

function judgeNotice(request: RequestFacts): Verdict {
  const days = daysBetween(request.requestedOn, request.startsOn);
  const usual = noticeDays(request);
  const parameters = { days, usual };
  return days >= usual
    ? { outcome: "clear", fact: "free.notice", parameters }
    : { outcome: "attend", fact: "free.notice-short", parameters, wayOut: "way.later-start" };
}

/** The longest usual loan: research and picture-taking need less than a course or a show. */
function usualDays(request: RequestFacts): number {
  const { usualLoanDays, usualResearchDays } = practiceFor(request);
  return request.purpose === "teaching" || request.purpose === "exhibition"
    ? usualLoanDays
    : usualResearchDays;
}

function judgeLength(request: RequestFacts): Verdict {
  const days = daysBetween(request.startsOn, request.endsOn);
  const parameters = { days, usual: usualDays(request) };
  if (days > longestLoanDays)
    return {
      outcome: "bar",
      fact: "free.too-long",
      parameters: { days, usual: longestLoanDays },
      wayOut: "way.earlier-return",
    };
  return days <= parameters.usual
    ? { outcome: "clear", fact: "free.length", parameters }
    : { outcome: "attend", fact: "free.long", parameters, wayOut: "way.review-on-the-way" };
}

/** Mass from which a specimen has a crate of its own (worked out here). */
const CRATED_FROM_KG = 20;

/** Days that a specimen rests after a loan; what light harms rests as long as it was shown. */
export function restDays(
  { specimen, lastLoan }: Pick<SpecimenCase, "specimen" | "lastLoan">,
  request: Pick<RequestFacts, "practice"> = {},
): number {
  const { restBodyDays, restCrateDays, restSmallDays } = practiceFor(request);
  const isCrated = (specimen.mountedMassKg ?? specimen.massKg ?? 0) >= CRATED_FROM_KG;
  const rest = specimen.kind === "whole body" ? restBodyDays : isCrated ? restCrateDays : restSmallDays;
  return specimen.light === "sensitive" && lastLoan !== null ? Math.max(rest, lastLoan.days) : rest;
}

function judgeRest(subject: SpecimenCase, request: RequestFacts): Verdict {
  const { lastLoan } = subject;
  if (lastLoan === null) return { outcome: "clear", fact: "free.not-lent-of-late" };
  const needed = restDays(subject, request);
  const days = daysBetween(lastLoan.endedOn, request.startsOn);
  const parameters = { days, needed, endedOn: lastLoan.endedOn };
  return days >= needed
    ? { outcome: "clear", fact: "free.rested", parameters }
    : { outcome: "attend", fact: "free.not-rested", parameters, wayOut: "way.later-or-substitute" };
}

export function judgeBooking(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const find = findingsFor(subject.specimen.id, "free");
  return [
    find("B1", judgeDays(subject, request)),
    find("B2", judgeLeadTime(request)),
    find("B3", judgeElsewhere(subject, request)),
    find("B4", judgeNotice(request)),
    find("B5", judgeLength(request)),
    find("B6", judgeRest(subject, request)),
  ];
}
