/**
 * Plans that are behind, of the loans that have not left. Their days are counted from
 * plain records, a handful of reads for all of them; only a loan with a passed step of
 * which a gate or a rule decides whether it is done is judged as its file judges it.
 */
import type { DueItem } from "#lib/desk/due.ts";
import { dueFromPlans, hasToBeJudged, type LateLoan, passedSteps } from "#lib/desk/due-plan.ts";
import { backwardPlan } from "#lib/loans/backward-plan.ts";
import { planFactsOf } from "#lib/loans/plan-facts.ts";
import { planOfLoan } from "#lib/loans/queries/loan-plan.ts";
import { planDaysOf } from "#lib/loans/queries/plan-days.ts";
import { currentDecisions } from "#lib/loans/stored-request.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type DateText, toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";

const mostLoans = 500;
/** So many are judged, those that leave next. */
const mostJudged = 20;

const nothingHasLeft = {
  none: { state: { notIn: ["requested", "accepted", "packed", "declined", "withdrawn"] } },
};

async function loansToLeave(viewer: Viewer) {
  return await database().loan.findMany({
    where: {
      closedAt: null,
      submittedAt: { not: null },
      lines: { some: { state: { in: ["requested", "accepted", "packed"] } }, ...nothingHasLeft },
      ...(isBorrower(viewer) ? { borrowerId: viewer.institutionId ?? "" } : {}),
    },
    include: {
      borrower: { select: { name: true } },
      venue: { select: { countryCode: true } },
      decisions: { orderBy: { decidedAt: "asc" } },
      planSteps: true,
      stages: { where: { direction: "out" }, select: { departsOn: true, arrivesOn: true } },
      crates: { select: { grossMassKg: true } },
      agreements: {
        orderBy: { version: "desc" },
        take: 1,
        select: { signatures: { select: { signedAt: true } } },
      },
    },
    orderBy: { startsOn: "asc" },
    take: mostLoans,
  });
}

export async function duePlans(viewer: Viewer, day: DateText): Promise<DueItem[]> {
  const rows = await loansToLeave(viewer);
  if (rows.length === 0) return [];
  const reader = database();
  const { countryCode } = await centreSettings();
  const days = await planDaysOf(reader);
  const late: LateLoan[] = [];
  let judged = 0;
  for (const row of rows) {
    const accepted = currentDecisions(row.decisions, row.submittedAt).find(
      ({ office, outcome }) => office === "curator" && outcome === "accept",
    );
    const [stageOut] = row.stages;
    const signatures = row.agreements[0]?.signatures ?? [];
    const facts = planFactsOf({
      today: day,
      opensOn: toDateTextOrNull(row.opensOn),
      startsOn: toDateText(row.startsOn),
      endsOn: toDateText(row.endsOn),
      purpose: row.purpose,
      lenderCountry: countryCode,
      venueCountry: row.venue.countryCode,
      keptFrom: null,
      days,
      stageOut: stageOut
        ? { departsOn: toDateText(stageOut.departsOn), arrivesOn: toDateText(stageOut.arrivesOn) }
        : null,
      crates: row.crates,
      // the longest rest gives the earliest days: a step that passed is not missed, and its file is asked
      hasJars: true,
      heaviestSpecimenKg: null,
      kept: row.planSteps.map(({ step, plannedOn, doneOn }) => ({
        step,
        plannedOn: toDateTextOrNull(plannedOn),
        doneOn: toDateTextOrNull(doneOn),
      })),
      permits: { asked: false, settled: false },
      gates: new Map(),
      submittedOn: toDateTextOrNull(row.submittedAt),
      acceptedOn: accepted ? toDateText(accepted.decidedAt) : null,
      signedOn:
        signatures.length === 2
          ? (signatures
              .map(({ signedAt }) => toDateText(signedAt))
              .sort()
              .at(-1) ?? null)
          : null,
      handedOverOn: null,
      arrivedOn: null,
      openedOn: null,
      hasLeft: false,
      stoodAtVenue: false,
    });
    const isDecided = accepted !== undefined;
    let steps = passedSteps(backwardPlan(facts).rows, isDecided);
    if (hasToBeJudged(steps) && judged < mostJudged) {
      judged += 1;
      steps = passedSteps((await planOfLoan(reader, row.id, day)).rows, isDecided);
    }
    late.push({ loanId: row.id, loan: row.number, borrower: row.borrower.name, steps });
  }
  return dueFromPlans(late, isBorrower(viewer));
}
