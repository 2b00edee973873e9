/** Telephone numbers as people write them, and what only looks like text. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { isTelephone, Telephone, TelephoneOrNothing } from "#lib/platform/telephone.ts";

test.each([
  "+47 22 00 00 00",
  "(020) 7946 0000",
  "020-7946/0000",
  "+1 (555) 010.0199 ext. 12",
  "+1 555 0100 EXT12",
  "+47\u00a022\u00a000\u00a000\u00a000",
  "112",
])("%s can be rung", (text) => {
  expect(Telephone.safeParse(text).success).toBe(true);
});

test.each([
  "abc",
  "javascript:alert(1)",
  "12",
  "+ - ()",
  "ext 12",
  "+47 22 00 00 00 mornings",
  "+47 22 00\n00 00",
  "1<2>3",
  "٠١٢٣",
])("%j cannot", (text) => {
  expect(Telephone.safeParse(text).error?.issues.map(({ message }) => message)).toEqual([
    "telephone.unreadable",
  ]);
});

test("nothing is only allowed where a record may be half done", () => {
  expect(Telephone.safeParse(" ").error?.issues.length).toBe(1);
  expect(TelephoneOrNothing.parse(" ")).toBe("");
  expect(TelephoneOrNothing.safeParse("abc").success).toBe(false);
});

test("whatever stands there, it is judged at once and never holds a letter beyond an extension", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(..."0159 +-()/.ext"), maxLength: 40 }), (text) => {
      if (isTelephone(text)) expect(text.replace(/ext\.? ?\d+$/, "")).not.toMatch(/[a-z]/);
    }),
  );
});
