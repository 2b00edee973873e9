/** What stands between a specimen and its next loan, the gravest first, and who has it now. */
import Link from "next/link";
import type { NextThing } from "#app/_parts/record-page.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { formatDate, formatRange } from "#app/_words/format.ts";
import type { CheckSheet } from "#lib/condition/queries.ts";
import { isAway, type LentLine, standingOfLent } from "#lib/desk/lent.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { addDays } from "#lib/platform/dates.ts";
import { withdrawnFrom } from "#lib/provenance/consent-status.ts";
import type { ProvenanceSheet } from "#lib/provenance/queries.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";

type Known = {
  viewer: Viewer;
  specimen: SpecimenSheet;
  provenance: ProvenanceSheet;
  checks: readonly CheckSheet[] | null;
  /** The loans that claim it; none for who may not see them. */
  lent: readonly LentLine[];
  today: string;
};

const rank = { bar: 0, attend: 1, clear: 2 } as const;

function openLoan(line: LentLine) {
  return (
    <Link className="act plain" href={`/loans/${line.loanId}`}>
      {words.lent.openLoan(line.loanNumber)}
    </Link>
  );
}

/** Who has it, or to whom it is promised, each with its loan. */
function lentThings(lent: readonly LentLine[], today: string): NextThing[] {
  return lent.flatMap((line) => {
    const said = standingOfLent(line, today);
    if (said === null) return [];
    const text = words.lent.standings[said.standing]({
      borrower: line.borrower,
      where: `${line.borrower}, ${line.venue}`,
      dueBack: formatDate(line.endsOn),
      days: formatRange(line.startsOn, line.endsOn),
      late: words.lent.late(said.daysLate),
    });
    return [{ key: `loan ${line.loanId}`, outcome: said.outcome, text, action: openLoan(line) }];
  });
}

/** What a donor's withdrawal, or an end of the consent, means for it; never whose it is. */
function consentThings({ provenance, lent }: Known): NextThing[] {
  const away = lent.find(isAway);
  const [donorCode] = provenance.donorCodes ?? [];
  const action = away
    ? openLoan(away)
    : donorCode !== undefined && (
        <Link className="act plain" href={`/donors/${donorCode}`}>
          {words.openDonor}
        </Link>
      );
  const things = new Map<string, NextThing>();
  for (const consent of provenance.consents ?? []) {
    const { state, endsOn } = consent.status;
    const ends = withdrawnFrom(consent) ?? endsOn;
    if (ends === null) continue;
    const day = formatDate(ends);
    const key = `${state} ${day}`;
    if (state === "withdrawn") {
      const text = away ? words.withdrawnAway(day) : words.withdrawnNext(day);
      things.set(key, { key, outcome: "bar", text, action });
    }
    if (state === "withdrawal received")
      things.set(key, { key, outcome: "attend", text: words.withdrawalComing(day), action });
    if (state === "expired")
      things.set(key, { key, outcome: "bar", text: words.consentExpired(day), action });
  }
  return [...things.values()];
}

export function thingsNext(known: Known): NextThing[] {
  const { viewer, specimen, provenance, checks, lent, today } = known;
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
  const missing: (NextThing | false | null | undefined)[] = [
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
  const things = [
    ...consentThings(known),
    ...lentThings(lent, today),
    ...missing.filter((thing): thing is NextThing => Boolean(thing)),
  ];
  return things.sort((one, other) => rank[one.outcome] - rank[other.outcome]);
}
