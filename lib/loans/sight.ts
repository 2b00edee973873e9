/**
 * What a viewer may read of findings and gates. A lecturer reads outcomes and ways
 * out and no reasons; amounts are for those who may see replacement costs; what
 * tells something of a donor's person is for those who may see it. What is kept
 * back says that it is.
 */
import type { Gate } from "#lib/loans/gates.ts";
import { maySee, type Subject } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { Finding } from "#lib/suitability/schema.ts";

export type LoanSight = {
  reasons: boolean;
  costs: boolean;
  person: boolean;
  checks: boolean;
  facility: boolean;
};

export function sightOfLoan(viewer: Viewer, subject: Subject): LoanSight {
  return {
    reasons: maySee(viewer, "suitabilityReasons", subject),
    costs: maySee(viewer, "replacementCost", subject),
    person: maySee(viewer, "personFacts", subject),
    checks: maySee(viewer, "conditionRecords", subject),
    facility: maySee(viewer, "facilityFacts", subject),
  };
}

/** Facts that say how old a donor was, or how long ago the death lies. */
const personFacts: readonly string[] = [
  "consent.minor",
  "consent.foetal",
  "law.uk-before-the-century",
  "law.uk-hundred-years",
  "law.uk-licence-off",
  "law.us-over-hundred",
  "law.us-over-eighty",
];

export function readableFinding(finding: Finding, sight: LoanSight): Finding {
  if (!sight.reasons) return { ...finding, fact: "reason.withheld", parameters: {}, source: "" };
  if (finding.group === "cover" && !sight.costs)
    return { ...finding, fact: "reason.cost-withheld", parameters: {}, source: finding.source };
  if (personFacts.includes(finding.fact) && !sight.person)
    return { ...finding, fact: "reason.person-withheld", parameters: {} };
  return finding;
}

export function readableFindings(findings: readonly Finding[], sight: LoanSight): Finding[] {
  return findings.map((finding) => readableFinding(finding, sight));
}

/** Gates as the viewer may read them: without reasons, only whether each holds. */
export function readableGates(gates: readonly Gate[], sight: LoanSight): Gate[] {
  return sight.reasons ? [...gates] : gates.map(({ gate, holds }) => ({ gate, holds, facts: [] }));
}
