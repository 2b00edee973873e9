/**
 * Whether the crate that a specimen needs gets to the room (W1), whether a crate
 * of the list protects it (W2), and whether the floor bears it (W3). The plan is the transport room's; one
 * finding for each passage that is not clear, or one for the whole way. A
 * specimen that nobody has measured has no crate yet, which is attend.
 */
import { type CrateQuestion, crateQuestionOf, planCrate } from "#lib/suitability/crate-case.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import type { CratePlan } from "#lib/transport/crate-plan.ts";
import type { PassageCheck, PassageResult } from "#lib/transport/route.ts";

/** A ramp is judged by its slope: what the crate makes of it is not a measure of the crate. */
function verdictOnSlope(passage: string, { needed, available }: PassageCheck): Verdict {
  return available === null
    ? {
        outcome: "attend",
        fact: "way-in.slope-not-known",
        parameters: { passage },
        wayOut: "way.measure-slope",
      }
    : {
        outcome: "attend",
        fact: "way-in.steep",
        parameters: { passage, slopePercent: needed, gentlePercent: Math.floor(available * 10) / 10 },
        wayOut: "way.more-hands",
      };
}

function verdictOnPassage(result: PassageResult): Verdict {
  const { name, kind, outcome, fact, manner, checks } = result;
  const deciding = checks.find((check) => check.fact === fact && check.outcome !== "clear");
  if (deciding?.fact === "ramp-slope") return verdictOnSlope(name ?? kind, deciding);
  const parameters = {
    passage: name ?? kind,
    check: fact.replaceAll("-", " "),
    manner: manner.replaceAll("-", " "),
    needed: deciding ? Math.ceil(deciding.needed) : null,
    available: deciding?.available ?? null,
    unit: deciding?.unit ?? "mm",
    spareMm: result.spareMm === null ? null : Math.floor(result.spareMm),
  };
  if (outcome === "bar")
    return { outcome, fact: "way-in.too-narrow", parameters, wayOut: "way.other-way-in" };
  if (deciding === undefined)
    return { outcome, fact: "way-in.in-this-manner", parameters, wayOut: "way.site-visit" };
  return deciding.available === null
    ? { outcome, fact: "way-in.not-measured", parameters, wayOut: "way.measure-passage" }
    : { outcome, fact: "way-in.tight", parameters, wayOut: "way.site-visit" };
}

function judgeRoute(plan: CratePlan): Verdict[] {
  const { outer, grossMassKg } = plan.crate;
  const parameters = {
    lengthMm: Math.ceil(outer.lengthMm),
    widthMm: Math.ceil(outer.widthMm),
    heightMm: Math.ceil(outer.heightMm),
    grossMassKg: Math.round(grossMassKg * 10) / 10,
  };
  if (plan.passages.length === 0)
    return [{ outcome: "attend", fact: "way-in.no-passages", parameters, wayOut: "way.measure-passage" }];
  const hindering = plan.passages.filter((passage) => passage.outcome !== "clear");
  if (hindering.length > 0) return hindering.map(verdictOnPassage);
  const spares = plan.passages.flatMap(({ spareMm }) => (spareMm === null ? [] : [spareMm]));
  const spareMm = spares.length === 0 ? null : Math.floor(Math.min(...spares));
  return [{ outcome: "clear", fact: "way-in.passes", parameters: { ...parameters, spareMm } }];
}

function judgeCrate(plan: CratePlan): Verdict[] {
  const verdicts: Verdict[] = [];
  const parameters = { peakG: plan.peakG };
  if (!plan.cushion.holds)
    verdicts.push({
      outcome: "bar",
      fact: "way-in.no-cushion-holds",
      parameters,
      wayOut: "way.design-crate",
    });
  if (plan.crate.topplesOntoTwo)
    verdicts.push({ outcome: "attend", fact: "way-in.crate-topples", wayOut: "way.wider-base" });
  if (plan.crate.wall.engineeredBase)
    verdicts.push({ outcome: "attend", fact: "way-in.engineered-base", wayOut: "way.design-crate" });
  return verdicts.length > 0 ? verdicts : [{ outcome: "clear", fact: "way-in.crate-holds", parameters }];
}

/** A crate that two people carry asks nothing of a floor, and a fifth of what it bears is kept back (common practice, no source). */
const CARRIED_KG = 100;
const SHARE_OF_FLOOR = 0.8;

/** W3: the crate's mass on its own base against what the floor bears. */
export function judgeFloor(
  { outer, grossMassKg }: Pick<CratePlan["crate"], "outer" | "grossMassKg">,
  floorLoadKgPerM2: number | null,
): Verdict {
  const baseM2 = (outer.lengthMm * outer.widthMm) / 1_000_000;
  const load = Math.ceil(grossMassKg / baseM2);
  const parameters = { grossMassKg: Math.round(grossMassKg), load, floor: floorLoadKgPerM2 };
  if (floorLoadKgPerM2 === null)
    return grossMassKg <= CARRIED_KG
      ? { outcome: "clear", fact: "way-in.floor-light", parameters }
      : { outcome: "attend", fact: "way-in.floor-not-known", parameters, wayOut: "way.state-venue" };
  if (load > floorLoadKgPerM2)
    return { outcome: "bar", fact: "way-in.floor-too-weak", parameters, wayOut: "way.spread-load" };
  return load > SHARE_OF_FLOOR * floorLoadKgPerM2
    ? { outcome: "attend", fact: "way-in.floor-near", parameters, wayOut: "way.spread-load" }
    : { outcome: "clear", fact: "way-in.floor-bears", parameters };
}

/** Sheets of a series are alike: the same question is asked once. */
export type PlanMaker = (question: CrateQuestion) => CratePlan | null;

/** A maker of plans that remembers what it was asked, for one run of the rules. */
export function rememberingPlanMaker(): PlanMaker {
  const plans = new Map<string, CratePlan | null>();
  return (question) => {
    const key = JSON.stringify(question);
    const known = plans.get(key);
    if (known !== undefined) return known;
    const plan = planCrate(question);
    plans.set(key, plan);
    return plan;
  };
}

export function judgeWayIn(
  { specimen }: SpecimenCase,
  request: RequestFacts,
  makePlan: PlanMaker = planCrate,
): Finding[] {
  const find = findingsFor(specimen.id, "way in");
  const question = crateQuestionOf(specimen, {
    passages: request.venue.passages,
    carrierClass: "specialist-door-to-door",
    count: 1,
  });
  if (question === null)
    return [find("W1", { outcome: "attend", fact: "way-in.size-not-known", wayOut: "way.measure-specimen" })];
  const plan = makePlan(question);
  if (plan === null)
    return [find("W1", { outcome: "attend", fact: "way-in.beyond-tables", wayOut: "way.design-crate" })];
  return [
    ...judgeRoute(plan).map((verdict) => find("W1", verdict)),
    ...judgeCrate(plan).map((verdict) => find("W2", verdict)),
    find("W3", judgeFloor(plan.crate, request.venue.floorLoadKgPerM2)),
  ];
}
