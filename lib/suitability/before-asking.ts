/**
 * What the rules can say of a specimen before anybody has asked for it: for what
 * it would be used, before whom, in which country and on which days. Consent,
 * title, condition and the law of the place are judged; days, climate, light, the
 * way in and cover belong to a request and are judged there. A bar of consent,
 * title or condition keeps a specimen out of a proposal, because no paper of the
 * borrower clears it. A bar of permits does not: the paper may still be had, so
 * it is named beside the specimen.
 */
import { countsOn, type RuleEntry, ruleBook } from "#lib/suitability/rules/book.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { judgeCheck } from "#lib/suitability/rules/condition.ts";
import { judgeElsewhere } from "#lib/suitability/rules/elsewhere.ts";
import { judgeEuropeanUnion } from "#lib/suitability/rules/european-union.ts";
import { judgeFrance } from "#lib/suitability/rules/france.ts";
import { judgeConsent } from "#lib/suitability/rules/general.ts";
import { judgeGermany } from "#lib/suitability/rules/germany.ts";
import { judgeGoods } from "#lib/suitability/rules/goods.ts";
import { judgeIreland } from "#lib/suitability/rules/ireland.ts";
import { judgeScotland } from "#lib/suitability/rules/scotland.ts";
import { judgeTitle } from "#lib/suitability/rules/title.ts";
import { judgeUnitedKingdom } from "#lib/suitability/rules/united-kingdom.ts";
import { judgeUnitedStates } from "#lib/suitability/rules/united-states.ts";
import { type Finding, type RuleGroup, ruleGroups } from "#lib/suitability/schema.ts";

/** Groups whose bar nobody who borrows can clear. */
const keepingBack: readonly RuleGroup[] = ["consent", "title", "condition"];

/** The findings of one specimen, in the order of the groups. */
export function judgeBeforeAsking(
  request: RequestFacts,
  subject: SpecimenCase,
  book: readonly RuleEntry[] = ruleBook,
): Finding[] {
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
    ...judgeCheck(subject, request),
  ].filter(({ rule }) => countsOn(rule, request, book));
  return ruleGroups.flatMap((group) => findings.filter((finding) => finding.group === group));
}

export type BeforeAsking = {
  /** What keeps it out of a proposal; empty where it could be lent as far as is known. */
  keptBackBy: Finding[];
  /** Papers without which it does not go, and which may still be had. */
  papersWanted: Finding[];
};

/** @param findings of one specimen */
export function standingBeforeAsking(findings: readonly Finding[]): BeforeAsking {
  const bars = findings.filter(({ outcome }) => outcome === "bar");
  return {
    keptBackBy: bars.filter(({ group }) => keepingBack.includes(group)),
    papersWanted: bars.filter(({ group }) => group === "permits"),
  };
}
