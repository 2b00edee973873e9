/** What the loan costs: the quotations with their answers, what it came to, what calling it off costs. */
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Money } from "#app/_parts/figures.tsx";
import { MarginNote, Section, WorkingNote } from "#app/_parts/record-page.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { moneyWords as words } from "#app/_words/en/money.ts";
import { paymentWords } from "#app/_words/en/payments.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { answer } from "#app/(signed-in)/loans/[id]/money/actions.ts";
import { AnswerForm } from "#app/(signed-in)/loans/[id]/money/answer-form.tsx";
import { CostingPaper } from "#app/(signed-in)/loans/[id]/money/costing-paper.tsx";
import { explainBalance, PaymentsBlock } from "#app/(signed-in)/loans/[id]/money/payments-block.tsx";
import { cancellationCharge } from "#lib/costing/cancellation.ts";
import { loanCosting } from "#lib/costing/costing.ts";
import { draftOfLine } from "#lib/costing/lines.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import type { CostingSheet, MoneySheet } from "#lib/loans/queries/costings.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

const quotable: readonly LoanState[] = statesBeforeRelease.filter(
  (state) => state !== "enquiry" && state !== "requested",
);

/** Whether the loan has come to its money: decided, or quoted already. */
export function hasMoney(loan: LoanSheet, money: MoneySheet | null): money is MoneySheet {
  if (money === null) return false;
  return quotable.includes(loan.state) || money.quotations.length > 0;
}

function explain({ content }: CostingSheet) {
  const { currency, lines, exchange } = content;
  return loanCosting.explain({ currency, lines: lines.map(draftOfLine), exchange });
}

/** What a cancellation came to, or would today; null where none is possible or none is due. */
function cancellationOf(money: MoneySheet, loan: LoanSheet, today: string) {
  const cancelledOn = money.calledOffOn ?? (quotable.includes(loan.state) ? today : null);
  if (!money.accepted || cancelledOn === null) return null;
  const { totalMinor, currency, cancellation } = money.accepted.content;
  return cancellationCharge.explain({
    totalMinor,
    currency,
    scale: cancellation,
    dispatchOn: money.dispatchOn,
    cancelledOn,
  });
}

function Cancellation({ money, charge }: { money: MoneySheet; charge: ReturnType<typeof cancellationOf> }) {
  const paper = (money.accepted ?? money.quotations[0])?.content;
  if (!paper) return null;
  const { currency, cancellation } = paper;
  return (
    <div className={styles.block}>
      <h3>{words.cancellation}</h3>
      <p className="quiet">{words.cancellationAbout}</p>
      <DataTable
        caption={words.cancellationCaption}
        captionHidden
        rows={cancellation}
        rowKey={(step) => String(step.daysBefore)}
        columns={[
          { key: "days", label: words.daysLeft, cell: (step) => words.daysOrFewer(step.daysBefore) },
          { key: "share", label: words.share, right: true, cell: (step) => `${step.percent} %` },
        ]}
      />
      <Facts
        facts={[
          [words.dispatchOn, <DateText key="dispatch" date={money.dispatchOn} />],
          money.calledOffOn !== null && [words.calledOff, <DateText key="off" date={money.calledOffOn} />],
          charge !== null && [
            money.calledOffOn === null ? words.chargeToday : words.calledOffCharge,
            <b key="charge">
              <Money money={{ minor: charge.output.chargeMinor, currency }} />
            </b>,
          ],
        ]}
      />
      {money.calledOffOn !== null && !money.accepted && <p>{words.notAccepted}</p>}
    </div>
  );
}

function emptyWords(loan: LoanSheet, viewer: Viewer): string {
  if (isBorrower(viewer)) return words.noneYet;
  return quotable.includes(loan.state) ? words.none : words.waitsForDecision;
}

export function MoneySection({
  viewer,
  loan,
  money,
  today,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  money: MoneySheet;
  today: string;
}) {
  const { quotations, statements, accepted } = money;
  const [newest, ...earlier] = quotations;
  const [statement, ...earlierStatements] = statements;
  const subject = { institutionId: loan.borrower.id };
  const mayQuote = quotable.includes(loan.state) && mayDo(viewer, "drawUpQuotation", subject);
  const mayState = accepted !== null && mayDo(viewer, "drawUpCostStatement", subject);
  const ended: readonly LoanState[] = ["closed", "declined", "withdrawn"];
  const mayAnswer =
    newest?.state === "open" && !ended.includes(loan.state) && mayDo(viewer, "answerQuotation", subject);
  const charge = cancellationOf(money, loan, today);
  const chargeMinor = money.calledOffOn === null ? null : (charge?.output.chargeMinor ?? 0);
  const balance = explainBalance(money, chargeMinor);
  return (
    <Section
      id="money"
      title={loanWords.sections.money}
      margin={
        newest && (
          <>
            {newest.content.costRecovery && (
              <MarginNote title={words.costRecovery}>{words.costRecoveryText}</MarginNote>
            )}
            <MarginNote title={words.rounding} source={words.scaleOf(newest.content.feeScaleVersion)}>
              {words.roundingText}
            </MarginNote>
            <WorkingNote title={words.working} working={explain(statement ?? newest)} />
            {balance && <WorkingNote title={paymentWords.working} working={balance} />}
            {charge && <WorkingNote title={words.cancellationWorking} working={charge} />}
          </>
        )
      }
    >
      {!newest && <EmptyState>{emptyWords(loan, viewer)}</EmptyState>}
      {statement && <CostingPaper sheet={statement} before={earlierStatements[0]} />}
      {newest && <CostingPaper sheet={newest} before={earlier[0]} />}
      {mayAnswer && (
        <div className={`no-print ${styles.block}`}>
          <AnswerForm
            action={answer.bind(null, loan.id, newest.id, newest.sha256)}
            version={newest.version}
          />
        </div>
      )}
      {(mayQuote || mayState) && (
        <p className={`no-print ${styles.row}`}>
          {mayQuote && (
            <Link className={newest ? "act outline" : "act"} href={`/loans/${loan.id}/money`}>
              {newest ? words.drawUpAgain : words.drawUp}
            </Link>
          )}
          {mayState && (
            <Link className="act outline" href={`/loans/${loan.id}/money/statement`}>
              {statement ? words.drawUpStatementAgain : words.drawUpStatement}
            </Link>
          )}
        </p>
      )}
      {accepted && (
        <PaymentsBlock viewer={viewer} loan={loan} money={money} chargeMinor={chargeMinor} today={today} />
      )}
      {earlier.length + earlierStatements.length > 0 && (
        <details>
          <summary>{words.earlier(earlier.length + earlierStatements.length)}</summary>
          {[...earlierStatements, ...earlier].map((sheet) => (
            <CostingPaper
              key={sheet.id}
              sheet={sheet}
              before={(sheet.kind === "quotation" ? quotations : statements).find(
                (one) => one.version === sheet.version - 1,
              )}
            />
          ))}
        </details>
      )}
      {(charge !== null || money.calledOffOn !== null) && <Cancellation money={money} charge={charge} />}
    </Section>
  );
}
