/** Loans that are not settled: money before dispatch, cost statements, customs. A borrower sees the own institution's. */
import { figureAgreed } from "#lib/agreements/frozen-terms.ts";
import { agreedPayment, openMinorOf } from "#lib/costing/payments.ts";
import type { DueItem } from "#lib/desk/due.ts";
import {
  dueBeforeDispatch,
  dueFromCustoms,
  dueFromStatements,
  type NotDischarged,
  type OpenBeforeDispatch,
  standardDays,
  type UnpaidStatement,
} from "#lib/desk/due-settling.ts";
import { customsCountries } from "#lib/loans/closing.ts";
import { paymentStandings } from "#lib/loans/queries/payments.ts";
import { maySee } from "#lib/people/permission.ts";
import { findCentre } from "#lib/people/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, type DateText, toDateText } from "#lib/platform/dates.ts";

const most = 500;

const ownOnly = (viewer: Viewer) =>
  isBorrower(viewer) ? { borrower: { accounts: { some: { id: viewer.accountId } } } } : {};

const loanHead = {
  id: true,
  number: true,
  startsOn: true,
  daysBefore: true,
  borrower: { select: { name: true } },
  agreements: { orderBy: { version: "desc" }, take: 1, select: { terms: true } },
  stages: { select: { direction: true, departsOn: true, arrivesOn: true, through: true } },
} as const;

const clauseOf = { feeDays: "fee", paymentDays: "costs", dischargeDays: "border" } as const;

/** Days as the newest version agrees them. */
const daysOf = ([newest]: readonly { terms: string }[], name: keyof typeof clauseOf): number =>
  (newest && figureAgreed(newest.terms, clauseOf[name], name)) ?? standardDays[name];

async function openBeforeDispatch(viewer: Viewer, day: DateText): Promise<OpenBeforeDispatch[]> {
  const reader = database();
  const rows = await reader.loan.findMany({
    where: {
      ...ownOnly(viewer),
      closedAt: null,
      lines: { some: { state: { in: ["accepted", "packed"] } } },
      costings: { some: { kind: "quotation", answer: { outcome: "accepted" } } },
    },
    select: loanHead,
    orderBy: { startsOn: "asc" },
    take: most,
  });
  const standings = await paymentStandings(
    reader,
    rows.map(({ id }) => id),
  );
  return rows.flatMap((row): OpenBeforeDispatch[] => {
    const standing = standings.get(row.id);
    const agreed = standing === undefined ? null : agreedPayment(standing, day);
    if (agreed === null || agreed.openMinor <= 0) return [];
    const out = row.stages.find(({ direction }) => direction === "out");
    return [
      {
        loanId: row.id,
        loan: row.number,
        borrower: row.borrower.name,
        version: agreed.version,
        leavesOn: out ? toDateText(out.departsOn) : addDays(toDateText(row.startsOn), -row.daysBefore),
        feeDays: daysOf(row.agreements, "feeDays"),
        putOffUntil: agreed.putOff?.until ?? null,
      },
    ];
  });
}

/** Of closed loans as well: a file that was closed does not make a bill paid. */
async function unpaidStatements(viewer: Viewer): Promise<UnpaidStatement[]> {
  const reader = database();
  const rows = await reader.loan.findMany({
    where: { ...ownOnly(viewer), costings: { some: { kind: "cost statement" } } },
    select: loanHead,
    orderBy: { startsOn: "desc" },
    take: most,
  });
  const standings = await paymentStandings(
    reader,
    rows.map(({ id }) => id),
  );
  return rows.flatMap((row): UnpaidStatement[] => {
    const { stated, payments } = standings.get(row.id) ?? { stated: null, payments: [] };
    if (stated === null || openMinorOf(stated, payments) <= 0) return [];
    return [
      {
        loanId: row.id,
        loan: row.number,
        borrower: row.borrower.name,
        version: stated.version,
        statedOn: stated.statedOn,
        paymentDays: daysOf(row.agreements, "paymentDays"),
      },
    ];
  });
}

async function notDischarged(viewer: Viewer): Promise<NotDischarged[]> {
  const reader = database();
  const centre = await findCentre(reader);
  if (centre === null) return [];
  const lenderCountry = centre.settings.countryCode;
  const rows = await reader.loan.findMany({
    where: {
      ...ownOnly(viewer),
      closedAt: null,
      lines: { some: { state: { in: ["resting at home", "checked in"] } } },
      discharges: { none: {} },
    },
    select: {
      ...loanHead,
      venue: { select: { countryCode: true } },
      lines: {
        where: { state: { in: ["resting at home", "checked in"] } },
        select: { stateSince: true },
        orderBy: { stateSince: "asc" },
        take: 1,
      },
    },
    orderBy: { endsOn: "asc" },
    take: most,
  });
  return rows.flatMap((row): NotDischarged[] => {
    const way = {
      lenderCountry,
      venueCountry: row.venue.countryCode,
      through: row.stages.flatMap(({ through }) => through),
    };
    const [first] = row.lines;
    if (first === undefined || customsCountries(way).length === 0) return [];
    const home = row.stages.find(({ direction }) => direction === "home");
    return [
      {
        loanId: row.id,
        loan: row.number,
        borrower: row.borrower.name,
        homeOn: toDateText(home?.arrivesOn ?? first.stateSince),
        dischargeDays: daysOf(row.agreements, "dischargeDays"),
      },
    ];
  });
}

export async function dueSettling(viewer: Viewer, day: DateText): Promise<DueItem[]> {
  const seesMoney = maySee(viewer, "costings", { institutionId: viewer.institutionId });
  return [
    ...(seesMoney ? dueBeforeDispatch(await openBeforeDispatch(viewer, day), day) : []),
    ...(seesMoney ? dueFromStatements(await unpaidStatements(viewer)) : []),
    ...dueFromCustoms(await notDischarged(viewer), day),
  ];
}
