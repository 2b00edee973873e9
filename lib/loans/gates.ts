/**
 * The gates of release: nothing leaves until every one of them holds. Each says
 * whether it holds and the facts that decided it, as codes. There is no gate on
 * the way home: a lapsed cover or a withdrawn consent never traps a specimen.
 */
import { judgeRecency } from "#lib/condition/grade.ts";
import type { AgreedPayment } from "#lib/costing/payments.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { CrateState } from "#lib/shipments/schema.ts";
import { type CoverGap, coverGaps, type Stretch } from "#lib/suitability/cover-gaps.ts";
import type { Days } from "#lib/suitability/period.ts";
import type { CoverFacts } from "#lib/suitability/rules/case.ts";
import type { CostSum } from "#lib/suitability/rules/cover.ts";
import type { Finding } from "#lib/suitability/schema.ts";

export const gateNames = [
  "signed",
  "cover",
  "permits",
  "paid",
  "condition",
  "nothing barred",
  "crates",
  "carrier",
  "booked",
] as const;
export type GateName = (typeof gateNames)[number];

export type GateFact = { code: string; parameters: Record<string, string | number | boolean | null> };
export type Gate = { gate: GateName; holds: boolean; facts: GateFact[] };

export type ReleaseFacts = {
  today: DateText;
  /** Lines that are to go out. */
  lines: readonly { specimenId: string; accessionNumber: string; isPacked: boolean }[];
  agreement: {
    version: number;
    signedByLender: boolean;
    signedByBorrower: boolean;
    /** Accession numbers in the schedule of the newest version. */
    schedule: readonly string[];
  } | null;
  covers: readonly CoverFacts[];
  stretches: readonly Stretch[];
  costs: CostSum;
  findings: readonly Finding[];
  /** How what was agreed to be paid stands; null where no quotation was accepted. */
  payment: AgreedPayment | null;
  /** The latest check of each specimen, whatever it was for. */
  checks: ReadonlyMap<
    string,
    { checkedOn: DateText; isForThisLoanOut: boolean; grade: string; fitToTravel: boolean }
  >;
  /** The conservator has given its word on the request as it stands. */
  isSignedOff: boolean;
  crates: readonly { code: string; state: CrateState; specimenIds: readonly string[] }[];
  stageOut: { carrier: string; departsOn: DateText; arrivesOn: DateText } | null;
  /** The days that are kept for each specimen. */
  booked: ReadonlyMap<string, Days>;
};

const fact = (code: string, parameters: GateFact["parameters"] = {}): GateFact => ({ code, parameters });

/** A gate that holds when nothing is against it; what is for it is told then. */
function gate(name: GateName, against: GateFact[], inFavour: GateFact[]): Gate {
  return against.length === 0
    ? { gate: name, holds: true, facts: inFavour }
    : { gate: name, holds: false, facts: against };
}

function signedGate({ agreement, lines }: ReleaseFacts): Gate {
  if (agreement === null) return gate("signed", [fact("gate.no-agreement")], []);
  const { version, signedByLender, signedByBorrower, schedule } = agreement;
  const against: GateFact[] = [];
  if (!signedByLender) against.push(fact("gate.not-signed", { party: "lender", version }));
  if (!signedByBorrower) against.push(fact("gate.not-signed", { party: "borrower", version }));
  const going = lines.map((line) => line.accessionNumber);
  const different = [
    ...going.filter((number) => !schedule.includes(number)),
    ...schedule.filter((number) => !going.includes(number)),
  ];
  if (different.length > 0)
    against.push(fact("gate.other-schedule", { numbers: different.join(", "), version }));
  return gate("signed", against, [fact("gate.signed-by-both", { version })]);
}

const gapFact = ({ from, to, reason }: CoverGap) => fact(`gate.cover-${reason}`, { from, to });

function coverGate({ covers, stretches, costs }: ReleaseFacts): Gate {
  const against: GateFact[] = [];
  if (costs.unknown > 0) against.push(fact("gate.cost-not-known", { specimens: costs.unknown }));
  if (costs.currencies.length > 1)
    against.push(fact("gate.several-currencies", { currencies: costs.currencies.join(", ") }));
  const needed = costs.currency === null ? null : { minor: costs.minor, currency: costs.currency };
  against.push(...coverGaps(stretches, covers, needed).map(gapFact));
  const from = stretches[0]?.from ?? "";
  const to = stretches.at(-1)?.to ?? "";
  return gate("cover", against, [fact("gate.covered", { from, to })]);
}

/** A finding told of its specimen: the finding's own fact stands inside. */
const findingFact = (
  { specimenId, fact: inside, parameters }: Finding,
  numbers: ReadonlyMap<string, string>,
) => fact("gate.finding", { ...parameters, fact: inside, specimen: numbers.get(specimenId) ?? specimenId });

function permitsGate({ findings }: ReleaseFacts, numbers: ReadonlyMap<string, string>): Gate {
  const permits = findings.filter((finding) => finding.group === "permits");
  const barred = permits.filter((finding) => finding.outcome === "bar");
  const open = permits.filter((finding) => finding.outcome === "attend");
  return gate(
    "permits",
    barred.map((finding) => findingFact(finding, numbers)),
    [fact("gate.permits", { open: open.length }), ...open.map((finding) => findingFact(finding, numbers))],
  );
}

/** Dispatch waits for what was agreed, clauses 15 and 16; the house may put it off with its reason. No sum is told here. */
function paidGate({ payment }: ReleaseFacts): Gate {
  if (payment === null) return gate("paid", [], [fact("gate.nothing-to-pay")]);
  const { version, openMinor, putOff } = payment;
  if (openMinor <= 0) return gate("paid", [], [fact("gate.paid", { version })]);
  return putOff === null
    ? gate("paid", [fact("gate.not-paid", { version })], [])
    : gate("paid", [], [fact("gate.payment-put-off", { version, by: putOff.by, until: putOff.until })]);
}

/** A poor condition goes out only with the conservator's word, one that is not acceptable not at all. */
function conditionGate({ lines, checks, isSignedOff, today }: ReleaseFacts): Gate {
  const against: GateFact[] = [];
  for (const { specimenId, accessionNumber: specimen } of lines) {
    const check = checks.get(specimenId);
    if (!check?.isForThisLoanOut) {
      against.push(fact("gate.no-check-out", { specimen }));
      continue;
    }
    const { checkedOn } = check;
    if (judgeRecency(checkedOn, today, "packing").outcome !== "clear")
      against.push(fact("gate.check-too-old", { specimen, checkedOn }));
    if (!check.fitToTravel) against.push(fact("gate.not-fit-to-travel", { specimen, checkedOn }));
    if (check.grade === "C" && !isSignedOff)
      against.push(fact("gate.grade-not-signed-off", { specimen, checkedOn, office: "conservator" }));
    if (check.grade === "D") against.push(fact("gate.grade-not-acceptable", { specimen, checkedOn }));
  }
  return gate("condition", against, [fact("gate.checked", { specimens: lines.length })]);
}

/** A specimen that is not home from another loan may come in time to be asked for, but not to leave. */
const stopsRelease = ({ rule, outcome, group }: Finding): boolean =>
  (outcome === "bar" && group !== "permits") || (outcome === "attend" && rule === "B3");

function nothingBarredGate({ findings, lines }: ReleaseFacts, numbers: ReadonlyMap<string, string>): Gate {
  const against = findings.filter(stopsRelease).map((finding) => findingFact(finding, numbers));
  const judged = new Set(findings.map((finding) => finding.specimenId));
  for (const line of lines)
    if (!judged.has(line.specimenId))
      against.push(fact("gate.not-judged", { specimen: line.accessionNumber }));
  return gate("nothing barred", against, [fact("gate.nothing-barred", { specimens: lines.length })]);
}

function cratesGate({ lines, crates }: ReleaseFacts): Gate {
  const against: GateFact[] = [];
  for (const { specimenId, accessionNumber: specimen, isPacked } of lines) {
    const holding = crates.filter((crate) => crate.specimenIds.includes(specimenId));
    if (holding.length === 0) against.push(fact("gate.in-no-crate", { specimen }));
    else if (holding.length > 1)
      against.push(
        fact("gate.in-two-crates", { specimen, crates: holding.map(({ code }) => code).join(", ") }),
      );
    else if (!isPacked) against.push(fact("gate.not-packed", { specimen, crate: holding[0]?.code ?? "" }));
  }
  const going = new Set(lines.map((line) => line.specimenId));
  for (const { code, state, specimenIds } of crates) {
    if (state !== "sealed") against.push(fact("gate.not-sealed", { crate: code, state }));
    const strangers = specimenIds.filter((id) => !going.has(id)).length;
    if (strangers > 0) against.push(fact("gate.holds-others", { crate: code, specimens: strangers }));
  }
  return gate("crates", against, [fact("gate.crates-sealed", { crates: crates.length })]);
}

function carrierGate({ stageOut }: ReleaseFacts): Gate {
  if (stageOut === null) return gate("carrier", [fact("gate.no-carrier")], []);
  const { carrier, departsOn } = stageOut;
  return gate("carrier", [], [fact("gate.carrier", { carrier, departsOn })]);
}

/** What is away on a day that is not kept for it may be promised to somebody else for that day. */
function bookedGate({ lines, booked, today, stageOut }: ReleaseFacts): Gate {
  const against: GateFact[] = [];
  const lastDay = stageOut !== null && stageOut.arrivesOn > today ? stageOut.arrivesOn : today;
  const kept = lines.flatMap(({ specimenId, accessionNumber: specimen }) => {
    const days = booked.get(specimenId);
    if (days === undefined) against.push(fact("gate.not-kept", { specimen }));
    else if (today < days.startsOn)
      against.push(fact("gate.kept-later", { specimen, from: days.startsOn, today }));
    else if (lastDay >= days.endsOn)
      against.push(fact("gate.kept-until", { specimen, until: addDays(days.endsOn, -1) }));
    return days ?? [];
  });
  const from =
    kept
      .map(({ startsOn }) => startsOn)
      .sort()
      .at(-1) ?? "";
  const until = kept.map(({ endsOn }) => endsOn).sort()[0];
  return gate("booked", against, [
    fact("gate.kept", { from, until: until === undefined ? "" : addDays(until, -1) }),
  ]);
}

/** All gates, always in the same order. Without a line nothing can be released, so no gate holds by emptiness. */
export function releaseGates(facts: ReleaseFacts): Gate[] {
  if (facts.lines.length === 0)
    return gateNames.map((name) => gate(name, [fact("gate.nothing-to-release")], []));
  const numbers = new Map(facts.lines.map((line) => [line.specimenId, line.accessionNumber]));
  return [
    signedGate(facts),
    coverGate(facts),
    permitsGate(facts, numbers),
    paidGate(facts),
    conditionGate(facts),
    nothingBarredGate(facts, numbers),
    cratesGate(facts),
    carrierGate(facts),
    bookedGate(facts),
  ];
}

export function allHold(gates: readonly Gate[]): boolean {
  return gates.length > 0 && gates.every((one) => one.holds);
}
