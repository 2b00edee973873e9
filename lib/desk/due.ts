/**
 * What needs somebody, in order of harm and date. Everything is derived from the
 * records as they stand: a withdrawn consent, a passed return day or a lapsed
 * permit becomes an item here and is stored nowhere. The way home is never barred;
 * a bar here says what must not wait.
 */

import { coverWarningOf } from "#lib/loans/cover-warning.ts";
import { type Harm, harmCode } from "#lib/loans/harm.ts";
import type { LineState, LoanState } from "#lib/loans/schema.ts";
import { awayStates } from "#lib/loans/transitions.ts";
import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

/** Days ahead by which something is announced; common practice, no source. */
export const announceDays = {
  agreement: 30,
  release: 30,
  return: 42,
  hold: 3,
  permit: 90,
  consent: 90,
  checkIn: 14,
} as const;

export type LoanForDesk = {
  id: string;
  number: string;
  borrower: string;
  title: string;
  state: LoanState;
  lines: readonly LineState[];
  startsOn: DateText;
  endsOn: DateText;
  daysBefore: number;
  submittedOn: DateText | null;
  signedByLender: boolean;
  signedByBorrower: boolean;
  agreementDrawnUp: boolean;
  /** The stages as they are planned: when it leaves, when it arrives at the venue, when it is home. */
  leavesOn: DateText | null;
  arrivesOn: DateText | null;
  homeOn: DateText | null;
  holdsExpireOn: DateText | null;
  /** The earliest moment at which a resting crate may be opened; null when none rests. */
  opensAt: string | null;
  coverEndsOn: DateText | null;
  consentWithdrawn: boolean;
  homeSince: DateText | null;
  /** What was seen on the way and nobody has answered; empty for who is not told of it. */
  harm: readonly Harm[];
  /** What is asked back and still out; null where nothing is. */
  recalled?: { count: number; returnBy: DateText; stopUse: boolean } | null;
  /** Until when a longer loan is asked for that nobody has answered. */
  extensionAskedUntil?: DateText | null;
};

export type DueItem = {
  key: string;
  outcome: Outcome;
  dueOn: DateText | null;
  /** catalogue code of the sentence */
  code: string;
  parameters: Record<string, string | number>;
  about: { kind: "loan" | "specimen" | "donor" | "letter" | "venue" | "institution"; id: string };
};

function expiryCode(daysLeft: number): string {
  if (daysLeft > 0) return "due.cover-expires";
  return daysLeft === 0 ? "due.cover-expires-today" : "due.cover-ended";
}

/** The day of a sign, and what sets it apart from others of its kind. */
function placeOfHarm(sign: Harm): { seenOn: DateText | null; of: string } {
  switch (sign.kind) {
    case "crate":
      return { seenOn: sign.at.slice(0, 10), of: sign.crate };
    default:
      return { seenOn: sign.checkedOn, of: sign.specimenId };
  }
}

/** Signs of harm on one loan; they are due since they were seen. */
function harmItems({
  id,
  number,
  borrower,
  harm,
}: Pick<LoanForDesk, "id" | "number" | "borrower" | "harm">): DueItem[] {
  return harm.map((sign): DueItem => {
    const { seenOn, of } = placeOfHarm(sign);
    const { kind: _kind, ...said } = sign;
    const told = Object.entries(said).filter((entry): entry is [string, string | number] =>
      ["string", "number"].includes(typeof entry[1]),
    );
    return {
      key: `${id} harm ${sign.kind} ${of}`,
      outcome: "attend",
      dueOn: seenOn,
      code: `due.${harmCode(sign)}`,
      parameters: { loan: number, borrower, ...Object.fromEntries(told) },
      about: { kind: "loan", id },
    };
  });
}

function itemsOf(loan: LoanForDesk, today: DateText): DueItem[] {
  const items: DueItem[] = [];
  const add = (
    code: string,
    outcome: Outcome,
    dueOn: DateText | null,
    parameters: Record<string, string | number> = {},
  ) =>
    items.push({
      key: `${loan.id} ${code}`,
      outcome,
      dueOn,
      code,
      parameters: { loan: loan.number, borrower: loan.borrower, ...parameters },
      about: { kind: "loan", id: loan.id },
    });
  const away = loan.lines.filter((line) => awayStates.includes(line)).length;
  const missing = loan.lines.filter((line) => line === "missing").length;

  if (missing > 0) add("due.missing", "bar", today, { count: missing });
  if (loan.consentWithdrawn && away > 0) add("due.consent-withdrawn", "bar", today);
  // A certificate ends on the first day that it no longer covers.
  const coverUntil = loan.homeOn === null ? loan.endsOn : addDays(loan.homeOn, 1);
  const needsCover = away > 0 || loan.state === "agreed" || loan.state === "preparing";
  if (loan.coverEndsOn && needsCover && loan.coverEndsOn < coverUntil)
    add("due.cover-ends", "bar", loan.coverEndsOn, { date: loan.coverEndsOn });
  else if (loan.coverEndsOn && needsCover) {
    const days = daysBetween(today, loan.coverEndsOn);
    const warning = coverWarningOf(days);
    if (warning !== null)
      add(expiryCode(days), warning === 7 ? "bar" : "attend", loan.coverEndsOn, {
        date: loan.coverEndsOn,
        days,
        warning,
      });
  }
  if (loan.recalled) {
    const { count, returnBy, stopUse } = loan.recalled;
    if (stopUse) add("due.stop-use", "bar", today, { count, date: returnBy });
    else add("due.recalled", returnBy < today ? "bar" : "attend", returnBy, { count, date: returnBy });
  }
  if (loan.extensionAskedUntil)
    add("due.answer-extension", "attend", loan.endsOn, { date: loan.extensionAskedUntil });

  if (loan.state === "at venue" && loan.endsOn <= today)
    add("due.overdue", "bar", loan.endsOn, { days: daysBetween(loan.endsOn, today), date: loan.endsOn });
  else if (
    loan.state === "at venue" &&
    loan.homeOn === null &&
    loan.endsOn <= addDays(today, announceDays.return)
  )
    add("due.return-not-booked", "attend", addDays(loan.endsOn, -announceDays.return), { date: loan.endsOn });

  if (loan.state === "requested") {
    add("due.decide", "attend", loan.submittedOn, {
      count: loan.lines.filter((line) => line === "requested").length,
    });
    if (loan.holdsExpireOn && loan.holdsExpireOn <= addDays(today, announceDays.hold))
      add("due.hold-expires", "attend", loan.holdsExpireOn, { date: loan.holdsExpireOn });
  }
  if (loan.state === "accepted") {
    const leavesOn = loan.leavesOn ?? addDays(loan.startsOn, -loan.daysBefore);
    const by = addDays(leavesOn, -announceDays.agreement);
    if (!loan.agreementDrawnUp) add("due.draw-up", "attend", by);
    else if (!loan.signedByLender) add("due.lender-signs", "attend", by);
    else add("due.borrower-signs", "attend", by);
  }
  const releaseBy = loan.leavesOn ?? loan.startsOn;
  if (
    (loan.state === "agreed" || loan.state === "preparing") &&
    releaseBy <= addDays(today, announceDays.release)
  )
    add("due.release", releaseBy < today ? "bar" : "attend", releaseBy, { date: loan.startsOn });
  if (loan.state === "travelling out") add("due.arrives", "attend", loan.arrivesOn ?? loan.startsOn);
  if (loan.opensAt && loan.lines.includes("resting at venue"))
    add("due.open", "attend", loan.opensAt.slice(0, 10), { moment: loan.opensAt });
  if (loan.state === "travelling home" && away > missing)
    add("due.coming-home", "attend", loan.homeOn ?? loan.endsOn);
  if (loan.state === "home, to be checked")
    add("due.check-in", "attend", loan.homeSince ? addDays(loan.homeSince, announceDays.checkIn) : today, {
      count: loan.lines.filter((line) => line === "resting at home").length,
    });
  if (loan.state === "checked in") add("due.close", "attend", today);
  return [...items, ...harmItems(loan)];
}

const rank = { bar: 0, attend: 1, clear: 2 } as const;

/** Bars first, then by day; what has no day comes last. */
export function orderItems(items: readonly DueItem[]): DueItem[] {
  return [...items].sort(
    (one, other) =>
      rank[one.outcome] - rank[other.outcome] ||
      (one.dueOn ?? "9999").localeCompare(other.dueOn ?? "9999") ||
      one.key.localeCompare(other.key),
  );
}

export function dueFromLoans(loans: readonly LoanForDesk[], today: DateText): DueItem[] {
  return orderItems(loans.flatMap((loan) => itemsOf(loan, today)));
}

/** A loan that is judged worse since consent, a licence or a venue changed; what is away is barred nothing by it. */
export function dueFromJudged(loan: {
  id: string;
  number: string;
  borrower: string;
  since: DateText;
  count: number;
}): DueItem {
  const { id, number, borrower, since, count } = loan;
  return {
    key: `${id} judged worse`,
    outcome: "attend",
    dueOn: since,
    code: "due.judged-worse",
    parameters: { loan: number, borrower, count, date: since },
    about: { kind: "loan", id },
  };
}

/** What is left of loans that are closed: specimens that came home to be treated or damaged. */
export function dueFromClosedLoans(
  loans: readonly Pick<LoanForDesk, "id" | "number" | "borrower" | "harm">[],
): DueItem[] {
  return loans.flatMap((loan) => harmItems(loan));
}
