/** The id of a record as an address names it; what is no id names no record. */
import "server-only";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

/** @throws {Refusal} "not-found" for what no record can be called */
export function readId(text: string): Id {
  const id = Id.safeParse(text);
  if (!id.success) throw notFound("record");
  return id.data;
}
