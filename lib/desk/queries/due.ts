/**
 * The desk of whoever is signed in: what is due, gathered from the rooms below. A
 * borrower sees the own institution's loans only. A handful of reads, whatever the
 * number of loans.
 */
import {
  announceDays,
  type DueItem,
  dueFromClosedLoans,
  dueFromLoans,
  type LoanForDesk,
  orderItems,
} from "#lib/desk/due.ts";
import { dueFacility } from "#lib/desk/queries/due-facility.ts";
import { dueJudged } from "#lib/desk/queries/due-judged.ts";
import { dueMoney } from "#lib/desk/queries/due-money.ts";
import { duePlans } from "#lib/desk/queries/due-plan.ts";
import { dueSettling } from "#lib/desk/queries/due-settling.ts";
import { listWritten } from "#lib/desk/queries/written.ts";
import type { Harm } from "#lib/loans/harm.ts";
import { loanState } from "#lib/loans/loan-state.ts";
import { harmOf, loansJudgedGravely } from "#lib/loans/queries/harm.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { recalledSpecimens } from "#lib/loans/time-steps.ts";
import { awayStates } from "#lib/loans/transitions.ts";
import { mayDo, maySee, requireSight } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, type DateText, toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";
import { listPermitsExpiring } from "#lib/provenance/queries/permits-ending.ts";
import { listConsentsToReview } from "#lib/provenance/queries.ts";

const mostLoans = 500;

/** States in which something may have been seen of a specimen on the way that nobody has answered. */
const afterRelease: readonly LineState[] = [...awayStates, "resting at home", "checked in"];

/** Who looks when something was seen on the way: those who receive what comes home. */
const isToldOfHarm = (viewer: Viewer) => mayDo(viewer, "receiveHome");

async function loansInHand(viewer: Viewer): Promise<LoanForDesk[]> {
  const rows = await database().loan.findMany({
    where: {
      closedAt: null,
      submittedAt: { not: null },
      ...(isBorrower(viewer) ? { borrower: { accounts: { some: { id: viewer.accountId } } } } : {}),
    },
    include: {
      borrower: { select: { name: true } },
      lines: {
        select: {
          state: true,
          stateSince: true,
          specimenId: true,
          bookings: { where: { releasedAt: null }, select: { expiresAt: true } },
        },
      },
      agreements: {
        orderBy: { version: "desc" },
        take: 1,
        include: { signatures: { select: { party: true } } },
      },
      stages: { select: { direction: true, departsOn: true, arrivesOn: true } },
      covers: { select: { endsAt: true } },
      recalls: { select: { specimenIds: true, returnBy: true, stopUse: true } },
      extensions: { where: { outcome: null }, select: { endsOn: true } },
      crates: {
        select: {
          events: { orderBy: { sequence: "desc" }, take: 1, select: { kind: true, notBefore: true } },
        },
      },
    },
    orderBy: { endsOn: "asc" },
    take: mostLoans,
  });
  const released = rows.filter(({ lines }) =>
    lines.some((line) => afterRelease.includes(line.state as LineState)),
  );
  const harm = isToldOfHarm(viewer)
    ? await harmOf(
        database(),
        released.map(({ id }) => id),
      )
    : new Map<string, Harm[]>();
  const withdrawn = await withdrawnAmong(rows.flatMap((row) => row.lines.map((line) => line.specimenId)));
  return rows.map((row): LoanForDesk => {
    const lines = row.lines.map((line) => line.state as LineState);
    const parties = row.agreements[0]?.signatures.map((signature) => signature.party) ?? [];
    const [signedByLender, signedByBorrower] = [parties.includes("lender"), parties.includes("borrower")];
    const holds = row.lines.flatMap((line) =>
      line.bookings.flatMap(({ expiresAt }) => (expiresAt ? [toDateText(expiresAt)] : [])),
    );
    const resting = row.crates.flatMap(({ events: [last] }) =>
      last?.kind === "arrived" && last.notBefore ? [last.notBefore.toISOString()] : [],
    );
    const covers = row.covers.map(({ endsAt }) => toDateText(endsAt)).sort();
    const home = row.lines
      .filter((line) => line.state === "resting at home")
      .map((line) => toDateText(line.stateSince));
    const out = row.stages.find(({ direction }) => direction === "out");
    const back = row.stages.find(({ direction }) => direction === "home");
    return {
      id: row.id,
      number: row.number,
      borrower: row.borrower.name,
      title: row.title,
      state: loanState({
        lines,
        signedByBoth: signedByLender && signedByBorrower,
        hasCrates: row.crates.length > 0,
        isEnded: false,
      }),
      lines,
      startsOn: toDateText(row.startsOn),
      endsOn: toDateText(row.endsOn),
      daysBefore: row.daysBefore,
      submittedOn: toDateTextOrNull(row.submittedAt),
      signedByLender,
      signedByBorrower,
      agreementDrawnUp: row.agreements.length > 0,
      leavesOn: toDateTextOrNull(out?.departsOn ?? null),
      arrivesOn: toDateTextOrNull(out?.arrivesOn ?? null),
      homeOn: toDateTextOrNull(back?.arrivesOn ?? null),
      holdsExpireOn: holds.sort()[0] ?? null,
      opensAt: resting.sort()[0] ?? null,
      coverEndsOn: covers.at(-1) ?? null,
      consentWithdrawn: row.lines.some((line) => withdrawn.has(line.specimenId)),
      homeSince: home.sort()[0] ?? null,
      harm: harm.get(row.id) ?? [],
      recalled: recalledOn(row),
      extensionAskedUntil: toDateTextOrNull(row.extensions[0]?.endsOn ?? null),
    };
  });
}

/** What of a loan is asked back and is not on its way home yet. */
function recalledOn({
  lines,
  recalls,
}: {
  lines: readonly { specimenId: string; state: string }[];
  recalls: readonly { specimenIds: string[]; returnBy: Date; stopUse: boolean }[];
}): NonNullable<LoanForDesk["recalled"]> | null {
  const out = recalledSpecimens({
    lines: lines.map(({ specimenId, state }) => ({
      specimenId,
      accessionNumber: "",
      state: state as LineState,
    })),
    recalls: recalls.map(({ specimenIds, returnBy }) => ({ specimenIds, returnBy: toDateText(returnBy) })),
  });
  const [returnBy] = out.map((one) => one.returnBy).sort();
  if (returnBy === undefined) return null;
  const ids = new Set(out.map(({ specimenId }) => specimenId));
  const stopUse = recalls.some((recall) => recall.stopUse && recall.specimenIds.some((id) => ids.has(id)));
  return { count: out.length, returnBy, stopUse };
}

/** Loans that are closed and whose specimens still wait for somebody to see to them. */
async function closedWithHarm(viewer: Viewer): Promise<DueItem[]> {
  if (!isToldOfHarm(viewer)) return [];
  const reader = database();
  const judged = await reader.loan.findMany({
    where: { id: { in: await loansJudgedGravely(reader) }, closedAt: { not: null } },
    select: { id: true, number: true, borrower: { select: { name: true } } },
    orderBy: { endsOn: "desc" },
    take: mostLoans,
  });
  const harm = await harmOf(
    reader,
    judged.map(({ id }) => id),
  );
  return dueFromClosedLoans(
    judged.map(({ id, number, borrower }) => ({
      id,
      number,
      borrower: borrower.name,
      harm: harm.get(id) ?? [],
    })),
  );
}

/** Specimens of which a donor has withdrawn. */
async function withdrawnAmong(specimenIds: readonly string[]): Promise<Set<string>> {
  const rows = await database().specimenDonor.findMany({
    where: {
      specimenId: { in: [...new Set(specimenIds)] },
      donor: { consents: { some: { supersededById: null, withdrawalReceivedOn: { not: null } } } },
    },
    select: { specimenId: true },
  });
  return new Set(rows.map(({ specimenId }) => specimenId));
}

async function provenanceItems(viewer: Viewer, day: DateText): Promise<DueItem[]> {
  const items: DueItem[] = [];
  if (maySee(viewer, "consentScopes")) {
    const { rows } = await listPermitsExpiring(viewer, { before: addDays(day, announceDays.permit) });
    for (const permit of rows)
      items.push({
        key: `permit ${permit.id}`,
        outcome: (permit.validUntil ?? day) < day ? "bar" : "attend",
        dueOn: permit.validUntil,
        code: "due.permit",
        parameters: { specimen: permit.accessionNumber, kind: permit.kind, date: permit.validUntil ?? "" },
        about: { kind: "specimen", id: permit.specimenId },
      });
  }
  if (maySee(viewer, "donorCode")) {
    const { rows } = await listConsentsToReview(viewer, { before: addDays(day, announceDays.consent) });
    for (const consent of rows)
      items.push({
        key: `consent ${consent.donorCode}`,
        outcome: consent.status.inForce ? "attend" : "bar",
        dueOn: consent.reviewDueOn,
        code: consent.status.inForce ? "due.consent-review" : "due.consent-not-in-force",
        parameters: { donor: consent.donorCode, count: consent.specimens },
        about: { kind: "donor", id: consent.donorCode },
      });
  }
  return items;
}

export async function listDue(viewer: Viewer): Promise<DueItem[]> {
  const day = today();
  if (!maySee(viewer, "loanFile", { institutionId: viewer.institutionId })) return [];
  const loans = dueFromLoans(await loansInHand(viewer), day);
  return orderItems([
    ...loans,
    ...(await closedWithHarm(viewer)),
    ...(await provenanceItems(viewer, day)),
    ...(await listWritten(viewer)),
    ...(await dueMoney(viewer, day)),
    ...(await duePlans(viewer, day)),
    ...(await dueJudged(viewer)),
    ...(await dueSettling(viewer, day)),
    ...(await dueFacility(viewer, day)),
  ]);
}

export type AwayRow = {
  loanId: string;
  number: string;
  borrower: string;
  venue: string;
  countryCode: string;
  endsOn: DateText;
  specimens: number;
};

/** Everything that is away, by the day it is due home. */
export async function listAway(viewer: Viewer): Promise<AwayRow[]> {
  requireSight(viewer, "allLoans");
  const rows = await database().loan.findMany({
    where: {
      lines: {
        some: {
          state: { in: ["travelling out", "resting at venue", "at venue", "travelling home", "missing"] },
        },
      },
    },
    include: {
      borrower: { select: { name: true } },
      venue: { select: { name: true, countryCode: true } },
      lines: {
        where: {
          state: { in: ["travelling out", "resting at venue", "at venue", "travelling home", "missing"] },
        },
        select: { id: true },
      },
    },
    orderBy: { endsOn: "asc" },
    take: mostLoans,
  });
  return rows.map((row) => ({
    loanId: row.id,
    number: row.number,
    borrower: row.borrower.name,
    venue: row.venue.name,
    countryCode: row.venue.countryCode,
    endsOn: toDateText(row.endsOn),
    specimens: row.lines.length,
  }));
}
