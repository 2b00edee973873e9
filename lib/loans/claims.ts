/**
 * A claim after harm or loss, as the chain of what happened to it; where it stands
 * is its last event. The order is that of the trade: opened, told to the insurer,
 * surveyed, estimated, settled; any step but the first may be left out, and a claim
 * that is not followed is dropped with a reason. Remains are never given up to an
 * insurer: a claim is about cost, and the specimen stays the lender's.
 */
import { z } from "zod";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode, minorUnits } from "#lib/platform/money.ts";

export const claimEventKinds = ["opened", "notified", "surveyed", "estimated", "settled", "dropped"] as const;
export type ClaimEventKind = (typeof claimEventKinds)[number];

const text = (most: number) => z.string().trim().max(most);
const amount = z.object({ minor: minorUnits(1_000_000_000_000), currency: CurrencyCode }).nullable();

/** What ends a claim. */
export const claimEnds: readonly ClaimEventKind[] = ["settled", "dropped"];

/** Events that state an amount; what is estimated or settled has to. */
export const needsAmount = (kind: ClaimEventKind) => kind === "estimated" || kind === "settled";

export const OpenClaimInput = z.object({
  loanId: Id,
  specimenId: Id,
  /** What is claimed, and what it rests on. */
  note: text(2_000).min(10, "claim.note-short"),
});

export const ClaimEventInput = z
  .object({
    claimId: Id,
    kind: z.enum(claimEventKinds).exclude(["opened"]),
    amount,
    note: text(2_000),
  })
  .check((context) => {
    const { value, issues } = context;
    if (needsAmount(value.kind) && value.amount === null)
      issues.push({ code: "custom", input: null, path: ["amount.minor"], message: "claim.amount-missing" });
    if (value.kind === "dropped" && value.note.length < 10)
      issues.push({ code: "custom", input: value.note, path: ["note"], message: "claim.note-short" });
  });
export type ClaimEventInput = z.infer<typeof ClaimEventInput>;

/** What may follow: nothing after the end, and never a step back. */
export function nextClaimEvents(last: ClaimEventKind): ClaimEventKind[] {
  if (claimEnds.includes(last)) return [];
  const later = claimEventKinds.slice(claimEventKinds.indexOf(last) + 1);
  // An estimate may be made anew when the treatment turns out otherwise.
  return last === "estimated" ? ["estimated", ...later] : [...later];
}
