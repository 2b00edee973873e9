/**
 * The terms of a loan agreement drawn up from facts: everything that is signed, and
 * nothing else. Made of facts alone, so the same facts give the same value; its
 * canonical text is hashed and never changes. Codes and figures, which papers puts
 * into words; only the clauses are sentences, because they are what was agreed.
 * Masses are kilograms, lengths millimetres, humidity a fraction, money whole minor
 * units. Invariant: what is drawn up can be read again (frozen-terms.ts).
 */

import { termsAnnexes } from "#lib/agreements/annex-data.ts";
import { frozenClauses, type OwnParameters } from "#lib/agreements/clause-values.ts";
import type { ClauseLanguageCode } from "#lib/agreements/clauses/language.ts";
import type { CancellationEnds } from "#lib/agreements/clauses/parameters.ts";
import {
  type AgreementTerms,
  bandQuantities,
  CurrentTerms,
  type LimitSource,
  type Party,
  type ScheduleLimits,
  type ScheduleRow,
  type TermsConflict,
  type TermsCrate,
  type TermsStage,
} from "#lib/agreements/frozen-terms.ts";
import {
  activitiesAllowedForAll,
  consentRestrictions,
  picturesAllowedForAll,
} from "#lib/agreements/restrictions.ts";
import type { Amendment, TermsAnnexes } from "#lib/agreements/terms-annexes.ts";
import {
  type CommonFigure,
  groupLimits,
  type LimitConflict,
  type LimitLevel,
} from "#lib/environment/group-limits.ts";
import type { CommonLimits } from "#lib/environment/schema.ts";
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import type { EmergencyLine } from "#lib/people/emergency.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { sizeWithThickness } from "#lib/specimens/sheet-size.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { sumOfCosts } from "#lib/suitability/rules/cover.ts";

export type TermsSubject = SpecimenCase & {
  latinTitle: string;
  series: { code: string; number: number } | null;
  condition: { checkedOn: DateText; grade: string } | null;
};

export type TermsFacts = {
  request: RequestFacts;
  loan: AgreementTerms["loan"];
  lender: Party;
  lenderEmergency: EmergencyLine;
  borrower: AgreementTerms["borrower"];
  subjects: readonly TermsSubject[];
  certificates: AgreementTerms["cover"]["certificates"];
  crates: readonly TermsCrate[];
  stages: readonly TermsStage[];
  conditions: AgreementTerms["conditions"];
  opensOn: DateText | null;
  /** That of the centre, where nothing of the loan says another. */
  currency: string;
  /** The language that rules, and a second one where there is one. */
  languages: readonly ClauseLanguageCode[];
  /** What was set for this loan. */
  parameters: OwnParameters;
  checks: TermsAnnexes["checks"];
  facilityReport: NonNullable<TermsAnnexes["facility"]["report"]> | null;
  costing: TermsAnnexes["costing"];
  /** Of the accepted quotation. */
  cancellation: CancellationEnds | null;
  amends: Amendment | null;
};

/**
 * Which figure of each quantity the borrower keeps within: of the air the band beyond which somebody has to attend,
 * and at most that much change; of light, its sum over a year and ultraviolet the ceiling beyond which it bars. What
 * is only aimed at is no term.
 */
const keptLevel: Readonly<Record<keyof ScheduleLimits, LimitLevel>> = {
  temperatureC: "warn",
  humidity: "warn",
  temperatureChange24hK: "warn",
  humidityChange24h: "warn",
  illuminanceLx: "max",
  lightLxHoursPerYear: "max",
  uvMicrowattPerLumen: "alarm",
};

function toScheduleLimits(limits: CommonLimits): ScheduleLimits {
  const band = (ends: { low: number; high: number } | null) =>
    ends === null ? null : { low: ends.low, high: ends.high };
  return {
    temperatureC: band(limits.temperatureC.warn),
    humidity: band(limits.humidity.warn),
    temperatureChange24hK: limits.temperatureChange24hK.warn,
    humidityChange24h: limits.humidityChange24h.warn,
    illuminanceLx: limits.illuminanceLx.max,
    lightLxHoursPerYear: limits.lightLxHoursPerYear.max,
    uvMicrowattPerLumen: limits.uvMicrowattPerLumen.alarm,
  };
}

/** The sources of the figures that are kept: of each quantity once, whichever end of its band they set. */
function limitSources(figures: readonly CommonFigure[], limits: ScheduleLimits): LimitSource[] {
  const printed = Object.keys(limits) as (keyof ScheduleLimits)[];
  const sources = printed.flatMap((quantity) =>
    figures
      .filter((figure) => figure.quantity === quantity && figure.level === keptLevel[quantity])
      .flatMap((figure) =>
        figure.ground.map(({ title, where, standing }) => ({ quantity, title, where, standing })),
      ),
  );
  return [...new Map(sources.map((source) => [Object.values(source).join("\n"), source])).values()];
}

/** The pairs that exclude each other on a band that is printed: the warning band, and on the road the alarm. */
function printedConflicts(conflicts: readonly LimitConflict[]): TermsConflict[] {
  return bandQuantities.flatMap((quantity) => {
    const printed = quantity === "transitTemperatureC" ? "alarm" : keptLevel[quantity];
    return conflicts
      .filter((conflict) => conflict.quantity === quantity && conflict.level === printed)
      .flatMap(({ pairs }) => pairs.map((pair) => ({ quantity, ...pair })));
  });
}

function scheduleRow(subject: TermsSubject, request: RequestFacts): ScheduleRow {
  const { specimen, latinTitle, series, condition } = subject;
  const { fluidName, fluidPercent, replacementCost: cost } = specimen;
  return {
    accessionNumber: specimen.accessionNumber,
    title: specimen.title,
    latinTitle,
    kind: specimen.kind,
    preparation: specimen.preparation,
    fluid: fluidName === null ? null : { name: fluidName, percent: fluidPercent },
    isHuman: specimen.human,
    scientificName: specimen.scientificName,
    series,
    components: specimen.components.map(({ name, count }) => ({ name, count })),
    size: specimen.mountedSize ?? sizeWithThickness(specimen.size, specimen.sheetThicknessMm),
    massKg: specimen.mountedMassKg ?? specimen.massKg,
    isWithMount: specimen.mountedSize !== null || specimen.mountedMassKg !== null,
    use: specimen.use,
    hazards: specimen.hazards.map(({ substance, percent }) => ({ substance, percent })),
    replacementCost:
      cost === null
        ? null
        : { minor: cost.minor, currency: cost.currency, basis: cost.basis, statedOn: cost.statedOn },
    condition,
    limits: toScheduleLimits(limitsOfSpecimen(specimen)),
    restrictions: consentRestrictions(subject, request),
  };
}

/** @throws {RangeError} for a loan without a specimen */
export function agreementTerms(facts: TermsFacts): CurrentTerms {
  const { request, subjects, languages, costing } = facts;
  const { venue } = request;
  const sum = sumOfCosts(subjects);
  const group = groupLimits(
    subjects.map(({ specimen }) => ({ id: specimen.accessionNumber, limits: limitsOfSpecimen(specimen) })),
  );
  const limits = toScheduleLimits(group.limits);
  const allowed = {
    pictures: picturesAllowedForAll(subjects, request),
    activities: activitiesAllowedForAll(subjects, request),
  };
  const schedule = subjects.map((subject) => scheduleRow(subject, request));
  return CurrentTerms.parse({
    format: "loan-agreement-3",
    languages: [...languages],
    loan: facts.loan,
    lender: facts.lender,
    borrower: facts.borrower,
    purpose: {
      purpose: request.purpose,
      teachingUse: request.teachingUse,
      audience: request.audience,
      isPaidAdmission: request.paidAdmission,
      displayStyle: request.displayStyle,
      ...allowed,
    },
    term: {
      startsOn: request.startsOn,
      returnBy: request.endsOn,
      daysBefore: request.daysBefore,
      daysAfter: request.daysAfter,
    },
    opensOn: facts.opensOn,
    venue: { name: venue.name, address: venue.address, countryCode: venue.countryCode },
    schedule,
    groupLimits: {
      limits,
      conflicts: printedConflicts(group.conflicts),
      sources: limitSources(group.figures, limits),
    },
    cover: {
      needed: sum.currency === null ? null : { minor: sum.minor, currency: sum.currency },
      stated: request.statedCover,
      certificates: facts.certificates,
    },
    crates: [...facts.crates],
    stages: [...facts.stages],
    conditions: facts.conditions,
    clauses: frozenClauses({
      request,
      title: facts.loan.title,
      lender: facts.lender,
      lenderEmergency: facts.lenderEmergency,
      borrower: facts.borrower,
      subjects,
      schedule,
      limits,
      certificates: facts.certificates,
      stages: facts.stages,
      opensOn: facts.opensOn,
      currency: costing?.total.currency ?? sum.currency ?? facts.currency,
      costing,
      cancellation: facts.cancellation,
      languages,
      allowed,
      parameters: facts.parameters,
    }),
    annexes: termsAnnexes({
      venue,
      report: facts.facilityReport,
      limits,
      subjects,
      checks: facts.checks,
      costing,
      languages,
      hasCertificates: facts.certificates.length > 0,
      isAmendment: facts.amends !== null,
    }),
    amends: facts.amends,
  } satisfies CurrentTerms);
}
