/**
 * What stands between now and a loan's next step, each with the one act that
 * clears it. Bars first, then what wants attention, then the step itself, which
 * is clear. An act is offered only where it would be taken as things stand: on the
 * road that follows from where each line is, not from the loan's state alone.
 * Computed from the same facts as the gates; nothing is stored.
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
  /** Closed crates that rest, until when, and what is in them. */
  resting: readonly { crate: string; notBefore: string | null; specimenIds: readonly string[] }[];
};

const whose = (facts: Pick<StepFacts, "lines">, ...states: LineState[]) =>
  facts.lines.filter((line) => states.includes(line.state));

const step = (
  outcome: Outcome,
  code: string,
  action: Act | null,
  parameters: NextStep["parameters"] = {},
): NextStep => ({ outcome, code, parameters, action });

/** Days that somebody else has are refused at once; every other bar is left to the decision. */
const isTaken = ({ rule, outcome }: Finding) => rule === "B1" && outcome === "bar";

function forEnquiry(facts: StepFacts): NextStep[] {
  const { missingFields, findings } = facts;
  const noted = whose(facts, "noted");
  const steps: NextStep[] = [];
  if (noted.length === 0) steps.push(step("bar", "next.no-specimens", "noteSpecimen"));
  if (missingFields.length > 0)
    steps.push(step("bar", "next.state-request", "stateRequest", { fields: missingFields.join(", ") }));
  steps.push(...barsByLine(noted, findings.filter(isTaken)));
  return steps.length > 0
    ? steps
    : [step("clear", "next.submit", "submitRequest", { specimens: noted.length })];
}

/** One step for each specimen that is barred. */
function barsByLine(lines: StepFacts["lines"], findings: readonly Finding[]): NextStep[] {
  return lines.flatMap(({ specimenId, accessionNumber: specimen }) => {
    const bars = findings.filter((finding) => finding.specimenId === specimenId && finding.outcome === "bar");
    const [first] = bars;
    if (!first) return [];
    const { group, fact, wayOut } = first;
    const about = { ...first.parameters, specimen, group, fact, wayOut, bars: bars.length };
    return [step("bar", "next.barred", "removeSpecimen", about)];
  });
}

/** One step for each specimen that is barred, and one for all that wants attention. */
function forFindings({ findings, lines }: StepFacts): NextStep[] {
  const steps = barsByLine(lines, findings);
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

/** While anything is barred, a word is missing or something was noted since, the curator can only decline. */
function forDecision(facts: StepFacts): NextStep[] {
  const { officesNeeded, officesAccepted, findings } = facts;
  const missing = officesNeeded.filter((office) => !officesAccepted.includes(office) && office !== "curator");
  const added = whose(facts, "noted").length;
  const isBarred = findings.some((finding) => finding.outcome === "bar");
  const isOpen = missing.length === 0 && added === 0 && !isBarred;
  const taken = added > 0 && findings.some(isTaken);
  return [
    ...forFindings(facts),
    ...missing.map((office) => step("attend", "next.word-of-office", "decideLoan", { office })),
    ...(added > 0 && !taken
      ? [step("attend", "next.submit-added", "submitRequest", { specimens: added })]
      : []),
    step("clear", isOpen ? "next.decide" : "next.decline", "decideLoan", { office: "curator" }),
  ];
}

/** Nothing is drawn up or signed while a specimen is barred. */
function forAgreement(facts: StepFacts): NextStep[] {
  const { agreement, hasCover, lines, findings } = facts;
  const steps = barsByLine(lines, findings);
  const isBarred = steps.length > 0;
  if (!isBarred && agreement === null) steps.push(step("clear", "next.draw-up", "drawUpAgreement"));
  if (!isBarred && agreement !== null) {
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

/** Facts that another act clears than the usual one of their gate. */
const clearedOtherwise: Readonly<Record<string, Act>> = {
  "gate.no-agreement": "drawUpAgreement",
  "gate.other-schedule": "drawUpAgreement",
  "gate.cost-not-known": "reviseSpecimen",
  "gate.several-currencies": "reviseSpecimen",
  "gate.grade-not-signed-off": "decideLoan",
  "gate.in-no-crate": "planCrates",
  "consent.transit-refused": "planStage",
  "permits.display-licence-missing": "keepVenue",
  "permits.display-licence-vague": "keepVenue",
  "permits.display-licence-days": "keepVenue",
};

function forRelease(facts: StepFacts): NextStep[] {
  const failing = facts.gates.filter((gate) => !gate.holds);
  const specimens = whose(facts, "accepted", "packed").length;
  if (failing.length === 0) return [step("clear", "next.dispatch", "dispatchLoan", { specimens })];
  return failing.map(({ gate, facts: against }) => {
    const [first] = against;
    // The fact inside a finding says more than that there is a finding.
    const inside = String(first?.parameters.fact ?? first?.code ?? "");
    return step("bar", "next.gate", clearedOtherwise[inside] ?? clearedBy[gate], {
      gate,
      facts: against.length,
      fact: first?.code ?? "",
      ...first?.parameters,
    });
  });
}

function forMissing(facts: StepFacts): NextStep[] {
  return whose(facts, "missing").map(({ accessionNumber: specimen }) =>
    step("bar", "next.missing", "countReturn", { specimen }),
  );
}

/** Closed crates that hold a specimen whose line is in the state: they rest, or may be opened. */
function forResting(facts: StepFacts, state: LineState, open: NextStep): NextStep[] {
  const there = new Set(whose(facts, state).map((line) => line.specimenId));
  return facts.resting
    .filter(({ specimenIds }) => specimenIds.some((id) => there.has(id)))
    .map(({ crate, notBefore }) =>
      notBefore !== null && notBefore > facts.now
        ? step("attend", "next.rest", null, { crate, notBefore })
        : { ...open, parameters: { crate } },
    );
}

/** At the venue: crates that rest there, and the way home, which nothing bars. */
function forTimeAway(facts: StepFacts): NextStep[] {
  const { endsOn, today, hasStageHome } = facts;
  if (whose(facts, "resting at venue", "at venue").length === 0) return [];
  const steps = forResting(facts, "resting at venue", step("clear", "next.open", "openCrate"));
  if (endsOn <= today) steps.push(step("attend", "next.overdue", "sendHome", { endsOn }));
  if (!hasStageHome) steps.push(step("attend", "next.plan-home", "planStage", { endsOn }));
  steps.push(step("clear", "next.send-home", "sendHome", { endsOn }));
  return steps;
}

/** At home: crates that rest there are counted; what is out of its crate is checked, then checked in. */
function forChecks(facts: StepFacts): NextStep[] {
  const steps = forResting(facts, "resting at home", step("clear", "next.count", "countReturn"));
  const closed = new Set(facts.resting.flatMap(({ specimenIds }) => specimenIds));
  for (const { specimenId, accessionNumber: specimen, isChecked } of whose(facts, "resting at home"))
    if (!closed.has(specimenId))
      steps.push(
        isChecked
          ? step("clear", "next.check-in", "checkIn", { specimen })
          : step("attend", "next.check-home", "recordCheck", { specimen }),
      );
  return steps;
}

/** From the release to the check-in each line is somewhere of its own, and each place has its step. */
function forJourney(facts: StepFacts): NextStep[] {
  const steps = forMissing(facts);
  if (whose(facts, "travelling out").length > 0) steps.push(step("clear", "next.receive", "receiveLoan"));
  steps.push(...forTimeAway(facts));
  if (whose(facts, "travelling home").length > 0)
    steps.push(step("clear", "next.receive-home", "receiveHome"));
  return [...steps, ...forChecks(facts)];
}

function stepsOf(facts: StepFacts): NextStep[] {
  switch (facts.state) {
    case "enquiry":
      return forEnquiry(facts);
    case "requested":
      return forDecision(facts);
    case "accepted":
      return forAgreement(facts);
    case "agreed":
    case "preparing":
      return forRelease(facts);
    case "travelling out":
    case "at venue":
    case "travelling home":
    case "home, to be checked":
      return forJourney(facts);
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
