/** Addresses that cannot be decoded are read for what they are; all others stay as they were asked for. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { readableAddress } from "#app/_server/launch/addresses.mjs";

test.each([
  ["/specimens/%E0%A4%A", "/specimens/%25E0%25A4%25A"],
  ["/loans/%", "/loans/%25"],
  ["/loans/%zz/agreement/1", "/loans/%25zz/agreement/1"],
  ["/go/%FF?q=%E0%A4%A", "/go/%25FF?q=%E0%A4%A"],
  ["/specimens/a%20b?q=%", "/specimens/a%20b?q=%"],
  ["/specimens/%00", "/specimens/%00"],
  ["/", "/"],
  ["", ""],
])("%s is read as %s", (asked, read) => {
  expect(readableAddress(asked)).toBe(read);
});

test("whatever is asked for, its path can be decoded, and what could be stays as it was", () => {
  const piece = fc.constantFrom("%", "%E0", "%A4", "%41", "%zz", "/", "a", "?", "é", "%00");
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
      const asked = pieces.join("");
      const read = readableAddress(asked);
      const [path = ""] = read.split("?");
      expect(() => decodeURIComponent(path)).not.toThrow();
      expect(readableAddress(read)).toBe(read);
    }),
  );
});
