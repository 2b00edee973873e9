/** The computations of this room that a reader can open, for the registry above the rooms. */
import { cancellationCharge } from "#lib/costing/cancellation.ts";
import { loanCosting } from "#lib/costing/costing.ts";
import { paymentBalance } from "#lib/costing/payments.ts";
import { coverPremium } from "#lib/costing/premium.ts";

export const costingWorkings = [loanCosting, coverPremium, cancellationCharge, paymentBalance] as const;
