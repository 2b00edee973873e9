import fc from "fast-check";
import { expect, test } from "vitest";
import { forgivenSlips, slipsToName, typingDistance } from "#lib/anatomy/typing-distance.ts";

test.each([
  ["vagus", "vagus", 0],
  ["vagsu", "vagus", 1],
  ["avgus", "vagus", 1],
  ["vaggus", "vagus", 1],
  ["vags", "vagus", 1],
  ["vegus", "vagus", 1],
  ["vegsu", "vagus", 2],
  ["brachail", "brachial", 1],
  ["", "abc", 3],
  ["kidney", "liver", 4],
])("from %s to %s there are %i slips", (typed, meant, slips) =>
  expect(typingDistance(typed, meant)).toBe(slips),
);

test("short words are forgiven nothing, long ones more", () => {
  expect([1, 3, 4, 6, 7, 10, 11, 20].map(forgivenSlips)).toEqual([0, 0, 1, 1, 2, 2, 3, 3]);
});

test("each typed word must meet some word of the name", () => {
  expect(slipsToName(["brachail", "plexsu"], ["plexus", "brachialis"])).toBe(2.5);
  expect(slipsToName(["vagsu"], ["nervus", "vagus"])).toBe(1);
  expect(slipsToName(["vagsu", "kidney"], ["nervus", "vagus"])).toBeNull();
  expect(slipsToName(["xyzzy"], ["nervus", "vagus"])).toBeNull();
});

test("nothing typed and nothing named meet nothing", () => {
  expect(slipsToName([], ["nervus"])).toBeNull();
  expect(slipsToName(["nervus"], [])).toBeNull();
});

const word = fc.stringMatching(/^[a-e]{0,8}$/);

test("the distance is symmetric, and no longer than the longer word nor shorter than what their lengths differ by", () => {
  fc.assert(
    fc.property(word, word, (one, other) => {
      const distance = typingDistance(one, other);
      expect(distance).toBe(typingDistance(other, one));
      expect(distance).toBeLessThanOrEqual(Math.max(one.length, other.length));
      expect(distance).toBeGreaterThanOrEqual(Math.abs(one.length - other.length));
      expect(distance === 0).toBe(one === other);
    }),
  );
});

test("one slip anywhere is one slip", () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[a-z]{2,12}$/), fc.nat(), (meant, seed) => {
      const at = seed % meant.length;
      expect(typingDistance(meant.slice(0, at) + meant.slice(at + 1), meant)).toBe(1);
      expect(typingDistance(`${meant.slice(0, at)}é${meant.slice(at)}`, meant)).toBe(1);
    }),
  );
});
