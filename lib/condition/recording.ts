/**
 * A check as it is recorded: which specimen, for which loan, on what occasion and
 * day, and what was found. Checks on the way of a loan name the loan.
 */
import { z } from "zod";
import { CheckInput, Occasion } from "#lib/condition/schema.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";

/** Occasions that only a loan gives. */
export const loanOccasions: readonly Occasion[] = ["out", "arrival", "departure", "home"];
/** Occasions on which a borrower looks. */
export const borrowerOccasions: readonly Occasion[] = ["arrival", "departure", "incident"];

export const CheckRecord = z
  .object({
    specimenId: Id,
    loanId: Id.nullable(),
    occasion: Occasion,
    checkedOn: DateText,
    check: CheckInput,
  })
  .check((context) => {
    const { value, issues } = context;
    if (value.loanId === null && loanOccasions.includes(value.occasion))
      issues.push({ code: "custom", input: value, path: ["loanId"], message: "check.needs-loan" });
  });
export type CheckRecord = z.infer<typeof CheckRecord>;
