/**
 * The money of one loan: its quotations and cost statements with the borrower's
 * answers, what a cancellation costs, and what the next paper would begin with. A
 * borrower reads the papers of the own institution's loans only.
 */

import { comparedLines } from "#lib/costing/compared.ts";
import { readCosting } from "#lib/costing/frozen.ts";
import { type LoanForCosting, linesByScale } from "#lib/costing/lines.ts";
import { feeScaleOn } from "#lib/costing/queries.ts";
import type {
  ComparedLine,
  CostingContent,
  CostingKind,
  FeeScale,
  LineDraft,
  quotationAnswers,
} from "#lib/costing/schema.ts";
import { type QuotationState, quotationState } from "#lib/costing/standing.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { type PaymentStanding, paymentStanding } from "#lib/loans/queries/payments.ts";
import { treatmentHoursOf } from "#lib/loans/queries/treatment.ts";
import { hoursTogether } from "#lib/loans/treatment.ts";
import { mayDo, maySee, requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { type Database, database } from "#lib/platform/database.ts";
import { addDays, type DateText, daysBetween, toDateText } from "#lib/platform/dates.ts";
import { cratesOf, stagesOf } from "#lib/shipments/queries.ts";

export type CostingSheet = {
  id: string;
  kind: CostingKind;
  version: number;
  sha256: string;
  drawnUpBy: string;
  drawnUpAt: string;
  content: CostingContent;
  /** Of a quotation. */
  state: QuotationState | null;
  answer: { outcome: (typeof quotationAnswers)[number]; remark: string; answeredAt: string } | null;
  /** Against the version before; null for the first. */
  changes: ComparedLine[] | null;
};

export type MoneySheet = {
  quotations: CostingSheet[];
  statements: CostingSheet[];
  /** The quotation that was accepted last. */
  accepted: CostingSheet | null;
  payments: PaymentStanding;
  /** The day from which a cancellation is counted back. */
  dispatchOn: DateText;
  /** The day on which the loan ended without having left; null while it has not. */
  calledOffOn: DateText | null;
};

const answeredCostings = {
  include: { answer: true },
  orderBy: { version: "desc" },
} as const;

type CostingRow = Awaited<ReturnType<typeof costingRows>>[number];

async function costingRows(reader: Database, loanId: string) {
  return await reader.costing.findMany({ where: { loanId }, ...answeredCostings });
}

function toSheets(rows: readonly CostingRow[], kind: CostingKind, day: DateText): CostingSheet[] {
  const own = rows.filter((row) => row.kind === kind);
  const contents = own.map((row) => readCosting(row.content));
  return own.flatMap((row, index): CostingSheet[] => {
    const content = contents[index];
    if (!content) return [];
    const before = contents[index + 1];
    const answer = row.answer && {
      outcome: row.answer.outcome as (typeof quotationAnswers)[number],
      remark: row.answer.remark,
      answeredAt: row.answer.answeredAt.toISOString(),
    };
    return [
      {
        id: row.id,
        kind,
        version: row.version,
        sha256: row.sha256,
        drawnUpBy: row.drawnUpBy,
        drawnUpAt: row.drawnUpAt.toISOString(),
        content,
        state:
          kind === "quotation"
            ? quotationState({
                answer: answer?.outcome ?? null,
                isNewest: index === 0,
                validUntil: content.validUntil ?? day,
                today: day,
              })
            : null,
        answer,
        changes: before ? comparedLines(before.lines, content.lines) : null,
      },
    ];
  });
}

/** Null for who may not see what a loan costs. @throws {Refusal} "not-found" for what is not theirs */
export async function findMoney(viewer: Viewer, loanId: string): Promise<MoneySheet | null> {
  const borrowerId = await requireLoanFile(viewer, loanId);
  if (!maySee(viewer, "costings", { institutionId: borrowerId })) return null;
  const reader = database();
  const rows = await costingRows(reader, loanId);
  const loan = await reader.loan.findUniqueOrThrow({
    where: { id: loanId },
    select: {
      startsOn: true,
      daysBefore: true,
      closedAt: true,
      stages: { where: { direction: "out" }, select: { departsOn: true }, orderBy: { departsOn: "asc" } },
      lines: { select: { state: true } },
    },
  });
  const day = today();
  const quotations = toSheets(rows, "quotation", day);
  const planned = loan.stages[0]?.departsOn ?? null;
  const isCalledOff =
    loan.closedAt !== null &&
    loan.lines.every(({ state }) => ["withdrawn", "declined", "noted"].includes(state));
  return {
    quotations,
    statements: toSheets(rows, "cost statement", day),
    accepted: quotations.find(({ answer }) => answer?.outcome === "accepted") ?? null,
    payments: await paymentStanding(reader, loanId),
    dispatchOn: planned === null ? addDays(toDateText(loan.startsOn), -loan.daysBefore) : toDateText(planned),
    calledOffOn: isCalledOff && loan.closedAt !== null ? toDateText(loan.closedAt) : null,
  };
}

/** Keys of the papers and answers of one loan, as the audit knows them. */
export async function listCostingKeys(viewer: Viewer, loanId: string): Promise<string[]> {
  requireSight(viewer, "audit");
  if (!maySee(viewer, "costings")) return [];
  await requireLoanFile(viewer, loanId);
  const rows = await database().costing.findMany({ where: { loanId }, select: { id: true } });
  return rows.map(({ id }) => id);
}

/** Keys of the payments of one loan, as the audit knows them. */
export async function listPaymentKeys(viewer: Viewer, loanId: string): Promise<string[]> {
  requireSight(viewer, "audit");
  if (!maySee(viewer, "costings")) return [];
  await requireLoanFile(viewer, loanId);
  const rows = await database().payment.findMany({ where: { loanId }, select: { id: true } });
  return rows.map(({ id }) => id);
}

export type QuotationDraft = {
  scale: FeeScale;
  scaleVersion: number;
  /** Every line that the scale knows, those of nothing too. */
  byScale: LineDraft[];
  /** The days until a quotation that is drawn up now can be accepted. */
  validUntil: DateText;
  hasHuman: boolean;
  /** Hours of treatment that the conservator has estimated for what is on the loan now. */
  treatmentHours: string;
  /** How many specimens have no replacement cost, so that the premium is a least one. */
  costsUnknown: number;
};

/** What a quotation would begin with; null where there is no fee scale yet. */
export async function findQuotationDraft(viewer: Viewer, loanId: string): Promise<QuotationDraft | null> {
  const borrowerId = await requireLoanFile(viewer, loanId);
  if (!mayDo(viewer, "drawUpQuotation", { institutionId: borrowerId })) return null;
  const reader = database();
  const day = today();
  const counting = await feeScaleOn(reader, day);
  if (!counting) return null;
  const { request, subjects } = await loanCaseOf(reader, loanId, day);
  const crates = (await cratesOf(reader, loanId)).filter(({ contents }) => contents.length > 0);
  const stages = await stagesOf(reader, loanId);
  const currencies = new Map<string, number>();
  for (const { specimen } of subjects)
    if (specimen.replacementCost)
      currencies.set(
        specimen.replacementCost.currency,
        (currencies.get(specimen.replacementCost.currency) ?? 0) + specimen.replacementCost.minor,
      );
  const loan: LoanForCosting = {
    purpose: request.purpose,
    specimens: subjects.length,
    crates,
    isAbroad: request.venue.countryCode !== request.lenderCountry,
    stayDays: daysBetween(request.startsOn, request.endsOn),
    transitDays: stages.reduce((days, stage) => days + daysBetween(stage.departsOn, stage.arrivesOn) + 1, 0),
    costs: [...currencies].sort().map(([currency, minor]) => ({ currency, minor })),
    coversItself: request.statedCover !== null || request.covers.length > 0,
    treatmentHours: hoursTogether(await treatmentHoursOf(reader, loanId)),
  };
  return {
    scale: counting.scale,
    scaleVersion: counting.version,
    byScale: linesByScale(counting.scale, loan),
    validUntil: addDays(day, counting.scale.validDays),
    hasHuman: subjects.some(({ specimen }) => specimen.human),
    treatmentHours: loan.treatmentHours,
    costsUnknown: subjects.filter(({ specimen }) => specimen.replacementCost === null).length,
  };
}
