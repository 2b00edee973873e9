import fc from "fast-check";
import { expect, test } from "vitest";
import { likenessOf } from "#lib/anatomy/likeness.ts";

test.each([
  ["nerve", "nerve", 1],
  ["nerve", "", 0],
  ["", "", 0],
  ["abc", "xyz", 0],
  // Threes of "ab": "  a", " ab", "ab "; of "abc": "  a", " ab", "abc", "bc ": two in common.
  ["ab", "abc", 4 / 7],
])("%j and %j are alike by %d", (one, other, likeness) =>
  expect(likenessOf(one, other)).toBeCloseTo(likeness, 12),
);

test("likeness is the same both ways, from 0 to 1, and does not mind the order of words", () => {
  const text = fc.stringMatching(/^[a-d]{0,6}(?: [a-d]{1,6}){0,2}$/);
  fc.assert(
    fc.property(text, text, (one, other) => {
      const likeness = likenessOf(one, other);
      expect(likeness).toBe(likenessOf(other, one));
      expect(likeness).toBeGreaterThanOrEqual(0);
      expect(likeness).toBeLessThanOrEqual(1);
      expect(likenessOf(one, one.split(" ").reverse().join(" "))).toBe(one.trim() === "" ? 0 : 1);
    }),
  );
});
