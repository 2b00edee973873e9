/** On which occasion a specimen of a loan is checked. */
import { expect, test } from "vitest";
import { occasionsFor } from "#lib/loans/occasions.ts";
import { lineStates } from "#lib/loans/schema.ts";

test("the house looks before it leaves and after it came home", () => {
  expect(occasionsFor("packed", false)[0]).toBe("out");
  expect(occasionsFor("resting at home", false)[0]).toBe("home");
});

test("who borrows looks at arrival, before departure and after an incident, and nowhere else", () => {
  expect(occasionsFor("at venue", true)).toEqual(["arrival", "departure", "incident"]);
  for (const state of lineStates)
    expect(occasionsFor(state, true).every((one) => ["arrival", "departure", "incident"].includes(one))).toBe(
      true,
    );
});

test("who borrows looks only at what is with them", () => {
  for (const state of ["accepted", "packed", "travelling out", "travelling home", "resting at home"] as const)
    expect(occasionsFor(state, true)).toEqual([]);
});

test("no check belongs to a loan that has not been decided or has ended", () => {
  for (const state of ["noted", "requested", "declined", "withdrawn", "closed", "missing"] as const)
    expect(occasionsFor(state, false)).toEqual([]);
});
