import { expect, test } from "vitest";
import { z } from "zod";
import { transportWorkings } from "#lib/transport/workings.ts";

test("every working has a name of its own", () => {
  const ids = transportWorkings.map((one) => one.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(
    expect.arrayContaining([
      "crate-plan",
      "drop-height",
      "cushion",
      "sheet-support",
      "crate",
      "handling",
      "passage",
      "volumetric-mass",
      "corner-turn",
    ]),
  );
});

test.each(transportWorkings.map((one) => [one.id, one] as const))(
  "%s can be written as JSON Schema, and names its sources and cautions",
  (_id, one) => {
    expect(z.toJSONSchema(one.input)).toMatchObject({ type: "object" });
    expect(z.toJSONSchema(one.output)).toMatchObject({ type: "object" });
    expect(one.sources.length).toBeGreaterThan(0);
    expect(one.cautions.length).toBeGreaterThan(0);
  },
);
