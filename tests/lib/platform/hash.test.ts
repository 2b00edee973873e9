import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalText, inputSha256, randomToken, sha256Hex } from "#lib/platform/hash.ts";

test("keys are sorted and nothing else is added", () => {
  expect(canonicalText({ b: 1, a: [true, null, "ä"] })).toBe('{"a":[true,null,"ä"],"b":1}');
});

test("numbers have one form", () => {
  expect(canonicalText([1.0, 1e21, 0.002])).toBe("[1,1e+21,0.002]");
});

test("the order in which a value was made does not matter", () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
      const reversed = Object.fromEntries(Object.entries(value).reverse());
      expect(canonicalText(reversed)).toBe(canonicalText(value));
      expect(canonicalText(JSON.parse(canonicalText(value)))).toBe(canonicalText(value));
    }),
  );
});

test("what JSON cannot say is refused", () => {
  expect(() => canonicalText(undefined)).toThrow(TypeError);
  expect(() => canonicalText(Number.NaN)).toThrow();
});

// FIPS 180-2, appendix B.1: "abc".
test("the hash of abc is the published one", () => {
  expect(sha256Hex("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
});

test("text is hashed as UTF-8", () => {
  expect(sha256Hex("ä")).toBe(
    createHash("sha256")
      .update(Buffer.from([0xc3, 0xa4]))
      .digest("hex"),
  );
});

test("tokens are long, fit an address, and differ", () => {
  const tokens = Array.from({ length: 50 }, randomToken);
  expect(new Set(tokens).size).toBe(50);
  for (const token of tokens) expect(token).toMatch(/^[\w-]{43}$/);
});

test("what a command was told has one fingerprint, and bytes stand for themselves", () => {
  const told = (bytes: number[]) => ({ id: null, content: new Uint8Array(bytes), list: [{ name: "a" }] });
  expect(inputSha256(told([1, 2, 3]))).toBe(inputSha256({ ...told([1, 2, 3]) }));
  expect(inputSha256(told([1, 2, 4]))).not.toBe(inputSha256(told([1, 2, 3])));
  expect(inputSha256({ a: 1, b: undefined })).toBe(inputSha256({ a: 1 }));
  expect(inputSha256(null)).toMatch(/^[0-9a-f]{64}$/);
});
