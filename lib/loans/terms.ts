/**
 * The terms of a loan agreement as one plain value: everything that is signed,
 * and nothing else. Made of facts alone, so the same facts give the same value;
 * its canonical text is hashed and never changes. Papers paints it. Masses are
 * kilograms, lengths millimetres, humidity a fraction, money whole minor units;
 * `returnBy` is the first day that is no longer the loan.
 */
import canonicalize from "canonicalize";
import { type CommonFigure, groupLimits, type LimitConflict } from "#lib/environment/group-limits.ts";
import type { CommonLimits } from "#lib/environment/schema.ts";
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import { type Clause, clausesFor } from "#lib/loans/clauses.ts";
import { consentRestrictions, countryName, picturesAllowedForAll } from "#lib/loans/restrictions.ts";
import type { RequestFacts, SpecimenCase } from "#lib/loans/rules/case.ts";
import { isExport, isPublicShow } from "#lib/loans/rules/case.ts";
import { sumOfCosts } from "#lib/loans/rules/cover.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { Money, Size } from "#lib/specimens/schema.ts";

export type Party = {
  name: string;
  address: string;
  city: string;
  countryCode: string;
  email: string;
  phone: string;
};

export type ScheduleLimits = {
  temperatureC: { low: number; high: number } | null;
  humidity: { low: number; high: number } | null;
  temperatureChange24hK: number;
  humidityChange24h: number;
  illuminanceLx: number;
  lightLxHoursPerYear: number;
  uvMicrowattPerLumen: number;
};

/** What one of the printed limits rests on, and how well that is known. */
export type LimitSource = { quantity: keyof ScheduleLimits; title: string; where: string; standing: string };

export type ScheduleRow = {
  accessionNumber: string;
  title: string;
  latinTitle: string;
  kind: string;
  preparation: string;
  fluid: { name: string; percent: number | null } | null;
  isHuman: boolean;
  scientificName: string;
  series: { code: string; number: number } | null;
  components: { name: string; count: number }[];
  size: Size | null;
  massKg: number | null;
  isWithMount: boolean;
  use: string;
  hazards: string[];
  replacementCost: (Money & { basis: string; statedOn: DateText }) | null;
  condition: { checkedOn: DateText; grade: string } | null;
  limits: ScheduleLimits;
  restrictions: string[];
};

export type TermsCrate = {
  code: string;
  kind: string;
  outerLengthMm: number;
  outerWidthMm: number;
  outerHeightMm: number;
  grossMassKg: number;
  handling: string;
  orientation: string;
  contents: string[];
};

export type TermsStage = { direction: string; carrier: string; departsOn: DateText; arrivesOn: DateText };

export type AgreementTerms = {
  format: "loan-agreement-1";
  language: "en";
  loan: { number: string; title: string; version: number; drawnUpOn: DateText };
  lender: Party;
  borrower: Party & { contactName: string; contactEmail: string; contactPhone: string };
  purpose: {
    purpose: string;
    teachingUse: string;
    audience: string;
    isPaidAdmission: boolean;
    displayStyle: string;
    pictures: string[];
  };
  term: { startsOn: DateText; returnBy: DateText; daysBefore: number; daysAfter: number };
  venue: { name: string; address: string; countryCode: string };
  schedule: ScheduleRow[];
  groupLimits: { limits: ScheduleLimits; conflicts: string[]; sources: LimitSource[] };
  cover: {
    needed: Money | null;
    stated: Money | null;
    certificates: {
      insurer: string;
      policyNumber: string;
      amount: Money;
      startsAt: string;
      endsAt: string;
      coversTransit: boolean;
      territories: string[];
    }[];
  };
  crates: TermsCrate[];
  stages: TermsStage[];
  conditions: { office: string; decidedOn: DateText; conditions: string; reference: string }[];
  clauses: Clause[];
};

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

/** What the borrower keeps within: the warning bands and the ceilings. */
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
    uvMicrowattPerLumen: limits.uvMicrowattPerLumen.target,
  };
}

/** The sources of the figures that are printed: of each quantity once, whichever end of its band they set. */
function limitSources(figures: readonly CommonFigure[], limits: ScheduleLimits): LimitSource[] {
  const printed = Object.keys(limits) as (keyof ScheduleLimits)[];
  const sources = printed.flatMap((quantity) =>
    figures
      .filter((figure) => figure.quantity === quantity)
      .flatMap((figure) =>
        figure.ground.map(({ title, where, standing }) => ({ quantity, title, where, standing })),
      ),
  );
  return [...new Map(sources.map((source) => [Object.values(source).join("\n"), source])).values()];
}

const quantityWords: Partial<Record<LimitConflict["quantity"], string>> = {
  temperatureC: "temperature",
  transitTemperatureC: "temperature on the way",
  humidity: "relative humidity",
};

function conflictWords({ quantity, pairs }: LimitConflict): string[] {
  const percent = quantity === "humidity" ? 100 : 1;
  const unit = quantity === "humidity" ? "%" : "°C";
  return pairs.map(
    ({ needsAtLeast, atLeast, allowsAtMost, atMost }) =>
      `${needsAtLeast} and ${allowsAtMost} have no common ${quantityWords[quantity] ?? quantity}: ` +
      `at least ${atLeast * percent} ${unit} and at most ${atMost * percent} ${unit}. They are kept apart.`,
  );
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
    size: specimen.mountedSize ?? specimen.size,
    massKg: specimen.mountedMassKg ?? specimen.massKg,
    isWithMount: specimen.mountedSize !== null || specimen.mountedMassKg !== null,
    use: specimen.use,
    hazards: specimen.hazards.map(({ substance, percent }) =>
      percent === null ? substance : `${substance}, ${percent} %`,
    ),
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

function clauseFacts({ request, subjects }: TermsFacts) {
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
  };
}

function clauseWords(
  { request, lender, borrower, subjects }: TermsFacts,
  needed: string,
): Record<string, string> {
  const { venue } = request;
  const pictures = picturesAllowedForAll(subjects, request);
  return {
    lender: lender.name,
    borrower: borrower.name,
    contact: `${borrower.contactName}, ${borrower.contactEmail}, ${borrower.contactPhone}`,
    specimens: subjects.length === 1 ? "1 specimen" : `${subjects.length} specimens`,
    purpose: request.purpose,
    audience: request.audience,
    admission: request.paidAdmission ? "with paid admission" : "without charge for admission",
    style: request.displayStyle,
    startsOn: dayWords(request.startsOn),
    returnBy: dayWords(request.endsOn),
    daysBefore: String(request.daysBefore),
    daysAfter: String(request.daysAfter),
    venue: venue.name,
    venueAddress: venue.address,
    coverNeeded: needed,
    teachingUse:
      request.teachingUse === "handling"
        ? "Learners may handle what the schedule does not exclude, with gloves."
        : "Learners look and do not touch.",
    pictures: pictures.length === 0 ? "none" : pictures.join(", "),
    lenderCountry: countryName(lender.countryCode),
    lenderCity: lender.city,
  };
}

/** @throws {RangeError} for a loan without a specimen */
export function agreementTerms(facts: TermsFacts): AgreementTerms {
  const { request, subjects } = facts;
  const { venue } = request;
  const sum = sumOfCosts(subjects);
  const needed = sum.currency === null ? null : { minor: sum.minor, currency: sum.currency };
  const neededWords = needed === null ? "as each row states" : moneyWords(needed);
  const group = groupLimits(
    subjects.map(({ specimen }) => ({ id: specimen.accessionNumber, limits: limitsOfSpecimen(specimen) })),
  );
  const shared = toScheduleLimits(group.limits);
  return {
    format: "loan-agreement-1",
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
      pictures: picturesAllowedForAll(subjects, request),
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
      conflicts: group.conflicts
        .filter(({ quantity, level }) => level === (quantity === "transitTemperatureC" ? "alarm" : "warn"))
        .flatMap(conflictWords),
      sources: limitSources(group.figures, shared),
    },
    cover: { needed, stated: request.statedCover, certificates: facts.certificates },
    crates: [...facts.crates],
    stages: [...facts.stages],
    conditions: facts.conditions,
    clauses: clausesFor(clauseFacts(facts), clauseWords(facts, neededWords)),
  };
}

/** Whether two versions say the same but for their number and date. */
export function saysTheSame(first: AgreementTerms, second: AgreementTerms): boolean {
  const withoutVersion = (terms: AgreementTerms) =>
    canonicalize({ ...terms, loan: { ...terms.loan, version: 0, drawnUpOn: "" } });
  return withoutVersion(first) === withoutVersion(second);
}
