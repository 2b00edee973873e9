/** Which messages somebody has still to read. */
import { expect, test } from "vitest";
import { MessageInput, type MessageSide, unreadOf } from "#lib/loans/messages.ts";

const at = (hour: number) => new Date(Date.UTC(2027, 0, 1, hour));
const said = (side: MessageSide, hour: number) => ({ side, writtenAt: at(hour) });

test("what the other side wrote is unread until the mark passes it", () => {
  const messages = [said("borrower", 1), said("borrower", 3)];
  expect(unreadOf(messages, "centre", null)).toHaveLength(2);
  expect(unreadOf(messages, "centre", at(1))).toEqual([said("borrower", 3)]);
  expect(unreadOf(messages, "centre", at(3))).toEqual([]);
  expect(unreadOf(messages, "borrower", null)).toEqual([]);
});

test("an answer of somebody on the own side answers what was before it", () => {
  const messages = [said("borrower", 1), said("centre", 2), said("borrower", 3)];
  expect(unreadOf(messages, "centre", null)).toEqual([said("borrower", 3)]);
  expect(unreadOf(messages, "borrower", null)).toEqual([]);
});

test("an empty message is refused and a long one is too long", () => {
  const loanId = "0198c2a0-0000-7000-8000-000000000001";
  expect(MessageInput.safeParse({ loanId, text: "  " }).success).toBe(false);
  expect(MessageInput.safeParse({ loanId, text: "a".repeat(4_001) }).success).toBe(false);
  expect(MessageInput.parse({ loanId, text: " When do you come? " }).text).toBe("When do you come?");
});
