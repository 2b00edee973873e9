import { expect, test } from "vitest";
import { fragilityClassNames, fragilityClassOf } from "#lib/specimens/classes.ts";
import { preparations, specimenKinds } from "#lib/specimens/schema.ts";

test.each([
  ["organ", "silicone-impregnated", "", "compact-organ"],
  ["organ", "silicone-impregnated", "free coronary branches", "organ-with-free-parts"],
  ["organ", "dry", "", "dry-tissue"],
  ["whole body", "dry", "", "dry-tissue"],
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
  ["skeleton or bone", "dry", "Dried membranes", "teeth-or-thin-bone"],
  ["histological slide", "slide", "", "slide"],
] as const)("%s, %s, parts at risk %j: %s", (kind, preparation, partsAtRisk, expected) =>
  expect(fragilityClassOf({ kind, preparation, partsAtRisk, hasTeeth: false })).toBe(expected),
);

test("bone with teeth is the stricter class, but a skeleton on wire and a body stay what they are", () => {
  const withTeeth = { partsAtRisk: "", hasTeeth: true } as const;
  expect(fragilityClassOf({ kind: "skeleton or bone", preparation: "dry", ...withTeeth })).toBe(
    "teeth-or-thin-bone",
  );
  expect(fragilityClassOf({ kind: "skeleton or bone", preparation: "mounted skeleton", ...withTeeth })).toBe(
    "articulated-skeleton",
  );
  expect(fragilityClassOf({ kind: "whole body", preparation: "silicone-impregnated", ...withTeeth })).toBe(
    "whole-body",
  );
});

test("every kind with every preparation has a class", () => {
  for (const kind of specimenKinds)
    for (const preparation of preparations)
      expect(fragilityClassNames).toContain(
        fragilityClassOf({ kind, preparation, partsAtRisk: "", hasTeeth: false }),
      );
});
