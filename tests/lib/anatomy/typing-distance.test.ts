import fc from "fast-check";
import { expect, test } from "vitest";
import {
  forgivenSlips,
  slipsToName,
  slipsToWholeName,
  slipsToWord,
  typingDistance,
} from "#lib/anatomy/typing-distance.ts";

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

test("a typed word may be the beginning of a longer one, which counts half a slip", () => {
  expect(slipsToWord("stern", "sternum")).toBe(0.5);
  expect(slipsToWord("stren", "sternum")).toBe(1.5);
  expect(slipsToWord("sternum", "stern")).toBe(2);
});

test("a search that gives up beyond some slips answers the same within them", () => {
  const letters = fc.stringMatching(/^[a-c]{1,9}$/);
  fc.assert(
    fc.property(letters, letters, fc.integer({ min: 0, max: 4 }), (typed, name, most) => {
      const slips = slipsToWord(typed, name);
      const bounded = slipsToWord(typed, name, most);
      if (slips <= most) expect(bounded).toBe(slips);
      else expect(bounded).toBeGreaterThan(most);
    }),
  );
});

test("a whole name has as many words, none of them only begun", () => {
  expect(slipsToWholeName(["vagsu", "nerve"], ["vagus", "nerve"])).toBe(1);
  expect(slipsToWholeName(["vagsu"], ["vagus", "nerve"])).toBeNull();
  expect(slipsToWholeName(["stern"], ["sternum"])).toBeNull();
  expect(slipsToWholeName([], [])).toBeNull();
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
