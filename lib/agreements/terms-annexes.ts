/**
 * The shapes of what stands in the terms beside the schedule: the clauses with their
 * parameters and their text in each language, the annexes, and what an amendment
 * changes. Everything of the vocabulary is a code that is not counted up here, so
 * that a library that grows closes no agreement. No donor is in any of these shapes.
 */
import { z } from "zod";
import { DateText } from "#lib/platform/dates.ts";

const text = z.string();
const count = z.number().int();
const Sha256 = z.string().regex(/^[0-9a-f]{64}$/);
const Money = z.strictObject({ minor: count, currency: text });

/** A licence or a permit by what identifies it. */
export const PaperOnRecord = z.strictObject({
  kind: text,
  authority: text,
  number: text,
  validUntil: DateText.nullable(),
});
export type PaperOnRecord = z.infer<typeof PaperOnRecord>;

/** What fills a parameter: words, a code, a figure, a day, money, or several. */
export const ParameterValue = z.union([
  text,
  z.number(),
  z.null(),
  Money,
  z.array(text),
  z.array(z.strictObject({ name: text, percent: z.number().nullable() })),
  z.array(PaperOnRecord),
]);
export type ParameterValue = z.infer<typeof ParameterValue>;

export const FrozenParameter = z.strictObject({
  name: text,
  value: ParameterValue,
  /** What the centre begins from; left out for a fact of the loan, which nobody sets. */
  standard: z.union([text, z.number()]).optional(),
});
export type FrozenParameter = z.infer<typeof FrozenParameter>;

export const FrozenClause = z.strictObject({
  id: text,
  number: count.min(1),
  /** Of the clause's text in the library. */
  version: count.min(1),
  /** Whether every parameter that is set has its standard. */
  isStandard: z.boolean(),
  parameters: z.array(FrozenParameter),
  /** By language; these words were agreed and never change. */
  texts: z.record(text, z.strictObject({ heading: text, text })),
});
export type FrozenClause = z.infer<typeof FrozenClause>;

export const annexMarks = ["A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M"] as const;
export type AnnexMark = (typeof annexMarks)[number];

/** One figure of the venue beside the limit of the group; null is not stated. */
export const FacilityFigure = z.strictObject({
  fact: text,
  stated: z.number().nullable(),
  limit: z.number().nullable(),
  isBeyond: z.boolean().nullable(),
});
export type FacilityFigure = z.infer<typeof FacilityFigure>;

export const Notices = z.strictObject({
  human: text,
  pictures: text,
  handling: text,
  fluid: text,
  acknowledgement: text,
});
export type Notices = z.infer<typeof Notices>;

export const TermsAnnexes = z.strictObject({
  applies: z.array(z.enum(annexMarks)),
  /** B: the last check of each specimen, by reference and hash. */
  checks: z.array(
    z.strictObject({
      accessionNumber: text,
      occasion: text,
      checkedOn: DateText,
      grade: text,
      checkId: text,
      sha256: Sha256,
    }),
  ),
  /** C: what the venue says of itself beside the limits of the group. */
  facility: z.strictObject({
    reportedOn: DateText.nullable(),
    /** The facility report that the figures are from; null without one, and left out by earlier versions. */
    report: z
      .strictObject({ version: count.min(1), reportedOn: DateText, validUntil: DateText })
      .nullable()
      .optional(),
    figures: z.array(FacilityFigure),
    answers: z.array(z.strictObject({ fact: text, stated: z.boolean().nullable() })),
  }),
  /** H: that evidence exists and where its papers are; never whose it is. */
  evidence: z.array(
    z.strictObject({
      accessionNumber: text,
      title: text,
      isConsentComplete: z.boolean().nullable(),
      papers: z.array(PaperOnRecord),
    }),
  ),
  licences: z.array(PaperOnRecord),
  /** I: the accepted quotation, where there is one. */
  costing: z
    .strictObject({
      kind: text,
      version: count.min(1),
      sha256: Sha256,
      total: Money,
      drawnUpOn: DateText,
    })
    .nullable(),
  /** K, by language. */
  notices: z.record(text, Notices),
});
export type TermsAnnexes = z.infer<typeof TermsAnnexes>;

/** One thing that differs; a null is not there. */
export const TermsDifference = z.strictObject({
  path: z.array(text).min(1),
  before: z.json(),
  after: z.json(),
});
export type TermsDifference = z.infer<typeof TermsDifference>;

export const Amendment = z.strictObject({
  number: count.min(1),
  /** The version that it amends: the last one that somebody has signed. */
  version: count.min(1),
  sha256: Sha256,
  differences: z.array(TermsDifference),
  /** All versions that were signed before, the oldest first. */
  earlier: z.array(z.strictObject({ version: count.min(1), sha256: Sha256 })),
});
export type Amendment = z.infer<typeof Amendment>;
