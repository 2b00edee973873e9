/**
 * What stands between now and a loan's next step, each with the one act that
 * clears it. Bars first, then what wants attention, then the step itself, which
 * is clear. Computed from the same facts as the gates; nothing is stored.
 */
import type { Gate } from "#lib/loans/gates.ts";
import type { Finding, LineState, LoanState } from "#lib/loans/schema.ts";
import type { Office } from "#lib/loans/suitability.ts";
import type { Act } from "#lib/people/permission.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { type Outcome, outcomes } from "#lib/workings/outcome.ts";

export type NextStep = {
  outcome: Outcome;
  code: string;
  parameters: Record<string, string | number | boolean | null>;
  /** The act that clears it; null when nobody's act does, only time. */
  action: Act | null;
};

export type StepFacts = {
  state: LoanState;
  today: DateText;
  now: string;
  endsOn: DateText;
  /** Fields of the request that are not stated yet. */
  missingFields: readonly string[];
  lines: readonly { specimenId: string; accessionNumber: string; state: LineState; isChecked: boolean }[];
  findings: readonly Finding[];
  officesNeeded: readonly Office[];
  officesAccepted: readonly Office[];
  agreement: { version: number; signedByLender: boolean; signedByBorrower: boolean } | null;
  hasCover: boolean;
  gates: readonly Gate[];
  hasStageHome: boolean;
  /** Closed crates that rest, and until when. */
  resting: readonly { crate: string; notBefore: string | null }[];
};

const step = (
  outcome: Outcome,
  code: string,
  action: Act | null,
  parameters: NextStep["parameters"] = {},
): NextStep => ({ outcome, code, parameters, action });

function forEnquiry({ lines, missingFields }: StepFacts): NextStep[] {
  const steps: NextStep[] = [];
  if (lines.length === 0) steps.push(step("bar", "next.no-specimens", "noteSpecimen"));
  if (missingFields.length > 0)
    steps.push(step("bar", "next.state-request", "stateRequest", { fields: missingFields.join(", ") }));
  return steps.length > 0
    ? steps
    : [step("clear", "next.submit", "submitRequest", { specimens: lines.length })];
}

/** One step for each specimen that is barred, and one for all that wants attention. */
function forFindings({ findings, lines }: StepFacts): NextStep[] {
  const steps: NextStep[] = [];
  for (const { specimenId, accessionNumber: specimen } of lines) {
    const bars = findings.filter((finding) => finding.specimenId === specimenId && finding.outcome === "bar");
    const [first] = bars;
    if (first)
      steps.push(
        step("bar", "next.barred", "removeSpecimen", {
          ...first.parameters,
          specimen,
          group: first.group,
          fact: first.fact,
          wayOut: first.wayOut,
          bars: bars.length,
        }),
      );
  }
  const attending = findings.filter((finding) => finding.outcome === "attend");
  if (attending.length > 0)
    steps.push(
      step("attend", "next.attend", null, {
        findings: attending.length,
        specimens: new Set(attending.map((finding) => finding.specimenId)).size,
      }),
    );
  return steps;
}

function forDecision(facts: StepFacts): NextStep[] {
  const { officesNeeded, officesAccepted } = facts;
  const missing = officesNeeded.filter((office) => !officesAccepted.includes(office) && office !== "curator");
  return [
    ...forFindings(facts),
    ...missing.map((office) => step("attend", "next.word-of-office", "decideLoan", { office })),
    step("clear", "next.decide", "decideLoan"),
  ];
}

function forAgreement({ agreement, hasCover }: StepFacts): NextStep[] {
  const steps: NextStep[] = [];
  if (agreement === null) steps.push(step("clear", "next.draw-up", "drawUpAgreement"));
  else {
    const { version } = agreement;
    if (!agreement.signedByLender)
      steps.push(step("attend", "next.sign", "signAgreement", { party: "lender", version }));
    if (!agreement.signedByBorrower)
      steps.push(step("attend", "next.sign", "signAgreement", { party: "borrower", version }));
  }
  if (!hasCover) steps.push(step("attend", "next.record-cover", "recordCover"));
  return steps;
}

const clearedBy: Record<Gate["gate"], Act> = {
  signed: "signAgreement",
  cover: "recordCover",
  permits: "recordPermit",
  condition: "recordCheck",
  "nothing barred": "removeSpecimen",
  crates: "sealCrate",
  carrier: "planStage",
};

/** The first act for crates is to plan them. */
function forRelease({ gates, lines }: StepFacts): NextStep[] {
  const failing = gates.filter((gate) => !gate.holds);
  if (failing.length === 0)
    return [step("clear", "next.dispatch", "dispatchLoan", { specimens: lines.length })];
  return failing.map((gate) => {
    const [first] = gate.facts;
    const isUnplanned = gate.facts.some((fact) => fact.code === "gate.in-no-crate");
    return step("bar", "next.gate", isUnplanned ? "planCrates" : clearedBy[gate.gate], {
      gate: gate.gate,
      facts: gate.facts.length,
      fact: first?.code ?? "",
      ...first?.parameters,
    });
  });
}

const whose = (facts: StepFacts, ...states: LineState[]) =>
  facts.lines.filter((line) => states.includes(line.state));

function forMissing(facts: StepFacts): NextStep[] {
  return whose(facts, "missing").map(({ accessionNumber: specimen }) =>
    step("bar", "next.missing", "countReturn", { specimen }),
  );
}

function forTimeAway(facts: StepFacts): NextStep[] {
  const { endsOn, today, hasStageHome, resting, now } = facts;
  const steps = forMissing(facts);
  for (const { crate, notBefore } of resting) {
    const isResting = notBefore !== null && notBefore > now;
    steps.push(
      isResting
        ? step("attend", "next.rest", null, { crate, notBefore })
        : step("clear", "next.open", "openCrate", { crate }),
    );
  }
  if (endsOn <= today) steps.push(step("attend", "next.overdue", "sendHome", { endsOn }));
  if (!hasStageHome) steps.push(step("attend", "next.plan-home", "planStage", { endsOn }));
  steps.push(step("clear", "next.send-home", "sendHome", { endsOn }));
  return steps;
}

function forChecks(facts: StepFacts): NextStep[] {
  const steps = forMissing(facts);
  for (const { crate, notBefore } of facts.resting)
    steps.push(
      notBefore !== null && notBefore > facts.now
        ? step("attend", "next.rest", null, { crate, notBefore })
        : step("clear", "next.count", "countReturn", { crate }),
    );
  for (const { accessionNumber: specimen, isChecked } of whose(facts, "resting at home"))
    steps.push(
      isChecked
        ? step("clear", "next.check-in", "checkIn", { specimen })
        : step("attend", "next.check-home", "recordCheck", { specimen }),
    );
  return steps;
}

function stepsOf(facts: StepFacts): NextStep[] {
  switch (facts.state) {
    case "enquiry":
      return forEnquiry(facts);
    case "requested":
      return forDecision(facts);
    case "accepted":
      return [...forAgreement(facts), ...forFindings(facts).filter(({ outcome }) => outcome === "bar")];
    case "agreed":
    case "preparing":
      return forRelease(facts);
    case "travelling out":
      return [...forMissing(facts), step("clear", "next.receive", "receiveLoan")];
    case "at venue":
      return forTimeAway(facts);
    case "travelling home":
      return [...forMissing(facts), step("clear", "next.receive-home", "receiveHome")];
    case "home, to be checked":
      return forChecks(facts);
    case "checked in":
      return [step("clear", "next.close", "closeLoan")];
    case "closed":
    case "declined":
    case "withdrawn":
      return [];
  }
}

/** In order of harm: bars, then what wants attention, then what can be done now. */
export function nextSteps(facts: StepFacts): NextStep[] {
  return stepsOf(facts).sort((a, b) => outcomes.indexOf(b.outcome) - outcomes.indexOf(a.outcome));
}
