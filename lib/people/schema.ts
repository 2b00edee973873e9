/**
 * The words of borrowing institutions, their venues with the facts a lender asks
 * for, and the accounts of the people who sign in. A fact that nobody stated is
 * null, and null is never taken for good.
 */
import { z } from "zod";
import { PracticeInput } from "#lib/people/practice.ts";
import { Role } from "#lib/people/viewer.ts";
import { CountryCode } from "#lib/platform/countries.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode } from "#lib/platform/money.ts";
import { Share } from "#lib/platform/share.ts";
import { Telephone } from "#lib/platform/telephone.ts";

export const institutionKinds = [
  "centre",
  "medical school",
  "school of health sciences",
  "veterinary school",
  "museum",
  "touring exhibition",
] as const;
export const standings = ["good", "on hold"] as const;
export const venueKinds = [
  "teaching room",
  "dissection room",
  "exhibition hall",
  "library",
  "store",
] as const;
export const passageKinds = ["door", "corridor turn", "lift", "ramp"] as const;
export const licenceKinds = [
  "public display",
  "anatomy",
  "storage",
  "authority to keep elsewhere",
  "notice to the order office",
  "other",
] as const;

const text = (most: number) => z.string().trim().max(most);
/** BCP 47 language tags. */
const languages = z
  .array(z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/, "language.tag"))
  .min(1)
  .max(6);
const fraction = Share.nullable();

export const InstitutionInput = z.object({
  id: Id.nullable(),
  name: text(160).min(2),
  kind: z.enum(institutionKinds),
  countryCode: CountryCode,
  city: text(80).min(1),
  address: text(300).min(1),
  /** The first one is written to. */
  languages,
  email: z.email().max(200),
  phone: Telephone,
  standing: z.enum(standings),
  verifiedOn: DateText.nullable(),
  note: text(2_000),
});
export type InstitutionInput = z.infer<typeof InstitutionInput>;

/** One narrow point on the way in. For a lift, depth and load; for a corridor turn, the second width. */
export const Passage = z.object({
  kind: z.enum(passageKinds),
  name: text(80).min(1),
  widthMm: z.number().int().min(300).max(20_000),
  heightMm: z.number().int().min(300).max(20_000),
  depthMm: z.number().int().min(300).max(20_000).nullable(),
  secondWidthMm: z.number().int().min(300).max(20_000).nullable(),
  loadKg: z.number().positive().max(50_000).nullable(),
  /** Of a ramp: rise over run. */
  slopePercent: z.number().min(0).max(100).nullable(),
});
export type Passage = z.infer<typeof Passage>;

export const Licence = z.object({
  kind: z.enum(licenceKinds),
  authority: text(160).min(1),
  number: text(80).min(1),
  validFrom: DateText.nullable(),
  validUntil: DateText.nullable(),
});
export type Licence = z.infer<typeof Licence>;

/** What a venue is like. Humidity is a fraction; the swing is highest less lowest within 24 hours. */
export const VenueClimate = z.object({
  temperatureLowC: z.number().min(-30).max(50).nullable(),
  temperatureHighC: z.number().min(-30).max(60).nullable(),
  temperatureSwing24hK: z.number().min(0).max(40).nullable(),
  humidityLow: fraction,
  humidityHigh: fraction,
  humiditySwing24h: fraction,
  illuminanceLx: z.number().min(0).max(100_000).nullable(),
  uvMicrowattPerLumen: z.number().min(0).max(5_000).nullable(),
  hoursOpenPerDay: z.number().min(0).max(24).nullable(),
  daysOpenPerWeek: z.number().min(0).max(7).nullable(),
});
export type VenueClimate = z.infer<typeof VenueClimate>;

export const VenueInput = VenueClimate.extend({
  id: Id.nullable(),
  institutionId: Id,
  name: text(120).min(2),
  kind: z.enum(venueKinds),
  address: text(300).min(1),
  countryCode: CountryCode,
  /** Part of the country by ISO 3166-2, where law differs within it. */
  subdivisionCode: z
    .string()
    .regex(/^[A-Z]{2}-[A-Z0-9]{1,3}$/, "venue.subdivision-pattern")
    .nullable()
    .default(null),
  /** Empty where it is the institution's own. */
  town: text(80).default(""),
  floorLoadKgPerM2: z
    .number()
    .positive()
    .max(100_000)
    .nullable()
    .default(null)
    .meta({ title: "Load that the floor bears", unit: "kg/m²" }),
  supervisedRoom: z.boolean().nullable(),
  restrictedView: z.boolean().nullable(),
  spillProvision: z.boolean().nullable(),
  fireDetection: z.boolean().nullable(),
  nightGuard: z.boolean().nullable(),
  reportedOn: DateText.nullable(),
  passages: z.array(Passage).max(30),
  licences: z.array(Licence).max(20),
}).check(({ value, issues }) => {
  const { temperatureLowC, temperatureHighC, humidityLow, humidityHigh } = value;
  if (temperatureLowC !== null && temperatureHighC !== null && temperatureLowC > temperatureHighC)
    issues.push({
      code: "custom",
      input: value,
      path: ["temperatureHighC"],
      message: "venue.low-above-high",
    });
  if (value.subdivisionCode !== null && !value.subdivisionCode.startsWith(`${value.countryCode}-`))
    issues.push({
      code: "custom",
      input: value,
      path: ["subdivisionCode"],
      message: "venue.subdivision-elsewhere",
    });
  if (humidityLow !== null && humidityHigh !== null && humidityLow > humidityHigh)
    issues.push({ code: "custom", input: value, path: ["humidityHigh"], message: "venue.low-above-high" });
});
export type VenueInput = z.infer<typeof VenueInput>;

/** A venue as rules read it. */
export type VenueFacts = Omit<VenueInput, "id"> & {
  id: Id;
  /** The first day on which the newest facility report no longer counts; null or left out where there is none. */
  reportServesUntil?: DateText | null;
};

export const AccountInput = z
  .object({
    id: Id.nullable(),
    email: z.email().max(200),
    name: text(120).min(1),
    roles: z.array(Role).min(1).max(6),
    institutionId: Id.nullable(),
    active: z.boolean(),
  })
  .check((context) => {
    const { value, issues } = context;
    const borrows = value.roles.some((role) => role === "lecturer" || role === "borrower registrar");
    if (borrows !== (value.institutionId !== null))
      issues.push({
        code: "custom",
        input: value,
        path: ["institutionId"],
        message: "account.institution-of-borrower",
      });
  });
export type AccountInput = z.infer<typeof AccountInput>;

/** An account as it is kept: a new one together with its first password. */
export const AccountWithPassword = z
  .object({
    account: AccountInput,
    /** Null leaves the password as it is. */
    password: z.string().min(12, "account.password-short").max(128).nullable(),
  })
  .refine(({ account, password }) => account.id !== null || password !== null, {
    path: ["password"],
    message: "account.password-needed",
  });
export type AccountWithPassword = z.infer<typeof AccountWithPassword>;

/** A pattern as it is asked of a whole number; null for what is no pattern by itself. */
function wholePattern(pattern: string): RegExp | null {
  try {
    new RegExp(pattern, "u");
    return new RegExp(`^(?:${pattern})$`, "u");
  } catch {
    return null;
  }
}

/** What the centre decides about itself. */
export const CentreSettings = z.object({
  name: text(160).min(2),
  address: text(300).min(1),
  city: text(80).min(1),
  countryCode: CountryCode,
  /** Languages in which the centre can be written to, the first one gladly; left out where nobody has said. */
  languages: languages.optional(),
  email: z.email().max(200),
  phone: Telephone,
  /** Answered day and night, for what happens on the way or at a venue; left out where there is no such number. */
  emergencyPhone: Telephone.optional(),
  /** A regular expression that every accession number matches as a whole. */
  accessionPattern: text(120)
    .min(1)
    .refine((pattern) => wholePattern(pattern) !== null, "centre.pattern-broken"),
  /** An example that shows the pattern to a person. */
  accessionExample: text(40).min(1),
  currency: CurrencyCode,
  /** Whether the catalogue is open to the public, without signing in; left out where nobody has said so, and then it is not. */
  publicCatalogue: z.boolean().optional(),
  /** How long a facility report counts; left out where nobody has said so. */
  facilityReportMonths: z
    .number()
    .int()
    .min(1)
    .max(60)
    .optional()
    .meta({ title: "Facility report counts", unit: "months" }),
  /** Figures of its lending that the centre has set; what is left out has its default. */
  practice: PracticeInput.optional(),
});
export type CentreSettings = z.infer<typeof CentreSettings>;

/** The settings as they are kept: the example does what it is there for. */
export const CentreInput = CentreSettings.refine(
  ({ accessionPattern, accessionExample }) =>
    wholePattern(accessionPattern)?.test(accessionExample) !== false,
  { path: ["accessionExample"], message: "centre.example-differs" },
);
export type CentreInput = z.infer<typeof CentreInput>;
