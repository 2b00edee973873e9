/** What the panel of the sealed record knows: as a form does, or the record itself while it is open. */
import type { FormState } from "#app/_parts/form-state.ts";
import type { SealedRecordInput } from "#lib/provenance/schema.ts";

export type SealedState = FormState | { state: "open"; record: SealedRecordInput };
