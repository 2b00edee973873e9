import { randomUUID } from "node:crypto";
import { describe, expect, test } from "vitest";
import {
  agreementCode,
  agreementOfCode,
  checkAddress,
  codeLetters,
  codeOf,
} from "#lib/papers/check-address.ts";

const secret = "a secret of this test, long enough";

describe("the code of an issued paper", () => {
  test("has 26 letters of five bits each, and so more than 128 bits", () => {
    expect(codeLetters * 5).toBeGreaterThanOrEqual(128);
    const all = new Set(Array.from({ length: 256 }, (_none, byte) => codeOf(new Uint8Array(26).fill(byte))));
    expect(all.size).toBe(32);
    for (const code of all) expect(code).toMatch(/^[a-z2-7]{26}$/);
  });

  test("needs as many random bytes", () => {
    expect(() => codeOf(new Uint8Array(25))).toThrow(RangeError);
  });
});

describe("the code of an agreement", () => {
  const id = randomUUID();

  test("leads back to its version, with the secret only", () => {
    const code = agreementCode(id, secret);
    expect(code).toMatch(/^[\w-]{44}$/);
    expect(agreementOfCode(code, secret)).toBe(id);
    expect(agreementOfCode(code, `${secret}!`)).toBeNull();
  });

  test("with any letter changed leads nowhere", () => {
    const code = agreementCode(id, secret);
    for (let at = 0; at < code.length; at += 1) {
      const other = code[at] === "A" ? "B" : "A";
      expect(agreementOfCode(code.slice(0, at) + other + code.slice(at + 1), secret)).toBeNull();
    }
  });

  test("is no code of something else", () => {
    for (const code of ["", "a".repeat(26), "é".repeat(44), `${agreementCode(id, secret)}A`])
      expect(agreementOfCode(code, secret)).toBeNull();
    expect(() => agreementCode("nothing", secret)).toThrow(RangeError);
  });
});

test("the address has one slash between its parts", () => {
  expect(checkAddress("https://lending.example.org/", "x")).toBe("https://lending.example.org/paper/x");
  expect(checkAddress("https://lending.example.org", "x")).toBe("https://lending.example.org/paper/x");
});
