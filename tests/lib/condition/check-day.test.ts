/** On which days a check can have been made. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hasSentence, sentence } from "#app/_words/sentences.ts";
import { dayFloorCodes, floorsOf, highestFloor, requireCheckDay } from "#lib/condition/check-day.ts";
import { addDays } from "#lib/platform/dates.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const known = { preparedOn: "2015-06-01", acquiredOn: "2014-02-01" };

describe("the first day that is allowed", () => {
  test.each([
    [known, null, { day: "2015-06-01", code: "check.before-prepared" }],
    [{ ...known, acquiredOn: "2016-01-01" }, null, { day: "2016-01-01", code: "check.before-acquired" }],
    [known, "2020-01-01", { day: "2020-01-01", code: "check.before-latest" }],
    [known, "2015-06-01", { day: "2015-06-01", code: "check.before-latest" }],
    [{ preparedOn: null, acquiredOn: null }, null, null],
  ])("of %o with the latest check on %s", (specimen, latestOn, floor) =>
    expect(highestFloor(floorsOf(specimen, latestOn))).toEqual(floor),
  );
});

describe("a day", () => {
  const reasonOf = (checkedOn: string): string | null => {
    try {
      requireCheckDay(checkedOn, "2026-03-01", floorsOf(known, "2020-01-01"));
      return null;
    } catch (error) {
      return error instanceof Refusal ? error.reason : "a bug";
    }
  };

  test.each([
    ["2026-03-02", "check.in-future"],
    ["2026-03-01", null],
    ["2020-01-01", null],
    ["2019-12-31", "check.before-latest"],
    ["1990-01-01", "check.before-latest"],
  ])("%s is answered by %s", (day, reason) => expect(reasonOf(day)).toBe(reason));

  test("is refused exactly outside the floor and today", () => {
    fc.assert(
      fc.property(fc.integer({ min: -4_000, max: 400 }), (days) => {
        const day = addDays("2026-03-01", days);
        expect(reasonOf(day) === null).toBe(day >= "2020-01-01" && day <= "2026-03-01");
      }),
    );
  });
});

test("every floor has a sentence that names its day", () => {
  for (const code of [...dayFloorCodes, "check.in-future", "check.other-day"])
    expect(hasSentence(code)).toBe(true);
  for (const code of dayFloorCodes) expect(sentence(code, { from: "2020-01-02" })).toContain("2020");
});
