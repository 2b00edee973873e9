import { expect, test } from "vitest";
import { z } from "zod";
import { conditionWorkings } from "#lib/condition/workings.ts";

test("each working has an id of its own, sources, cautions and a schema that can be shown", () => {
  expect(conditionWorkings.map((working) => working.id)).toEqual([
    "colour-difference",
    "yellowness",
    "colour-lab-from-xyz",
    "colour-xyz-from-lab",
  ]);
  for (const working of conditionWorkings) {
    expect(working.sources.length).toBeGreaterThan(0);
    expect(working.cautions.length).toBeGreaterThan(0);
    expect(z.toJSONSchema(working.input, { io: "input" })).toHaveProperty("properties");
    expect(z.toJSONSchema(working.output)).toHaveProperty("properties");
  }
});
