/** Words of claims, in English. */
import type { ClaimEventKind } from "#lib/loans/claims.ts";

export const claimWords = {
  section: "Claims",
  about:
    "A claim is about the cost of harm or loss. The specimen stays the lender's: remains are never given up to an insurer, and none is sold. What a policy pays is between the parties and the insurer.",
  none: "No claim is open.",
  open: "Open a claim",
  specimen: "Specimen",
  choose: "choose",
  note: "What is claimed, and what it rests on",
  noteHint: "The checks, the pictures, who saw it when; at least ten characters.",
  opened: (number: string) => `Claim ${number} is open.`,
  history: (number: string) => `What happened to claim ${number}`,
  when: "When",
  what: "What",
  amount: "Amount",
  by: "By",
  remark: "Remark",
  next: (number: string) => `Write down the next step of ${number}`,
  step: "What happened",
  currency: "Currency",
  record: "Record this step",
  recorded: "The step is on the file.",
  kinds: {
    opened: "opened",
    notified: "insurer told",
    surveyed: "surveyed",
    estimated: "treatment estimated",
    settled: "settled",
    dropped: "not followed",
  } satisfies Record<ClaimEventKind, string>,
  refusals: {
    "claim.note-short": "Say it in at least ten characters; it stands in the file.",
    "claim.amount-missing": "State the amount.",
    "claim.never-left": "{specimen} has not left the house on this loan.",
    "claim.open-already": "There is an open claim for it: {claim}. Write down its next step there.",
    "claim.not-now": "After “{from}” this is no step of claim {claim}.",
  },
} as const;
