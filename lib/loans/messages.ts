/**
 * What a message on a loan is, and which messages one reader has still to read:
 * those of the other side since the reader's mark, unless somebody of the own side
 * has written since, which answers them.
 */
import { z } from "zod";
import { Id } from "#lib/platform/identity.ts";

export const messageSides = ["centre", "borrower"] as const;
export type MessageSide = (typeof messageSides)[number];

export const MessageInput = z.object({
  loanId: Id,
  text: z.string().trim().min(2, "message.empty").max(4_000),
});
export type MessageInput = z.infer<typeof MessageInput>;

/** @param messages in the order in which they were written @param seenAt the reader's mark */
export function unreadOf<Message extends { side: MessageSide; writtenAt: Date }>(
  messages: readonly Message[],
  reader: MessageSide,
  seenAt: Date | null,
): Message[] {
  const answeredAt = messages.findLast(({ side }) => side === reader)?.writtenAt ?? null;
  return messages.filter(
    ({ side, writtenAt }) =>
      side !== reader &&
      (seenAt === null || writtenAt > seenAt) &&
      (answeredAt === null || writtenAt > answeredAt),
  );
}
