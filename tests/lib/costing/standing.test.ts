/** Where a quotation stands. */
import { expect, test } from "vitest";
import { quotationState } from "#lib/costing/standing.ts";

const open = { answer: null, isNewest: true, validUntil: "2027-01-10", today: "2027-01-10" } as const;

test.each([
  [{}, "open"],
  [{ today: "2027-01-11" }, "expired"],
  [{ isNewest: false }, "superseded"],
  [{ isNewest: false, today: "2027-02-01" }, "superseded"],
  [{ answer: "accepted", isNewest: false, today: "2027-02-01" } as const, "accepted"],
  [{ answer: "refused" } as const, "refused"],
])("%j is %s", (said, state) => {
  expect(quotationState({ ...open, ...said })).toBe(state);
});
