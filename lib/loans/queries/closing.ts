/**
 * What the close of a loan asks: customs borders on its way with their discharge,
 * claims, money, checks and records that are missing.
 */

import type { Occasion } from "#lib/condition/schema.ts";
import { openMinorOf } from "#lib/costing/payments.ts";
import { type ClosingFacts, customsCountries, type StillMissing, stillMissing } from "#lib/loans/closing.ts";
import { isLive, lineStatesSinceRelease } from "#lib/loans/loan-state.ts";
import { claimsOfLoan } from "#lib/loans/queries/claims.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { paymentStanding } from "#lib/loans/queries/payments.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { mayDo, requireSight } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { addDays, type DateText, toDateText } from "#lib/platform/dates.ts";

type Reader = Database | Transaction;

export type DischargeSheet = {
  id: string;
  dischargedOn: DateText;
  office: string;
  reference: string;
  note: string;
  recordedBy: string;
  recordedAt: string;
};

const closingParts = {
  venue: { select: { id: true, name: true, countryCode: true } },
  stages: { select: { through: true } },
  discharges: { orderBy: { sequence: "asc" } },
  checks: { select: { specimenId: true, occasion: true } },
  lines: {
    select: { specimenId: true, state: true, specimen: { select: { accessionNumber: true } } },
    orderBy: { specimen: { accessionNumber: "asc" } },
  },
} as const;

async function loanToClose(reader: Reader, loanId: string) {
  return await reader.loan.findUniqueOrThrow({ where: { id: loanId }, include: closingParts });
}
type LoanToClose = Awaited<ReturnType<typeof loanToClose>>;

async function countriesOf(reader: Reader, { venue, stages }: LoanToClose): Promise<string[]> {
  const { countryCode } = await centreSettings(reader);
  const through = stages.flatMap((stage) => stage.through);
  return customsCountries({ lenderCountry: countryCode, venueCountry: venue.countryCode, through });
}

/** The days of the loan for which nobody has filed what the air was. */
async function airNotRecorded(
  reader: Reader,
  { venue, startsOn, endsOn }: LoanToClose,
): Promise<ClosingFacts["airNotRecorded"]> {
  const kept = await reader.climateRecord.findFirst({
    where: { venueId: venue.id, startsAt: { lt: endsOn }, endsAt: { gt: startsOn } },
    select: { id: true },
  });
  if (kept) return null;
  return { venue: venue.name, from: toDateText(startsOn), until: addDays(toDateText(endsOn), -1) };
}

async function factsOf(reader: Reader, row: LoanToClose): Promise<ClosingFacts> {
  const { agreed, stated, payments } = await paymentStanding(reader, row.id);
  const countries = await countriesOf(reader, row);
  const claims = await claimsOfLoan(reader, row.id);
  const owed = stated ?? agreed;
  return {
    lines: row.lines
      .filter(({ state }) => isLive(state as LineState))
      .map(({ specimenId, state, specimen }) => ({
        accessionNumber: specimen.accessionNumber,
        state: state as LineState,
        occasions: row.checks
          .filter((check) => check.specimenId === specimenId)
          .map(({ occasion }) => occasion as Occasion),
      })),
    customs: countries.length === 0 ? null : { countries, isDischarged: row.discharges.length > 0 },
    openClaims: claims.filter(({ isOpen }) => isOpen),
    money:
      owed === null
        ? null
        : { isStated: stated !== null, openMinor: openMinorOf(owed, payments), currency: owed.currency },
    airNotRecorded: await airNotRecorded(reader, row),
  };
}

/** For whoever has authorised. */
export async function missingToClose(reader: Reader, loanId: string): Promise<StillMissing[]> {
  return stillMissing(await factsOf(reader, await loanToClose(reader, loanId)));
}

/** Whether a customs border on its way is still without its discharge. For whoever has authorised. */
export async function waitsForDischarge(reader: Reader, loanId: string): Promise<boolean> {
  return (await missingToClose(reader, loanId)).some(({ code }) => code === "close.not-discharged");
}

export type ClosingSheet = {
  /** Countries behind a customs border of the way; none where there is no border. */
  countries: string[];
  discharges: DischargeSheet[];
  /** Null for who does not close loans. */
  missing: StillMissing[] | null;
};

/** Null before anything has left. @throws {Refusal} "not-found" for a loan that is not theirs */
export async function findClosing(viewer: Viewer, loanId: string): Promise<ClosingSheet | null> {
  await requireLoanFile(viewer, loanId);
  const reader = database();
  const row = await loanToClose(reader, loanId);
  if (!row.lines.some(({ state }) => lineStatesSinceRelease.includes(state as LineState))) return null;
  const accounts = await reader.account.findMany({
    where: { id: { in: row.discharges.map(({ accountId }) => accountId) } },
    select: { id: true, name: true },
  });
  const names = new Map(accounts.map(({ id, name }) => [id, name]));
  return {
    countries: await countriesOf(reader, row),
    discharges: row.discharges.map((one) => ({
      id: one.id,
      dischargedOn: toDateText(one.dischargedOn),
      office: one.office,
      reference: one.reference,
      note: one.note,
      recordedBy: names.get(one.accountId) ?? "",
      recordedAt: one.recordedAt.toISOString(),
    })),
    missing:
      mayDo(viewer, "closeLoan") && row.closedAt === null ? stillMissing(await factsOf(reader, row)) : null,
  };
}

/** Keys of the discharges of one loan, as the audit knows them. */
export async function listDischargeKeys(viewer: Viewer, loanId: string): Promise<string[]> {
  requireSight(viewer, "audit");
  await requireLoanFile(viewer, loanId);
  const rows = await database().customsDischarge.findMany({ where: { loanId }, select: { id: true } });
  return rows.map(({ id }) => id);
}
