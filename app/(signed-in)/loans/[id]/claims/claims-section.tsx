/** Claims after harm or loss: each with its steps, and the next one to write down. They outlive the close. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { claimWords as words } from "#app/_words/en/claims.ts";
import { formatMoney } from "#app/_words/format.ts";
import { open, recordStep } from "#app/(signed-in)/loans/[id]/claims/claim-actions.ts";
import { ClaimStepForm, OpenClaimForm } from "#app/(signed-in)/loans/[id]/claims/claim-forms.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { nextClaimEvents } from "#lib/loans/claims.ts";
import type { ClaimSheet } from "#lib/loans/queries/claims.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

function Claim({
  loanId,
  claim,
  mayWrite,
  currency,
}: {
  loanId: string;
  claim: ClaimSheet;
  mayWrite: boolean;
  currency: string;
}) {
  const next = nextClaimEvents(claim.state);
  return (
    <div className={styles.block}>
      <h3>
        <span className="mono">{claim.number}</span>, <span className="mono">{claim.accessionNumber}</span>{" "}
        <StateMark outcome={claim.isOpen ? "attend" : "clear"}>{words.kinds[claim.state]}</StateMark>
      </h3>
      <DataTable
        caption={words.history(claim.number)}
        captionHidden
        dense
        rows={claim.events}
        rowKey={(event) => `${event.kind} ${event.at}`}
        columns={[
          { key: "when", label: words.when, cell: ({ at }) => <Moment at={at} /> },
          { key: "what", label: words.what, cell: ({ kind }) => words.kinds[kind] },
          {
            key: "amount",
            label: words.amount,
            cell: ({ amount }) => (amount === null ? "" : formatMoney(amount)),
          },
          { key: "by", label: words.by, cell: ({ by }) => by },
          { key: "note", label: words.remark, cell: ({ note }) => note },
        ]}
      />
      {mayWrite && next.length > 0 && (
        <div className="no-print">
          <ClaimStepForm
            action={recordStep.bind(null, loanId, claim.id)}
            number={claim.number}
            kinds={next}
            currency={currency}
          />
        </div>
      )}
    </div>
  );
}

export function ClaimsSection({
  viewer,
  loan,
  claims,
  currency,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  claims: readonly ClaimSheet[];
  currency: string;
}) {
  const mayWrite = mayDo(viewer, "recordClaimEvent");
  const without = loan.lines.filter(
    ({ specimenId }) => !claims.some((claim) => claim.isOpen && claim.specimenId === specimenId),
  );
  return (
    <Section
      id="claims"
      title={words.section}
      margin={claims.length > 0 && <MarginNote title={words.section}>{words.about}</MarginNote>}
    >
      {claims.length === 0 && <p className="quiet">{words.none}</p>}
      {claims.map((claim) => (
        <Claim key={claim.id} loanId={loan.id} claim={claim} mayWrite={mayWrite} currency={currency} />
      ))}
      {mayWrite && without.length > 0 && (
        <div className="no-print">
          <OpenClaimForm action={open.bind(null, loan.id)} specimens={without} />
        </div>
      )}
    </Section>
  );
}
