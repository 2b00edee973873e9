/**
 * Which steps of the plan are done, from the record: a request that was submitted,
 * a word that was given, gates that hold, crates that came. What no record shows,
 * such as a form for a state indemnity, is marked by hand. What has left the house
 * has every step before it behind it. Which steps a loan has follows from where it
 * goes and what it is for.
 */
import type { DoneStep, PlanFacts } from "#lib/loans/backward-plan.ts";
import type { GateName } from "#lib/loans/gates.ts";
import {
  type PlanDays,
  type PlanStepName,
  planScopeOf,
  planSteps,
  restDays,
} from "#lib/loans/plan-defaults.ts";
import type { DateText } from "#lib/platform/dates.ts";

export type PlanSources = {
  today: DateText;
  opensOn: DateText | null;
  startsOn: DateText;
  endsOn: DateText;
  purpose: string;
  lenderCountry: string;
  venueCountry: string;
  keptFrom: DateText | null;
  days: PlanDays;
  stageOut: { departsOn: DateText; arrivesOn: DateText } | null;
  crates: readonly { grossMassKg: number }[];
  hasJars: boolean;
  heaviestSpecimenKg: number | null;
  /** By hand: a step's moved day, and the day on which it was done. */
  kept: readonly { step: string; plannedOn: DateText | null; doneOn: DateText | null }[];
  /** Whether the rules found anything about permits. */
  permits: { asked: boolean; settled: boolean };
  gates: ReadonlyMap<GateName, boolean>;
  submittedOn: DateText | null;
  acceptedOn: DateText | null;
  signedOn: DateText | null;
  handedOverOn: DateText | null;
  arrivedOn: DateText | null;
  openedOn: DateText | null;
  /** Something of it has left the house; something of it stands at the venue or did. */
  hasLeft: boolean;
  stoodAtVenue: boolean;
};

const byRecord = (on: DateText | null): DoneStep => ({ on, byHand: false });

/** Steps that lie behind whatever has left the house. */
const beforeLeaving: readonly PlanStepName[] = planSteps.slice(0, planSteps.indexOf("depart"));

function doneByRecord(sources: PlanSources): Map<PlanStepName, DoneStep> {
  const done = new Map<PlanStepName, DoneStep>();
  const when = (step: PlanStepName, on: DateText | null) => on !== null && done.set(step, byRecord(on));
  const holds = (step: PlanStepName, gate: GateName) =>
    sources.gates.get(gate) === true && done.set(step, byRecord(null));
  when("request", sources.submittedOn);
  when("decision", sources.acceptedOn);
  when("agreement", sources.signedOn);
  holds("certificate", "cover");
  // what is covered from nail to nail asks no state for its indemnity
  holds("indemnity form", "cover");
  holds("condition out", "condition");
  holds("pack", "crates");
  if (sources.permits.settled) done.set("permits", byRecord(null));
  if (sources.crates.length > 0) done.set("crate order", byRecord(null));
  if (sources.hasLeft) {
    for (const step of beforeLeaving) if (!done.has(step)) done.set(step, byRecord(null));
    done.set("depart", byRecord(sources.handedOverOn));
  }
  when("arrive", sources.arrivedOn);
  when("open crates", sources.openedOn);
  if (sources.stoodAtVenue && sources.opensOn !== null && sources.opensOn <= sources.today) {
    done.set("install", byRecord(null));
    done.set("opening", byRecord(sources.opensOn));
  }
  return done;
}

const isStep = (step: string): step is PlanStepName => (planSteps as readonly string[]).includes(step);

export function planFactsOf(sources: PlanSources): PlanFacts {
  const { purpose, lenderCountry, venueCountry, stageOut, kept, crates, permits } = sources;
  const done = doneByRecord(sources);
  const moved = new Map<PlanStepName, DateText>();
  for (const { step, plannedOn, doneOn } of kept) {
    if (!isStep(step)) continue;
    if (doneOn !== null && !done.has(step)) done.set(step, { on: doneOn, byHand: true });
    if (plannedOn !== null) moved.set(step, plannedOn);
  }
  const masses = [...crates.map(({ grossMassKg }) => grossMassKg), sources.heaviestSpecimenKg ?? 0];
  const crossesBorder = lenderCountry !== venueCountry;
  return {
    today: sources.today,
    opensOn: sources.opensOn,
    startsOn: sources.startsOn,
    endsOn: sources.endsOn,
    keptFrom: sources.keptFrom,
    scope: planScopeOf({ lenderCountry, venueCountry, purpose }),
    lenderCountry,
    venueCountry,
    restDays: restDays({ heaviestKg: Math.max(...masses), hasJars: sources.hasJars }),
    days: sources.days,
    leftOut: [
      ...(purpose === "exhibition" ? [] : (["indemnity form"] as const)),
      ...(crossesBorder || permits.asked ? [] : (["permits"] as const)),
    ],
    stated: { depart: stageOut?.departsOn ?? null, arrive: stageOut?.arrivesOn ?? null },
    moved,
    done,
  };
}

/** Steps that somebody marks as done by hand: no record shows them. */
export const markedByHand: readonly PlanStepName[] = [
  "indemnity form",
  "permits",
  "crate order",
  "certificate",
  "install",
];
