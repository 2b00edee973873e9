/** What stands between a specimen and its next loan, the gravest first. */
import Link from "next/link";
import type { NextThing } from "#app/_parts/record-page.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import type { CheckSheet } from "#lib/condition/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { ProvenanceSheet } from "#lib/provenance/queries.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";

type Known = {
  viewer: Viewer;
  specimen: SpecimenSheet;
  provenance: ProvenanceSheet;
  checks: readonly CheckSheet[] | null;
  today: string;
};

export function thingsNext({ viewer, specimen, provenance, checks, today }: Known): NextThing[] {
  const at = `/specimens/${specimen.id}`;
  const action = (allowed: boolean, href: string, label: string) =>
    allowed && (
      <Link className="act" href={href}>
        {label}
      </Link>
    );
  const check = action(mayDo(viewer, "recordCheck"), `${at}/check`, words.recordCheck);
  const edit = action(mayDo(viewer, "reviseSpecimen"), `${at}/edit`, words.edit);
  const provenanceEdit = action(mayDo(viewer, "recordTitle"), `${at}/provenance`, words.editProvenance);
  const last = checks?.[0];
  const things: (NextThing | false | null | undefined)[] = [
    provenance.human &&
      provenance.donorCount === 0 && {
        key: "consent",
        outcome: "attend",
        text: words.consentMissing,
        action: provenanceEdit,
      },
    !provenance.title && {
      key: "title",
      outcome: "attend",
      text: words.titleMissing,
      action: provenanceEdit,
    },
    checks !== null && !last && { key: "no-check", outcome: "bar", text: words.noCheck, action: check },
    last &&
      last.checkedOn < addDays(today, -365) && {
        key: "old-check",
        outcome: "attend",
        text: words.checkDue,
        action: check,
      },
    provenance.strictest?.reviewDueOn &&
      provenance.strictest.reviewDueOn.value <= today && {
        key: "review",
        outcome: "attend",
        text: words.reviewDue,
        action: provenanceEdit,
      },
    specimen.replacementCost === null && {
      key: "cost",
      outcome: "attend",
      text: words.costMissing,
      action: edit,
    },
    specimen.mountedSize === null &&
      specimen.size === null && { key: "size", outcome: "attend", text: words.crateUnknown, action: edit },
    specimen.shown.length === 0 && {
      key: "shown",
      outcome: "attend",
      text: words.noShown,
      action: action(mayDo(viewer, "recordShown"), `${at}/shown`, words.editShown),
    },
  ];
  return things.filter((thing): thing is NextThing => Boolean(thing));
}
