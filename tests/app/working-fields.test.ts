/** Forms of workings: fields from a schema, an address from an input, and the input again from the address. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import {
  fieldsOf,
  type JsonSchema,
  type NamedField,
  readInput,
  sentIn,
  writeInput,
} from "#app/_parts/working-fields.ts";
import { describeWorking, listWorkings } from "#app/_server/workings.ts";

const schemaOf = (schema: z.ZodType) =>
  z.toJSONSchema(schema, { io: "input", unrepresentable: "any" }) as JsonSchema;
const addressOf = (query: string) => sentIn(Object.fromEntries(new URLSearchParams(query)));

const Everything = z.object({
  massKg: z.number().min(0.1).max(300).meta({ title: "Mass", unit: "kg" }),
  humidity: z.number().min(0).max(1).meta({ title: "Humidity", unit: "fraction of saturation" }),
  count: z.number().int().positive().default(1),
  foam: z.enum(["soft-35", "hard"]).optional(),
  wallMm: z.literal([9, 12]).default(9),
  upright: z.boolean().nullable().default(null),
  sides: z.object({ lengthMm: z.number(), widthMm: z.number() }),
  sheet: z.object({ thicknessMm: z.number() }).optional(),
  spans: z.array(z.object({ hours: z.number(), note: z.string().max(10).optional() })).min(1),
  way: z
    .discriminatedUnion("kind", [
      z.object({ kind: z.literal("door"), widthMm: z.number() }),
      z.object({ kind: z.literal("lift"), widthMm: z.number(), loadKg: z.number().optional() }),
    ])
    .optional(),
});
const fields = fieldsOf(schemaOf(Everything));
const field = (name: string) => fields.find((each) => each.name === name)?.field;

describe("fields", () => {
  test("take title, unit and bounds from the schema, and words from the name where it has none", () => {
    expect(field("massKg")).toMatchObject({
      kind: "number",
      title: "Mass",
      unit: "kg",
      minimum: 0.1,
      maximum: 300,
      required: true,
    });
    expect(field("wallMm")).toMatchObject({ title: "Wall", unit: "mm" });
    expect(field("count")).toMatchObject({
      whole: true,
      aboveMinimum: true,
      minimum: 0,
      start: 1,
      required: false,
    });
    expect(field("upright")).toMatchObject({ kind: "boolean", start: null, required: false });
    expect(field("way")).toMatchObject({ kind: "variant", key: "kind", required: false });
  });

  test("of a share are typed as a percentage", () => {
    expect(field("humidity")).toMatchObject({ unit: "%", percent: true });
    expect(readInput(fields, addressOf("humidity=45,5"))).toMatchObject({ humidity: 0.455 });
  });

  test("of which thousands are usual keep a number that may be either as it was typed", () => {
    expect(readInput(fields, addressOf("massKg=1.234&wallMm=9&sides.lengthMm=1.234"))).toMatchObject({
      massKg: 1.234,
      sides: { lengthMm: "1.234" },
    });
    expect(readInput(fields, addressOf("sides.lengthMm=1,234.5"))).toMatchObject({
      sides: { lengthMm: 1234.5 },
    });
  });
});

describe("an address", () => {
  test("leaves out what is empty, and keeps what cannot be read as it was typed", () => {
    const sent = addressOf(
      "massKg=&humidity=a+lot&spans.0.hours=&spans.1.hours=2&sides.lengthMm=10&sheet.thicknessMm=",
    );
    expect(readInput(fields, sent)).toEqual({
      humidity: "a lot",
      spans: [{ hours: 2 }],
      sides: { lengthMm: 10 },
    });
  });

  test("states a group that is needed even when nothing in it was filled", () => {
    expect(readInput(fields, addressOf(""))).toEqual({ sides: {}, spans: [] });
  });

  test("names no more rows than a list may have", () => {
    const { spans } = readInput(fields, addressOf("spans.999.hours=1&spans.1000000.hours=1")) as {
      spans: unknown[];
    };
    expect(spans.length).toBeLessThanOrEqual(1);
  });

  test("of an input gives the same input back", () => {
    const plain = fc.double({ min: 0.1, max: 300, noNaN: true });
    const input = fc.record(
      {
        massKg: plain,
        humidity: fc.integer({ min: 0, max: 1_000 }).map((permille) => permille / 1_000),
        count: fc.integer({ min: 1, max: 9 }),
        foam: fc.constantFrom("soft-35", "hard"),
        wallMm: fc.constantFrom(9, 12),
        upright: fc.boolean(),
        sides: fc.record({ lengthMm: plain, widthMm: plain }),
        sheet: fc.record({ thicknessMm: plain }),
        spans: fc.array(fc.record({ hours: plain }), { minLength: 1, maxLength: 4 }),
        way: fc.oneof(
          fc.record({ kind: fc.constant("door"), widthMm: plain }),
          fc.record({ kind: fc.constant("lift"), widthMm: plain, loadKg: plain }),
        ),
      },
      { requiredKeys: ["massKg", "humidity", "sides", "spans"] },
    );
    fc.assert(
      fc.property(input, (stated) => {
        expect(readInput(fields, addressOf(writeInput(fields, stated)))).toEqual(stated);
      }),
    );
  });
});

describe("the workings of the house", () => {
  test.each(listWorkings().map((working) => [working.id, working] as const))(
    "%s has a field for each of its inputs, each with a title",
    (_id, working) => {
      const described = describeWorking(working).input as JsonSchema;
      const found = fieldsOf(described);
      expect(found.map(({ name }) => name)).toEqual(Object.keys(described.properties as object));
      const walk = (named: readonly NamedField[]): void => {
        for (const { name, field: inner } of named) {
          expect(inner.title, name).not.toBe("");
          if (inner.kind === "group") walk(inner.fields);
          if (inner.kind === "variant") for (const each of inner.cases) walk(each.fields);
          if (inner.kind === "list") walk([{ name: `${name}.0`, field: inner.item }]);
          if (inner.kind === "choice") expect(inner.options.length, name).toBeGreaterThan(1);
        }
      };
      walk(found);
    },
  );
});
