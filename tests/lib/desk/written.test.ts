/** What is due of messages, letters and reminders. */
import { expect, test } from "vitest";
import { sentence } from "#app/_words/sentences.ts";
import { dueFromWritten } from "#lib/desk/written.ts";

const items = dueFromWritten({
  unread: [{ loanId: "a", number: "L 1", borrower: "School", count: 2, since: "2027-01-02" }],
  faults: [{ id: "m", loan: "L 2", address: "x@y.example", queuedOn: "2027-01-03" }],
  toHold: [{ id: "b", number: "L 3", borrower: "Museum", endsOn: "2027-01-01" }],
});

test("each leads to where it is answered", () => {
  expect(items.map(({ about }) => about)).toEqual([
    { kind: "loan", id: "a" },
    { kind: "letter", id: "m" },
    { kind: "loan", id: "b" },
  ]);
});

test("each is a sentence with what it is about", () => {
  expect(items.map(({ code, parameters }) => sentence(code, parameters))).toEqual([
    "L 1, School: 2 messages have not been read.",
    "L 2: a letter to x@y.example could not be sent.",
    "L 3, Museum: the last reminder is taken and nothing has come. Decide whether to hold new loans.",
  ]);
});

test("nothing written is nothing due", () => {
  expect(dueFromWritten({ unread: [], faults: [], toHold: [] })).toEqual([]);
});
