/** What the plan of a loan is counted from, gathered beside its case. For whoever has authorised. */
import { backwardPlan, type Plan, type PlanFacts } from "#lib/loans/backward-plan.ts";
import { type Gate, releaseGates } from "#lib/loans/gates.ts";
import { planFactsOf } from "#lib/loans/plan-facts.ts";
import { bookedDaysOf } from "#lib/loans/queries/booked-days.ts";
import { type LoanCase, loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { planDaysOf } from "#lib/loans/queries/plan-days.ts";
import { releaseFactsOf } from "#lib/loans/queries/release-facts.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { currentDecisions } from "#lib/loans/stored-request.ts";
import { awayStates, homeStates } from "#lib/loans/transitions.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";
import type { CrateEventKind } from "#lib/shipments/schema.ts";
import { fragilityClassOf } from "#lib/specimens/classes.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";

type Reader = Database | Transaction;

const left: readonly LineState[] = [...awayStates, ...homeStates];
const stood: readonly LineState[] = [
  "at venue",
  "travelling home",
  "resting at home",
  "checked in",
  "closed",
];

/** What was planned of a loan, and what of it happened when. */
async function planRowsOf(reader: Reader, loanId: string) {
  const stageOut = await reader.stage.findUnique({
    where: { loanId_direction: { loanId, direction: "out" } },
    select: { departsOn: true, arrivesOn: true },
  });
  const kept = await reader.planStep.findMany({ where: { loanId } });
  const crates = await reader.crate.findMany({
    where: { loanId },
    select: {
      grossMassKg: true,
      events: { orderBy: { sequence: "asc" }, select: { kind: true, at: true } },
    },
  });
  const agreement = await reader.agreement.findFirst({
    where: { loanId },
    orderBy: { version: "desc" },
    select: { signatures: { select: { signedAt: true } } },
  });
  return { stageOut, kept, crates, signatures: agreement?.signatures ?? [] };
}

const lastDay = (days: readonly Date[]): DateText | null => days.map(toDateText).sort().at(-1) ?? null;

export async function planFactsOfLoan(
  reader: Reader,
  { row, centre, lines, request, subjects }: LoanCase,
  findings: readonly Finding[],
  gates: readonly Gate[],
): Promise<PlanFacts> {
  const { stageOut, kept, crates, signatures } = await planRowsOf(reader, row.id);
  const booked = await bookedDaysOf(reader, row.id);
  const firstOf = (kind: CrateEventKind) =>
    crates.flatMap(({ events }) => events.find((event) => event.kind === kind)?.at ?? []);
  const permits = findings.filter(({ group }) => group === "permits");
  const accepted = currentDecisions(row.decisions, row.submittedAt).find(
    ({ office, outcome }) => office === "curator" && outcome === "accept",
  );
  const hasLeft = lines.some(({ state }) => left.includes(state));
  return planFactsOf({
    today: request.today,
    opensOn: toDateTextOrNull(row.opensOn),
    startsOn: request.startsOn,
    endsOn: request.endsOn,
    purpose: request.purpose,
    lenderCountry: centre.countryCode,
    venueCountry: request.venue.countryCode,
    keptFrom: [...booked.values()].map(({ startsOn }) => startsOn).sort()[0] ?? null,
    days: await planDaysOf(reader),
    stageOut: stageOut && {
      departsOn: toDateText(stageOut.departsOn),
      arrivesOn: toDateText(stageOut.arrivesOn),
    },
    crates,
    hasJars: subjects.some(({ facts }) => fragilityClassOf(facts) === "jar"),
    heaviestSpecimenKg: subjects.reduce<number | null>(
      (most, { facts }) => Math.max(most ?? 0, facts.mountedMassKg ?? facts.massKg ?? 0),
      null,
    ),
    kept: kept.map(({ step, plannedOn, doneOn }) => ({
      step,
      plannedOn: toDateTextOrNull(plannedOn),
      doneOn: toDateTextOrNull(doneOn),
    })),
    permits: {
      asked: permits.length > 0,
      settled: permits.length > 0 && permits.every(({ outcome }) => outcome === "clear"),
    },
    gates: new Map(gates.map(({ gate, holds }) => [gate, holds])),
    submittedOn: toDateTextOrNull(row.submittedAt),
    acceptedOn: accepted ? toDateText(accepted.decidedAt) : null,
    signedOn: signatures.length === 2 ? lastDay(signatures.map(({ signedAt }) => signedAt)) : null,
    handedOverOn: lastDay(firstOf("handed over")),
    arrivedOn: hasLeft ? lastDay(firstOf("arrived")) : null,
    openedOn: hasLeft ? lastDay(firstOf("opened")) : null,
    hasLeft,
    stoodAtVenue: lines.some(({ state }) => stood.includes(state)),
  });
}

/** The plan of one loan, judged as its file judges it; for whoever has authorised. */
export async function planOfLoan(reader: Reader, loanId: string, day: DateText): Promise<Plan> {
  const loanCase = await loanCaseOf(reader, loanId, day);
  const findings = judgeSuitability(loanCase.request, loanCase.subjects);
  const gates = releaseGates(await releaseFactsOf(reader, loanCase, findings));
  return backwardPlan(await planFactsOfLoan(reader, loanCase, findings, gates));
}
