/**
 * The words of provenance: what a donor allowed, scope by scope, whose a specimen
 * is, and which papers of authorities it has. Scopes are atomic because old forms
 * bundle them. What was not asked or is not known is never taken for a yes.
 */
import { z } from "zod";
import { CountryCode } from "#lib/platform/countries.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";

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
export type AudienceLimit = (typeof audienceLimits)[number];
export const dispositions = [
  "return to family",
  "burial",
  "cremation",
  "retain indefinitely",
  "unknown",
] as const;
export type Disposition = (typeof dispositions)[number];

/** A donor's pseudonym: a letter and random characters that tell neither order nor time. */
export const DonorCode = z.string().regex(/^D-[0-9A-Z]{5}$/, "donor.code-pattern");

const text = (most: number) => z.string().trim().max(most);

export const ConsentInput = z
  .object({
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
  })
  .check((context) => {
    const { value, issues } = context;
    const refuse = (path: string[], message: string) =>
      issues.push({ code: "custom", input: value, path, message });
    if (value.territoriesAllowed.some((country) => value.territoriesRefused.includes(country)))
      refuse(["territoriesRefused"], "consent.country-both-ways");
    if (value.signedOn !== null && value.validUntil !== null && value.validUntil < value.signedOn)
      refuse(["validUntil"], "consent.ends-before-signed");
  });
export type ConsentInput = z.infer<typeof ConsentInput>;

/** What rules may know of one donor's current consent: scopes and limits, never who. */
export type ConsentFacts = {
  consentId: string;
  donorCode: string;
  basis: Basis;
  signedOn: DateText | null;
  witnessCount: number | null;
  answers: Record<Scope, Answer>;
  audience: AudienceLimit;
  territoriesAllowed: string[];
  territoriesRefused: string[];
  validUntil: DateText | null;
  reviewDueOn: DateText | null;
  nonCommercialOnly: boolean;
  identifiable: boolean;
  withdrawalReceivedOn: DateText | null;
  withdrawalEffectiveOn: DateText | null;
  disposition: Disposition;
  dispositionDueOn: DateText | null;
  verifiedOn: DateText | null;
};

export const permitKinds = [
  "species protection (CITES)",
  "scientific exchange label (CITES)",
  "veterinary",
  "import",
  "export",
  "public display",
  "collecting or hunting",
  "sampling",
  "casting and scanning",
  "dissection before visitors",
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

/** A permit stated for one specimen; stated again under the same kind and number, it is corrected. */
export const SpecimenPermitInput = PermitInput.extend({ specimenId: Id }).check((context) => {
  const { value, issues } = context;
  if (value.validFrom !== null && value.validUntil !== null && value.validUntil < value.validFrom)
    issues.push({ code: "custom", input: value, path: ["validUntil"], message: "permit.period-reversed" });
});
export type SpecimenPermitInput = z.infer<typeof SpecimenPermitInput>;

/** Taking a permit back: the first day on which it no longer counts, and why, in words that somebody can judge later. */
export const PermitWithdrawalInput = z.object({
  permitId: Id,
  withdrawnOn: DateText,
  because: text(500).min(10, "permit.reason-missing"),
});
export type PermitWithdrawalInput = z.infer<typeof PermitWithdrawalInput>;

/** A permit as it stands on record; one that was taken back stays, with the day and the reason. */
export type PermitRecord = PermitInput & {
  id: Id;
  withdrawnOn: DateText | null;
  /** Empty for a permit that was not taken back. */
  withdrawnBecause: string;
};

export const titleStatuses = ["owned", "deposit", "loan-in", "disputed", "unknown"] as const;
export const TitleInput = z.object({
  status: z.enum(titleStatuses),
  ownerName: text(160),
  leaveToLend: z.boolean(),
  leaveReference: text(160),
  recordedOn: DateText,
});
export type TitleInput = z.infer<typeof TitleInput>;

export const SpecimenTitleInput = TitleInput.extend({ specimenId: Id }).check((context) => {
  const { value, issues } = context;
  const somebodyElses = value.status === "deposit" || value.status === "loan-in";
  if (somebodyElses && value.ownerName === "")
    issues.push({ code: "custom", input: value, path: ["ownerName"], message: "title.owner-missing" });
  if (value.leaveToLend && somebodyElses && value.leaveReference === "")
    issues.push({ code: "custom", input: value, path: ["leaveReference"], message: "title.leave-unproven" });
});
export type SpecimenTitleInput = z.infer<typeof SpecimenTitleInput>;

export const WithdrawalInput = z
  .object({ donorCode: DonorCode, receivedOn: DateText, effectiveOn: DateText })
  .check((context) => {
    const { value, issues } = context;
    if (value.effectiveOn < value.receivedOn)
      issues.push({
        code: "custom",
        input: value,
        path: ["effectiveOn"],
        message: "consent.effective-too-early",
      });
  });
export type WithdrawalInput = z.infer<typeof WithdrawalInput>;

/** All donors of one specimen as they are known now; who is not named is no longer linked. */
export const DonorLinkInput = z.object({ specimenId: Id, donorCodes: z.array(DonorCode).max(60) });
export type DonorLinkInput = z.infer<typeof DonorLinkInput>;

/** Who a donor was. Only the sealed record holds this. */
export const SealedRecordInput = z
  .object({
    donorCode: DonorCode,
    fullName: text(200).min(1),
    bornOn: DateText.nullable(),
    diedOn: DateText.nullable(),
    kin: text(2_000),
    documentPlace: text(300),
  })
  .check((context) => {
    const { value, issues } = context;
    if (value.bornOn !== null && value.diedOn !== null && value.diedOn < value.bornOn)
      issues.push({ code: "custom", input: value, path: ["diedOn"], message: "donor.dates-reversed" });
  });
export type SealedRecordInput = z.infer<typeof SealedRecordInput>;

/** Why a sealed record is opened, in words that somebody else can judge later. */
export const SealedLookInput = z.object({
  donorCode: DonorCode,
  reason: text(500).min(10, "donor.reason-missing"),
});
export type SealedLookInput = z.infer<typeof SealedLookInput>;

/** Everything provenance knows that bears on lending one specimen. */
export type ProvenanceFacts = {
  /** One entry per donor; empty for animals and for human specimens whose donor is not known. */
  consents: ConsentFacts[];
  /** Donors linked to the specimen that have no consent record. */
  donorsWithoutConsent: number;
  /** Those that count today: none that was taken back. */
  permits: PermitInput[];
  title: TitleInput | null;
};
