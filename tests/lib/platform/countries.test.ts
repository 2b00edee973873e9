/** A country's code is one that ISO 3166-1 has assigned. */
import { expect, test } from "vitest";
import { CountryCode } from "#lib/platform/countries.ts";

const said = (code: string) => CountryCode.safeParse(code).error?.issues.map(({ message }) => message) ?? [];

test.each(["NO", "GB", "GR", "AX", "GF", "TW", "SS", "BQ"])("%s is a country", (code) => {
  expect(said(code)).toEqual([]);
});

// Left to users, not yet or no longer assigned, reserved for something else.
test.each(["ZZ", "XK", "AA", "QM", "SU", "YU", "CS", "UK", "EU", "UN", "AN"])("%s is none", (code) => {
  expect(said(code)).toEqual(["country.unknown"]);
});

test.each(["no", "NOR", "N", "", "N0", "Norway", "NO\n"])("%j is not even written like one", (code) => {
  expect(said(code)).toEqual(["country.two-letters"]);
});

test("there are as many as ISO 3166-1 counts, and each has a name", () => {
  const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
  const codes = letters.flatMap((first) => letters.map((second) => first + second));
  const countries = codes.filter((code) => CountryCode.safeParse(code).success);
  expect(countries.length).toBe(249);
  const names = new Intl.DisplayNames(["en"], { type: "region", fallback: "none" });
  expect(countries.filter((code) => names.of(code) === undefined)).toEqual([]);
});
