import { expect, test } from "vitest";
import { offeredHeadings, TariffCodeText, tariffCountries } from "#lib/loans/tariff.ts";

test.each(["970521", "9705.21", "9705.21.00", "9705 21 0000", "0511.99.40.70", ...offeredHeadings])(
  "%s is a tariff code",
  (code) => {
    expect(TariffCodeText.parse(` ${code} `)).toBe(code);
  },
);

test.each(["", "9705", "97052", "9705-21", "human", "9705.21.", "9705.21.00.00.00.00", "９７０５.21"])(
  "%j is none",
  (code) => {
    expect(TariffCodeText.safeParse(code).success).toBe(false);
  },
);

test("a way that stays in one country has none that a code is decided for", () => {
  expect(tariffCountries(["DE", "DE"], [])).toEqual([]);
  expect(tariffCountries(["DE", "DE"], ["DE"])).toEqual([]);
});

test("a way touches its ends first and each country once", () => {
  expect(tariffCountries(["DE", "NO"], ["DK", "SE", "DK"])).toEqual(["DE", "NO", "DK", "SE"]);
  expect(tariffCountries(["DE", "DE"], ["CH"])).toEqual(["DE", "CH"]);
});
