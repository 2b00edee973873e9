/** A number and its noun agree. */
import { expect, test } from "vitest";
import { counted, formFor } from "#app/_words/counted.ts";

test.each<[number, string]>([
  [0, "0 points"],
  [1, "1 point"],
  [2, "2 points"],
  [21, "21 points"],
])("%i", (count, said) => {
  expect(counted(count, "point", "points")).toBe(said);
});

test("the form alone leaves the number out", () => {
  expect([0, 1, 2].map((count) => formFor(count, "wants", "want"))).toEqual(["want", "wants", "want"]);
});
