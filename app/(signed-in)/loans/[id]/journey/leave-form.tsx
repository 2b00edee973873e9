/**
 * Taking one specimen off the loan. From a slip it goes at once and may be put
 * back; what was asked for is withdrawn for good, so what follows is shown first
 * and a second button does it. Both work without a script.
 */
import { ActForm } from "#app/_parts/act-form.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { takeOffLoan, withdrawLine } from "#app/(signed-in)/loans/[id]/actions.ts";
import { isLive } from "#lib/loans/loan-state.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";

type Line = LoanSheet["lines"][number];

/** What withdrawing this line does, in the order of harm. */
function consequences(loan: LoanSheet, line: Line): string[] {
  const isLast = loan.lines.filter((one) => isLive(one.state)).length === 1;
  const [newest] = loan.agreements;
  return [
    words.withdrawCaution,
    ...(line.state === "packed" ? [words.withdrawUnpacks] : []),
    ...(newest === undefined ? [] : [words.withdrawAfterAgreement(newest.version)]),
    ...(isLast ? [words.withdrawLast] : []),
  ];
}

export function LeaveForm({ loan, line }: { loan: LoanSheet; line: Line }) {
  const number = line.accessionNumber;
  if (line.state === "noted")
    return (
      <ActForm
        action={takeOffLoan.bind(null, loan.id, line.specimenId)}
        label={`${words.takeOff}: ${number}`}
        button={words.takeOff}
        look="plain"
      />
    );
  const label = words.withdrawOf(number);
  return (
    <details className="no-print">
      <summary>
        {words.withdraw}
        <span className="visually-hidden"> {number}</span>
      </summary>
      <ActForm
        action={withdrawLine.bind(null, loan.id, line.specimenId)}
        label={label}
        button={label}
        look="outline"
      >
        {consequences(loan, line).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </ActForm>
    </details>
  );
}
