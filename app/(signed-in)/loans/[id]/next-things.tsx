/** What stands between now and the loan's next step, each with the place where the one act is done. */
import Link from "next/link";
import type { NextThing } from "#app/_parts/record-page.tsx";
import { actPlaces } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords } from "#app/_words/en/loan-road.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { NextStep } from "#lib/loans/next-step.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

/** Steps of one kind are told one by one up to here, then how many there are more. */
const mostOfOneKind = 4;

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

function signsFor(viewer: Viewer, { parameters }: NextStep): boolean {
  return parameters.party === undefined || parameters.party === (isBorrower(viewer) ? "borrower" : "lender");
}

function actionOf(step: NextStep, loan: LoanSheet, viewer: Viewer, isFirst: boolean) {
  const place = step.action === null ? undefined : actPlaces[step.action];
  const subject = { institutionId: loan.borrower.id };
  if (step.action === null || !place || !mayDo(viewer, step.action, subject) || !signsFor(viewer, step))
    return step.code === "next.attend" ? <a href="#suitability">{loanWords.sections.suitability}</a> : null;
  return (
    <Link className={isFirst ? "act" : "act plain"} href={addressOfStep(step, loan, viewer, place.section)}>
      {step.code === "next.check-home" ? roadWords.recordIncoming : place.label}
    </Link>
  );
}

export function nextThings(loan: LoanSheet, viewer: Viewer): NextThing[] {
  const told = new Map<string, number>();
  const things: NextThing[] = [];
  for (const [index, step] of loan.nextSteps.entries()) {
    const kind = `${step.code} ${step.outcome}`;
    const before = told.get(kind) ?? 0;
    told.set(kind, before + 1);
    if (before >= mostOfOneKind && step.code !== "next.gate") continue;
    things.push({
      key: `${index} ${step.code}`,
      outcome: step.outcome,
      text: sentence(step.code, step.parameters),
      action: actionOf(
        step,
        loan,
        viewer,
        things.every((thing) => !thing.action),
      ),
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
