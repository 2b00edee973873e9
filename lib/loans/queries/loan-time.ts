/**
 * What a loan's file shows of time: the plan, cover over the whole way, longer
 * loans that were asked for, what was recalled, and of which specimens a donor has
 * withdrawn. Read beside the loan's case, for whoever has authorised; amounts of
 * cover are left to who may see them.
 */
import { backwardPlan, earliestDelivery, type Plan } from "#lib/loans/backward-plan.ts";
import { type ExtensionReason, extensionReasons, type RecallGround } from "#lib/loans/extension.ts";
import type { Gate } from "#lib/loans/gates.ts";
import type { NextStep } from "#lib/loans/next-step.ts";
import type { PlanScope } from "#lib/loans/plan-defaults.ts";
import { extensionFactsOf } from "#lib/loans/queries/extension-facts.ts";
import { type LoanCase, loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { planFactsOfLoan } from "#lib/loans/queries/loan-plan.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { type LoanSight, readableFinding } from "#lib/loans/sight.ts";
import { agreedReturnBy, timeSteps } from "#lib/loans/time-steps.ts";
import { awayStates } from "#lib/loans/transitions.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";
import { stagesOf } from "#lib/shipments/queries.ts";
import { type CoverPart, coverParts, nailToNailStretches } from "#lib/suitability/cover-gaps.ts";
import { sumOfCosts } from "#lib/suitability/rules/cover.ts";
import type { Finding } from "#lib/suitability/schema.ts";

type Reader = Database | Transaction;

export type ExtensionRow = {
  id: string;
  endsOn: DateText;
  grounds: string;
  askedBy: string;
  askedAt: string;
  outcome: "granted" | "refused" | null;
  answer: string;
  answeredBy: string | null;
  answeredAt: string | null;
};
export type RecallRow = {
  id: string;
  specimenIds: string[];
  ground: RecallGround;
  text: string;
  stopUse: boolean;
  returnBy: DateText;
  recalledAt: string;
};
export type LoanTime = {
  plan: (Plan & { scope: PlanScope; earliestDelivery: DateText }) | null;
  /** Null for who may not see amounts. */
  cover: CoverPart[] | null;
  extensions: ExtensionRow[];
  /** What stands against the longer loan that waits for its answer; for who answers it. */
  reasons: ExtensionReason[];
  recalls: RecallRow[];
  withdrawn: string[];
  steps: NextStep[];
};

type Beside = {
  state: LoanState;
  judged: readonly Finding[];
  gates: readonly Gate[];
  sight: LoanSight;
  /** The newest version, with its words and how many have signed it. */
  newest: { terms: string; signatures: readonly unknown[] } | undefined;
};

const withoutPlan: readonly LoanState[] = [
  "home, to be checked",
  "checked in",
  "closed",
  "declined",
  "withdrawn",
];

async function planOf(reader: Reader, loanCase: LoanCase, { state, judged, gates }: Beside) {
  if (withoutPlan.includes(state)) return null;
  const facts = await planFactsOfLoan(reader, loanCase, judged, gates);
  return { ...backwardPlan(facts), scope: facts.scope, earliestDelivery: earliestDelivery(facts) };
}

async function coverOf(reader: Reader, { row, request, subjects }: LoanCase): Promise<CoverPart[]> {
  const stages = await stagesOf(reader, row.id);
  const { minor, currency } = sumOfCosts(subjects);
  return coverParts(
    nailToNailStretches({
      ...request,
      venueCountry: request.venue.countryCode,
      out: stages.find(({ direction }) => direction === "out") ?? null,
      home: stages.find(({ direction }) => direction === "home") ?? null,
    }),
    request.covers,
    currency === null ? null : { minor, currency },
  );
}

/** Return-by as the version that both signed says it. */
function agreedEndsOn(newest: Beside["newest"]): DateText | null {
  if (newest === undefined || newest.signatures.length < 2) return null;
  return agreedReturnBy(newest.terms);
}

async function reasonsOf(
  reader: Reader,
  loanCase: LoanCase,
  endsOn: DateText,
  sight: LoanSight,
): Promise<ExtensionReason[]> {
  const { row, request } = loanCase;
  const longer = await loanCaseOf(reader, row.id, request.today, endsOn);
  const facts = await extensionFactsOf(reader, longer, request.endsOn, []);
  const findings = facts.findings.map((finding) => readableFinding(finding, sight));
  return extensionReasons({ ...facts, findings });
}

export async function loanTimeOf(
  reader: Reader,
  viewer: Viewer,
  loanCase: LoanCase,
  beside: Beside,
): Promise<LoanTime> {
  const { row, lines, request, subjects } = loanCase;
  const extensions = await reader.extension.findMany({
    where: { loanId: row.id },
    orderBy: { askedAt: "asc" },
  });
  const rows = await reader.recall.findMany({ where: { loanId: row.id }, orderBy: { recalledAt: "asc" } });
  const recalls = rows.map(
    ({ loanId: _loan, accountId: _account, ground, returnBy, recalledAt, ...recall }): RecallRow => ({
      ...recall,
      ground: ground as RecallGround,
      returnBy: toDateText(returnBy),
      recalledAt: recalledAt.toISOString(),
    }),
  );
  const isAway = lines.some(({ state }) => awayStates.includes(state));
  const withdrawn = isAway
    ? subjects
        .filter(({ provenance }) => provenance.consents.some((one) => one.withdrawalReceivedOn !== null))
        .map(({ specimen }) => specimen.id)
    : [];
  const open = extensions.find(({ outcome }) => outcome === null);
  return {
    plan: await planOf(reader, loanCase, beside),
    cover: beside.sight.costs && row.submittedAt !== null ? await coverOf(reader, loanCase) : null,
    extensions: extensions.map(({ loanId: _loan, endsOn, askedAt, answeredAt, outcome, ...asked }) => ({
      ...asked,
      endsOn: toDateText(endsOn),
      askedAt: askedAt.toISOString(),
      outcome: outcome as ExtensionRow["outcome"],
      answeredAt: answeredAt?.toISOString() ?? null,
    })),
    reasons:
      open && mayDo(viewer, "answerExtension")
        ? await reasonsOf(reader, loanCase, toDateText(open.endsOn), beside.sight)
        : [],
    recalls,
    withdrawn,
    steps: timeSteps({
      today: request.today,
      lines,
      withdrawn,
      recalls,
      openExtension: open ? { endsOn: toDateText(open.endsOn) } : null,
      endsOn: request.endsOn,
      agreedEndsOn: agreedEndsOn(beside.newest),
    }),
  };
}
