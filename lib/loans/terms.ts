/**
 * The terms of a loan agreement drawn up from facts: everything that is signed, and
 * nothing else. Made of facts alone, so the same facts give the same value; its
 * canonical text is hashed and never changes. Codes and figures, which papers puts
 * into words; only the clauses are sentences, because they are what was agreed.
 * Masses are kilograms, lengths millimetres, humidity a fraction, money whole minor
 * units. Invariant: what is drawn up can be read again (frozen-terms.ts).
 */
import {
  type CommonFigure,
  groupLimits,
  type LimitConflict,
  type LimitLevel,
} from "#lib/environment/group-limits.ts";
import type { CommonLimits } from "#lib/environment/schema.ts";
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import { type ClauseFacts, clausesFor } from "#lib/loans/clauses.ts";
import {
  AgreementTerms,
  bandQuantities,
  type LimitSource,
  type Party,
  type ScheduleLimits,
  type ScheduleRow,
  type TermsConflict,
  type TermsCrate,
  type TermsStage,
} from "#lib/loans/frozen-terms.ts";
import {
  activitiesAllowedForAll,
  consentRestrictions,
  picturesAllowedForAll,
} from "#lib/loans/restrictions.ts";
import type { RequestFacts, SpecimenCase } from "#lib/loans/rules/case.ts";
import { isExport, isPublicShow } from "#lib/loans/rules/case.ts";
import { type CostSum, sumOfCosts } from "#lib/loans/rules/cover.ts";
import type { LoanInput } from "#lib/loans/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { Money } from "#lib/specimens/schema.ts";
import { sizeWithThickness } from "#lib/specimens/sheet-size.ts";

export type TermsSubject = SpecimenCase & {
  latinTitle: string;
  series: { code: string; number: number } | null;
  condition: { checkedOn: DateText; grade: string } | null;
};

export type TermsFacts = {
  request: RequestFacts;
  loan: AgreementTerms["loan"];
  lender: Party;
  borrower: AgreementTerms["borrower"];
  subjects: readonly TermsSubject[];
  certificates: AgreementTerms["cover"]["certificates"];
  crates: readonly TermsCrate[];
  stages: readonly TermsStage[];
  conditions: AgreementTerms["conditions"];
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

/** Money for a sentence: 1234500 EUR cents as "12,345.00 EUR". */
export function moneyWords({ minor, currency }: Money): string {
  const digits =
    new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;
  const amount = new Intl.NumberFormat("en", {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  return `${amount.format(minor / 10 ** digits)} ${currency}`;
}

const dayFormat = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});

/** A day for a sentence: "2027-03-01" as "1 March 2027". */
export function dayWords(day: DateText): string {
  return dayFormat.format(new Date(`${day}T00:00:00Z`));
}

const countryNames = new Intl.DisplayNames(["en"], { type: "region", fallback: "code" });

const audienceWords: Record<LoanInput["audience"], string> = {
  "enrolled students": "enrolled students",
  professionals: "professionals",
  "general public": "the general public",
};

const pictureWords: Record<LoanInput["pictures"][number], string> = {
  internal: "for internal use",
  "professional publication": "for professional publication",
  online: "for publication online",
  press: "for the press",
};

/** Of what was planned, what every specimen allows. */
type Allowed = Pick<LoanInput, "pictures" | "activities">;

function clauseFacts({ request, subjects }: TermsFacts, { activities }: Allowed): ClauseFacts {
  const { purpose } = request;
  const isTeaching = purpose === "teaching";
  return {
    hasHuman: subjects.some(({ specimen }) => specimen.human),
    hasAnimal: subjects.some(({ specimen }) => !specimen.human),
    hasJars: subjects.some(({ specimen }) => specimen.preparation === "fluid-preserved"),
    isPublic: isPublicShow(request),
    isExport: isExport(request),
    isTeaching,
    isShown: purpose === "exhibition" || isTeaching,
    hasDisposition: subjects.some(({ provenance }) =>
      provenance.consents.some((consent) => consent.dispositionDueOn !== null),
    ),
    allowsActivities: activities.length > 0,
    allowsSampling: activities.includes("sampling"),
  };
}

/** What the schedule comes to; a least sum where a cost is not known. */
function costWords({ currency, minor, unknown }: CostSum): string {
  if (currency === null) return "what its rows come to";
  return `${unknown === 0 ? "" : "at least "}${moneyWords({ minor, currency })}`;
}

function clauseWords(facts: TermsFacts, { pictures, activities }: Allowed): Record<string, string> {
  const { request, lender, borrower, subjects } = facts;
  const { venue } = request;
  return {
    lender: lender.name,
    borrower: borrower.name,
    contact: `${borrower.contactName}, ${borrower.contactEmail}, ${borrower.contactPhone}`,
    specimens: subjects.length === 1 ? "1 specimen" : `${subjects.length} specimens`,
    purpose: request.purpose,
    audience: audienceWords[request.audience],
    admission: request.paidAdmission ? "with paid admission" : "without charge for admission",
    style: request.displayStyle,
    startsOn: dayWords(request.startsOn),
    returnBy: dayWords(request.endsOn),
    daysBefore: String(request.daysBefore),
    daysAfter: String(request.daysAfter),
    venue: venue.name,
    venueAddress: venue.address,
    coverNeeded: costWords(sumOfCosts(subjects)),
    teachingUse:
      request.teachingUse === "handling"
        ? "Learners may handle what the schedule does not exclude, with gloves."
        : "Learners look and do not touch.",
    pictures: pictures.length === 0 ? "none" : pictures.map((picture) => pictureWords[picture]).join(", "),
    activities: activities.join(", "),
    lenderCountry: countryNames.of(lender.countryCode) ?? lender.countryCode,
    lenderCity: lender.city,
  };
}

/** @throws {RangeError} for a loan without a specimen */
export function agreementTerms(facts: TermsFacts): AgreementTerms {
  const { request, subjects } = facts;
  const { venue } = request;
  const sum = sumOfCosts(subjects);
  const group = groupLimits(
    subjects.map(({ specimen }) => ({ id: specimen.accessionNumber, limits: limitsOfSpecimen(specimen) })),
  );
  const shared = toScheduleLimits(group.limits);
  const allowed: Allowed = {
    pictures: picturesAllowedForAll(subjects, request),
    activities: activitiesAllowedForAll(subjects, request),
  };
  return AgreementTerms.parse({
    format: "loan-agreement-2",
    language: "en",
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
    venue: { name: venue.name, address: venue.address, countryCode: venue.countryCode },
    schedule: subjects.map((subject) => scheduleRow(subject, request)),
    groupLimits: {
      limits: shared,
      conflicts: printedConflicts(group.conflicts),
      sources: limitSources(group.figures, shared),
    },
    cover: {
      needed: sum.currency === null ? null : { minor: sum.minor, currency: sum.currency },
      stated: request.statedCover,
      certificates: facts.certificates,
    },
    crates: [...facts.crates],
    stages: [...facts.stages],
    conditions: facts.conditions,
    clauses: clausesFor(clauseFacts(facts, allowed), clauseWords(facts, allowed)),
  } satisfies AgreementTerms);
}
