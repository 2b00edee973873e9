/**
 * The terms of a loan as they would be drawn up now, and what there is to choose. For
 * the registrar before a version is frozen, and for the command that freezes it.
 */

import { amendmentOf, type Kept, type KeptVersion, keptOf } from "#lib/agreements/amendment.ts";
import { type CourierReason, reasonsForCourier } from "#lib/agreements/courier.ts";
import { type CurrentTerms, findTerms, type TermsCrate } from "#lib/agreements/frozen-terms.ts";
import { agreementTerms, type TermsFacts } from "#lib/agreements/terms.ts";
import type { TermsAnnexes } from "#lib/agreements/terms-annexes.ts";
import { readCosting } from "#lib/costing/frozen.ts";
import { isLive, loanState } from "#lib/loans/loan-state.ts";
import { type CaseSubject, type LoanCase, loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { currentDecisions } from "#lib/loans/stored-request.ts";
import { emergencyLine } from "#lib/people/emergency.ts";
import { mayDo } from "#lib/people/permission.ts";
import { newestReportOf } from "#lib/people/queries/facility.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import type { Id } from "#lib/platform/identity.ts";
import { type CrateSheet, cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import { CratePlan } from "#lib/transport/crate-plan.ts";

type Reader = Database | Transaction;

function toTermsCrate(crate: CrateSheet): TermsCrate {
  const { plan } = crate.plan as { plan: unknown };
  const { handling, orientation } = CratePlan.pick({ handling: true, orientation: true }).parse(plan);
  return {
    code: crate.code,
    kind: crate.kind,
    outerLengthMm: crate.outerLengthMm,
    outerWidthMm: crate.outerWidthMm,
    outerHeightMm: crate.outerHeightMm,
    grossMassKg: Math.round(crate.grossMassKg * 10) / 10,
    handling: handling.mode,
    orientation,
    contents: crate.contents.map((content) => content.accessionNumber),
  };
}

/** The last check of each specimen, by reference and by the hash of what it says. */
function checksOf(subjects: readonly CaseSubject[]): TermsAnnexes["checks"] {
  return subjects.flatMap(({ specimen, latestSheet }) =>
    latestSheet === null
      ? []
      : [
          {
            accessionNumber: specimen.accessionNumber,
            occasion: latestSheet.occasion,
            checkedOn: latestSheet.checkedOn,
            grade: latestSheet.grade,
            checkId: latestSheet.id,
            sha256: sha256Hex(canonicalText(latestSheet)),
          },
        ],
  );
}

type Accepted = Pick<TermsFacts, "costing" | "cancellation">;

/** What the accepted quotation gives the agreement, where there is one. */
async function acceptedQuotation(reader: Reader, loanId: Id): Promise<Accepted> {
  const row = await reader.costing.findFirst({
    where: { loanId, kind: "quotation", answer: { outcome: "accepted" } },
    orderBy: { version: "desc" },
  });
  if (row === null) return { costing: null, cancellation: null };
  const { cancellation } = readCosting(row.content);
  const [early, late] = [cancellation[0], cancellation.at(-1)];
  return {
    costing: {
      kind: row.kind,
      version: row.version,
      sha256: row.sha256,
      total: { minor: Number(row.totalMinor), currency: row.currency },
      drawnUpOn: toDateText(row.drawnUpAt),
    },
    cancellation:
      early && late
        ? {
            earlyDays: early.daysBefore,
            earlyPercent: Number(early.percent),
            lateDays: late.daysBefore,
            latePercent: Number(late.percent),
          }
        : null,
  };
}

/** All versions of a loan's agreement, the oldest first. */
export async function keptVersions(reader: Reader, loanId: Id): Promise<KeptVersion[]> {
  const rows = await reader.agreement.findMany({
    where: { loanId },
    orderBy: { version: "asc" },
    include: { _count: { select: { signatures: true } } },
  });
  return rows.map(({ version, sha256, terms, _count }) => ({
    version,
    sha256,
    terms,
    signatures: _count.signatures,
  }));
}

async function termsFactsOf(
  reader: Reader,
  loanCase: LoanCase,
  { languages, parameters }: Kept,
  loan: { version: number; drawnUpOn: DateText },
): Promise<TermsFacts> {
  const { row, centre, request, subjects } = loanCase;
  const { borrower } = row;
  const crates = await cratesOf(reader, row.id);
  const stages = await stagesOf(reader, row.id);
  const report = await newestReportOf(reader, row.venueId);
  const { name, address, city, countryCode, email, phone } = borrower;
  return {
    request,
    loan: { number: row.number, title: row.title, ...loan },
    lender: {
      name: centre.name,
      address: centre.address,
      city: centre.city,
      countryCode: centre.countryCode,
      email: centre.email,
      phone: centre.phone,
    },
    lenderEmergency: emergencyLine(centre),
    borrower: {
      name,
      address,
      city,
      countryCode,
      email,
      phone,
      contactName: row.contactName,
      contactEmail: row.contactEmail,
      contactPhone: row.contactPhone,
    },
    subjects,
    facilityReport: report && {
      version: report.version,
      reportedOn: report.reportedOn,
      validUntil: report.validUntil,
    },
    certificates: row.covers.map((cover) => ({
      insurer: cover.insurer,
      policyNumber: cover.policyNumber,
      amount: { minor: Number(cover.amountMinor), currency: cover.currency },
      startsAt: cover.startsAt.toISOString(),
      endsAt: cover.endsAt.toISOString(),
      coversTransit: cover.coversTransit,
      coversStay: cover.coversStay,
      territories: cover.territories,
    })),
    crates: crates.filter((crate) => crate.contents.length > 0).map(toTermsCrate),
    stages: stages.map(({ direction, carrier, through, departsOn, arrivesOn }) => ({
      direction,
      carrier,
      through,
      departsOn,
      arrivesOn,
    })),
    conditions: currentDecisions(row.decisions, row.submittedAt)
      .filter((decision) => decision.outcome === "accept" && decision.conditions !== "")
      .map(({ office, decidedAt, conditions, reference }) => ({
        office,
        decidedOn: toDateText(decidedAt),
        conditions,
        reference,
      })),
    opensOn: row.opensOn === null ? null : toDateText(row.opensOn),
    currency: centre.currency,
    languages,
    parameters,
    checks: checksOf(subjects),
    ...(await acceptedQuotation(reader, row.id)),
    amends: null,
  };
}

/**
 * The next version as it would be frozen now.
 * @param said what is chosen for it; what is left out stays as in the newest version
 */
export async function termsNow(
  reader: Reader,
  loanCase: LoanCase,
  said: { languages: Kept["languages"] | null; parameters: Kept["parameters"] | null; today: DateText },
): Promise<{ terms: CurrentTerms; newest: KeptVersion | null }> {
  const versions = await keptVersions(reader, loanCase.row.id);
  const newest = versions.at(-1) ?? null;
  const kept = keptOf(newest === null ? null : findTerms(newest.terms));
  const chosen: Kept = {
    languages: said.languages ?? kept.languages,
    parameters: said.parameters ?? kept.parameters,
  };
  const loan = { version: (newest?.version ?? 0) + 1, drawnUpOn: said.today };
  const facts = await termsFactsOf(reader, loanCase, chosen, loan);
  const amends = amendmentOf(versions, agreementTerms(facts));
  return { terms: agreementTerms({ ...facts, amends }), newest };
}

const beforeRelease: readonly string[] = ["accepted", "agreed", "preparing"];

/** The next version before it is frozen, with what speaks for a courier. */
export type TermsDraft = { terms: CurrentTerms; courier: CourierReason[] };

/** Null where nothing can be drawn up, and for who may not. */
export async function findTermsDraft(viewer: Viewer, loanId: Id): Promise<TermsDraft | null> {
  await requireLoanFile(viewer, loanId);
  if (!mayDo(viewer, "drawUpAgreement")) return null;
  const reader = database();
  const loanCase = await loanCaseOf(reader, loanId, today());
  const state = loanState({
    lines: loanCase.lines.map((line) => line.state),
    signedByBoth: false,
    hasCrates: false,
    isEnded: loanCase.row.closedAt !== null,
  });
  if (!beforeRelease.includes(state) || !loanCase.lines.some((line) => isLive(line.state))) return null;
  const { terms, newest } = await termsNow(reader, loanCase, {
    languages: null,
    parameters: null,
    today: today(),
  });
  const { parameters } = keptOf(newest === null ? null : findTerms(newest.terms));
  const { request, subjects, centre } = loanCase;
  return { terms, courier: reasonsForCourier({ request, subjects, currency: centre.currency, parameters }) };
}

export async function findTermsNow(viewer: Viewer, loanId: Id): Promise<CurrentTerms | null> {
  return (await findTermsDraft(viewer, loanId))?.terms ?? null;
}
