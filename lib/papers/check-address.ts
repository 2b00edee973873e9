/**
 * The address that a paper's code leads to. An issued paper has 130 random bits; a
 * version of an agreement has its id with a keyed hash of it, so that versions drawn
 * up before there were codes have one too and none of them can be guessed. The key is
 * the program's secret: printed codes stop answering when it is changed.
 */
import { createHmac, timingSafeEqual } from "node:crypto";

/** RFC 4648 without letters that are read as figures. */
const letters = "abcdefghijklmnopqrstuvwxyz234567";
export const codeLetters = 26;

/** @param bytes random ones, at least as many as letters @returns five bits from each */
export function codeOf(bytes: Uint8Array): string {
  if (bytes.length < codeLetters) throw new RangeError("A code needs more random bytes.");
  return Array.from(bytes.subarray(0, codeLetters), (byte) => letters[byte & 31]).join("");
}

const macOf = (agreementId: string, secret: string) =>
  createHmac("sha256", secret).update(`agreement ${agreementId}`).digest().subarray(0, 16);

/** 44 letters: the id, then 128 bits that only the program can make. */
export function agreementCode(agreementId: string, secret: string): string {
  const id = Buffer.from(agreementId.replaceAll("-", ""), "hex");
  if (id.length !== 16) throw new RangeError("This is no id.");
  return id.toString("base64url") + macOf(agreementId, secret).toString("base64url");
}

/** The agreement that a code stands for; null for a code that was not made with the secret. */
export function agreementOfCode(code: string, secret: string): string | null {
  if (!/^[\w-]{44}$/.test(code)) return null;
  const hex = Buffer.from(code.slice(0, 22), "base64url").toString("hex");
  const mac = Buffer.from(code.slice(22), "base64url");
  const id = hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
  const expected = macOf(id, secret);
  return mac.length === expected.length &&
    timingSafeEqual(mac, expected) &&
    agreementCode(id, secret) === code
    ? id
    : null;
}

export const checkAddress = (base: string, code: string): string =>
  `${base.replace(/\/$/, "")}/paper/${code}`;
