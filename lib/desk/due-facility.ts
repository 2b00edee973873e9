/**
 * What is due about venues and insurance: a facility report that no longer counts or
 * was never filed while specimens are there, the monthly question whether anything
 * has changed there, and insurance that ends. The days of insurance are those of
 * cover: 60, 30 and 7.
 */
import type { DueItem } from "#lib/desk/due.ts";
import { insuranceWarningOn } from "#lib/people/insurance.ts";
import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";

/** While specimens are somewhere the borrower is asked each month (common practice, no source). */
export const askAgainDays = 30;

export type VenueInUse = {
  venueId: string;
  venue: string;
  institution: string;
  /** One of the loans that are there. */
  loan: string;
  /** Since when something is there. */
  since: DateText;
  report: { reportedOn: DateText; validUntil: DateText } | null;
};

export function dueFromVenues(venues: readonly VenueInUse[], today: DateText): DueItem[] {
  return venues.flatMap(({ venueId, venue, institution, loan, since, report }): DueItem[] => {
    const item = (code: string, dueOn: DateText, date: DateText): DueItem => ({
      key: `${venueId} ${code}`,
      outcome: "attend",
      dueOn,
      code,
      parameters: { venue, institution, loan, date },
      about: { kind: "venue", id: venueId },
    });
    if (report === null) return [item("due.report-missing", since, since)];
    if (report.validUntil <= today) return [item("due.report-old", report.validUntil, report.reportedOn)];
    const [asked = since] = [report.reportedOn, since].sort().reverse();
    const due = addDays(asked, askAgainDays);
    return due <= today ? [item("due.anything-changed", due, report.reportedOn)] : [];
  });
}

export type InsuranceForDesk = {
  id: string;
  institutionId: string;
  institution: string;
  insurer: string;
  policyNumber: string;
  validUntil: DateText;
  /** Whether another of the institution goes on after it. */
  isFollowed: boolean;
};

/** One that another takes over from is nobody's worry. */
export function dueFromInsurances(insurances: readonly InsuranceForDesk[], today: DateText): DueItem[] {
  return insurances.flatMap((one): DueItem[] => {
    const warning = insuranceWarningOn(one.validUntil, today);
    if (warning === null || one.isFollowed) return [];
    return [
      {
        key: `insurance ${one.id}`,
        outcome: warning <= 7 ? "bar" : "attend",
        dueOn: one.validUntil,
        code: warning === 0 ? "due.insurance-ended" : "due.insurance-ends",
        parameters: {
          institution: one.institution,
          insurer: one.insurer,
          policy: one.policyNumber,
          date: one.validUntil,
          days: daysBetween(today, one.validUntil),
        },
        about: { kind: "institution", id: one.institutionId },
      },
    ];
  });
}
