/**
 * One loan with everything that its file shows, in the viewer's sight. Before it
 * leaves, the rules are run anew for each look and the gates are judged; later the
 * last kept run speaks. A borrower sees the loans of its own institution only;
 * what is not theirs is not there.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { type CheckComparison, compareChecks } from "#lib/condition/comparison.ts";
import { type CheckSheet, checksOfLoan } from "#lib/condition/queries.ts";
import { earliestStart, type FaultOfStart, faultOfStart } from "#lib/loans/asked-days.ts";
import { type Gate, releaseGates } from "#lib/loans/gates.ts";
import type { Harm } from "#lib/loans/harm.ts";
import { missingFieldsOf, type RequestDraft } from "#lib/loans/inputs.ts";
import { checksBesideEarlier } from "#lib/loans/line-checks.ts";
import { loanState, statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { type NextStep, nextSteps } from "#lib/loans/next-step.ts";
import { bookedDaysOf, heldUntilOf } from "#lib/loans/queries/booked-days.ts";
import { waitsForDischarge } from "#lib/loans/queries/closing.ts";
import { harmOf } from "#lib/loans/queries/harm.ts";
import { type CaseLine, type LoanCase, loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { type LoanTime, loanTimeOf } from "#lib/loans/queries/loan-time.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { releaseFactsOf } from "#lib/loans/queries/release-facts.ts";
import type { DecisionOutcome, LoanState } from "#lib/loans/schema.ts";
import { type LoanSight, readableFindings, readableGates, sightOfLoan } from "#lib/loans/sight.ts";
import { type SignatureRow, toSignature } from "#lib/loans/signature-row.ts";
import { currentDecisions, toRequest } from "#lib/loans/stored-request.ts";
import { awayStates } from "#lib/loans/transitions.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { now, today } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { type CrateSheet, cratesOf, type StageSheet, stagesOf } from "#lib/shipments/queries.ts";
import { busyRange, type Days } from "#lib/suitability/period.ts";
import type { CostSum } from "#lib/suitability/rules/cover.ts";
import type { Finding, RuleGroup } from "#lib/suitability/schema.ts";
import {
  judgeSuitability,
  type Office,
  officesNeeded,
  suitabilityMatrix,
} from "#lib/suitability/suitability.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

type Reader = Database | Transaction;

export type AgreementSheet = {
  id: string;
  version: number;
  sha256: string;
  drawnUpBy: string;
  drawnUpAt: string;
  signatures: SignatureRow[];
  /** The canonical text as it was frozen; null for who may not see replacement costs. */
  terms: string | null;
};

export type CoverSheet = {
  id: string;
  insurer: string;
  policyNumber: string;
  minor: number;
  currency: string;
  startsAt: string;
  endsAt: string;
  coversTransit: boolean;
  coversStay: boolean;
  territories: string[];
};

export type DecisionRow = {
  office: Office;
  outcome: DecisionOutcome;
  decidedBy: string;
  decidedAt: string;
  conditions: string;
  grounds: string;
  reference: string;
  /** Whether it is about the request as it stands. */
  counts: boolean;
};

export type LineChecks = {
  out: CheckSheet | null;
  home: CheckSheet | null;
  comparison: CheckComparison | null;
  /** Every check on this loan, in the order in which they were made, beside the one it was made beside. */
  all: { check: CheckSheet; totals: CheckComparison["totals"] | null; needsReview: boolean }[];
};

export type LoanSheet = {
  id: string;
  number: string;
  state: LoanState;
  isOverdue: boolean;
  borrower: {
    id: string;
    name: string;
    city: string;
    countryCode: string;
    /** BCP 47 tags, the first one first. */
    languages: string[];
  };
  venue: { id: string; name: string; address: string; countryCode: string };
  request: RequestDraft;
  missingFields: string[];
  /** The first day on which it could be delivered when it is asked for today. */
  earliestStart: DateText;
  daysBefore: number;
  daysAfter: number;
  /** The days that are kept for it, or that would be. */
  busy: Days;
  createdAt: string;
  submittedAt: string | null;
  /** When the borrower confirmed what is kept of it. */
  factsConfirmedAt: string | null;
  /** Until when its days are held; null where nothing is held, or is kept for good. */
  heldUntil: string | null;
  closedAt: string | null;
  lines: (CaseLine & { checks: LineChecks | null })[];
  sight: LoanSight;
  /** Of this moment before it leaves, of the last kept run afterwards. */
  findings: Finding[];
  matrix: Record<string, Record<RuleGroup, Outcome>>;
  latestRun: { occasion: string; runAt: string; findings: Finding[] } | null;
  officesNeeded: Office[];
  decisions: DecisionRow[];
  /** Null for who may not see replacement costs. */
  coverNeeded: CostSum | null;
  covers: CoverSheet[] | null;
  agreements: AgreementSheet[];
  crates: CrateSheet[];
  stages: StageSheet[];
  gates: Gate[];
  nextSteps: NextStep[];
  time: LoanTime;
};

const withGates: readonly LoanState[] = ["accepted", "agreed", "preparing"];

/** The days that are kept for all of its specimens together, or that would be. */
function keptOf(booked: ReadonlyMap<string, Days>, busy: Days): Days {
  const kept = [...booked.values()];
  return {
    startsOn: kept.map(({ startsOn }) => startsOn).sort()[0] ?? busy.startsOn,
    endsOn:
      kept
        .map(({ endsOn }) => endsOn)
        .sort()
        .at(-1) ?? busy.endsOn,
  };
}

/** Of a slip, why it cannot begin on the day that is stated. */
function faultOfSlip(state: LoanState, facts: LoanCase["request"], viewer: Viewer): FaultOfStart | null {
  const { startsOn, today: day, daysBefore } = facts;
  if (state !== "enquiry") return null;
  return faultOfStart(startsOn, { today: day, daysBefore, mayHurry: !isBorrower(viewer) });
}

/** What a viewer may know of signs of harm: crates are seen by all, what a check found by who may read checks. */
function readableHarm(harm: readonly Harm[], sight: LoanSight): Harm[] {
  return sight.checks ? [...harm] : harm.filter(({ kind }) => kind === "crate");
}

function toAgreement(
  row: Prisma.AgreementGetPayload<{
    include: { signatures: { include: { file: { select: { id: true; sha256: true } } } } };
  }>,
  sight: LoanSight,
): AgreementSheet {
  return {
    id: row.id,
    version: row.version,
    sha256: row.sha256,
    drawnUpBy: row.drawnUpBy,
    drawnUpAt: row.drawnUpAt.toISOString(),
    signatures: row.signatures.map(toSignature),
    terms: sight.costs ? row.terms : null,
  };
}

function decisionsOf({ row }: LoanCase): DecisionRow[] {
  const current = new Set(currentDecisions(row.decisions, row.submittedAt).map(({ id }) => id));
  return row.decisions.map(
    ({ id, office, outcome, decidedBy, decidedAt, conditions, grounds, reference }) => ({
      office: office as Office,
      outcome: outcome as DecisionRow["outcome"],
      decidedBy,
      decidedAt: decidedAt.toISOString(),
      conditions,
      grounds,
      reference,
      counts: current.has(id),
    }),
  );
}

function coversOf({ row }: LoanCase): CoverSheet[] {
  return row.covers.map(({ id, insurer, policyNumber, amountMinor, currency, ...cover }) => ({
    id,
    insurer,
    policyNumber,
    minor: Number(amountMinor),
    currency,
    startsAt: cover.startsAt.toISOString(),
    endsAt: cover.endsAt.toISOString(),
    coversTransit: cover.coversTransit,
    coversStay: cover.coversStay,
    territories: cover.territories,
  }));
}

function checksOfLine(checks: readonly CheckSheet[]): LineChecks {
  const out = checks.findLast((check) => check.occasion === "out") ?? null;
  const home = checks.findLast((check) => check.occasion === "home") ?? null;
  return {
    out,
    home,
    comparison: out && home ? compareChecks(out, home) : null,
    all: checksBesideEarlier(checks).map(({ check, comparison }) => ({
      check,
      totals: comparison?.totals ?? null,
      needsReview: comparison?.needsReview ?? false,
    })),
  };
}

async function latestRunOf(reader: Reader, loanId: string) {
  const run = await reader.suitabilityRun.findFirst({
    where: { loanId },
    orderBy: [{ runAt: "desc" }, { id: "desc" }],
  });
  return (
    run && {
      occasion: run.occasion,
      runAt: run.runAt.toISOString(),
      findings: run.findings as unknown as Finding[],
    }
  );
}

/** The outcome of every group for every specimen, as a plain record. */
const toMatrix = (findings: readonly Finding[]) => Object.fromEntries(suitabilityMatrix(findings));

/** @throws {Refusal} "not-found" for what is not there and for what is not theirs */
export async function getLoan(viewer: Viewer, loanId: string): Promise<LoanSheet> {
  const borrowerId = await requireLoanFile(viewer, loanId);
  const sight = sightOfLoan(viewer, { institutionId: borrowerId });
  const reader = database();
  const day = today();
  const loanCase = await loanCaseOf(reader, loanId, day);
  const { row, lines, request: facts, subjects } = loanCase;
  const agreements = await reader.agreement.findMany({
    where: { loanId },
    orderBy: { version: "desc" },
    include: {
      signatures: { orderBy: { party: "desc" }, include: { file: { select: { id: true, sha256: true } } } },
    },
  });
  const crates = await cratesOf(reader, loanId);
  const stages = await stagesOf(reader, loanId);
  const checks = await checksOfLoan(reader, loanId);
  const [newest] = agreements;
  const state = loanState({
    lines: lines.map((line) => line.state),
    signedByBoth: newest?.signatures.length === 2,
    hasCrates: crates.length > 0,
    isEnded: row.closedAt !== null,
  });
  const isAway = lines.some((line) => awayStates.includes(line.state));
  const latestRun = await latestRunOf(reader, loanId);
  const judged = statesBeforeRelease.includes(state)
    ? judgeSuitability(facts, subjects)
    : (latestRun?.findings ?? []);
  const release = withGates.includes(state) ? await releaseFactsOf(reader, loanCase, judged) : null;
  const judgedGates = release === null ? [] : releaseGates(release);
  const gates = readableGates(judgedGates, sight);
  const time = await loanTimeOf(reader, viewer, loanCase, {
    state,
    judged,
    gates: judgedGates,
    sight,
    newest,
  });
  const findings = readableFindings(judged, sight);
  const request = toRequest(row);
  const missingFields = missingFieldsOf(request);
  const booked = await bookedDaysOf(reader, loanId);
  const harm =
    isAway || state === "home, to be checked" || state === "checked in"
      ? ((await harmOf(reader, [loanId])).get(loanId) ?? [])
      : [];
  const needed = officesNeeded(judged);
  const accepted = decisionsOf(loanCase).filter((one) => one.counts && one.outcome === "accept");
  return {
    id: row.id,
    number: row.number,
    state,
    isOverdue: isAway && facts.endsOn <= day,
    borrower: {
      id: row.borrower.id,
      name: row.borrower.name,
      city: row.borrower.city,
      countryCode: row.borrower.countryCode,
      languages: row.borrower.languages,
    },
    venue: {
      id: facts.venue.id,
      name: facts.venue.name,
      address: facts.venue.address,
      countryCode: facts.venue.countryCode,
    },
    request,
    missingFields,
    earliestStart: earliestStart(day, row),
    daysBefore: row.daysBefore,
    daysAfter: row.daysAfter,
    busy: keptOf(booked, busyRange(facts)),
    createdAt: row.createdAt.toISOString(),
    submittedAt: row.submittedAt?.toISOString() ?? null,
    factsConfirmedAt: row.factsConfirmedAt?.toISOString() ?? null,
    heldUntil: await heldUntilOf(reader, loanId),
    closedAt: row.closedAt?.toISOString() ?? null,
    lines: lines.map((line) => ({
      ...line,
      checkIn: sight.checks ? line.checkIn : null,
      checks: sight.checks ? checksOfLine(checks.get(line.specimenId) ?? []) : null,
    })),
    sight,
    findings,
    matrix: toMatrix(judged),
    latestRun: latestRun && { ...latestRun, findings: readableFindings(latestRun.findings, sight) },
    officesNeeded: needed,
    decisions: isBorrower(viewer)
      ? decisionsOf(loanCase).filter((one) => one.office === "curator" || one.outcome === "decline")
      : decisionsOf(loanCase),
    coverNeeded: sight.costs && release !== null ? release.costs : null,
    covers: sight.costs ? coversOf(loanCase) : null,
    agreements: agreements.map((agreement) => toAgreement(agreement, sight)),
    crates,
    stages,
    gates,
    time,
    nextSteps: nextSteps({
      time: time.steps,
      isNotDischarged: state === "checked in" && (await waitsForDischarge(reader, loanId)),
      state,
      today: day,
      now: now().toISOString(),
      endsOn: facts.endsOn,
      missingFields,
      faultOfStart: faultOfSlip(state, facts, viewer),
      lines: lines.map(({ specimenId, accessionNumber, state: lineState }) => ({
        specimenId,
        accessionNumber,
        state: lineState,
        isChecked: checks.get(specimenId)?.some((check) => check.occasion === "home") ?? false,
      })),
      findings,
      officesNeeded: needed,
      officesAccepted: accepted.map((one) => one.office),
      agreement: newest
        ? {
            version: newest.version,
            signedByLender: newest.signatures.some(({ party }) => party === "lender"),
            signedByBorrower: newest.signatures.some(({ party }) => party === "borrower"),
          }
        : null,
      hasCover: row.covers.length > 0,
      gates,
      homeOn: stages.find((stage) => stage.direction === "home")?.arrivesOn ?? null,
      booked,
      harm: readableHarm(harm, sight),
      resting: crates
        .filter((crate) => crate.state === "resting closed")
        .map(({ code, notBefore, contents }) => ({
          crate: code,
          notBefore,
          specimenIds: contents.map(({ specimenId }) => specimenId),
        })),
    }),
  };
}
