import { describe, expect, test } from "vitest";
import { isSaidAlready, languageOf, versionsThatHold } from "#lib/papers/superseded.ts";

const frozen = (version: number, language: string, said: string) => ({
  version,
  content: JSON.stringify({
    version,
    language,
    issuedAt: `2026-11-2${version}T10:00:00Z`,
    issuedBy: `Keeper ${version}`,
    said,
  }),
});
const holding = (...versions: ReturnType<typeof frozen>[]) =>
  versionsThatHold(versions)
    .map(({ version }) => version)
    .sort();

describe("a version holds", () => {
  test("beside the same in another language", () => {
    expect(holding(frozen(1, "en", "a"), frozen(2, "de", "a"), frozen(3, "fr", "a"))).toEqual([1, 2, 3]);
  });

  test("until something else is said, in whichever language", () => {
    expect(holding(frozen(1, "en", "a"), frozen(2, "de", "a"), frozen(3, "fr", "b"))).toEqual([3]);
    expect(holding(frozen(1, "en", "a"), frozen(2, "en", "b"))).toEqual([2]);
  });

  test("not again when what it says is said anew after a difference", () => {
    expect(holding(frozen(1, "en", "a"), frozen(2, "de", "b"), frozen(3, "de", "a"))).toEqual([3]);
  });

  test("whatever the order in which versions are read", () => {
    expect(holding(frozen(3, "fr", "a"), frozen(1, "en", "b"), frozen(2, "de", "a"))).toEqual([2, 3]);
    expect(holding()).toEqual([]);
  });
});

test("a content is said already where it holds in its own language", () => {
  const versions = [frozen(1, "en", "a"), frozen(2, "de", "a")];
  expect(isSaidAlready(versions, frozen(3, "en", "a").content)).toBe(true);
  expect(isSaidAlready(versions, frozen(3, "fr", "a").content)).toBe(false);
  expect(isSaidAlready(versions, frozen(3, "en", "b").content)).toBe(false);
  expect(isSaidAlready([...versions, frozen(3, "de", "b")], frozen(4, "en", "a").content)).toBe(false);
  expect(isSaidAlready([], frozen(1, "en", "a").content)).toBe(false);
});

test("a content names its language", () => {
  expect(languageOf(frozen(1, "fr", "a").content)).toBe("fr");
  expect(languageOf("{}")).toBe("");
});
