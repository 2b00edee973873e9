import { expect, test } from "vitest";
import { liesBefore, yearsBefore } from "#lib/specimens/legal-periods.ts";
import { deathPeriods, madePeriods } from "#lib/specimens/schema.ts";

test.each([
  ["before September 1906", "1906-09-01", true],
  ["before September 1906", "1906-08-31", null],
  ["September 1906 to 1919", "1906-09-01", false],
  ["September 1906 to 1919", "1920-01-01", true],
  ["September 1906 to 1919", "1919-12-31", null],
  ["2000 or later", "2026-01-01", null],
  ["2000 or later", "2000-01-01", false],
  [null, "2000-01-01", null],
] as const)("%s lies before %s: %s", (period, day, answer) => {
  expect(liesBefore(period, day)).toBe(answer);
});

test.each([deathPeriods, madePeriods])(
  "the periods of a list follow each other without a gap",
  (...periods) => {
    for (const [index, period] of periods.entries()) {
      const next = periods[index + 1];
      if (next === undefined) continue;
      const year = Number(/(\d{4})/.exec(next)?.[1]);
      const day = next.startsWith("September") ? `${year}-09-01` : `${year}-01-01`;
      expect(liesBefore(period as never, day), period).toBe(true);
      expect(liesBefore(next as never, day), next).toBe(false);
    }
  },
);

test("years back keep the day, and a leap day falls on the last of February", () => {
  expect(yearsBefore("2026-11-25", 100)).toBe("1926-11-25");
  expect(yearsBefore("2028-02-29", 1)).toBe("2027-02-28");
});
