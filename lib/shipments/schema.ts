/**
 * The words of the road: crates, what happens to them, and the stages of a
 * journey. What happened to a crate is an append-only chain; its state is derived.
 */
import { z } from "zod";
import { CountryCode } from "#lib/platform/countries.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";

export const crateEventKinds = ["packed", "sealed", "handed over", "arrived", "opened", "emptied"] as const;
export type CrateEventKind = (typeof crateEventKinds)[number];

export const crateStates = [
  "planned",
  "packed",
  "sealed",
  "with the carrier",
  "resting closed",
  "opened",
  "empty",
] as const;
export type CrateState = (typeof crateStates)[number];

export const directions = ["out", "home"] as const;
export const Direction = z.enum(directions);
export type Direction = z.infer<typeof Direction>;

const text = (most: number) => z.string().trim().max(most);

export const StageInput = z
  .object({
    loanId: Id,
    direction: Direction,
    carrier: text(160).min(1),
    carrierEmail: z.union([z.literal(""), z.email().max(200)]),
    vehicle: text(160),
    /** Countries that the way crosses between its two ends. */
    through: z.array(CountryCode).max(30),
    departsOn: DateText,
    arrivesOn: DateText,
  })
  .check((context) => {
    const { value, issues } = context;
    if (!(value.departsOn <= value.arrivesOn))
      issues.push({ code: "custom", input: value.arrivesOn, path: ["arrivesOn"], message: "stage.reversed" });
  });
export type StageInput = z.infer<typeof StageInput>;

/** What somebody saw of one crate when it came. */
export const CrateLook = z.object({
  crateId: Id,
  arrived: z.boolean(),
  sealIntact: z.boolean().nullable(),
  outsideDamage: text(1_000),
});
export type CrateLook = z.infer<typeof CrateLook>;

/** Whether one specimen was in the crate, and what was missing of it. */
export const SpecimenCount = z.object({
  specimenId: Id,
  present: z.boolean(),
  remark: text(500),
});
export type SpecimenCount = z.infer<typeof SpecimenCount>;

export const carrierWords = ["handed over", "arrived"] as const;

/** What a carrier without an account confirms on the link it was given. */
export const CarrierWord = z.object({
  token: z.string().min(20).max(120),
  word: z.enum(carrierWords),
  driver: text(120).min(1),
  crates: z
    .array(z.object({ crateId: Id, sealIntact: z.boolean(), outsideDamage: text(1_000) }))
    .min(1)
    .max(200),
});
export type CarrierWord = z.infer<typeof CarrierWord>;
