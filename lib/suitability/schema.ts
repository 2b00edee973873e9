/**
 * The words of a request and of what stands in its way: purposes, audiences, what a
 * borrower states, the offices that speak, and what a rule answers.
 */
import { z } from "zod";
import { DateText, daysBetween } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode, minorUnits } from "#lib/platform/money.ts";
import { Telephone } from "#lib/platform/telephone.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

export const purposes = ["teaching", "exhibition", "research", "picture-taking"] as const;
export const teachingUses = ["viewing", "handling"] as const;
export const audiences = ["enrolled students", "professionals", "general public"] as const;
export const displayStyles = ["didactic", "artistic", "promotional"] as const;
export const plannedPictures = ["internal", "professional publication", "online", "press"] as const;
/** What takes from a specimen, copies its form or takes it apart; each needs the donor's word and the centre's written permission. */
export const plannedActivities = ["sampling", "casting and scanning", "dissection before visitors"] as const;

export const offices = ["curator", "donor officer", "oversight body", "conservator"] as const;

/** Groups of rules, in the order in which they are shown. */
export const ruleGroups = [
  "consent",
  "title",
  "permits",
  "free",
  "condition",
  "use",
  "climate",
  "light",
  "way in",
  "cover",
] as const;
export type RuleGroup = (typeof ruleGroups)[number];

/** The verdict of one rule on one specimen. Codes and parameters; sentences are made at the edge. */
export type Finding = {
  specimenId: string;
  /** e.g. "G1", "B1": the rule's own number */
  rule: string;
  group: RuleGroup;
  outcome: Outcome;
  /** catalogue code of the fact that decided it */
  fact: string;
  parameters: Record<string, string | number | boolean | null>;
  /** where the rule comes from, in words, with its standing */
  source: string;
  /** catalogue code of what would clear it; empty when it is clear */
  wayOut: string;
  /** Whose word stands against the bar that it was. */
  setAside?: {
    office: (typeof offices)[number];
    by: string;
    grounds: string;
    evidence: string;
    on: DateText;
  };
};

const text = (most: number) => z.string().trim().max(most);

/** The longest loan, three years with a leap day: a long loan is renewed after that (common practice, no source). */
export const longestLoanDays = 1_096;

/** What is wrong with the days of a loan whatever day it is today; null when nothing is. */
export function faultOfDays({ startsOn, endsOn }: { startsOn: DateText; endsOn: DateText }): string | null {
  if (!(startsOn < endsOn)) return "loan.period-reversed";
  return daysBetween(startsOn, endsOn) <= longestLoanDays ? null : "loan.too-long";
}

type StatedDays = { startsOn: DateText; endsOn: DateText; opensOn?: DateText | null | undefined };

/** Whether the opening day, where one is stated, lies outside the loan. */
export function opensOutside({ startsOn, endsOn, opensOn }: StatedDays): boolean {
  return opensOn !== undefined && opensOn !== null && !(opensOn >= startsOn && opensOn < endsOn);
}

/** What a borrower states; may be saved half done, and is checked whole when it is submitted. */
export const LoanInput = z
  .object({
    venueId: Id,
    title: text(160).min(1),
    purpose: z.enum(purposes),
    teachingUse: z.enum(teachingUses),
    audience: z.enum(audiences),
    paidAdmission: z.boolean(),
    displayStyle: z.enum(displayStyles),
    pictures: z.array(z.enum(plannedPictures)).max(4),
    activities: z.array(z.enum(plannedActivities)).max(plannedActivities.length),
    /** Day of delivery; first day of the loan. */
    startsOn: DateText,
    /** Return-by: the first day that is no longer the loan. */
    endsOn: DateText,
    /** Opening of the exhibition, or first day of the course; left out or null where it is not known. */
    opensOn: DateText.nullable().optional(),
    contactName: text(120).min(1),
    contactEmail: z.email().max(200),
    contactPhone: Telephone,
    /** The cover that the borrower says it will take out. */
    cover: z
      .object({
        minor: minorUnits(1_000_000_000_000),
        currency: CurrencyCode,
      })
      .nullable(),
    note: text(2_000),
  })
  .check((context) => {
    const { value, issues } = context;
    const message = faultOfDays(value);
    if (message !== null) issues.push({ code: "custom", input: value.endsOn, path: ["endsOn"], message });
    else if (opensOutside(value))
      issues.push({ code: "custom", input: value.opensOn, path: ["opensOn"], message: "loan.opens-outside" });
  });
export type LoanInput = z.infer<typeof LoanInput>;
