import { expect, test } from "vitest";
import { shockBorne, shockLimits, shockSources } from "#lib/environment/shock.ts";
import { fragilityClassNames } from "#lib/specimens/classes.ts";

// Starting values, curator decides: common practice, no source.
test.each([
  ["compact-organ", 36, 60],
  ["organ-with-free-parts", 24, 40],
  ["whole-body", 24, 40],
  ["sheet", 30, 50],
  ["jar", 18, 30],
  ["corrosion-cast", 12, 20],
  ["articulated-skeleton", 15, 25],
  ["bone", 27, 45],
  ["teeth-or-thin-bone", 18, 30],
  ["dry-tissue", 15, 25],
  ["slide", 24, 40],
] as const)("a %s warns at %d G and alarms at %d G", (fragilityClass, warn, alarm) => {
  expect(shockLimits(fragilityClass)).toMatchObject({ warn, alarm });
});

test("every class has its figure with a ground, and cites no source beyond those of the working", () => {
  expect(Object.keys(shockBorne).sort()).toEqual([...fragilityClassNames].sort());
  for (const name of fragilityClassNames) {
    expect(shockBorne[name].ground).not.toBe("");
    const { ground } = shockLimits(name);
    expect(ground.length).toBeGreaterThan(0);
    for (const source of ground) expect(shockSources).toContainEqual(source);
  }
});

test("changed limits change no others", () => {
  const first = shockLimits("sheet").ground[0];
  if (first) first.title = "Something else";
  expect(shockLimits("sheet").ground[0]?.title).not.toBe("Something else");
});
