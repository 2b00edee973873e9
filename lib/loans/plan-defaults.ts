/**
 * How many days before what each paper and step of a loan is due, by how far the
 * loan goes. The figures are defaults, each with where it comes from; the centre
 * may set its own. Days are whole and never negative.
 */
import { z } from "zod";
import { type Standing, standings } from "#lib/workings/standing.ts";

/** Every step, in the order in which they come. */
export const planSteps = [
  "request",
  "decision",
  "indemnity form",
  "permits",
  "crate order",
  "agreement",
  "certificate",
  "condition out",
  "pack",
  "depart",
  "arrive",
  "open crates",
  "install",
  "opening",
] as const;
export const PlanStepName = z.enum(planSteps);
export type PlanStepName = z.infer<typeof PlanStepName>;

/** Abroad, within the country, and a course nearby for which no crate is built. */
export const planScopes = ["international", "national", "teaching nearby"] as const;
export type PlanScope = (typeof planScopes)[number];

/** The steps that the centre sets days for; opening has none, and the rest in closed crates is not the centre's to shorten. */
export const countedSteps = [
  "request",
  "decision",
  "indemnity form",
  "permits",
  "crate order",
  "agreement",
  "certificate",
  "condition out",
  "pack",
  "depart",
  "open crates",
  "install",
] as const satisfies readonly PlanStepName[];
export type CountedStep = (typeof countedSteps)[number];

/** What the days of a step are counted back from. */
export const countedFrom: Readonly<Record<CountedStep, PlanStepName>> = {
  request: "opening",
  decision: "opening",
  "indemnity form": "depart",
  permits: "depart",
  "crate order": "opening",
  agreement: "depart",
  certificate: "depart",
  "condition out": "pack",
  pack: "depart",
  depart: "arrive",
  "open crates": "install",
  install: "opening",
};

const days = z.number().int().min(0).max(1_000).meta({ title: "Days ahead", unit: "d" });
const byScope = z.object({
  international: days,
  national: days,
  "teaching nearby": days,
} satisfies Record<PlanScope, typeof days>);
const byStep = <Value extends z.ZodType>(value: Value) =>
  z.object(Object.fromEntries(countedSteps.map((step) => [step, value])) as Record<CountedStep, Value>);

export const PlanDays = byStep(byScope);
export type PlanDays = z.infer<typeof PlanDays>;

type Default = Record<PlanScope, number> & { standing: Standing; source: string };
const [, , practice, derived] = standings;
const backward = "backward plan for an opening day, international with a crate";

/** @source per row; "backward plan" figures were worked out here for an international loan */
const defaults: Readonly<Record<CountedStep, Default>> = {
  request: {
    international: 270,
    national: 180,
    "teaching nearby": 42,
    standing: "read",
    source:
      "a consultant's note on lead times of 2021 (6 months within a country, 9 abroad); guidance of a museums' committee asks 12 from abroad; six weeks for a course nearby is common practice",
  },
  decision: { international: 120, national: 90, "teaching nearby": 28, standing: derived, source: backward },
  "indemnity form": {
    international: 90,
    national: 90,
    "teaching nearby": 90,
    standing: "read",
    source: "form of a state indemnity scheme: papers three months before cover is needed",
  },
  permits: { international: 45, national: 45, "teaching nearby": 14, standing: derived, source: backward },
  "crate order": {
    international: 60,
    national: 45,
    "teaching nearby": 14,
    standing: derived,
    source: backward,
  },
  agreement: {
    international: 30,
    national: 30,
    "teaching nearby": 14,
    standing: practice,
    source: "signed by both at least 30 days before dispatch",
  },
  certificate: {
    international: 14,
    national: 14,
    "teaching nearby": 7,
    standing: practice,
    source: "received at least 14 days before dispatch",
  },
  "condition out": {
    international: 3,
    national: 3,
    "teaching nearby": 1,
    standing: derived,
    source: backward,
  },
  pack: { international: 3, national: 3, "teaching nearby": 1, standing: derived, source: backward },
  depart: {
    international: 3,
    national: 1,
    "teaching nearby": 0,
    standing: derived,
    source: "days on the road, where no transport is planned yet",
  },
  "open crates": { international: 3, national: 3, "teaching nearby": 1, standing: derived, source: backward },
  install: { international: 5, national: 5, "teaching nearby": 1, standing: derived, source: backward },
};

export const planDefaults: PlanDays = PlanDays.parse(defaults);

/** Where the default of a step comes from. */
export function sourceOfStep(step: PlanStepName): { standing: Standing; source: string } {
  if (step === "opening") return { standing: derived, source: "stated with the request" };
  if (step === "arrive")
    return {
      standing: practice,
      source: "24 h in closed crates; 48 h above 200 kg or with jars (worked out here)",
    };
  const { standing, source } = defaults[step];
  return { standing, source };
}

/** Crates rest closed for a day; heavy ones and jars for two. */
export function restDays({ heaviestKg, hasJars }: { heaviestKg: number | null; hasJars: boolean }): 1 | 2 {
  return hasJars || (heaviestKg !== null && heaviestKg > heavyKg) ? 2 : 1;
}

/** Above this a crate takes longer to reach the air of the room; worked out here. */
const heavyKg = 200;

/** How far a loan goes, as the days are counted. */
export function planScopeOf({
  lenderCountry,
  venueCountry,
  purpose,
}: {
  lenderCountry: string;
  venueCountry: string;
  purpose: string;
}): PlanScope {
  if (lenderCountry !== venueCountry) return "international";
  return purpose === "teaching" ? "teaching nearby" : "national";
}
