/**
 * What a list of specimens can be narrowed by, and the key by which its pages
 * follow each other: how well a row answers, then accession number, then id, so
 * that a page never loses or repeats a row while others are added.
 */
import { z } from "zod";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { DaysAround } from "#lib/specimens/days-around.ts";
import { preparations, specimenKinds, uses } from "#lib/specimens/schema.ts";

/**
 * "recorded": a structure or something that follows from it stands in the record as shown.
 * "implied": only a larger whole or region is recorded and nothing says that the structure is gone;
 * such a specimen should contain it, unverified.
 */
export const evidences = ["recorded", "implied"] as const;
export type Evidence = (typeof evidences)[number];

const StructureId = z
  .string()
  .max(120)
  .regex(/^[a-z0-9-]+$/, "structure.unknown");

export const SpecimenFilter = z
  .object({
    text: z.string().trim().max(200).optional(),
    structureId: StructureId.optional(),
    evidence: z.enum(evidences).default("recorded"),
    kind: z.enum(specimenKinds).optional(),
    preparation: z.enum(preparations).optional(),
    use: z.enum(uses).optional(),
    human: z.boolean().optional(),
    /** Lies in this region, or shows something that does. */
    regionId: StructureId.optional(),
    /** Belongs to this system, or shows something that does. */
    systemId: StructureId.optional(),
    /** The scientific name as it stands in the record. */
    species: z.string().trim().max(120).optional(),
    /** What the centre would show to the public. */
    publishable: z.boolean().optional(),
    placeId: Id.optional(),
    /** First day on which it is wanted. */
    freeFrom: DateText.optional(),
    /** First day on which it is no longer wanted. */
    freeUntil: DateText.optional(),
    /** Days around the wanted ones that are kept free too. */
    around: z.array(DaysAround).max(8).default([]),
    seriesId: Id.optional(),
    /** Leaves sheets of series out, which would fill the list. */
    withoutSheets: z.boolean().default(false),
  })
  .check(({ value, issues }) => {
    if ((value.freeFrom === undefined) !== (value.freeUntil === undefined))
      issues.push({ code: "custom", input: value, path: ["freeUntil"], message: "filter.both-days" });
    else if (
      value.freeFrom !== undefined &&
      value.freeUntil !== undefined &&
      !(value.freeFrom < value.freeUntil)
    )
      issues.push({ code: "custom", input: value, path: ["freeUntil"], message: "filter.days-reversed" });
  });
export type SpecimenFilter = z.infer<typeof SpecimenFilter>;

export const mostRowsOnPage = 200;

/** A page after or before a key; without either, the first one. */
export const SpecimenPage = z.object({
  after: z.string().max(400).optional(),
  before: z.string().max(400).optional(),
  size: z.number().int().min(1).max(mostRowsOnPage).default(40),
});
export type SpecimenPage = z.infer<typeof SpecimenPage>;

/** @throws {Refusal} "invalid" with one issue for each part that cannot be read; nothing is written by a search */
export function parseSearch<Schema extends z.ZodType>(schema: Schema, asked: unknown): z.output<Schema> {
  try {
    return parseInput(schema, asked);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Refusal("invalid", "filter.unreadable", {}, error.issues);
  }
}

/** The rank of a row that answers a search best; a list without a search has only such. */
export const bestRank = 0;
export const worstRank = 9;

export type PageKey = { rank: number; accessionNumber: string; id: string };

const KeyText = z.union([
  z.tuple([z.string().regex(/^[^\p{Cc}]{1,60}$/u), Id]),
  z.tuple([z.string().regex(/^[^\p{Cc}]{1,60}$/u), Id, z.number().int().min(bestRank).max(worstRank)]),
]);

/** The key of a row as it stands in an address. */
export function writePageKey({
  accessionNumber,
  id,
  rank,
}: Omit<PageKey, "rank"> & { rank?: number }): string {
  const key = rank === undefined || rank === bestRank ? [accessionNumber, id] : [accessionNumber, id, rank];
  return Buffer.from(JSON.stringify(key)).toString("base64url");
}

/** @throws {Refusal} "invalid" when somebody made the key up */
export function readPageKey(text: string): PageKey {
  try {
    const key = KeyText.parse(JSON.parse(Buffer.from(text, "base64url").toString("utf8")));
    const [accessionNumber, id, rank = bestRank] = key;
    return { rank, accessionNumber, id };
  } catch {
    throw new Refusal("invalid", "page.key-unknown");
  }
}
