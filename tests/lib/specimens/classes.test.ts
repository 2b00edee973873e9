import { expect, test } from "vitest";
import { fragilityClassNames, fragilityClassOf } from "#lib/specimens/classes.ts";
import { preparations, specimenKinds } from "#lib/specimens/schema.ts";
import { fragilityClasses } from "#lib/transport/schema.ts";

test("the words are those of the room of transport", () =>
  expect(fragilityClassNames).toEqual(fragilityClasses));

test.each([
  ["organ", "silicone-impregnated", "", "compact-organ"],
  ["organ", "silicone-impregnated", "free coronary branches", "organ-with-free-parts"],
  ["organ", "dry", "", "organ-with-free-parts"],
  ["body region", "silicone-impregnated", "", "organ-with-free-parts"],
  ["organ system", "silicone-impregnated", "", "organ-with-free-parts"],
  ["whole body", "silicone-impregnated", "", "whole-body"],
  ["sheet", "epoxy sheet", "", "sheet"],
  ["body region", "polyester sheet", "", "sheet"],
  ["fluid-preserved specimen", "fluid-preserved", "", "jar"],
  ["organ", "fluid-preserved", "", "jar"],
  ["cast", "corrosion cast", "", "corrosion-cast"],
  ["organ", "corrosion cast", "", "corrosion-cast"],
  ["skeleton or bone", "mounted skeleton", "", "articulated-skeleton"],
  ["skeleton or bone", "dry", "", "bone"],
  ["histological slide", "slide", "", "slide"],
] as const)("%s, %s, parts at risk %j: %s", (kind, preparation, partsAtRisk, expected) =>
  expect(fragilityClassOf({ kind, preparation, partsAtRisk })).toBe(expected),
);

test("every kind with every preparation has a class", () => {
  for (const kind of specimenKinds)
    for (const preparation of preparations)
      expect(fragilityClassNames).toContain(fragilityClassOf({ kind, preparation, partsAtRisk: "" }));
});
