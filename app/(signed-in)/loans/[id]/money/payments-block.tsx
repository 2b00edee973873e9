/** What was paid against what the loan costs, what is open, and the forms to enter a payment or put one off. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Money } from "#app/_parts/figures.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { paymentWords as words } from "#app/_words/en/payments.ts";
import { formatDate, formatMoney } from "#app/_words/format.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { enterPayment, putOff } from "#app/(signed-in)/loans/[id]/money/payment-actions.ts";
import { PaymentForm, PutOffForm } from "#app/(signed-in)/loans/[id]/money/payment-forms.tsx";
import { agreedPayment, balanceInput, paymentBalance } from "#lib/costing/payments.ts";
import { statesBeforeRelease, statesInPreparation } from "#lib/loans/loan-state.ts";
import type { MoneySheet } from "#lib/loans/queries/costings.ts";
import type { PaymentSheet } from "#lib/loans/queries/payments.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

/** What is owed now: for a loan that was called off its charge, else what it came to, else what was agreed. */
function owedNow({ payments }: MoneySheet, chargeMinor: number | null) {
  const { agreed, stated } = payments;
  if (agreed === null) return null;
  if (chargeMinor !== null)
    return { name: words.owed.cancellation, minor: chargeMinor, currency: agreed.currency };
  const { kind, version, minor, currency } = stated ?? agreed;
  return { name: words.owed[kind](version), minor, currency };
}

/** The balance with its steps; null where nothing was agreed. */
export function explainBalance(money: MoneySheet, chargeMinor: number | null) {
  const owed = owedNow(money, chargeMinor);
  return owed && paymentBalance.explain(balanceInput(owed, money.payments.payments));
}

function OpenMark({ openMinor, currency }: { openMinor: number; currency: string }) {
  if (openMinor === 0) return <StateMark outcome="clear">{words.settled}</StateMark>;
  const minor = Math.abs(openMinor);
  return (
    <StateMark outcome="attend">
      {openMinor < 0 ? words.owedBack(formatMoney({ minor, currency })) : formatMoney({ minor, currency })}
    </StateMark>
  );
}

function PaymentTable({ payments, isInside }: { payments: readonly PaymentSheet[]; isInside: boolean }) {
  return (
    <DataTable
      caption={words.caption}
      captionHidden
      dense
      rows={payments}
      rowKey={({ id }) => id}
      columns={[
        {
          key: "day",
          label: words.day,
          cell: ({ kind, day }) =>
            kind === "put off" ? words.until(formatDate(day)) : <DateText date={day} />,
        },
        { key: "kind", label: words.kind, cell: ({ kind }) => words.kinds[kind] },
        {
          key: "amount",
          label: words.amount,
          right: true,
          cell: ({ minor, currency }) => <Money money={{ minor, currency }} />,
        },
        { key: "reference", label: words.reference, cell: ({ reference }) => reference },
        {
          key: "note",
          label: words.note,
          // why the house waits for its money is the house's own
          cell: ({ kind, note }) => (kind === "put off" && !isInside ? "" : note),
        },
        { key: "by", label: words.enteredBy, cell: ({ enteredBy }) => enteredBy },
      ]}
    />
  );
}

export function PaymentsBlock({
  viewer,
  loan,
  money,
  chargeMinor,
  today,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  money: MoneySheet;
  /** Of a loan that was called off, what its cancellation costs. */
  chargeMinor: number | null;
  today: string;
}) {
  const owed = owedNow(money, chargeMinor);
  const balance = explainBalance(money, chargeMinor);
  if (owed === null || balance === null) return null;
  const { payments } = money.payments;
  const { receivedMinor, paidBackMinor, openMinor } = balance.output;
  const { currency } = owed;
  const agreed = agreedPayment(money.payments, today);
  const isWaiting = statesBeforeRelease.includes(loan.state) && agreed !== null && agreed.openMinor > 0;
  const mayPutOff = isWaiting && statesInPreparation.includes(loan.state) && mayDo(viewer, "putOffPayment");
  return (
    <div className={styles.block} id="payments">
      <h3>{words.title}</h3>
      <Facts
        facts={[
          [owed.name, <Money key="owed" money={{ minor: owed.minor, currency }} />],
          [words.received, <Money key="received" money={{ minor: receivedMinor, currency }} />],
          paidBackMinor > 0 && [
            words.paidBack,
            <Money key="back" money={{ minor: paidBackMinor, currency }} />,
          ],
          [words.open, <OpenMark key="open" openMinor={openMinor} currency={currency} />],
        ]}
      />
      {isWaiting && (
        <p className="quiet">
          {agreed.putOff === null
            ? words.waits
            : words.putOffUntil(formatDate(agreed.putOff.until), agreed.putOff.by)}
        </p>
      )}
      {payments.length === 0 ? (
        <p className="quiet">{words.none}</p>
      ) : (
        <PaymentTable payments={payments} isInside={!isBorrower(viewer)} />
      )}
      <div className="no-print">
        {mayDo(viewer, "recordPayment") && (
          <PaymentForm
            action={enterPayment.bind(null, loan.id, currency)}
            currency={currency}
            today={today}
          />
        )}
        {mayPutOff && <PutOffForm action={putOff.bind(null, loan.id)} />}
      </div>
    </div>
  );
}
