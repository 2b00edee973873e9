/** What stands between now and the loan's next step, each with the place where the one act is done. */
import Link from "next/link";
import type { NextThing } from "#app/_parts/record-page.tsx";
import { actPlaces, nextWords, releaseWords } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords } from "#app/_words/en/loan-road.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { GateName } from "#lib/loans/gates.ts";
import type { NextStep } from "#lib/loans/next-step.ts";
import { officesOf, speaksFor } from "#lib/loans/offices.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { acts, mayDo } from "#lib/people/permission.ts";
import { borrowerRoles, isBorrower, type Role, type Viewer } from "#lib/people/viewer.ts";
import { offices } from "#lib/suitability/schema.ts";
import type { Office } from "#lib/suitability/suitability.ts";

/** Steps of one kind are told one by one up to here, then how many there are more. */
const mostOfOneKind = 4;

const isBorrowerRole = (role: Role) => (borrowerRoles as readonly Role[]).includes(role);
const slipStates: readonly LoanState[] = ["enquiry"];

/** Where an act is done: on the file itself, or on the slip while the loan is one. */
function addressOf(loan: LoanSheet, viewer: Viewer, section: string): string {
  if (section === "request" && slipStates.includes(loan.state))
    return isBorrower(viewer) ? "/slip" : `/loans/${loan.id}/request`;
  return `#${section}`;
}

/** A step about one specimen leads to that specimen. */
function addressOfStep(step: NextStep, loan: LoanSheet, viewer: Viewer, section: string): string {
  const line = loan.lines.find((one) => one.accessionNumber === step.parameters.specimen);
  if (line && step.code === "next.check-home") return `/loans/${loan.id}/check/${line.specimenId}`;
  if (line && step.code === "next.check-in") return `#home-${line.specimenId}`;
  return addressOf(loan, viewer, section);
}

/** Whose the step is, where its act is one of both sides: what is checked before it leaves is checked by the house. */
function partyOf({ code, action, parameters }: NextStep) {
  return code === "next.gate" && action === "recordCheck" ? "lender" : parameters.party;
}

function isOfSide(viewer: Viewer, step: NextStep): boolean {
  const party = partyOf(step);
  return party === undefined || party === (isBorrower(viewer) ? "borrower" : "lender");
}

/** The office whose word is missing, where the step is about one. */
const officeOf = ({ parameters }: NextStep): Office | null =>
  offices.find((office) => office === parameters.office) ?? null;

function mayAct(step: NextStep, loan: LoanSheet, viewer: Viewer): boolean {
  const subject = { institutionId: loan.borrower.id };
  if (step.action === null || !mayDo(viewer, step.action, subject)) return false;
  const office = officeOf(step);
  return isOfSide(viewer, step) && (office === null || officesOf(viewer).includes(office));
}

/** Whose turn it is when it is not the viewer's: the other side, or an office of the own one. */
function waitsFor(step: NextStep, viewer: Viewer): string | null {
  if (step.action === null) return null;
  const party = partyOf(step);
  const office = officeOf(step);
  const able = (office === null ? acts[step.action] : speaksFor[office]).filter(
    (role: Role) => party === undefined || isBorrowerRole(role) === (party === "borrower"),
  );
  const own = able.filter((role: Role) => isBorrowerRole(role) === isBorrower(viewer));
  if (own.length > 0)
    return nextWords.waitsForRoles(own.map((role) => nextWords.roles[role]).join(` ${nextWords.or} `));
  return isBorrower(viewer) ? nextWords.waitsForLender : nextWords.waitsForBorrower;
}

function actionOf(step: NextStep, loan: LoanSheet, viewer: Viewer, isFirst: boolean) {
  const place = step.action === null ? undefined : actPlaces[step.action];
  if (step.code === "next.attend") return <a href="#suitability">{loanWords.sections.suitability}</a>;
  if (!place || !mayAct(step, loan, viewer)) {
    const waits = waitsFor(step, viewer);
    return waits && <span className="quiet small">{waits}</span>;
  }
  return (
    <Link className={isFirst ? "act" : "act plain"} href={addressOfStep(step, loan, viewer, place.section)}>
      {step.code === "next.check-home" ? roadWords.recordIncoming : place.label}
    </Link>
  );
}

/** A gate whose facts are withheld says only that it does not hold. */
function textOf(step: NextStep): string {
  const { gate, fact } = step.parameters;
  if (step.code === "next.gate" && fact === "")
    return `${loanWords.gates[gate as GateName]}: ${releaseWords.holdsNot}.`;
  return sentence(step.code, step.parameters);
}

/** What the next step is, so that the box says what it leads to. */
export const nextTitle = (state: LoanState): string => nextWords.titles[state];

export function nextThings(loan: LoanSheet, viewer: Viewer): NextThing[] {
  const told = new Map<string, number>();
  const things: NextThing[] = [];
  // Who borrows reads first what is asked of it; the house, whose work is in order of the road, reads it as it comes.
  const steps = isBorrower(viewer)
    ? [...loan.nextSteps].sort(
        (one, other) => Number(mayAct(other, loan, viewer)) - Number(mayAct(one, loan, viewer)),
      )
    : loan.nextSteps;
  for (const [index, step] of steps.entries()) {
    const kind = `${step.code} ${step.outcome}`;
    const before = told.get(kind) ?? 0;
    told.set(kind, before + 1);
    if (before >= mostOfOneKind && step.code !== "next.gate") continue;
    const isFirst = !things.some((thing) => thing.key.startsWith("act "));
    things.push({
      key: `${mayAct(step, loan, viewer) ? "act " : ""}${index} ${step.code}`,
      outcome: step.outcome,
      text: textOf(step),
      action: actionOf(step, loan, viewer, isFirst),
    });
  }
  for (const [kind, count] of told) {
    const rest = count - mostOfOneKind;
    const first = loan.nextSteps.find((step) => `${step.code} ${step.outcome}` === kind);
    if (rest > 0 && first && first.code !== "next.gate")
      things.push({
        key: `more ${kind}`,
        outcome: first.outcome,
        text: loanWords.moreSteps(rest),
        action: actionOf(first, loan, viewer, false),
      });
  }
  return things;
}
