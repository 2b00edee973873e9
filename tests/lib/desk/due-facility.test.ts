/** Reports of venues in use, and insurance that ends. */
import { describe, expect, test } from "vitest";
import { dueFromInsurances, dueFromVenues } from "#lib/desk/due-facility.ts";

const today = "2027-06-01";
const venue = { venueId: "v", venue: "Room", institution: "School", loan: "L 1", since: "2027-03-01" };
const codes = (report: Parameters<typeof dueFromVenues>[0][number]["report"], since = venue.since) =>
  dueFromVenues([{ ...venue, since, report }], today).map(({ code, dueOn }) => [code, dueOn]);

describe("a venue where specimens are", () => {
  test("without a report is due since they are there", () => {
    expect(codes(null)).toEqual([["due.report-missing", "2027-03-01"]]);
  });
  test("whose report no longer counts is due since that day", () => {
    expect(codes({ reportedOn: "2025-06-01", validUntil: today })).toEqual([["due.report-old", today]]);
  });
  test("is asked each month whether anything has changed", () => {
    const until = "2029-01-01";
    expect(codes({ reportedOn: "2027-05-03", validUntil: until })).toEqual([]);
    expect(codes({ reportedOn: "2027-05-02", validUntil: until })).toEqual([["due.anything-changed", today]]);
    expect(codes({ reportedOn: "2027-01-01", validUntil: until }, "2027-05-20")).toEqual([]);
  });
});

describe("insurance", () => {
  const insurance = {
    id: "i",
    institutionId: "s",
    institution: "School",
    insurer: "Quiet Mutual",
    policyNumber: "Q 1",
    isFollowed: false,
  };
  const items = (validUntil: string, isFollowed = false) =>
    dueFromInsurances([{ ...insurance, validUntil, isFollowed }], today).map(({ code, outcome }) => [
      code,
      outcome,
    ]);

  test.each([
    ["2027-08-01", []],
    ["2027-07-31", [["due.insurance-ends", "attend"]]],
    ["2027-06-08", [["due.insurance-ends", "bar"]]],
    ["2027-06-01", [["due.insurance-ended", "bar"]]],
  ] as const)("that ends on %s", (until, expected) => {
    expect(items(until)).toEqual(expected);
  });

  test("that another takes over from is nobody's worry", () => {
    expect(items("2027-06-08", true)).toEqual([]);
  });
});
