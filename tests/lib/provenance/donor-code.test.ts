import { randomInt } from "node:crypto";
import { expect, test } from "vitest";
import { donorCode, donorCodeAlphabet } from "#lib/provenance/donor-code.ts";
import { DonorCode } from "#lib/provenance/schema.ts";

test("a donor's code follows the pattern, whatever the dice say", () => {
  for (let at = 0; at < 2_000; at += 1) expect(DonorCode.safeParse(donorCode(randomInt)).success).toBe(true);
  expect(donorCode(() => 0)).toBe("D-22222");
  expect(donorCode((below) => below - 1)).toBe("D-ZZZZZ");
});

test("no character of the alphabet is taken for another", () => {
  expect(donorCodeAlphabet).not.toMatch(/[01OILU]/);
  expect(new Set(donorCodeAlphabet).size).toBe(donorCodeAlphabet.length);
});
