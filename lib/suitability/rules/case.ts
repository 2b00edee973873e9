/**
 * What a rule is given: the request, and one specimen with everything known of
 * it. A rule answers with findings: codes and parameters, never sentences.
 *
 * Three rules stand above all others. Bars stop what goes outward, never the way
 * home. What is not known is never clear: it is attend, and it is bar for public
 * or paid display, for lending on and for export, until the oversight body has
 * given its word. What is not ours goes out only with its owner's written leave.
 */
import type { CheckInput } from "#lib/condition/schema.ts";
import { defaultPractice, type PracticeFigures } from "#lib/people/practice.ts";
import type { InstitutionInput, VenueFacts } from "#lib/people/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { ProvenanceFacts } from "#lib/provenance/schema.ts";
import type { Money, SpecimenInput } from "#lib/specimens/schema.ts";
import { type RuleId, sourceOfRule } from "#lib/suitability/rules/book.ts";
import type { SetAside } from "#lib/suitability/rules/set-aside.ts";
import type { Finding, LoanInput, RuleGroup } from "#lib/suitability/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

/** What the catalogue knows of a specimen that bears on lending it. */
export type LentSpecimen = Pick<
  SpecimenInput,
  | "accessionNumber"
  | "title"
  | "kind"
  | "preparation"
  | "fluidName"
  | "fluidPercent"
  | "human"
  | "scientificName"
  | "ageBand"
  | "size"
  | "massKg"
  | "mountedSize"
  | "mountedMassKg"
  | "partsAtRisk"
  | "use"
  | "light"
  | "replacementCost"
  | "preparedOn"
  | "acquiredOn"
  | "components"
  | "hazards"
  | "legal"
> & {
  id: string;
  seriesId: string | null;
  numberInSeries: number | null;
  sheetThicknessMm: number | null;
  hasTeeth: boolean;
};

/** A certificate of cover, as far as rules read it. Moments are ISO 8601. */
export type CoverFacts = {
  amount: Money;
  startsAt: string;
  endsAt: string;
  coversTransit: boolean;
  /** Whether it holds at the venue; one that does not say so does. */
  coversStay?: boolean;
  territories: readonly string[];
};

/** What earlier loans of a borrower came to, within three years. */
export type BorrowerRecord = {
  /** Loans that have come home, or should have. */
  loans: number;
  late: number;
  /** Specimens that came home damaged. */
  damaged: number;
};

export type RequestFacts = Pick<
  LoanInput,
  | "purpose"
  | "teachingUse"
  | "audience"
  | "paidAdmission"
  | "displayStyle"
  | "pictures"
  | "activities"
  | "startsOn"
  | "endsOn"
> & {
  daysBefore: number;
  daysAfter: number;
  today: DateText;
  lenderCountry: string;
  /** The day on which it was asked for; today while it has not been submitted. */
  requestedOn: DateText;
  borrower: {
    id: string;
    standing: InstitutionInput["standing"];
    verified: boolean;
    kind: InstitutionInput["kind"];
    town: string;
    record: BorrowerRecord;
  };
  venue: VenueFacts;
  statedCover: Money | null;
  covers: readonly CoverFacts[];
  /** Countries between the ends of the way, out and home. */
  through: readonly string[];
  /** The oversight body's word for this loan, where it has accepted. */
  oversight: { reference: string; decidedOn: DateText } | null;
  /** The figures by which the house lends; its defaults where left out. */
  practice?: PracticeFigures;
  /** Words that stand against bars; none where left out. */
  setAside?: readonly SetAside[];
  /** The conservator's word for this loan, where it signs a poor condition off. */
  conservator: { decidedOn: DateText; conditions: string } | null;
};

export type SpecimenCase = {
  specimen: LentSpecimen;
  provenance: ProvenanceFacts;
  latestCheck: (Pick<CheckInput, "findings" | "verdict"> & { checkedOn: DateText }) | null;
  /** Somebody else's booking on one of the days; when it is free again, where that is known. */
  taken: { freeFrom: DateText | null } | null;
  /** Another loan that it has not come home from. */
  elsewhere: { loanNumber: string; missing: boolean; dueOn: DateText } | null;
  /** The last loan that it came home from within a year: when it was due home, and how long it lasted. */
  lastLoan: { endedOn: DateText; days: number } | null;
  /** Of a sheet, all numbers that its series holds; null for what is none. */
  numbersOfSeries: readonly number[] | null;
  /** Countries for which a broker has decided the customs code on this loan. */
  tariffCountries: readonly string[];
  /** Light already taken in the past year on loans; null is not known. */
  spentLxHours: number | null;
};

/** The figures by which the house lends. */
export const practiceFor = ({ practice }: Pick<RequestFacts, "practice">): PracticeFigures =>
  practice ?? defaultPractice;

/** Anyone may come in, or some pay to. */
export function isPublicShow(request: Pick<RequestFacts, "audience" | "paidAdmission">): boolean {
  return request.audience === "general public" || request.paidAdmission;
}

export function isExport(request: Pick<RequestFacts, "lenderCountry" | "venue">): boolean {
  return request.venue.countryCode !== request.lenderCountry;
}

/** What is not known: attend, and bar where somebody could be harmed who is not asked, until the oversight body has spoken. */
export function outcomeOfUnknown(request: RequestFacts, isGrave: boolean): Outcome {
  return isGrave && request.oversight === null ? "bar" : "attend";
}

export type Verdict = {
  outcome: Outcome;
  fact: string;
  parameters?: Finding["parameters"];
  wayOut?: string;
};

/** @throws {RangeError} for a clear finding with a way out, or one that is not clear without */
export function finding(
  specimenId: string,
  rule: RuleId,
  group: RuleGroup,
  { outcome, fact, parameters = {}, wayOut = "" }: Verdict,
): Finding {
  if ((outcome === "clear") !== (wayOut === ""))
    throw new RangeError(`${rule} ${fact}: only what is not clear has a way out.`);
  return { specimenId, rule, group, outcome, fact, parameters, source: sourceOfRule(rule), wayOut };
}

/** A binder for the findings of one specimen under one group. */
export function findingsFor(specimenId: string, group: RuleGroup) {
  return (rule: RuleId, verdict: Verdict): Finding => finding(specimenId, rule, group, verdict);
}
