/** Messages on loans, each on its day and by who wrote it. */
import { writeMessage } from "#lib/loans/commands/messages.ts";
import type { LoanTale } from "#seed/loading/loan-tale.ts";
import { messages } from "#seed/scenario/messages.ts";

export function planMessages(tale: LoanTale): void {
  for (const { day, by, text } of messages[tale.loan.key] ?? [])
    tale.at(day, () => writeMessage(tale.as(by), { loanId: tale.id, text }));
}
