/** The computations of this room that a reader can open, for the registry above the rooms. */
import { cancellationCharge } from "#lib/loans/costing/cancellation.ts";
import { coverPremium } from "#lib/loans/costing/premium.ts";
import { loanCosting } from "#lib/loans/costing.ts";

export const loansWorkings = [loanCosting, coverPremium, cancellationCharge] as const;
