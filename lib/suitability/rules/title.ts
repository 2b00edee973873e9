/**
 * T1, the third rule above all rules: a specimen that is not ours (a deposit, a
 * loan to us, a disputed or unknown title) is not lent without its owner's
 * written leave. Leave without a reference to the writing is no leave.
 */

import type { TitleInput } from "#lib/provenance/schema.ts";
import type { SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";

export function verdictOnTitle(title: TitleInput | null): Verdict {
  if (title === null) return { outcome: "bar", fact: "title.no-record", wayOut: "way.record-title" };
  const { status, ownerName, leaveReference } = title;
  if (status === "owned") return { outcome: "clear", fact: "title.owned" };
  const parameters = { status, owner: ownerName, reference: leaveReference };
  if (!title.leaveToLend || leaveReference === "")
    return { outcome: "bar", fact: "title.no-leave", parameters, wayOut: "way.owners-leave" };
  if (status === "deposit" || status === "loan-in")
    return { outcome: "clear", fact: "title.leave", parameters };
  return { outcome: "attend", fact: "title.leave-but-unsettled", parameters, wayOut: "way.settle-title" };
}

export function judgeTitle({ specimen, provenance }: SpecimenCase): Finding[] {
  return [findingsFor(specimen.id, "title")("T1", verdictOnTitle(provenance.title))];
}
