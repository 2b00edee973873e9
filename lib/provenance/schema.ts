/**
 * The words of provenance: what a donor allowed, scope by scope, whose a specimen
 * is, and which papers of authorities it has. Scopes are atomic because old forms
 * bundle them. What was not asked or is not known is never taken for a yes.
 */
import { z } from "zod";
import { DateText } from "#lib/platform/dates.ts";

/** What a donor can allow or refuse. */
export const scopes = [
  "professional teaching",
  "handling by learners",
  "school and public education",
  "research",
  "public display, free",
  "public display, paid",
  "lending to others",
  "export",
  "pictures, internal",
  "pictures, professional publication",
  "pictures and models, openly online",
  "mass media",
  "casting and scanning",
  "sampling",
  "commercial use of likeness",
  "long-term retention",
  "reuse of parts",
] as const;
export const Scope = z.enum(scopes);
export type Scope = z.infer<typeof Scope>;

export const answers = ["granted", "refused", "not asked", "unknown"] as const;
export type Answer = (typeof answers)[number];

export const bases = [
  "donor in life",
  "will",
  "relative or authorised person",
  "order of an authority",
  "unclaimed",
  "historical or unknown",
  "surgical or pathology",
  "foetal, by parents",
  "imported, foreign programme",
] as const;
export type Basis = (typeof bases)[number];

export const audienceLimits = ["professionals only", "enrolled students", "anyone", "unknown"] as const;
export const dispositions = [
  "return to family",
  "burial",
  "cremation",
  "retain indefinitely",
  "unknown",
] as const;

/** ISO 3166-1 alpha-2, upper case. */
export const CountryCode = z.string().regex(/^[A-Z]{2}$/, "country.two-letters");

/** A donor's pseudonym: a letter and random characters that tell neither order nor time. */
export const DonorCode = z.string().regex(/^D-[0-9A-Z]{5}$/, "donor.code-pattern");

const text = (most: number) => z.string().trim().max(most);

export const ConsentInput = z.object({
  donorCode: DonorCode,
  basis: z.enum(bases),
  formVersion: text(60),
  signedOn: DateText.nullable(),
  witnessCount: z.number().int().min(0).max(10).nullable(),
  /** Where the evidence is held; the evidence itself is never copied here. */
  evidencePlace: text(200).min(1),
  answers: z.record(Scope, z.enum(answers)),
  audience: z.enum(audienceLimits),
  /** Empty means that no list of allowed countries was stated. */
  territoriesAllowed: z.array(CountryCode).max(60),
  territoriesRefused: z.array(CountryCode).max(60),
  validUntil: DateText.nullable(),
  reviewDueOn: DateText.nullable(),
  nonCommercialOnly: z.boolean(),
  /** A face, a tattoo or a name makes the person recognisable. */
  identifiable: z.boolean(),
  disposition: z.enum(dispositions),
  dispositionDueOn: DateText.nullable(),
  verifiedBy: text(120).nullable(),
  verifiedOn: DateText.nullable(),
});
export type ConsentInput = z.infer<typeof ConsentInput>;

/** What rules may know of one donor's current consent: scopes and limits, never who. */
export type ConsentFacts = {
  consentId: string;
  donorCode: string;
  basis: Basis;
  answers: Record<Scope, Answer>;
  audience: (typeof audienceLimits)[number];
  territoriesAllowed: string[];
  territoriesRefused: string[];
  validUntil: DateText | null;
  reviewDueOn: DateText | null;
  nonCommercialOnly: boolean;
  identifiable: boolean;
  withdrawalReceivedOn: DateText | null;
  withdrawalEffectiveOn: DateText | null;
  disposition: (typeof dispositions)[number];
  dispositionDueOn: DateText | null;
  verifiedOn: DateText | null;
};

export const permitKinds = [
  "species protection (CITES)",
  "veterinary",
  "import",
  "export",
  "public display",
  "collecting or hunting",
  "other",
] as const;
export const PermitInput = z.object({
  kind: z.enum(permitKinds),
  number: text(80).min(1),
  authority: text(160).min(1),
  territories: z.array(CountryCode).max(60),
  validFrom: DateText.nullable(),
  validUntil: DateText.nullable(),
});
export type PermitInput = z.infer<typeof PermitInput>;

export const titleStatuses = ["owned", "deposit", "loan-in", "disputed", "unknown"] as const;
export const TitleInput = z.object({
  status: z.enum(titleStatuses),
  ownerName: text(160),
  leaveToLend: z.boolean(),
  leaveReference: text(160),
  recordedOn: DateText,
});
export type TitleInput = z.infer<typeof TitleInput>;

/** Everything provenance knows that bears on lending one specimen. */
export type ProvenanceFacts = {
  /** One entry per donor; empty for animals and for human specimens whose donor is not known. */
  consents: ConsentFacts[];
  /** Donors linked to the specimen that have no consent record. */
  donorsWithoutConsent: number;
  permits: PermitInput[];
  title: TitleInput | null;
};
