/**
 * Suitability: all rules over all specimens of a request, from facts to findings.
 * Pure, so the same facts always give the same findings, in the order of the
 * specimens and, within one, of the groups. Every specimen has at least one
 * finding in every group, the clear ones included: silence is never an answer.
 */
import { countsOn, type RuleEntry, ruleBook } from "#lib/suitability/rules/book.ts";
import { judgeBooking } from "#lib/suitability/rules/booking.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { judgeClimate } from "#lib/suitability/rules/climate.ts";
import { judgeCheck } from "#lib/suitability/rules/condition.ts";
import { judgeCover } from "#lib/suitability/rules/cover.ts";
import { judgeElsewhere } from "#lib/suitability/rules/elsewhere.ts";
import { judgeEuropeanUnion } from "#lib/suitability/rules/european-union.ts";
import { judgeFrance } from "#lib/suitability/rules/france.ts";
import { judgeConsent } from "#lib/suitability/rules/general.ts";
import { judgeGermany } from "#lib/suitability/rules/germany.ts";
import { judgeGoods } from "#lib/suitability/rules/goods.ts";
import { judgeIreland } from "#lib/suitability/rules/ireland.ts";
import { judgeScotland } from "#lib/suitability/rules/scotland.ts";
import { judgeSeriesRun } from "#lib/suitability/rules/series-run.ts";
import { withSetAside } from "#lib/suitability/rules/set-aside.ts";
import { judgeTitle } from "#lib/suitability/rules/title.ts";
import { judgeUnitedKingdom } from "#lib/suitability/rules/united-kingdom.ts";
import { judgeUnitedStates } from "#lib/suitability/rules/united-states.ts";
import { judgeUse } from "#lib/suitability/rules/use.ts";
import { judgeWayIn, rememberingPlanMaker } from "#lib/suitability/rules/way-in.ts";
import { type Finding, type offices, type RuleGroup, ruleGroups } from "#lib/suitability/schema.ts";
import { type Outcome, strictestOutcome } from "#lib/workings/outcome.ts";

/** A rule of the book counts only where its days meet those of the loan. */
export function judgeSuitability(
  request: RequestFacts,
  subjects: readonly SpecimenCase[],
  book: readonly RuleEntry[] = ruleBook,
): Finding[] {
  const makePlan = rememberingPlanMaker();
  return subjects.flatMap((subject) => {
    const findings = [
      ...judgeConsent(subject, request),
      ...judgeTitle(subject),
      ...judgeUnitedKingdom(subject, request),
      ...judgeScotland(subject, request),
      ...judgeIreland(subject, request),
      ...judgeGermany(subject, request),
      ...judgeFrance(subject, request),
      ...judgeUnitedStates(subject, request),
      ...judgeElsewhere(subject, request),
      ...judgeEuropeanUnion(subject, request),
      ...judgeGoods(subject, request),
      ...judgeBooking(subject, request),
      ...judgeCheck(subject, request),
      ...judgeUse(subject, request),
      ...judgeSeriesRun(subject, subjects),
      ...judgeClimate(subject, request),
      ...judgeWayIn(subject, request, makePlan),
      ...judgeCover(subject, request, subjects),
    ];
    const inForce = findings.filter(({ rule }) => countsOn(rule, request, book));
    const answered = withSetAside(inForce, request.setAside ?? []);
    return ruleGroups.flatMap((group) => answered.filter((finding) => finding.group === group));
  });
}

/** The strictest outcome of each specimen under each group. */
export type SuitabilityMatrix = Map<string, Record<RuleGroup, Outcome>>;

/** A group without a finding is attend: what nobody judged is not clear. */
export function suitabilityMatrix(findings: readonly Finding[]): SuitabilityMatrix {
  const specimenIds = new Set(findings.map((finding) => finding.specimenId));
  return new Map(
    [...specimenIds].map((specimenId) => {
      const own = findings.filter((finding) => finding.specimenId === specimenId);
      const outcomeOf = (group: RuleGroup): Outcome => {
        const outcomes = own.filter((finding) => finding.group === group).map((finding) => finding.outcome);
        return outcomes.length === 0 ? "attend" : strictestOutcome(outcomes);
      };
      const row = Object.fromEntries(ruleGroups.map((group) => [group, outcomeOf(group)]));
      return [specimenId, row as Record<RuleGroup, Outcome>];
    }),
  );
}

export const barsOf = (findings: readonly Finding[]) =>
  findings.filter((finding) => finding.outcome === "bar");

export type Office = (typeof offices)[number];

/** Facts on which the oversight body's word is asked: what a donor's free word does not settle. */
const factsForOversight: readonly string[] = [
  "consent.not-asked",
  "consent.not-known",
  "consent.audience-not-known",
  "consent.no-record",
  "consent.no-record-of-one",
  "consent.foetal",
  "consent.minor",
  "consent.identifiable",
  "consent.age-not-known",
  "consent.recognisable-not-known",
  "consent.basis-without-own-word",
];

/** A grade that goes out with the conservator's sign-off: still wanted, or given. */
const factsForConservator: readonly string[] = ["condition.grade-poor", "condition.grade-signed-off"];

/**
 * Whose word a decision needs, in the order in which they speak. The curator's
 * always, as the last; the donor officer's when anything about consent is not
 * clear; the oversight body's when what a donor wished is not known or somebody
 * could be recognised; the conservator's when a condition is poor.
 */
export function officesNeeded(findings: readonly Finding[]): Office[] {
  const open = findings.filter((finding) => finding.group === "consent" && finding.outcome !== "clear");
  const needed: Office[] = [];
  if (open.length > 0) needed.push("donor officer");
  if (open.some((finding) => factsForOversight.includes(finding.fact))) needed.push("oversight body");
  if (findings.some((finding) => factsForConservator.includes(finding.fact))) needed.push("conservator");
  return [...needed, "curator"];
}
