import { expect, test } from "vitest";
import { shockBorne, shockLimits } from "#lib/environment/shock.ts";
import { fragility } from "#lib/transport/fragility.ts";
import { fragilityClasses } from "#lib/transport/schema.ts";

test.each(fragilityClasses)("the crate of a %s keeps from it what it cannot bear", (fragilityClass) => {
  const { peakG, ground } = fragility({ fragilityClass });
  expect(peakG).toBe(shockLimits(fragilityClass).alarm);
  expect(ground).toBe(shockBorne[fragilityClass].ground);
});

test("the curator's own figure takes the place of the starting value", () => {
  const { output, steps } = fragility.explain({ fragilityClass: "jar", curatorPeakG: 22 });
  expect(output).toMatchObject({ peakG: 22, innerCase: true });
  expect(steps[0]).toMatchObject({ value: 22, unit: "G", formula: "the curator's own figure" });
});

test("a specimen whose parts stand free lies in an inner case, a compact organ need not", () => {
  expect(fragility({ fragilityClass: "organ-with-free-parts" }).innerCase).toBe(true);
  for (const fragilityClass of ["teeth-or-thin-bone", "dry-tissue", "slide"] as const)
    expect(fragility({ fragilityClass }).innerCase).toBe(true);
  expect(fragility({ fragilityClass: "compact-organ" }).innerCase).toBe(false);
});
