import { expect, test } from "vitest";
import { readSetFields } from "#app/(signed-in)/borrow/read-question.ts";
import { mostWanted } from "#lib/loans/wanted.ts";

test("an address names structures, days and use; without them it asks for nothing", () => {
  expect(readSetFields({})).toEqual({
    shows: [],
    names: [],
    from: "",
    until: "",
    use: "viewing only",
    purpose: "teaching",
    audience: "enrolled students",
    paid: false,
    venue: "",
    origin: "",
    sheets: false,
  });
  expect(
    readSetFields({
      shows: ["heart", "lung", "heart"],
      names: "Niere, , n. vagus",
      from: "2027-03-01",
      until: "2027-07-01",
      use: "handling",
      purpose: "exhibition",
      audience: "general public",
      paid: "yes",
      venue: "a-venue",
      origin: "animal",
      sheets: "yes",
    }),
  ).toEqual({
    shows: ["heart", "lung"],
    names: ["Niere", "n. vagus"],
    from: "2027-03-01",
    until: "2027-07-01",
    use: "handling",
    purpose: "exhibition",
    audience: "general public",
    paid: true,
    venue: "a-venue",
    origin: "animal",
    sheets: true,
  });
});

test("what no structure can be called is left out, and so is what is too much", () => {
  const many = Array.from({ length: 60 }, (_, at) => `s-${at}`);
  expect(readSetFields({ shows: ["'; DROP", "../x", "heart"], use: "sale" })).toMatchObject({
    shows: ["heart"],
    use: "viewing only",
  });
  expect(readSetFields({ shows: many }).shows).toHaveLength(mostWanted);
});
