import { expect, test } from "vitest";
import { z } from "zod";
import { environmentWorkings } from "#lib/environment/workings.ts";

test("each working has an id of its own, sources, cautions and a schema that can be shown", () => {
  const ids = environmentWorkings.map((working) => working.id);
  expect(ids).toEqual(["acclimatisation", "air", "kinetic-temperature", "light-dose"]);
  for (const working of environmentWorkings) {
    expect(working.sources.length).toBeGreaterThan(0);
    expect(working.cautions.length).toBeGreaterThan(0);
    expect(z.toJSONSchema(working.input, { io: "input" })).toHaveProperty("properties");
    expect(z.toJSONSchema(working.output)).toHaveProperty("properties");
  }
});
