/** A working gives one result, whether asked plainly or with its steps. */
import { expect, test } from "vitest";
import { z } from "zod";
import { Refusal } from "#lib/platform/refusal.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

const staticStress = working({
  id: "static-stress",
  title: "Static stress",
  about: "What a mass presses on a surface.",
  input: z.object({ massKg: z.number().positive(), areaM2: z.number().positive() }),
  output: z.object({ stressPa: z.number() }),
  sources: [cite("derived")],
  cautions: ["A trial."],
  compute({ massKg, areaM2 }, note) {
    return { stressPa: note("static stress", (massKg * 9.80665) / areaM2, "Pa", "m g / A") };
  },
});

test("it is a plain function for other rooms", () => {
  expect(staticStress({ massKg: 10, areaM2: 0.1 }).stressPa).toBeCloseTo(980.665, 9);
});

test("it gives the same result with its steps, sources and cautions", () => {
  const explained = staticStress.explain({ massKg: 10, areaM2: 0.1 });
  expect(explained.output).toEqual(staticStress({ massKg: 10, areaM2: 0.1 }));
  expect(explained.steps).toEqual([
    { label: "static stress", value: explained.output.stressPa, unit: "Pa", formula: "m g / A" },
  ]);
  expect(explained.sources[0]?.standing).toBe("derived here");
  expect(explained.cautions).toEqual(["A trial."]);
});

test("input outside its range is refused field by field", () => {
  expect(() => staticStress.explain({ massKg: -1, areaM2: Number.NaN })).toThrow(Refusal);
  try {
    staticStress.explain({ massKg: -1, areaM2: "wide" });
  } catch (error) {
    expect((error as Refusal).issues.map((issue) => issue.path)).toEqual(["massKg", "areaM2"]);
  }
});
