/** Stating what a loan came to, line by line beside what was quoted. */
import type { Metadata } from "next";
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { moneyWords as words } from "#app/_words/en/money.ts";
import { formatMoney } from "#app/_words/format.ts";
import { stateCosts } from "#app/(signed-in)/loans/[id]/money/actions.ts";
import {
  Cell,
  ExchangeFields,
  NoteField,
  OtherLines,
} from "#app/(signed-in)/loans/[id]/money/further-fields.tsx";
import { exchangeRows, otherRows } from "#app/(signed-in)/loans/[id]/money/rows.ts";
import { beyondQuoted, statementRows } from "#app/(signed-in)/loans/[id]/money/statement-rows.ts";
import { readLoan } from "#app/(signed-in)/loans/[id]/read-loan.ts";
import { findMoney } from "#lib/loans/queries/costings.ts";
import { authorise } from "#lib/people/permission.ts";
import { majorText } from "#lib/platform/money.ts";
import { notFound } from "#lib/platform/refusal.ts";

export const metadata: Metadata = { title: words.drawUpStatement };

export default async function CostStatementPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/loans/${id}/money/statement`);
  const { loan, money, accepted } = await orNotFound(async () => {
    const sheet = await readLoan(viewer, id);
    authorise(viewer, "drawUpCostStatement", { institutionId: sheet.borrower.id });
    const found = await findMoney(viewer, id);
    if (!found?.accepted) throw notFound("costing");
    return { loan: sheet, money: found, accepted: found.accepted };
  });
  const { currency, lines, costRecovery } = accepted.content;
  const rows = statementRows(money).map((row, index) => ({ ...row, quoted: lines[index]?.netMinor ?? 0 }));
  const tax = lines.find(({ code }) => code === "other")?.taxPercent ?? lines[0]?.taxPercent ?? "0";
  return (
    <PlainPage>
      <Masthead
        number={loan.number}
        title={words.drawUpStatement}
        latin={`${loan.borrower.name}, ${words.quotation(accepted.version)}`}
        standing={<Link href={`/loans/${id}#money`}>{words.back}</Link>}
      />
      <p>{words.statementAbout}</p>
      {costRecovery && (
        <p>
          <b>{words.costRecovery}</b> {words.costRecoveryText}
        </p>
      )}
      <ActForm
        action={stateCosts.bind(null, id)}
        label={words.drawUpStatement}
        button={words.drawUpStatement}
      >
        <fieldset>
          <legend>{words.statementCaption}</legend>
          <DataTable
            caption={words.statementCaption}
            captionHidden
            rows={rows}
            rowKey={(row) => row.key}
            columns={[
              { key: "line", label: words.line, cell: (row) => row.label },
              {
                key: "quoted",
                label: words.quoted,
                right: true,
                cell: (row) => formatMoney({ minor: row.quoted, currency }),
              },
              {
                key: "actual",
                label: words.actual,
                cell: (row) =>
                  row.line.price.kind === "stated" && (
                    <Cell
                      name={`amount-${row.key}`}
                      label={words.fieldOf(row.label, words.actual)}
                      value={majorText(row.line.price.minor, currency)}
                    />
                  ),
              },
              {
                key: "tax",
                label: words.taxRate,
                cell: (row) => (
                  <Cell
                    name={`tax-${row.key}`}
                    label={words.fieldOf(row.label, words.taxRate)}
                    value={row.line.taxPercent}
                  />
                ),
              },
            ]}
          />
        </fieldset>
        <OtherLines rows={otherRows(beyondQuoted(money), currency, tax)} />
        <ExchangeFields
          rows={exchangeRows(money.statements[0]?.content.exchange ?? [], [])}
          currency={currency}
        />
        <NoteField value={money.statements[0]?.content.note ?? ""} />
        <p className="quiet small">{words.roundingText}</p>
      </ActForm>
    </PlainPage>
  );
}
