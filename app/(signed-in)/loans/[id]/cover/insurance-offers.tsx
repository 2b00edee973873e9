/** Insurance that the borrower holds, offered as a certificate of this loan with one act. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { formatMoney, formatRange } from "#app/_words/format.ts";
import { saveCover } from "#app/(signed-in)/loans/[id]/actions.ts";
import { offersFor } from "#app/(signed-in)/loans/[id]/cover/offered-cover.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { InsuranceSheet } from "#lib/people/queries/facility.ts";
import { majorText } from "#lib/platform/money.ts";

export function InsuranceOffers({
  loan,
  insurances,
}: {
  loan: LoanSheet;
  insurances: readonly InsuranceSheet[];
}) {
  const days = { startsOn: loan.busy.startsOn, endsOn: loan.busy.endsOn };
  const offers = offersFor(insurances, days, loan.covers ?? []);
  if (offers.length === 0) return null;
  return (
    <details className="no-print" open={(loan.covers ?? []).length === 0}>
      <summary>{words.offered}</summary>
      <p>{words.offeredAbout}</p>
      {offers.map(({ insurance, firstDay, lastDay, until }) => (
        <ActForm
          key={insurance.id}
          action={saveCover.bind(null, loan.id)}
          label={words.takeForLoanOf(insurance.policyNumber)}
          button={words.takeForLoanOf(insurance.policyNumber)}
          look="outline"
        >
          <p>
            {insurance.insurer}, <span className="mono">{insurance.policyNumber}</span>,{" "}
            {formatMoney(insurance)}, {formatRange(firstDay, until)}, {insurance.territories.join(", ")}
          </p>
          <input type="hidden" name="insurer" value={insurance.insurer} />
          <input type="hidden" name="policyNumber" value={insurance.policyNumber} />
          <input type="hidden" name="minor" value={majorText(insurance.minor, insurance.currency)} />
          <input type="hidden" name="currency" value={insurance.currency} />
          <input type="hidden" name="firstDay" value={firstDay} />
          <input type="hidden" name="lastDay" value={lastDay} />
          <input type="hidden" name="territories" value={insurance.territories.join(", ")} />
          <input type="hidden" name="coversStay" value="yes" />
          {insurance.coversTransit && <input type="hidden" name="coversTransit" value="yes" />}
        </ActForm>
      ))}
    </details>
  );
}
