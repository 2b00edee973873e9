/**
 * What each act on a loan is told, as one schema for the form, the action and the
 * API. A request may be saved half done; it is checked whole by `LoanInput` when
 * it is submitted.
 */
import { z } from "zod";
import { Humidity, TemperatureC } from "#lib/environment/schema.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { TelephoneOrNothing } from "#lib/platform/telephone.ts";
import { CrateLook, SpecimenCount } from "#lib/shipments/schema.ts";
import { faultOfDays, LoanInput, opensOutside, purposes } from "#lib/suitability/schema.ts";
import { CarrierClass, FragilityClass, PeakG } from "#lib/transport/schema.ts";

const text = (most: number) => z.string().trim().max(most);
const ids = z.array(Id).max(500);

/** A request as far as it is stated. */
export const RequestDraft = z
  .object({
    ...LoanInput.shape,
    title: text(160),
    /** Chosen, never taken for granted: empty until somebody has said it. */
    purpose: z.union([z.literal(""), z.enum(purposes)]),
    contactName: text(120),
    contactEmail: z.union([z.literal(""), z.email().max(200)]),
    contactPhone: TelephoneOrNothing,
    /** That what is kept of the institution and the venue still holds; left out counts as not confirmed. */
    factsConfirmed: z.boolean().optional(),
  })
  .check((context) => {
    const { value, issues } = context;
    const message = faultOfDays(value);
    if (message !== null) issues.push({ code: "custom", input: value.endsOn, path: ["endsOn"], message });
    else if (opensOutside(value))
      issues.push({ code: "custom", input: value.opensOn, path: ["opensOn"], message: "loan.opens-outside" });
  });
export type RequestDraft = z.infer<typeof RequestDraft>;

/** A request as it is taken in: stated whole, and what is kept of the borrower confirmed. */
export const SubmittedRequest = LoanInput.safeExtend({
  factsConfirmed: z.literal(true, "loan.facts-not-confirmed"),
});

/** Fields of the request that are missing before it can be submitted. */
export function missingFieldsOf(request: RequestDraft): string[] {
  const parsed = SubmittedRequest.safeParse(request);
  const missing = parsed.success ? [] : parsed.error.issues.map((issue) => String(issue.path[0] ?? ""));
  return [...new Set(missing)];
}

/** Days that somebody has looked for, before anything is stated. */
const wishedDays = z.object({ startsOn: DateText, endsOn: DateText }).nullable().default(null);

export const OpenLoanInput = z.object({
  /** Who borrows; left out by a borrower, whose own institution it is. */
  borrowerId: Id.nullable(),
  /** Left out for a slip that is stated later. */
  request: RequestDraft.nullable(),
  specimenIds: ids,
  /** What a slip that is stated later begins with. */
  days: wishedDays,
});

export const NoteInput = z
  .object({
    loanId: Id,
    specimenIds: ids,
    /** A series stands for each of its sheets. */
    seriesId: Id.nullable(),
    /** Taken up by a slip of which nothing is stated and on which nothing stands yet. */
    days: wishedDays,
  })
  .refine(({ specimenIds, seriesId }) => specimenIds.length > 0 || seriesId !== null, {
    message: "loan.no-specimens",
    path: ["specimenIds"],
  });

/** A slip like an earlier loan; without a day of delivery it is the same day of a coming year. */
export const AskAgainInput = z.object({ loanId: Id, startsOn: DateText.nullable().default(null) });

export const LoanSpecimen = z.object({ loanId: Id, specimenId: Id });
export const LoanOnly = z.object({ loanId: Id });
export const StateInput = z.object({ loanId: Id, request: RequestDraft });

export const PlanCratesInput = z.object({
  loanId: Id,
  carrierClass: CarrierClass,
  /** The curator's own figures for single specimens. */
  own: z
    .array(z.object({ specimenId: Id, fragilityClass: FragilityClass.nullable(), peakG: PeakG.nullable() }))
    .max(500),
});

export const SealInput = z.object({
  crateId: Id,
  sealNumber: text(40).min(1),
  packed: z.array(z.object({ specimenId: Id, componentsComplete: z.boolean() })).max(500),
});

/** What is known of the air on arrival; null is not known and makes the rest longer. */
const arrival = {
  outsideC: TemperatureC.nullable(),
  roomC: TemperatureC.nullable(),
  roomHumidity: Humidity.min(0.01, "humidity.too-dry").nullable(),
};

export const ReceiveInput = z.object({ loanId: Id, crates: z.array(CrateLook).min(1).max(200), ...arrival });

export const OpenCrateInput = z.object({ crateId: Id, counts: z.array(SpecimenCount).min(1).max(500) });

export const SendHomeInput = z.object({
  loanId: Id,
  /** Which go home; null for all that are away. */
  specimenIds: ids.nullable(),
  seals: z.array(z.object({ crateId: Id, sealNumber: text(40) })).max(200),
  /** Who takes them, where no stage home is planned. */
  carrier: text(160),
});

export const ReturnCount = SpecimenCount.extend({
  missingComponents: z
    .array(z.object({ name: text(120).min(1), missing: z.number().int().min(1).max(1_000) }))
    .max(60),
});
export const CountReturnInput = z.object({ loanId: Id, counts: z.array(ReturnCount).min(1).max(500) });

export const checkInVerdicts = ["no change", "change within wear", "needs treatment", "damage"] as const;
export type CheckInVerdict = (typeof checkInVerdicts)[number];
export const CheckInInput = z.object({
  loanId: Id,
  specimenId: Id,
  verdict: z.enum(checkInVerdicts),
  remark: text(200),
});
