/** A row of each append-only chain that fits its columns and checks, where a test needs one only to stand in the way. */
import crypto from "node:crypto";
import { newId } from "#lib/platform/identity.ts";

/** A value that a column takes, where a chain needs a row only to stand in the way. */
export const ofType: Record<string, () => unknown> = {
  uuid: newId,
  text: () => "text",
  bpchar: () => "EUR",
  int4: () => 1,
  int8: () => 1,
  float8: () => 0.5,
  bool: () => false,
  date: () => "2027-01-15",
  timestamptz: () => "2027-01-15T09:00:00Z",
  jsonb: () => "{}",
  _text: () => "{}",
  _uuid: () => "{}",
};
const sha256Of = (text: string) => crypto.createHash("sha256").update(text).digest("hex");
export const fitting: Record<string, Record<string, unknown>> = {
  finding: { severity: "minor" },
  crate_event: { kind: "packed" },
  decision: { outcome: "accept" },
  agreement: { terms: "terms", sha256: sha256Of("terms") },
  signature: { party: "lender", sha256: "0".repeat(64) },
  facility_report: { valid_until: "2029-01-15" },
  message: { side: "centre" },
  costing: { kind: "quotation", content: "content", sha256: sha256Of("content") },
  costing_answer: { outcome: "accepted" },
  payment: { kind: "received" },
  claim_event: { kind: "opened" },
  issued_paper: { content: "content", sha256: sha256Of("content") },
};
