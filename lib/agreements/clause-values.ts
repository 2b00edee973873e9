/**
 * What fills the clauses of one loan: the facts of the loan under the names of their
 * parameters, what was set for it, and the standards for everything else. Pure; the
 * same facts give the same values. Restrictions are those of the schedule, so that
 * the clauses and the schedule never say different things.
 */

import { type ClauseLanguageCode, clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { type ClauseFacts, clauseRule, clausesThatApply } from "#lib/agreements/clauses/library.ts";
import {
  type CancellationEnds,
  type FactName,
  isSetParameter,
  type ParameterName,
  parameterNames,
  parameterOf,
  type SetParameterName,
  type StandardFacts,
  standardOf,
} from "#lib/agreements/clauses/parameters.ts";
import { type ClauseValues, writeClause } from "#lib/agreements/clauses/written-clause.ts";
import { reasonsForCourier } from "#lib/agreements/courier.ts";
import type {
  Party,
  Restriction,
  ScheduleLimits,
  ScheduleRow,
  TermsStage,
} from "#lib/agreements/frozen-terms.ts";
import type {
  FrozenClause,
  PaperOnRecord,
  ParameterValue,
  TermsAnnexes,
} from "#lib/agreements/terms-annexes.ts";
import type { EmergencyLine } from "#lib/people/emergency.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { isExport, practiceFor } from "#lib/suitability/rules/case.ts";
import { sumOfCosts } from "#lib/suitability/rules/cover.ts";
import type { LoanInput } from "#lib/suitability/schema.ts";

/** What was set for this loan; what is left out has its standard. */
export type OwnParameters = Readonly<Partial<Record<SetParameterName, string | number>>>;

export type ClauseSource = {
  request: RequestFacts;
  title: string;
  lender: Party;
  lenderEmergency: EmergencyLine;
  borrower: Party & { contactName: string; contactEmail: string; contactPhone: string };
  subjects: readonly SpecimenCase[];
  schedule: readonly ScheduleRow[];
  limits: ScheduleLimits;
  certificates: readonly { territories: readonly string[] }[];
  stages: readonly Pick<TermsStage, "carrier">[];
  opensOn: DateText | null;
  currency: string;
  costing: TermsAnnexes["costing"];
  cancellation: CancellationEnds | null;
  languages: readonly ClauseLanguageCode[];
  allowed: Pick<LoanInput, "pictures" | "activities">;
  parameters: OwnParameters;
};

export function clauseFacts({ request, subjects }: Pick<ClauseSource, "request" | "subjects">): ClauseFacts {
  const isTeaching = request.purpose === "teaching";
  return {
    hasHuman: subjects.some(({ specimen }) => specimen.human),
    hasAnimal: subjects.some(({ specimen }) => !specimen.human),
    hasJars: subjects.some(({ specimen }) => specimen.preparation === "fluid-preserved"),
    isExport: isExport(request),
    isTeaching,
    isShown: request.purpose === "exhibition" || isTeaching,
    hasDisposition: subjects.some(({ provenance }) =>
      provenance.consents.some((consent) => consent.dispositionDueOn !== null),
    ),
  };
}

const massOf = ({ specimen }: SpecimenCase) => specimen.mountedMassKg ?? specimen.massKg ?? 0;

/** The number, and behind one that is not answered at every hour when it is, in each language of the agreement. */
function emergencyWords({ phone, hours }: EmergencyLine, languages: readonly ClauseLanguageCode[]): string {
  if (hours === "any hour") return phone;
  return `${phone} (${languages.map((code) => clausesIn[code].officeHours).join(" / ")})`;
}

export function standardFacts({
  request,
  lender,
  lenderEmergency,
  borrower,
  subjects,
  languages,
  currency,
  parameters,
  cancellation,
}: Pick<
  ClauseSource,
  | "request"
  | "lender"
  | "lenderEmergency"
  | "borrower"
  | "subjects"
  | "languages"
  | "currency"
  | "parameters"
  | "cancellation"
>): StandardFacts {
  return {
    lenderName: lender.name,
    lenderCity: lender.city,
    lenderEmail: lender.email,
    lenderEmergency: emergencyWords(lenderEmergency, languages),
    contactName: borrower.contactName,
    contactPhone: borrower.contactPhone,
    practice: practiceFor(request),
    isPaidAdmission: request.paidAdmission,
    isExhibition: request.purpose === "exhibition",
    hasJars: subjects.some(({ specimen }) => specimen.preparation === "fluid-preserved"),
    hasCourierReason: reasonsForCourier({ request, subjects, currency, parameters }).length > 0,
    heaviestKg: Math.max(0, ...subjects.map(massOf)),
    cancellation,
  };
}

const unique = (items: readonly string[]) => [...new Set(items)].sort();

type CodeOf<Code extends Restriction["code"]> = Extract<Restriction, { code: Code }>;

function restrictionsOf<Code extends Restriction["code"]>(
  schedule: readonly ScheduleRow[],
  code: Code,
): CodeOf<Code>[] {
  return schedule.flatMap(({ restrictions }) =>
    restrictions.filter((restriction): restriction is CodeOf<Code> => restriction.code === code),
  );
}

/** The countries that every list names; null where there is no list. */
function consentCountries(schedule: readonly ScheduleRow[]): string[] | null {
  const lists = restrictionsOf(schedule, "restriction.only-in").map(({ parameters }) => parameters.countries);
  const [first, ...others] = lists;
  if (first === undefined) return null;
  return unique(first.filter((country) => others.every((list) => list.includes(country))));
}

const earliest = (days: readonly DateText[]): DateText | null => [...days].sort()[0] ?? null;

export const papersOf = (papers: readonly PaperOnRecord[]): PaperOnRecord[] =>
  papers.map(({ kind, authority, number, validUntil }) => ({ kind, authority, number, validUntil }));

function coverSum(subjects: readonly SpecimenCase[]) {
  const { currency, minor, unknown } = sumOfCosts(subjects);
  if (currency === null) return { coverNeeded: null, coverSum: "row by row" };
  return { coverNeeded: { minor, currency }, coverSum: unknown === 0 ? "whole schedule" : "least sum" };
}

function fluidsOf(subjects: readonly SpecimenCase[]) {
  const jars = subjects.flatMap(({ specimen }) =>
    specimen.fluidName === null ? [] : [{ name: specimen.fluidName, percent: specimen.fluidPercent }],
  );
  return [...new Map(jars.map((jar) => [`${jar.name} ${jar.percent}`, jar])).values()];
}

const percentOf = (fraction: number) => Math.round(fraction * 1_000) / 10;

/** The facts of the loan, under the names of their parameters. */
export function factValues(source: ClauseSource): Record<FactName, ParameterValue> {
  const { request, lender, borrower, subjects, schedule, limits, allowed } = source;
  const { venue } = request;
  const { temperatureC, humidity } = limits;
  return {
    lender: lender.name,
    lenderAddress: `${lender.address}, ${lender.city}`,
    borrower: borrower.name,
    borrowerAddress: `${borrower.address}, ${borrower.city}`,
    contact: [borrower.contactName, borrower.contactEmail, borrower.contactPhone]
      .filter((text) => text !== "")
      .join(", "),
    rulingLanguage: source.languages[0] ?? "en",
    specimenCount: subjects.length,
    componentCount: schedule.reduce(
      (sum, { components }) => sum + components.reduce((many, { count }) => many + count, 0),
      0,
    ),
    purpose: request.purpose,
    title: source.title,
    audience: request.audience,
    admission: request.paidAdmission ? "paid" : "free",
    style: request.displayStyle,
    consentCountries: consentCountries(schedule),
    consentEndsOn: earliest(
      restrictionsOf(schedule, "restriction.consent-ends").map(({ parameters }) => parameters.endsOn),
    ),
    licencesHeld: papersOf(venue.licences),
    startsOn: request.startsOn,
    returnBy: request.endsOn,
    opensOn: source.opensOn,
    daysBefore: request.daysBefore,
    daysAfter: request.daysAfter,
    venue: venue.name,
    venueAddress: venue.address,
    currency: source.currency,
    fee: source.costing?.total ?? null,
    ...coverSum(subjects),
    coverCountries: unique(source.certificates.flatMap(({ territories }) => [...territories])),
    activities: [...allowed.activities],
    samplingAllowed: allowed.activities.includes("sampling") ? "by permission" : "no",
    temperatureLowC: temperatureC?.low ?? null,
    temperatureHighC: temperatureC?.high ?? null,
    temperatureChangeK: limits.temperatureChange24hK,
    humidityLowPercent: humidity === null ? null : percentOf(humidity.low),
    humidityHighPercent: humidity === null ? null : percentOf(humidity.high),
    humidityChangePercent: percentOf(limits.humidityChange24h),
    illuminanceLx: limits.illuminanceLx,
    lightLxHours: limits.lightLxHoursPerYear,
    uvMicrowattPerLumen: limits.uvMicrowattPerLumen,
    heaviestKg: Math.max(0, ...subjects.map(massOf)),
    teachingUse: request.teachingUse,
    fluids: fluidsOf(subjects),
    carriers: unique(source.stages.map(({ carrier }) => carrier).filter((name) => name !== "")).join(", "),
    borderFrom: lender.countryCode,
    borderTo: venue.countryCode,
    pictures: [...allowed.pictures],
    lawCountry: lender.countryCode,
    dispositionDueOn: earliest(
      restrictionsOf(schedule, "restriction.owed-back").map(({ parameters }) => parameters.dueOn),
    ),
    animalPapers: papersOf(
      subjects.flatMap(({ specimen, provenance }) => (specimen.human ? [] : provenance.permits)),
    ),
  };
}

/** The value of every parameter of this loan. */
export function clauseValues(source: ClauseSource): ClauseValues {
  const facts: Readonly<Partial<Record<ParameterName, ParameterValue>>> = factValues(source);
  const own: Readonly<Partial<Record<ParameterName, string | number>>> = source.parameters;
  const standards = standardFacts(source);
  return Object.fromEntries(
    parameterNames.map((name) => {
      const parameter = parameterOf(name);
      return [
        name,
        isSetParameter(parameter) ? (own[name] ?? standardOf(parameter, standards)) : (facts[name] ?? null),
      ];
    }),
  );
}

/** The clauses that apply, with their parameters and their text in each language of the agreement. */
export function frozenClauses(source: ClauseSource): FrozenClause[] {
  const values = clauseValues(source);
  const standards = standardFacts(source);
  return clausesThatApply(clauseFacts(source)).map((id) => {
    const { number, version, parameters: names } = clauseRule(id);
    const parameters = names.map((name) => {
      const parameter = parameterOf(name);
      const value = values[name] ?? null;
      return isSetParameter(parameter)
        ? { name, value, standard: standardOf(parameter, standards) }
        : { name, value };
    });
    const languages = clauseLanguages.filter((code) => source.languages.includes(code));
    return {
      id,
      number,
      version,
      isStandard: parameters.every((one) => !("standard" in one) || one.value === one.standard),
      parameters,
      texts: Object.fromEntries(languages.map((code) => [code, writeClause(id, values, clausesIn[code])])),
    };
  });
}
