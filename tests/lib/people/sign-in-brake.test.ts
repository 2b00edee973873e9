/** When the next attempt to sign in under one e-mail may be made. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SIGN_IN_FAILURES, SIGN_IN_WINDOW_MS, signInWaitsUntil } from "#lib/people/sign-in-brake.ts";

const now = new Date("2027-03-01T12:00:00Z");
const ago = (minutes: number) => new Date(now.getTime() - minutes * 60_000);
const times = (count: number, minutes: number) => Array.from({ length: count }, () => ago(minutes));

describe("signing in waits", () => {
  test.each([
    { what: "nothing failed", failedAt: [], until: null },
    { what: "nine failed a minute ago", failedAt: times(9, 1), until: null },
    { what: "ten failed a minute ago", failedAt: times(10, 1), until: "2027-03-01T12:14:00.000Z" },
    { what: "ten failed, one of them long ago", failedAt: [...times(9, 1), ago(16)], until: null },
    {
      what: "twelve failed at different times, the tenth last counts",
      failedAt: [...times(2, 10), ...times(1, 7), ...times(9, 2)],
      until: "2027-03-01T12:08:00.000Z",
    },
  ])("where $what: $until", ({ failedAt, until }) => {
    expect(signInWaitsUntil(failedAt, now)?.toISOString() ?? null).toBe(until);
  });

  test("never longer than a quarter of an hour, and never for fewer than ten", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3_600 }), { maxLength: 30 }), (seconds) => {
        const until = signInWaitsUntil(
          seconds.map((second) => new Date(now.getTime() - second * 1_000)),
          now,
        );
        const recent = seconds.filter((second) => second * 1_000 < SIGN_IN_WINDOW_MS).length;
        expect(until !== null).toBe(recent >= SIGN_IN_FAILURES);
        if (until) {
          expect(until.getTime()).toBeGreaterThan(now.getTime());
          expect(until.getTime()).toBeLessThanOrEqual(now.getTime() + SIGN_IN_WINDOW_MS);
        }
      }),
    );
  });
});
