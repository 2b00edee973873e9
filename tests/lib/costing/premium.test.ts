/** The premium for cover, on the way and of the stay. */
import { expect, test } from "vitest";
import { coverPremium } from "#lib/costing/premium.ts";

const asked = {
  costMinor: 2_400_000,
  currency: "EUR",
  transitPerMille: 0.35,
  transitBasis: "transit",
  transits: 2,
  stayPerMille: 0.0041,
  stayBasis: "day",
  stayCount: 92,
} as const;

test.each([
  // 24 000.00 × 0.35 ‰ × 2 and 24 000.00 × 0.0041 ‰ × 92 = 9.0528
  [{}, 1_680, 905],
  // by the day: 24 000.00 × 0.02 ‰ × 7 days = 3.36
  [{ transitPerMille: 0.02, transitBasis: "day", transits: 7 } as const, 336, 905],
  // a flat rate of the stay: 24 000.00 × 0.4 ‰
  [{ stayPerMille: 0.4, stayBasis: "transit", stayCount: 1 } as const, 1_680, 960],
  [{ costMinor: 0 }, 0, 0],
  [{ currency: "JPY", costMinor: 3_000_000, transitPerMille: 0.0005, transits: 1 }, 2, 1_132],
])("%j comes to %i and %i", (said, transitMinor, stayMinor) => {
  expect(coverPremium({ ...asked, ...said })).toEqual({ transitMinor, stayMinor });
});

test("a rate that is none is refused", () => {
  expect(() => coverPremium({ ...asked, transitPerMille: Number.NaN })).toThrow();
  expect(() => coverPremium({ ...asked, transitPerMille: -1 })).toThrow();
});
