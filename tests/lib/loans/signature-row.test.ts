import { expect, test } from "vitest";
import { toSignature } from "#lib/loans/signature-row.ts";

const said = {
  party: "lender",
  signerName: "Ada",
  signerRole: "Registrar",
  method: "countersigned",
  strokes: "",
  file: { id: "f", sha256: "ab".repeat(32) },
  electronic: false,
};

test("a signature is read with how it was given and its moment in universal time, and with nothing else", () => {
  const kept = { ...said, signedAt: new Date("2026-11-26T10:15:00+01:00"), accountId: "secret" };
  expect(toSignature(kept)).toEqual({ ...said, signedAt: "2026-11-26T09:15:00.000Z" });
});
