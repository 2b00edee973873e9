import { describe, expect, it } from "vitest";
import { plans } from "#lib/specimens/drawing/animal-plans.ts";
import { liesInside } from "#lib/specimens/drawing/forms.ts";

describe("the plan of an animal", () => {
  it.each(Object.entries(plans))(
    "%s has its eye, its ribs and its fore limb inside its outline",
    (_, plan) => {
      expect(liesInside(plan.eye, plan.outline)).toBe(true);
      for (const point of plan.breast) expect(liesInside(point, plan.outline)).toBe(true);
      expect(plan.ribs[0]).toBeLessThan(plan.ribs[1]);
      expect(plan.limbs.length).toBeGreaterThanOrEqual(2);
    },
  );

  it.each(Object.entries(plans))("%s looks left: its eye lies before the middle of its body", (_, plan) => {
    const xs = plan.outline.map((point) => point[0]);
    expect(plan.eye[0]).toBeLessThan((Math.min(...xs) + Math.max(...xs)) / 2);
  });
});
