/**
 * The words of lending: the states of a loan line, a decision, a certificate of
 * cover. A loan is a fixed-term change of custody, never of ownership; its state
 * is computed from its lines.
 */
import { z } from "zod";
import { CountryCode } from "#lib/platform/countries.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode, minorUnits } from "#lib/platform/money.ts";
import { offices } from "#lib/suitability/schema.ts";

const text = (most: number) => z.string().trim().max(most);

/**
 * The states of one line. `noted` is on the borrower's slip; `closed` is the end
 * of the way home; the three side exits end a line that never left.
 */
export const lineStates = [
  "noted",
  "requested",
  "accepted",
  "packed",
  "travelling out",
  "resting at venue",
  "at venue",
  "travelling home",
  "resting at home",
  "checked in",
  "closed",
  "declined",
  "withdrawn",
  "missing",
] as const;
export const LineState = z.enum(lineStates);
export type LineState = z.infer<typeof LineState>;

/** A loan's own state, computed from its lines, its agreement and its dates. */
export const loanStates = [
  "enquiry",
  "requested",
  "accepted",
  "agreed",
  "preparing",
  "travelling out",
  "at venue",
  "travelling home",
  "home, to be checked",
  "checked in",
  "closed",
  "declined",
  "withdrawn",
] as const;
export type LoanState = (typeof loanStates)[number];

/** Who recuses themselves says why, and no longer speaks in that office on the loan. */
export const decisionOutcomes = ["accept", "decline", "recuse"] as const;
export type DecisionOutcome = (typeof decisionOutcomes)[number];
export const DecisionInput = z.object({
  loanId: Id,
  office: z.enum(offices),
  outcome: z.enum(decisionOutcomes),
  /** Which specimens the curator accepts; left out for all that are asked for. */
  specimenIds: z.array(Id).max(500).default([]),
  conditions: text(2_000),
  grounds: text(2_000).min(10),
  /** The oversight body's paper, where its word is recorded. */
  reference: text(160),
});
export type DecisionInput = z.infer<typeof DecisionInput>;

export const CoverInput = z
  .object({
    loanId: Id,
    insurer: text(160).min(1),
    policyNumber: text(80).min(1),
    minor: minorUnits(1_000_000_000_000),
    currency: CurrencyCode,
    startsAt: z.iso.datetime({ offset: true }),
    endsAt: z.iso.datetime({ offset: true }),
    coversTransit: z.boolean(),
    /** Whether it holds while the specimens stay at the venue. */
    coversStay: z.boolean().default(true),
    territories: z.array(CountryCode).max(60),
  })
  .check((context) => {
    const { value, issues } = context;
    if (!(Date.parse(value.startsAt) < Date.parse(value.endsAt)))
      issues.push({
        code: "custom",
        input: value.endsAt,
        path: ["endsAt"],
        message: "cover.period-reversed",
      });
  });
export type CoverInput = z.infer<typeof CoverInput>;
