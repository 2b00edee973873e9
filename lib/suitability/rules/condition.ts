/**
 * The latest check against what the loan asks of a specimen: C1 grade, where a
 * poor one goes out with the conservator's sign-off, C2 age of the check, C3 the examiner's verdict on the uses, C4 activity that nobody has
 * judged. The condition room decides; this file gives its rulings the rules'
 * numbers. Without a check nothing is known, which is attend.
 */
import { type ConditionRuling, judgeCondition, judgeRecency } from "#lib/condition/grade.ts";
import type { VerdictUse } from "#lib/condition/schema.ts";
import type { RuleId } from "#lib/suitability/rules/book.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

/** What the loan asks of the specimen. */
export function usesAsked({
  purpose,
  teachingUse,
}: Pick<RequestFacts, "purpose" | "teachingUse">): VerdictUse[] {
  if (purpose === "research") return ["handle", "travel"];
  if (purpose === "teaching" && teachingUse === "handling") return ["show", "handle", "travel"];
  return ["show", "travel"];
}

type RuledAs = { rule: RuleId; facts: Record<Outcome, string> };

const ruledAs: Record<ConditionRuling["rule"], RuledAs> = {
  "condition.grade": {
    rule: "C1",
    facts: {
      clear: "condition.grade",
      attend: "condition.grade-poor",
      bar: "condition.grade-not-acceptable",
    },
  },
  "condition.recency": {
    rule: "C2",
    facts: { clear: "condition.recent", attend: "condition.too-old", bar: "condition.too-old" },
  },
  "condition.verdict": {
    rule: "C3",
    facts: { clear: "condition.fit", attend: "condition.unfit", bar: "condition.unfit" },
  },
  "condition.activity": {
    rule: "C4",
    facts: {
      clear: "condition.no-unknown-activity",
      attend: "condition.unknown-activity",
      bar: "condition.unknown-activity",
    },
  },
};

const waysOut: Record<ConditionRuling["wayOut"], string> = {
  "none-needed": "",
  "treat-or-withdraw": "way.treat-or-substitute",
  "conservator-sign-off": "way.ask-conservator",
  examine: "way.examine",
  "precautions-for-return": "way.ask-conservator",
  "check-again": "way.check-again",
};

export function judgeCheck({ specimen, latestCheck }: SpecimenCase, request: RequestFacts): Finding[] {
  const find = findingsFor(specimen.id, "condition");
  if (latestCheck === null)
    return [find("C1", { outcome: "attend", fact: "condition.never-checked", wayOut: "way.check-again" })];
  const signedOff = request.conservator !== null;
  const rulings = [
    ...judgeCondition({ check: latestCheck, direction: "out", uses: usesAsked(request), signedOff }),
    judgeRecency(latestCheck.checkedOn, request.today, "approval"),
  ];
  return rulings.map(({ rule, outcome, facts, wayOut }) => {
    const isSignedOff = rule === "condition.grade" && facts.grade === "C" && outcome === "clear";
    return find(ruledAs[rule].rule, {
      outcome,
      fact: isSignedOff ? "condition.grade-signed-off" : ruledAs[rule].facts[outcome],
      parameters: {
        ...facts,
        checkedOn: latestCheck.checkedOn,
        ...(isSignedOff ? { signedOffOn: request.conservator?.decidedOn ?? null } : {}),
      },
      wayOut: waysOut[wayOut],
    });
  });
}
