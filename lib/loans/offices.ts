/**
 * Who speaks for which office when a request is decided. The registrar speaks for
 * none; the oversight body's word is recorded from its paper by the house; the
 * conservator's signs a poor condition off.
 */

import type { Role, Viewer } from "#lib/people/viewer.ts";
import type { offices } from "#lib/suitability/schema.ts";

type Office = (typeof offices)[number];

export const speaksFor: Record<Office, readonly Role[]> = {
  curator: ["curator", "collection manager"],
  "donor officer": ["donor officer"],
  "oversight body": ["donor officer", "collection manager"],
  conservator: ["conservator"],
};

/** The offices that somebody may speak for, in the order in which they are shown. */
export function officesOf(viewer: Pick<Viewer, "roles">): Office[] {
  return (Object.keys(speaksFor) as Office[]).filter((office) =>
    viewer.roles.some((role) => speaksFor[office].includes(role)),
  );
}
