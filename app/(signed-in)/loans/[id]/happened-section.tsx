/** What happened to the loan and everything on it, the newest first. */
import { Happened } from "#app/_parts/happened.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { rowsOfLoan } from "#app/(signed-in)/loans/[id]/loan-rows.ts";
import { happenedTo } from "#lib/desk/queries/happened.ts";
import { listDischargeKeys } from "#lib/loans/queries/closing.ts";
import { listCostingKeys, listPaymentKeys } from "#lib/loans/queries/costings.ts";
import { listCoversTakenBack } from "#lib/loans/queries/covers-taken-back.ts";
import { listTariffKeys } from "#lib/loans/queries/tariff-codes.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export async function HappenedSection({
  viewer,
  loan,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  fold?: string | undefined;
}) {
  const costings = await listCostingKeys(viewer, loan.id);
  const payments = await listPaymentKeys(viewer, loan.id);
  const discharges = await listDischargeKeys(viewer, loan.id);
  const tariffs = await listTariffKeys(viewer, loan.id);
  const entries = await happenedTo(viewer, [
    ...rowsOfLoan(loan, await listCoversTakenBack(viewer, loan.id)),
    ...costings.flatMap((key) => [
      { table: "costing" as const, key },
      { table: "costing_answer" as const, key },
    ]),
    ...payments.map((key) => ({ table: "payment" as const, key })),
    ...discharges.map((key) => ({ table: "customs_discharge" as const, key })),
    ...tariffs.map((key) => ({ table: "tariff_code" as const, key })),
  ]);
  return (
    <Section id="happened" title={words.sections.happened} fold={fold}>
      <Happened entries={entries} />
    </Section>
  );
}
