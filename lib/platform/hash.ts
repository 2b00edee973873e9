/**
 * Fingerprints of what must not change: a value is written in the one canonical
 * form of JSON (RFC 8785: sorted keys, no spaces, one way to write a number) and
 * that text is hashed. The same value always gives the same text and hash.
 */
import { createHash, randomBytes } from "node:crypto";
import canonicalize from "canonicalize";

/** @throws {TypeError} for what JSON cannot say, such as a function or NaN */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError("this value has no form in JSON");
  return text;
}

/** @returns SHA-256 of a file, as 64 lower-case hexadecimal digits */
export function bytesSha256(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** Bytes stand for themselves by their own hash: JSON cannot say them. */
function withoutBytes(value: unknown): unknown {
  if (value instanceof Uint8Array) return { bytesSha256: bytesSha256(value) };
  if (Array.isArray(value)) return value.map(withoutBytes);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withoutBytes(inner)]));
}

/** A fingerprint of what a command was told, files included. */
export function inputSha256(input: unknown): string {
  return sha256Hex(canonicalText(withoutBytes(input)));
}

/** @returns SHA-256 of the text in UTF-8, as 64 lower-case hexadecimal digits */
export function sha256Hex(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex");
}

/** A secret for a link: 256 random bits in letters that an address may hold. */
export function randomToken(): string {
  return randomBytes(32).toString("base64url");
}
