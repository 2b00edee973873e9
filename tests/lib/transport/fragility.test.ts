import { expect, test } from "vitest";
import { fragility, fragilityTable } from "#lib/transport/fragility.ts";
import { fragilityClasses } from "#lib/transport/schema.ts";

// Starting values, curator decides: common practice, no source.
test.each([
  ["compact-organ", 60],
  ["organ-with-free-parts", 40],
  ["whole-body", 40],
  ["sheet", 50],
  ["jar", 30],
  ["corrosion-cast", 20],
  ["articulated-skeleton", 25],
  ["bone", 45],
  ["slide", 60],
] as const)("a %s starts at %d G", (fragilityClass, peakG) => {
  expect(fragility({ fragilityClass }).peakG).toBe(peakG);
});

test("every class has its row, and a ground", () => {
  expect(Object.keys(fragilityTable).sort()).toEqual([...fragilityClasses].sort());
  for (const row of Object.values(fragilityTable)) expect(row.ground).not.toBe("");
});

test("the curator's own figure takes the place of the starting value", () => {
  const { output, steps } = fragility.explain({ fragilityClass: "jar", curatorPeakG: 22 });
  expect(output).toMatchObject({ peakG: 22, innerCase: true });
  expect(steps[0]).toMatchObject({ value: 22, unit: "G", formula: "the curator's own figure" });
});

test("a specimen whose parts stand free lies in an inner case, a compact organ need not", () => {
  expect(fragility({ fragilityClass: "organ-with-free-parts" }).innerCase).toBe(true);
  expect(fragility({ fragilityClass: "compact-organ" }).innerCase).toBe(false);
});
