/**
 * Days that a loan keeps busy, against worked values of lending.
 *
 * @source derived by hand for the story of a heart promised to two faculties: loan A from
 *   2027-03-01 to 2027-06-30 with 14 days before and after is busy [2027-02-15,
 *   2027-07-15); a request whose days begin on 2027-07-10 conflicts, one whose days
 *   begin on 2027-07-15 is free. Exact days, no tolerance.
 */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { sentence } from "#app/_words/sentences.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import { busyRange } from "#lib/suitability/period.ts";
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";
import { aSpecimen, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

/** The last day of the source is a day of the loan; here ranges are half-open. */
const loanA = { startsOn: "2027-03-01", endsOn: addDays("2027-06-30", 1), daysBefore: 14, daysAfter: 14 };
const curator = aViewer("curator");
const book = (specimenId: string, startsOn: string, endsOn: string) =>
  bookSpecimen(curator, { specimenId, purpose: "teaching in the house", startsOn, endsOn });

beforeAll(async () => {
  await testDatabase();
});
beforeEach(() => setClock(() => new Date("2027-01-15T09:00:00Z")));

describe("loan A", () => {
  test("is busy [2027-02-15, 2027-07-15)", () => {
    expect(busyRange(loanA)).toEqual({ startsOn: "2027-02-15", endsOn: "2027-07-15" });
  });

  test.each([
    ["2027-07-10", false],
    ["2027-07-14", false],
    ["2027-07-15", true],
  ])("lets the days of a request begin on %s: %s", async (startsOn, isFree) => {
    const { id } = await aSpecimen();
    const { startsOn: from, endsOn: until } = busyRange(loanA);
    await book(id, from, until);
    const asked = book(id, startsOn, "2027-10-01");
    const answer = await asked.then(
      () => null,
      (refusal: Refusal) => ({ reason: refusal.reason, freeFrom: refusal.parameters.freeFrom }),
    );
    expect(answer).toEqual(isFree ? null : { reason: "booking.taken", freeFrom: "2027-07-15" });
  });
});

test("of two that ask for overlapping days at once, buffers included, one fails and is told from when it is free", async () => {
  const { id } = await aSpecimen();
  const { startsOn, endsOn } = busyRange(loanA);
  const outcomes = await Promise.allSettled([
    book(id, startsOn, endsOn),
    book(id, "2027-07-01", "2027-10-01"),
  ]);
  const refused = outcomes.flatMap((one) => (one.status === "rejected" ? [one.reason as Refusal] : []));
  expect(refused).toHaveLength(1);
  const [refusal] = refused;
  expect(refusal?.reason).toBe("booking.taken");
  const said = sentence("booking.taken", refusal?.parameters ?? {});
  expect(said).toMatch(/free/i);
  expect(said).toMatch(/15 July 2027|1 October 2027/);
  const kept = await busyPeriodsOf(database(), [id], startsOn, "2027-12-01");
  expect(kept.get(id)).toHaveLength(1);
});
