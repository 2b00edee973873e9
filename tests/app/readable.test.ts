/** Parameters of codes become what a person reads. */
import { expect, test } from "vitest";
import { countryName, readable } from "#app/_words/readable.ts";
import { sentence } from "#app/_words/sentences.ts";

test("a day, a moment and a country are written out", () => {
  expect(readable({ on: "2026-11-25", at: "2026-11-25T09:30:00.000Z", country: "IE" })).toEqual({
    on: "25 November 2026",
    at: "25 November 2026 at 09:30 UTC",
    country: "Ireland",
  });
});

test("what only looks like a country stays as it is", () => {
  expect(countryName("Ireland")).toBe("Ireland");
  expect(readable({ owner: "IE" })).toEqual({ owner: "IE" });
});

test("whole minor units and their currency are one amount; without a currency they stay a number", () => {
  expect(readable({ minor: 1_250_050, currency: "EUR" }).minor).toBe("12\u202f500.50 EUR");
  expect(readable({ minor: 3_000, currency: "JPY" }).minor).toBe("3\u202f000 JPY");
  expect(readable({ minor: 3_000, currency: null }).minor).toBe(3_000);
});

test("a year or a version is not cut into thousands, a large number is", () => {
  expect(readable({ version: 3, year: 2026, needed: 150_000, spare: 12.345 })).toEqual({
    version: 3,
    year: 2026,
    needed: "150\u202f000",
    spare: "12.35",
  });
});

test("states, gates and fields of the request are called by their words", () => {
  expect(readable({ gate: "cover", state: "at venue", fields: "title, contactPhone, unheard" })).toEqual({
    gate: "Cover from nail to nail",
    state: "At the venue",
    fields: "the name of the course or show, a telephone number, unheard",
  });
});

test("a code inside a code becomes its sentence with the same parameters", () => {
  const said = sentence("loan.gate-fails", {
    gate: "condition",
    fact: "gate.check-too-old",
    specimen: "AN 2019.0142",
    checkedOn: "2026-09-01",
  });
  expect(said).toBe(
    "Nothing leaves yet. Condition, not older than 30 days: AN 2019.0142 was checked on 1 September 2026, more than 30 days ago.",
  );
});

test("a code that points to itself ends", () => {
  expect(readable({ fact: "loan.gate-fails", wayOut: "unheard" }, () => null)).toEqual({
    fact: "loan.gate-fails",
    wayOut: "unheard",
  });
  expect(sentence("loan.gate-fails", { gate: "cover", fact: "loan.gate-fails" })).toMatch(
    /Nothing leaves yet/,
  );
});
