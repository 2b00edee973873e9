import fc from "fast-check";
import { expect, test } from "vitest";
import { heldFigures } from "#lib/papers/held-figures.ts";

/** With the spaces that do not break shown as a low line. */
const shown = (text: string) => heldFigures(text).replaceAll("\u00A0", "_");

test.each([
  ["by 1 July 2027 at the latest", "by 1_July_2027 at the latest"],
  ["Gebrauchs: 15. März 2027.", "Gebrauchs: 15._März_2027."],
  ["le 1er mars 2027 et", "le 1er_mars_2027 et"],
  ["unter +47 00 00 09. Entleiher", "unter +47_00_00_09. Entleiher"],
  ["a deposit of 0 EUR, which", "a deposit of 0_EUR, which"],
  ["150 000 lx·h and 16 °C", "150_000_lx·h and 16_°C"],
  ["within 24 hours", "within 24 hours"],
  ["clause 14 applies", "clause 14 applies"],
])("%s", (said, held) => {
  expect(shown(said)).toBe(held);
});

test("only spaces change", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(..."0 1+. aM€%K") }), (text) => {
      expect(heldFigures(text).replaceAll("\u00A0", " ")).toBe(text.replaceAll("\u00A0", " "));
    }),
  );
});
