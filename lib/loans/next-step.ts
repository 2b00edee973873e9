/**
 * What stands between now and a loan's next step, each with the one act that
 * clears it. Bars first, then what wants attention, then the step itself, which
 * is clear. An act is offered only where it would be taken as things stand: on the
 * road that follows from where each line is, not from the loan's state alone.
 * Computed from the same facts as the gates; nothing is stored.
 */
import type { Gate } from "#lib/loans/gates.ts";
import { type Harm, harmCode } from "#lib/loans/harm.ts";
import type { LineState, LoanState } from "#lib/loans/schema.ts";
import type { Act } from "#lib/people/permission.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { Days } from "#lib/suitability/period.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import type { Office } from "#lib/suitability/suitability.ts";
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
  /** Why the loan cannot begin on the day that is stated; null when it can. */
  faultOfStart: { code: string; earliest: DateText } | null;
  lines: readonly { specimenId: string; accessionNumber: string; state: LineState; isChecked: boolean }[];
  findings: readonly Finding[];
  officesNeeded: readonly Office[];
  officesAccepted: readonly Office[];
  agreement: { version: number; signedByLender: boolean; signedByBorrower: boolean } | null;
  hasCover: boolean;
  gates: readonly Gate[];
  /** The last day of the way home as it is planned. */
  homeOn: DateText | null;
  /** The days that are kept for each specimen. */
  booked: ReadonlyMap<string, Pick<Days, "endsOn">>;
  harm: readonly Harm[];
  /** Closed crates that rest, until when, and what is in them. */
  resting: readonly { crate: string; notBefore: string | null; specimenIds: readonly string[] }[];
  /** It crossed a customs border and the discharge is not on record. */
  isNotDischarged?: boolean;
  /** What of its days wants somebody; none where nobody looked. */
  time?: readonly NextStep[];
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
  const { missingFields, faultOfStart, findings } = facts;
  const noted = whose(facts, "noted");
  const steps: NextStep[] = [];
  if (noted.length === 0) steps.push(step("bar", "next.no-specimens", "noteSpecimen"));
  if (missingFields.length > 0)
    steps.push(step("bar", "next.state-request", "stateRequest", { fields: missingFields.join(", ") }));
  if (faultOfStart !== null) {
    const { code, earliest } = faultOfStart;
    steps.push(step("bar", "next.other-start", "stateRequest", { fact: code, earliest }));
  }
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

/** What stands against a gate, with the act that clears it. */
function gateStep({ gate, facts: against }: Gate, outcome: Outcome): NextStep {
  const [first] = against;
  // The fact inside a finding says more than that there is a finding.
  const inside = String(first?.parameters.fact ?? first?.code ?? "");
  return step(outcome, "next.gate", clearedOtherwise[inside] ?? clearedBy[gate], {
    gate,
    facts: against.length,
    fact: first?.code ?? "",
    ...first?.parameters,
  });
}

/** Findings on cover that want attention, one step for each kind. */
function forCoverFindings({ findings, lines }: StepFacts): NextStep[] {
  const attending = findings.filter(({ group, outcome }) => group === "cover" && outcome === "attend");
  return [...new Set(attending.map(({ rule }) => rule))].flatMap((rule) => {
    const alike = attending.filter((finding) => finding.rule === rule);
    const [first] = alike;
    if (!first) return [];
    const { fact, wayOut, parameters, specimenId } = first;
    const specimen = lines.find((line) => line.specimenId === specimenId)?.accessionNumber ?? "";
    const act: Act = rule === "V3" ? "recordCover" : "reviseSpecimen";
    return [
      step("attend", "next.cover", act, { ...parameters, specimen, fact, wayOut, specimens: alike.length }),
    ];
  });
}

/** Cover is named for as long as anything of it is open, whatever certificates there are. */
function forCover(facts: StepFacts): NextStep[] {
  if (!facts.hasCover) return [step("attend", "next.record-cover", "recordCover")];
  const gate = facts.gates.find((one) => one.gate === "cover" && !one.holds);
  return [...(gate ? [gateStep(gate, "attend")] : []), ...forCoverFindings(facts)];
}

/** Nothing is drawn up or signed while a specimen is barred. */
function forAgreement(facts: StepFacts): NextStep[] {
  const { agreement, lines, findings } = facts;
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
  return [...steps, ...forCover(facts)];
}

const clearedBy: Record<Gate["gate"], Act> = {
  signed: "signAgreement",
  cover: "recordCover",
  permits: "recordPermit",
  paid: "recordPayment",
  condition: "recordCheck",
  "nothing barred": "removeSpecimen",
  crates: "sealCrate",
  carrier: "planStage",
  booked: "planStage",
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
  "law.licence-missing": "keepVenue",
  "law.licence-vague": "keepVenue",
  "law.licence-days": "keepVenue",
  "law.scotland-or-not": "keepVenue",
  "law.us-state-not-known": "keepVenue",
  "law.uk-no-own-consent": "removeSpecimen",
  "law.germany-artistic": "removeSpecimen",
  "law.germany-injustice": "removeSpecimen",
  "law.france-commercial": "removeSpecimen",
  "law.us-commercial-hawaii": "removeSpecimen",
};

function forRelease(facts: StepFacts): NextStep[] {
  const failing = facts.gates.filter((gate) => !gate.holds);
  const specimens = whose(facts, "accepted", "packed").length;
  const steps =
    failing.length === 0
      ? [step("clear", "next.dispatch", "dispatchLoan", { specimens })]
      : failing.map((gate) => gateStep(gate, "bar"));
  return [...steps, ...forCoverFindings(facts)];
}

/** What was seen on the way and nobody of the house has answered yet. */
function forHarm({ harm }: StepFacts): NextStep[] {
  return harm.map((sign) => {
    const { kind, ...said } = sign;
    const action = kind === "crate" ? "recordCheck" : null;
    return step("attend", `next.${harmCode(sign)}`, action, said);
  });
}

/** Out on days that are not kept for the loan: somebody else may have been promised them. */
function forDaysNotKept(facts: StepFacts): NextStep[] {
  const { today, homeOn, booked } = facts;
  const away = whose(facts, "travelling out", "resting at venue", "at venue", "travelling home");
  const neededOn = homeOn !== null && homeOn > today ? homeOn : today;
  return away.flatMap(({ specimenId, accessionNumber: specimen }) => {
    const days = booked.get(specimenId);
    return days !== undefined && neededOn < days.endsOn
      ? []
      : [
          step("attend", "next.days-not-kept", "planStage", {
            specimen,
            until: days === undefined ? null : addDays(days.endsOn, -1),
            neededOn,
          }),
        ];
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
  const { endsOn, today, homeOn } = facts;
  if (whose(facts, "resting at venue", "at venue").length === 0) return [];
  const steps = forResting(facts, "resting at venue", step("clear", "next.open", "openCrate"));
  if (endsOn <= today) steps.push(step("attend", "next.overdue", "sendHome", { endsOn }));
  if (homeOn === null) steps.push(step("attend", "next.plan-home", "planStage", { endsOn }));
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
  const steps = [...forMissing(facts), ...forHarm(facts), ...forDaysNotKept(facts)];
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
      return [
        ...forHarm(facts),
        facts.isNotDischarged === true
          ? step("bar", "next.discharge", "recordCustomsDischarge")
          : step("clear", "next.close", "closeLoan"),
      ];
    case "closed":
    case "declined":
    case "withdrawn":
      return [];
  }
}

/** In order of harm: bars, then what wants attention, then what can be done now. */
export function nextSteps(facts: StepFacts): NextStep[] {
  return [...(facts.time ?? []), ...stepsOf(facts)].sort(
    (a, b) => outcomes.indexOf(b.outcome) - outcomes.indexOf(a.outcome),
  );
}
