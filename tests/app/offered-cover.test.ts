/** Insurance offered as cover of a loan: only for days that both share. */
import { expect, test } from "vitest";
import { offersFor } from "#app/(signed-in)/loans/[id]/cover/offered-cover.ts";

const insurance = {
  id: "i",
  institutionId: "s",
  insurer: "Quiet Mutual",
  policyNumber: "Q 1",
  minor: 100,
  currency: "EUR",
  validFrom: "2027-01-01",
  validUntil: "2028-01-01",
  coversTransit: true,
  territories: ["NO"],
};
const offered = (startsOn: string, endsOn: string, covers: { policyNumber: string }[] = []) =>
  offersFor([insurance], { startsOn, endsOn }, covers).map(({ firstDay, lastDay, until }) => [
    firstDay,
    lastDay,
    until,
  ]);

test("the days are those that both share, to the last that is covered", () => {
  expect(offered("2027-03-01", "2027-07-01")).toEqual([["2027-03-01", "2027-06-30", "2027-07-01"]]);
  expect(offered("2026-12-01", "2028-02-01")).toEqual([["2027-01-01", "2027-12-31", "2028-01-01"]]);
});

test("nothing is offered for other days, nor what is on the loan already", () => {
  expect(offered("2028-01-01", "2028-03-01")).toEqual([]);
  expect(offered("2026-10-01", "2027-01-01")).toEqual([]);
  expect(offered("2027-03-01", "2027-07-01", [{ policyNumber: "Q 1" }])).toEqual([]);
});
