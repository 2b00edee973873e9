/** Margin notes lead to their working with the same figures. */
import { expect, test } from "vitest";
import { fieldsOf, type JsonSchema, readInput, sentIn } from "#app/_parts/working-fields.ts";
import { workingHref } from "#app/_server/working-href.ts";
import { describeWorking, getWorking } from "#app/_server/workings.ts";

test("the address of a working works out the same result", () => {
  const input = { temperatureC: 21, humidity: 0.45 };
  const href = workingHref("air", input);
  expect(href).toBe("/workings/air?temperatureC=21&humidity=45#result");
  const sent = sentIn(Object.fromEntries(new URL(href, "http://localhost").searchParams));
  const air = getWorking("air");
  const read = readInput(fieldsOf(describeWorking(air).input as JsonSchema), sent);
  expect(air.explain(read)).toEqual(air.explain(input));
});

test("a working that does not exist has no address", () => {
  expect(() => workingHref("nonesuch", {})).toThrow(expect.objectContaining({ kind: "not-found" }));
});
