/** What of a permit counts on a day: as it was stated, until it is taken back. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#lib/platform/dates.ts";
import { lastDayOf, permitOn } from "#lib/provenance/permit-standing.ts";
import type { PermitRecord } from "#lib/provenance/schema.ts";

const aPermit = (said: Partial<PermitRecord> = {}): PermitRecord => ({
  id: "01920000-0000-7000-8000-000000000001",
  kind: "import",
  number: "77/26",
  authority: "Veterinary office",
  territories: ["NO"],
  validFrom: "2026-01-01",
  validUntil: "2027-12-31",
  withdrawnOn: null,
  withdrawnBecause: "",
  ...said,
});
const takenBack = (withdrawnOn: string, validUntil: string | null = "2027-12-31") =>
  aPermit({ validUntil, withdrawnOn, withdrawnBecause: "Revoked by the office." });

test("a permit that was not taken back counts as it was stated, lapsed or not", () => {
  const { id, withdrawnOn, withdrawnBecause, ...stated } = aPermit();
  for (const day of ["2025-01-01", "2027-06-01", "2029-01-01"])
    expect(permitOn(aPermit(), day)).toEqual(stated);
});

describe("a permit that is taken back", () => {
  test.each([
    ["the day before", "2027-02-28", "2027-02-28"],
    ["on the day", "2027-03-01", null],
    ["the day after", "2027-03-02", null],
  ])("%s: its last day is %s, seen from %s", (_what, day, lastDay) => {
    expect(permitOn(takenBack("2027-03-01"), day)?.validUntil ?? null).toBe(lastDay);
  });

  test.each([
    ["2027-03-01", null, "2027-02-28"],
    ["2027-03-01", "2027-02-28", "2027-02-28"],
    ["2027-03-01", "2027-02-01", "2027-02-01"],
    ["2027-03-01", "2027-03-01", "2027-02-28"],
  ])("from %s on, of one valid until %s, counts through %s", (withdrawnOn, validUntil, lastDay) => {
    expect(lastDayOf(takenBack(withdrawnOn, validUntil))).toBe(lastDay);
  });

  test("never counts longer than it says itself, and never on the day of the withdrawal", () => {
    const day = fc.integer({ min: 0, max: 800 }).map((days) => addDays("2026-06-01", days));
    fc.assert(
      fc.property(day, day, day, (withdrawnOn, validUntil, seenOn) => {
        const counts = permitOn(takenBack(withdrawnOn, validUntil), seenOn);
        expect(counts === null).toBe(withdrawnOn <= seenOn);
        if (counts === null) return;
        const lastDay = counts.validUntil ?? "";
        expect(lastDay <= validUntil && lastDay < withdrawnOn).toBe(true);
        expect(lastDay === validUntil || addDays(lastDay, 1) === withdrawnOn).toBe(true);
      }),
    );
  });
});
