/** Where a claim may go from where it stands, and what each step has to say. */
import { describe, expect, test } from "vitest";
import { ClaimEventInput, claimEnds, claimEventKinds, nextClaimEvents } from "#lib/loans/claims.ts";

test.each([
  ["opened", ["notified", "surveyed", "estimated", "settled", "dropped"]],
  ["notified", ["surveyed", "estimated", "settled", "dropped"]],
  ["surveyed", ["estimated", "settled", "dropped"]],
  ["estimated", ["estimated", "settled", "dropped"]],
  ["settled", []],
  ["dropped", []],
] as const)("after %s come %j", (last, next) => {
  expect(nextClaimEvents(last)).toEqual(next);
});

test("no step leads back to the opening, and the ends lead nowhere", () => {
  for (const kind of claimEventKinds) expect(nextClaimEvents(kind)).not.toContain("opened");
  for (const end of claimEnds) expect(nextClaimEvents(end)).toEqual([]);
});

describe("a step", () => {
  const faults = (said: object) =>
    ClaimEventInput.safeParse({
      claimId: "0199f0c0-0000-7000-8000-000000000000",
      kind: "notified",
      amount: null,
      note: "",
      ...said,
    }).error?.issues.map(({ path, message }) => [path.join("."), message]) ?? [];

  test("that estimates or settles states the amount, and a drop says why", () => {
    expect(faults({})).toEqual([]);
    expect(faults({ kind: "estimated" })).toEqual([["amount.minor", "claim.amount-missing"]]);
    expect(faults({ kind: "settled", amount: { minor: 12_00, currency: "EUR" } })).toEqual([]);
    expect(faults({ kind: "dropped" })).toEqual([["note", "claim.note-short"]]);
    expect(faults({ kind: "dropped", note: "Wear, seen before it left." })).toEqual([]);
  });
});
