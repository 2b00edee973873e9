/**
 * The shape of frozen terms, and the one way to read them again. An agreement is
 * kept as canonical text; a text is read only when nothing in it is missing, left
 * over or of another form, so that what is painted is all that was signed. Words of
 * the catalogue stand in it as codes that are not counted up here: a vocabulary that
 * grows or shrinks closes no agreement. Invariants: parsing changes nothing, and the
 * canonical text of what was read is the text.
 */
import { z } from "zod";
import { Amendment, FrozenClause, TermsAnnexes } from "#lib/agreements/terms-annexes.ts";
import { CountryCode } from "#lib/platform/countries.ts";
import { DateText } from "#lib/platform/dates.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { dispositions } from "#lib/provenance/schema.ts";

const text = z.string();
const count = z.number().int();
const Moment = z.iso.datetime();
const Money = z.strictObject({ minor: count.min(0), currency: text });
const Size = z.strictObject({ lengthMm: z.number(), widthMm: z.number(), heightMm: z.number() });
const Band = z.strictObject({ low: z.number(), high: z.number() }).nullable();

export const Party = z.strictObject({
  name: text,
  address: text,
  city: text,
  countryCode: text,
  email: text,
  phone: text,
});
export type Party = z.infer<typeof Party>;

export const ScheduleLimits = z.strictObject({
  temperatureC: Band,
  humidity: Band,
  temperatureChange24hK: z.number(),
  humidityChange24h: z.number(),
  illuminanceLx: z.number(),
  lightLxHoursPerYear: z.number(),
  uvMicrowattPerLumen: z.number(),
});
export type ScheduleLimits = z.infer<typeof ScheduleLimits>;

/** What one of the printed limits rests on, and how well that is known. */
export const LimitSource = z.strictObject({
  quantity: ScheduleLimits.keyof(),
  title: text,
  where: text,
  standing: text,
});
export type LimitSource = z.infer<typeof LimitSource>;

/** The quantities that are bands, so that two specimens may have none in common. */
export const bandQuantities = ["temperatureC", "transitTemperatureC", "humidity"] as const;

/** Two specimens, by accession number, of which one needs more than the other bears. */
export const TermsConflict = z.strictObject({
  quantity: z.enum(bandQuantities),
  needsAtLeast: text,
  atLeast: z.number(),
  allowsAtMost: text,
  atMost: z.number(),
});
export type TermsConflict = z.infer<typeof TermsConflict>;

const restriction = <Code extends string, Parameters extends z.ZodRawShape>(
  code: Code,
  parameters: Parameters,
) => z.strictObject({ code: z.literal(`restriction.${code}`), parameters: z.strictObject(parameters) });

/** One thing that a donor's consent rules out or asks for, strictest of all donors. */
export const Restriction = z.discriminatedUnion("code", [
  restriction("audience-not-known", {}),
  restriction("audience-within", { audience: z.enum(["professionals only", "enrolled students"]) }),
  restriction("not-handled", {}),
  restriction("not-public", {}),
  restriction("not-for-admission", {}),
  restriction("not-sampled", {}),
  restriction("not-cast-or-scanned", {}),
  restriction("only-in", { countries: z.array(CountryCode).min(1) }),
  restriction("no-country-in-common", {}),
  restriction("not-in", { countries: z.array(CountryCode).min(1) }),
  restriction("no-pictures-for", { pictures: z.array(text).min(1) }),
  restriction("recognisable", {}),
  restriction("consent-ends", { endsOn: DateText }),
  restriction("owed-back", { disposition: z.enum(dispositions), dueOn: DateText }),
]);
export type Restriction = z.infer<typeof Restriction>;

export const ScheduleRow = z.strictObject({
  accessionNumber: text,
  title: text,
  latinTitle: text,
  kind: text,
  preparation: text,
  fluid: z.strictObject({ name: text, percent: z.number().nullable() }).nullable(),
  isHuman: z.boolean(),
  scientificName: text,
  series: z.strictObject({ code: text, number: count }).nullable(),
  components: z.array(z.strictObject({ name: text, count })),
  size: Size.nullable(),
  massKg: z.number().nullable(),
  isWithMount: z.boolean(),
  use: text,
  hazards: z.array(z.strictObject({ substance: text, percent: z.number().nullable() })),
  replacementCost: Money.extend({ basis: text, statedOn: DateText }).nullable(),
  condition: z.strictObject({ checkedOn: DateText, grade: text }).nullable(),
  limits: ScheduleLimits,
  restrictions: z.array(Restriction),
});
export type ScheduleRow = z.infer<typeof ScheduleRow>;

export const TermsCrate = z.strictObject({
  code: text,
  kind: text,
  outerLengthMm: z.number(),
  outerWidthMm: z.number(),
  outerHeightMm: z.number(),
  grossMassKg: z.number(),
  handling: text,
  orientation: text,
  /** Accession numbers. */
  contents: z.array(text),
});
export type TermsCrate = z.infer<typeof TermsCrate>;

export const TermsStage = z.strictObject({
  direction: text,
  carrier: text,
  /** Countries that the way crosses between its two ends. */
  through: z.array(CountryCode),
  departsOn: DateText,
  arrivesOn: DateText,
});
export type TermsStage = z.infer<typeof TermsStage>;

/** What every form holds. `returnBy` is the first day that is no longer the loan. */
const shared = {
  loan: z.strictObject({ number: text, title: text, version: count.min(1), drawnUpOn: DateText }),
  lender: Party,
  borrower: Party.extend({ contactName: text, contactEmail: text, contactPhone: text }),
  purpose: z.strictObject({
    purpose: text,
    teachingUse: text,
    audience: text,
    isPaidAdmission: z.boolean(),
    displayStyle: text,
    /** What is allowed for every specimen of what was planned. */
    pictures: z.array(text),
    activities: z.array(text),
  }),
  term: z.strictObject({ startsOn: DateText, returnBy: DateText, daysBefore: count, daysAfter: count }),
  venue: z.strictObject({ name: text, address: text, countryCode: text }),
  schedule: z.array(ScheduleRow).min(1),
  groupLimits: z.strictObject({
    limits: ScheduleLimits,
    conflicts: z.array(TermsConflict),
    sources: z.array(LimitSource),
  }),
  cover: z.strictObject({
    needed: Money.nullable(),
    stated: Money.nullable(),
    certificates: z.array(
      z.strictObject({
        insurer: text,
        policyNumber: text,
        amount: Money,
        startsAt: Moment,
        endsAt: Moment,
        coversTransit: z.boolean(),
        /** Whether it holds while the specimens stay at the venue; earlier versions do not say it. */
        coversStay: z.boolean().optional(),
        territories: z.array(text),
      }),
    ),
  }),
  crates: z.array(TermsCrate),
  stages: z.array(TermsStage),
  conditions: z.array(
    z.strictObject({ office: text, decidedOn: DateText, conditions: text, reference: text }),
  ),
};

/** The form before the library of clauses, in English alone. It is read and printed, and no longer drawn up. */
export const EarlierTerms = z.strictObject({
  format: z.literal("loan-agreement-2"),
  language: z.literal("en"),
  ...shared,
  clauses: z.array(z.strictObject({ id: text, number: count.min(1), heading: text, text })),
});
export type EarlierTerms = z.infer<typeof EarlierTerms>;

export const CurrentTerms = z.strictObject({
  format: z.literal("loan-agreement-3"),
  /** The language that rules, and a second one where there is one. */
  languages: z.array(text).min(1).max(2),
  ...shared,
  opensOn: DateText.nullable(),
  clauses: z.array(FrozenClause),
  annexes: TermsAnnexes,
  /** Null for terms that amend nothing that anybody has signed. */
  amends: Amendment.nullable(),
});
export type CurrentTerms = z.infer<typeof CurrentTerms>;

export const AgreementTerms = z.discriminatedUnion("format", [EarlierTerms, CurrentTerms]);
export type AgreementTerms = z.infer<typeof AgreementTerms>;

/** The language that rules. */
export function rulingLanguage(terms: AgreementTerms): string {
  return terms.format === "loan-agreement-2" ? terms.language : (terms.languages[0] ?? "en");
}

/** The clauses as they were agreed in one language; in the one that rules where there is no other. */
export function clausesAgreed(
  terms: AgreementTerms,
  language: string,
): { id: string; number: number; heading: string; text: string }[] {
  if (terms.format === "loan-agreement-2") return terms.clauses;
  return terms.clauses.map(({ id, number, texts }) => {
    const words = texts[language] ?? texts[rulingLanguage(terms)];
    if (words === undefined) throw new RangeError(`clause ${id} has no text`);
    return { id, number, ...words };
  });
}

function parsedJson(frozen: string): unknown {
  try {
    return JSON.parse(frozen);
  } catch {
    return null;
  }
}

const Formatted = z.object({ format: z.string() });

/** The refusal of a text that this program does not print. */
function otherFormat(value: unknown): Refusal {
  const named = Formatted.safeParse(value);
  return new Refusal("conflict", "agreement.other-format", {
    format: named.success ? named.data.format : "unknown",
  });
}

/** @throws {Refusal} "conflict", `agreement.other-format`, for a text of another form */
export function readTerms(frozen: string): AgreementTerms {
  const value = parsedJson(frozen);
  const read = AgreementTerms.safeParse(value);
  if (!read.success) throw otherFormat(value);
  return read.data;
}

/** The terms of a frozen version; null for one of a form that this program no longer reads. */
export function findTerms(frozen: string): AgreementTerms | null {
  return AgreementTerms.safeParse(parsedJson(frozen)).data ?? null;
}

/** A figure that a frozen version agrees in one of its clauses; null where it names none. */
export function figureAgreed(frozen: string, clause: string, parameter: string): number | null {
  const terms = findTerms(frozen);
  if (terms === null || terms.format === "loan-agreement-2") return null;
  const agreed = terms.clauses.find(({ id }) => id === clause);
  const figure = agreed?.parameters.find(({ name }) => name === parameter)?.value;
  return typeof figure === "number" ? figure : null;
}

/** Days of notice that a frozen version agrees for a recall for the lender's own need; null where it names none. */
export const recallNoticeAgreed = (frozen: string): number | null =>
  figureAgreed(frozen, "recall", "recallDays");

/** Where accession numbers have stood in every form so far. */
const AnySchedule = z.object({ schedule: z.array(z.object({ accessionNumber: z.string() })) });

/**
 * The accession numbers that a frozen version names. Every form can answer this: a
 * signed version in an earlier form is still what lets its specimens out.
 * @throws {Refusal} "conflict", `agreement.other-format`, for a text without a schedule
 */
export function scheduledNumbers(frozen: string): string[] {
  const value = parsedJson(frozen);
  const read = AnySchedule.safeParse(value);
  if (!read.success) throw otherFormat(value);
  return read.data.schedule.map((row) => row.accessionNumber);
}

/** Terms without their number, their date and what they amend. */
function said(terms: CurrentTerms): string {
  const { annexes, loan } = terms;
  const applies = annexes.applies.filter((mark) => mark !== "M");
  return canonicalText({
    ...terms,
    loan: { ...loan, version: 1, drawnUpOn: "" },
    annexes: { ...annexes, applies },
    amends: null,
  });
}

/** The terms without what an earlier version had no place for: that it is said now changes nothing that was agreed. */
function asFarAsSaidIn(earlier: CurrentTerms, terms: CurrentTerms): CurrentTerms {
  const { cover, annexes } = terms;
  const saysStay = earlier.cover.certificates.some(({ coversStay }) => coversStay !== undefined);
  const { report: _report, ...facility } = annexes.facility;
  return {
    ...terms,
    cover: {
      ...cover,
      certificates: saysStay
        ? cover.certificates
        : cover.certificates.map(({ coversStay: _stay, ...certificate }) => certificate),
    },
    annexes: earlier.annexes.facility.report === undefined ? { ...annexes, facility } : annexes,
  };
}

/**
 * Whether a frozen version says the same as these terms but for its number, its date
 * and what it amends, as far as it had a place to say it. One of another form does not.
 */
export function saysTheSame(frozen: string, terms: CurrentTerms): boolean {
  const read = CurrentTerms.safeParse(parsedJson(frozen));
  return read.success && said(read.data) === said(asFarAsSaidIn(read.data, terms));
}
