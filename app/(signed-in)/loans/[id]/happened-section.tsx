/** What happened to the loan and everything on it, the newest first. */
import { Happened } from "#app/_parts/happened.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { rowsOfLoan } from "#app/(signed-in)/loans/[id]/loan-rows.ts";
import { happenedTo } from "#lib/desk/queries/happened.ts";
import { listCostingKeys } from "#lib/loans/queries/costings.ts";
import { listCoversTakenBack } from "#lib/loans/queries/covers-taken-back.ts";
import { listTariffKeys } from "#lib/loans/queries/tariff-codes.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export async function HappenedSection({ viewer, loan }: { viewer: Viewer; loan: LoanSheet }) {
  const costings = await listCostingKeys(viewer, loan.id);
  const tariffs = await listTariffKeys(viewer, loan.id);
  const entries = await happenedTo(viewer, [
    ...rowsOfLoan(loan, await listCoversTakenBack(viewer, loan.id)),
    ...costings.flatMap((key) => [
      { table: "costing" as const, key },
      { table: "costing_answer" as const, key },
    ]),
    ...tariffs.map((key) => ({ table: "tariff_code" as const, key })),
  ]);
  return (
    <Section id="happened" title={words.sections.happened}>
      <Happened entries={entries} />
    </Section>
  );
}
