/**
 * The plan of a loan counted backwards from its opening day: the last possible
 * day of every paper and step. Without an opening day it is counted from the day
 * of delivery. A step that somebody moved keeps its new day, and what follows it
 * is put off as far as it must be; what cannot be put off (the opening, a planned
 * transport) is named as a conflict. A step is never later than what follows it,
 * and a later day of one step never makes another earlier.
 */
import { travelDayFrom, travelDayUntil } from "#lib/loans/no-travel-days.ts";
import {
  type CountedStep,
  countedFrom,
  type PlanDays,
  type PlanScope,
  type PlanStepName,
  planSteps,
} from "#lib/loans/plan-defaults.ts";
import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

export type DoneStep = { on: DateText | null; byHand: boolean };

export type PlanFacts = {
  today: DateText;
  /** Null where nobody has stated it; the plan is then counted from the delivery. */
  opensOn: DateText | null;
  /** Day of delivery, and the first day that is no longer the loan. */
  startsOn: DateText;
  endsOn: DateText;
  /** The first day that is kept for the specimens; null where none is. */
  keptFrom: DateText | null;
  scope: PlanScope;
  lenderCountry: string;
  venueCountry: string;
  restDays: number;
  days: PlanDays;
  /** Steps that this loan does not have, such as permits within one country. */
  leftOut: readonly PlanStepName[];
  /** Days of a transport that is planned. */
  stated: { depart: DateText | null; arrive: DateText | null };
  moved: ReadonlyMap<PlanStepName, DateText>;
  done: ReadonlyMap<PlanStepName, DoneStep>;
};

export type PlanConflict = { code: string; step: PlanStepName; parameters: Record<string, string | number> };
export type PlanRow = {
  step: PlanStepName;
  lastDay: DateText;
  daysLeft: number;
  outcome: Outcome;
  done: DoneStep | null;
  /** The day comes from the record and is moved there. */
  stated: boolean;
  moved: boolean;
  /** What it is counted from, and by how many days. */
  countedFrom: PlanStepName | null;
  days: number | null;
};
export type Plan = { rows: PlanRow[]; conflicts: PlanConflict[] };

/** A step wants somebody this many days before its last day; common practice, no source. */
export const attendDays = 14;

/** What has to come before each step. */
const comesAfter: Readonly<Record<PlanStepName, readonly PlanStepName[]>> = {
  request: [],
  decision: ["request"],
  "indemnity form": ["decision"],
  permits: ["decision"],
  "crate order": ["decision"],
  agreement: ["decision"],
  certificate: ["decision"],
  "condition out": ["decision"],
  pack: ["condition out", "crate order"],
  depart: ["pack", "agreement", "certificate", "permits", "indemnity form"],
  arrive: ["depart"],
  "open crates": ["arrive"],
  install: ["open crates"],
  opening: ["install"],
};

/** Crates move and are opened on working days only. */
const onTravelDays: readonly PlanStepName[] = ["depart", "arrive", "open crates"];
const withOpeningOnly: readonly PlanStepName[] = ["open crates", "install", "opening"];

/** The steps of this loan, in order. */
export function stepsOf({ opensOn, leftOut }: Pick<PlanFacts, "opensOn" | "leftOut">): PlanStepName[] {
  return planSteps.filter(
    (step) => !leftOut.includes(step) && (opensOn !== null || !withOpeningOnly.includes(step)),
  );
}

/** Days that have to lie between a step and what follows it. */
export function leastDays(before: PlanStepName, facts: PlanFacts): number {
  if (before === "depart") return Math.min(transitDays(facts), facts.days.depart[facts.scope]);
  return before === "arrive" ? facts.restDays : 0;
}

const transitDays = ({ stated, days, scope }: PlanFacts): number =>
  stated.depart !== null && stated.arrive !== null
    ? daysBetween(stated.depart, stated.arrive)
    : days.depart[scope];

const countryOf = (step: PlanStepName, facts: PlanFacts) =>
  step === "depart" ? facts.lenderCountry : facts.venueCountry;

const backToTravelDay = (day: DateText, step: PlanStepName, facts: PlanFacts) =>
  onTravelDays.includes(step) ? travelDayUntil(day, countryOf(step, facts)) : day;
const onToTravelDay = (day: DateText, step: PlanStepName, facts: PlanFacts) =>
  onTravelDays.includes(step) ? travelDayFrom(day, countryOf(step, facts)) : day;

/** The day that the record gives a step: the opening, a planned transport. */
function statedDay(step: PlanStepName, { opensOn, stated }: PlanFacts): DateText | null {
  if (step === "opening") return opensOn;
  return step === "depart" || step === "arrive" ? stated[step] : null;
}

/** What a step is counted back from in this loan, and by how many days. */
function anchorOf(step: PlanStepName, facts: PlanFacts): { from: PlanStepName; days: number } | null {
  if (step === "opening") return null;
  if (step === "arrive") return facts.opensOn === null ? null : { from: "open crates", days: facts.restDays };
  const counted = step as CountedStep;
  const from = countedFrom[counted];
  const days = step === "depart" ? transitDays(facts) : facts.days[counted][facts.scope];
  return { from: from === "opening" && facts.opensOn === null ? "arrive" : from, days };
}

const earliest = (days: readonly DateText[]) => [...days].sort()[0];

/** From the opening back: each step as late as what follows it allows. */
function countBack(steps: readonly PlanStepName[], facts: PlanFacts): Map<PlanStepName, DateText> {
  const dates = new Map<PlanStepName, DateText>();
  for (const step of [...steps].reverse()) {
    const fixed = statedDay(step, facts) ?? facts.moved.get(step);
    if (fixed !== undefined) {
      dates.set(step, fixed);
      continue;
    }
    const anchor = anchorOf(step, facts);
    const from = anchor === null ? facts.startsOn : (dates.get(anchor.from) ?? facts.startsOn);
    const limits = steps
      .filter((other) => comesAfter[other].includes(step))
      .flatMap((other) => {
        const day = dates.get(other);
        return day === undefined ? [] : [addDays(day, -leastDays(step, facts))];
      });
    const day = earliest([addDays(from, -(anchor?.days ?? 0)), ...limits]) ?? from;
    dates.set(step, backToTravelDay(day, step, facts));
  }
  return dates;
}

/** From the request on: what follows a step that is late is put off; what cannot be is told. */
function putOff(
  steps: readonly PlanStepName[],
  dates: Map<PlanStepName, DateText>,
  facts: PlanFacts,
): PlanConflict[] {
  const conflicts: PlanConflict[] = [];
  for (const step of steps) {
    const day = dates.get(step) ?? facts.startsOn;
    for (const before of comesAfter[step].filter((other) => steps.includes(other))) {
      const done = facts.done.get(before);
      const from = done ? done.on : (dates.get(before) ?? null);
      if (from === null) continue;
      const needed = onToTravelDay(addDays(from, leastDays(before, facts)), step, facts);
      if (needed <= (dates.get(step) ?? day) || facts.done.has(step)) continue;
      if (statedDay(step, facts) === null) dates.set(step, needed);
      else conflicts.push({ code: "plan.too-late-for", step, parameters: { before, needed, day } });
    }
  }
  return conflicts;
}

function outcomeOf(lastDay: DateText, today: DateText, done: DoneStep | null): Outcome {
  if (done !== null) return "clear";
  if (lastDay < today) return "bar";
  return lastDay <= addDays(today, attendDays) ? "attend" : "clear";
}

/** What is against the days as they stand, beyond what follows what. */
function otherConflicts(dates: ReadonlyMap<PlanStepName, DateText>, facts: PlanFacts): PlanConflict[] {
  const conflicts: PlanConflict[] = [];
  const [departs, arrives] = [dates.get("depart"), dates.get("arrive")];
  const { keptFrom, startsOn, done, stated } = facts;
  if (done.has("depart")) return conflicts;
  if (departs !== undefined && keptFrom !== null && departs < keptFrom && stated.depart === null)
    conflicts.push({
      code: "plan.before-kept-days",
      step: "depart",
      parameters: { day: departs, from: keptFrom },
    });
  if (arrives !== undefined && arrives > startsOn && facts.opensOn === null)
    conflicts.push({ code: "plan.after-delivery", step: "arrive", parameters: { day: arrives, startsOn } });
  return conflicts;
}

export function backwardPlan(facts: PlanFacts): Plan {
  const steps = stepsOf(facts);
  const dates = countBack(steps, facts);
  const conflicts = putOff(steps, dates, facts);
  const rows = steps.map((step): PlanRow => {
    const lastDay = dates.get(step) ?? facts.startsOn;
    const done = facts.done.get(step) ?? null;
    const anchor = anchorOf(step, facts);
    return {
      step,
      lastDay,
      daysLeft: daysBetween(facts.today, lastDay),
      outcome: outcomeOf(lastDay, facts.today, done),
      done,
      stated: statedDay(step, facts) !== null,
      moved: statedDay(step, facts) === null && facts.moved.has(step),
      countedFrom: anchor?.from ?? null,
      days: anchor?.days ?? null,
    };
  });
  return { rows, conflicts: [...conflicts, ...otherConflicts(dates, facts)] };
}

export type PlanMove = {
  plan: Plan;
  /** Every step whose day is another one now, the moved one too. */
  changed: { step: PlanStepName; from: DateText; to: DateText }[];
  /** Why it cannot be moved; empty where it can. */
  conflicts: PlanConflict[];
};

/** What stands against this move by itself, before anything follows. */
function faultsOfMove(facts: PlanFacts, step: PlanStepName, to: DateText): PlanConflict[] {
  const fault = (code: string, parameters: PlanConflict["parameters"] = {}) => [
    { code, step, parameters: { day: to, ...parameters } },
  ];
  if (!stepsOf({ ...facts, opensOn: step === "opening" ? to : facts.opensOn }).includes(step))
    return fault("plan.not-a-step");
  if (facts.done.has(step)) return fault("plan.done-already");
  if (to < facts.today) return fault("plan.day-past");
  if (step === "opening" && !(to >= facts.startsOn && to < facts.endsOn))
    return fault("plan.opening-outside-loan", { startsOn: facts.startsOn, until: addDays(facts.endsOn, -1) });
  if (step !== "opening" && statedDay(step, facts) !== null) return fault("plan.day-of-transport");
  if (onToTravelDay(to, step, facts) !== to)
    return fault("plan.no-travel-day", { country: countryOf(step, facts) });
  return [];
}

/** Moves one step, and what follows with it; the opening moves the whole plan. */
export function movePlan(facts: PlanFacts, step: PlanStepName, to: DateText): PlanMove {
  const before = backwardPlan(facts);
  const faults = faultsOfMove(facts, step, to);
  if (faults.length > 0) return { plan: before, changed: [], conflicts: faults };
  const plan = backwardPlan(
    step === "opening"
      ? { ...facts, opensOn: to }
      : { ...facts, moved: new Map([...facts.moved, [step, to]]) },
  );
  const dayBefore = new Map(before.rows.map((row) => [row.step, row]));
  const changed = plan.rows.flatMap((row) => {
    const from = dayBefore.get(row.step)?.lastDay ?? row.lastDay;
    return from === row.lastDay ? [] : [{ step: row.step, from, to: row.lastDay }];
  });
  const known = new Set(before.conflicts.map(({ code, step: of }) => `${code} ${of}`));
  const pastNow = plan.rows
    .filter((row) => row.step !== step && row.outcome === "bar" && dayBefore.get(row.step)?.outcome !== "bar")
    .map(
      (row): PlanConflict => ({
        code: "plan.would-be-past",
        step: row.step,
        parameters: { day: row.lastDay },
      }),
    );
  const notKept = plan.rows
    .filter((row) => row.step === step && row.lastDay !== to)
    .map(
      (row): PlanConflict => ({
        code: "plan.follows-later",
        step,
        parameters: { day: to, needed: row.lastDay },
      }),
    );
  const conflicts = [
    ...plan.conflicts.filter(({ code, step: of }) => !known.has(`${code} ${of}`)),
    ...pastNow,
    ...notKept,
  ];
  return { plan, changed, conflicts };
}

/** Further ahead than this no plan is looked for. */
const furthestDays = 1_500;

/** The first day of delivery for which nothing that is still to do is past already. */
export function earliestDelivery(
  facts: Omit<PlanFacts, "opensOn" | "startsOn" | "endsOn" | "moved" | "stated" | "keptFrom">,
): DateText {
  const isPossible = (startsOn: DateText) =>
    backwardPlan({
      ...facts,
      startsOn,
      opensOn: null,
      endsOn: addDays(startsOn, 1),
      keptFrom: null,
      moved: new Map(),
      stated: { depart: null, arrive: null },
    }).rows.every((row) => row.done !== null || row.lastDay >= facts.today);
  let [low, high] = [1, furthestDays];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (isPossible(addDays(facts.today, middle))) high = middle;
    else low = middle + 1;
  }
  return travelDayFrom(addDays(facts.today, low), facts.venueCountry);
}
