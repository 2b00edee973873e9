/**
 * What every issued paper has in common: the head of its content, the two ends of a
 * way, a specimen as travelling papers name it. Content is frozen as canonical JSON
 * and hashed, so nothing in it is a sentence of the program: codes, figures and names
 * only, which the words of the paper's language turn into text. Donors, replacement
 * costs and permits are in none of these shapes.
 */
import { z } from "zod";
import { paperLanguages } from "#lib/papers/languages.ts";
import { DateText } from "#lib/platform/dates.ts";

const text = z.string();
const count = z.number().int();

/** Stands at the top of the content of every paper. */
export const PaperHead = z.strictObject({
  language: z.enum(paperLanguages),
  version: count.min(1),
  issuedAt: z.iso.datetime(),
  issuedBy: text,
  loan: z.strictObject({ number: text, title: text }),
});
export type PaperHead = z.infer<typeof PaperHead>;

/** A place that a way begins or ends at, and who answers there. */
export const WayEnd = z.strictObject({
  organisation: text,
  place: text,
  address: text,
  countryCode: text,
  phone: text,
});
export type WayEnd = z.infer<typeof WayEnd>;

/** One stage of the journey as its papers name it. */
export const PaperWay = z.strictObject({
  direction: z.enum(["out", "home"]),
  from: WayEnd,
  to: WayEnd,
  carrier: text,
  vehicle: text,
  through: z.array(text),
  departsOn: DateText,
  arrivesOn: DateText,
});
export type PaperWay = z.infer<typeof PaperWay>;

const Sides = z.strictObject({ lengthMm: z.number(), widthMm: z.number(), heightMm: z.number() });

export const PaperSpecimen = z.strictObject({
  accessionNumber: text,
  title: text,
  latinTitle: text,
  kind: text,
  components: z.array(z.strictObject({ name: text, count })),
  condition: z.strictObject({ checkedOn: DateText, grade: text }).nullable(),
});
export type PaperSpecimen = z.infer<typeof PaperSpecimen>;

/** A crate by its number of how many, its outside and its marks. */
export const PaperCrate = z.strictObject({
  code: text,
  number: count.min(1),
  of: count.min(1),
  kind: text,
  outer: Sides,
  grossMassKg: z.number(),
  handling: text,
  orientation: text,
  sealNumber: text.nullable(),
});
export type PaperCrate = z.infer<typeof PaperCrate>;

/** What a document is made from: the content, its fingerprint, and where anyone can check it. */
export type Issued<Content> = { content: Content; sha256: string; checkAddress: string };
