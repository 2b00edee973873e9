import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hashText, variation } from "#lib/specimens/drawing/variation.ts";

describe("variation by a seed", () => {
  // The hash is FNV-1a, 32 bit; the three values are the reference ones of that function.
  it.each([
    ["", 0x811c9dc5],
    ["a", 0xe40c292c],
    ["foobar", 0xbf9cf968],
  ])("hashes %j as FNV-1a does", (text, hash) => {
    expect(hashText(text)).toBe(hash);
  });

  it("gives the same row of numbers for one seed and another for another", () => {
    const row = (seed: string) => {
      const vary = variation(seed);
      return Array.from({ length: 12 }, () => vary.share());
    };
    expect(row("AN 1")).toEqual(row("AN 1"));
    expect(row("AN 1")).not.toEqual(row("AN 2"));
  });

  it("keeps every number inside what was asked", () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.integer({ min: -50, max: 50 }),
        fc.integer({ min: 0, max: 50 }),
        (seed, low, more) => {
          const vary = variation(seed);
          const within = vary.within(low, low + more);
          const whole = vary.whole(low, low + more);
          const share = vary.share();
          expect(within >= low && within <= low + more).toBe(true);
          expect(Number.isInteger(whole) && whole >= low && whole <= low + more).toBe(true);
          expect(share >= 0 && share < 1).toBe(true);
          expect(["a", "b", "c"]).toContain(vary.pick(["a", "b", "c"]));
          for (const [x, y] of vary.loosen([[5, 5]], 2)) {
            expect(Math.abs(x - 5)).toBeLessThanOrEqual(2);
            expect(Math.abs(y - 5)).toBeLessThanOrEqual(2);
          }
        },
      ),
    );
  });

  it("spreads its shares evenly enough over many seeds", () => {
    const shares = Array.from({ length: 2000 }, (_, index) => variation(`AN ${index}`).share());
    const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
    expect(mean).toBeGreaterThan(0.47);
    expect(mean).toBeLessThan(0.53);
  });
});
