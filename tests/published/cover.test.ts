/**
 * Cover from nail to nail, worked by hand.
 * @source the specification of the lending job, failure story "insurance expired / uncovered stage" and its worked
 *   value: nail to nail 2027-02-20 08:00 to 2027-07-12 16:00 UTC, certificate 2027-02-20 to the end of 2027-06-30,
 *   gap from 2027-07-01; a gap of one hour is found. Derived there; no published work. Exact.
 */
import { expect, test } from "vitest";
import { coverGaps } from "#lib/suitability/cover-gaps.ts";

const needed = { minor: 1_000, currency: "EUR" };
const way = [
  { from: "2027-02-20T08:00:00Z", to: "2027-07-12T16:00:00Z", isTransit: false, territories: ["FI"] },
];
const certificate = (startsAt: string, endsAt: string) => ({
  amount: needed,
  startsAt,
  endsAt,
  coversTransit: true,
  territories: ["FI"],
});

test.each([
  [
    "a certificate to the end of June leaves a gap from 1 July",
    [certificate("2027-02-20T00:00:00Z", "2027-07-01T00:00:00Z")],
    [["2027-07-01T00:00:00.000Z", "2027-07-12T16:00:00.000Z"]],
  ],
  [
    "one hour between two certificates is found",
    [
      certificate("2027-02-20T00:00:00Z", "2027-07-01T00:00:00Z"),
      certificate("2027-07-01T01:00:00Z", "2027-08-01T00:00:00Z"),
    ],
    [["2027-07-01T00:00:00.000Z", "2027-07-01T01:00:00.000Z"]],
  ],
  [
    "two that meet leave none",
    [
      certificate("2027-02-20T00:00:00Z", "2027-07-01T00:00:00Z"),
      certificate("2027-07-01T00:00:00Z", "2027-08-01T00:00:00Z"),
    ],
    [],
  ],
])("%s", (_what, covers, gaps) => {
  expect(coverGaps(way, covers, needed).map(({ from, to }) => [from, to])).toEqual(gaps);
});
