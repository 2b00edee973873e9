/** The way through a list by key, forwards and back. */
import { expect, test } from "vitest";
import { pageLinks, parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";

function searchOf(address: string | null): Search {
  const search: Record<string, string | string[]> = {};
  for (const [name, value] of new URL(address ?? "", "http://localhost").searchParams) {
    const before = search[name];
    search[name] = before === undefined ? value : [...(Array.isArray(before) ? before : [before]), value];
  }
  return search;
}

test("the way back leads over the same pages in the other order", () => {
  const keys = ["b", "c", "d"];
  const forwards: (string | null)[] = ["/donors?kind=x"];
  for (const key of keys) forwards.push(pageLinks("/donors", searchOf(forwards.at(-1) ?? null), key).next);
  const back: (string | null)[] = [forwards.at(-1) ?? null];
  for (let step = 0; step < keys.length; step += 1)
    back.push(pageLinks("/donors", searchOf(back.at(-1) ?? null), "x").previous);
  expect(back.map((address) => searchOf(address).after)).toEqual(["d", "c", "b", undefined]);
  expect(back.at(-1)).toBe("/donors?kind=x");
});

test("the first page has none before it and the last none after it", () => {
  expect(pageLinks("/audit", {}, null)).toEqual({ previous: null, next: null });
});

test("an empty field of a filter is no filter and does not stay in the address", () => {
  expect(parameterOf({ actor: " " }, "actor")).toBeUndefined();
  expect(parameterOf({ actor: ["a", "b"] }, "actor")).toBe("a");
  expect(pageLinks("/audit", { actor: "" }, "9").next).toBe("/audit?after=9&before=");
});

test("the address of a page is the same with everything that was asked of it", () => {
  expect(sameAddress("/specimens", {})).toBe("/specimens");
  expect(sameAddress("/specimens", { q: "upper limb", kind: "", after: undefined, tag: ["a", "b"] })).toBe(
    "/specimens?q=upper+limb&tag=a&tag=b",
  );
});

test("control characters of an address are left out", () => {
  expect(parameterOf({ q: "a\u0000b" }, "q")).toBe("ab");
  expect(parameterOf({ q: "\u0000" }, "q")).toBeUndefined();
});
