/** Drawing up a quotation: every line that can be asked for, with what the loan and the scale say of it. */
import type { Metadata } from "next";
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { TextField } from "#app/_parts/fields.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { moneyWords as words } from "#app/_words/en/money.ts";
import { treatmentWords } from "#app/_words/en/treatment.ts";
import { formatMoney } from "#app/_words/format.ts";
import { quote } from "#app/(signed-in)/loans/[id]/money/actions.ts";
import {
  Cell,
  ExchangeFields,
  NoteField,
  OtherLines,
} from "#app/(signed-in)/loans/[id]/money/further-fields.tsx";
import styles from "#app/(signed-in)/loans/[id]/money/money-form.module.css";
import {
  exchangeRows,
  type LineRow,
  lineRows,
  otherRows,
  withoutRow,
} from "#app/(signed-in)/loans/[id]/money/rows.ts";
import { readLoan } from "#app/(signed-in)/loans/[id]/read-loan.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { findMoney, findQuotationDraft } from "#lib/loans/queries/costings.ts";
import { authorise } from "#lib/people/permission.ts";
import { majorText } from "#lib/platform/money.ts";
import { notFound } from "#lib/platform/refusal.ts";

export const metadata: Metadata = { title: words.drawUp };

const field = (row: LineRow, name: string) => words.fieldOf(row.label, name);

function CountedLines({ rows, currency }: { rows: readonly LineRow[]; currency: string }) {
  return (
    <fieldset>
      <legend>{words.countedCaption}</legend>
      <DataTable
        caption={words.countedCaption}
        captionHidden
        rows={rows}
        rowKey={(row) => row.key}
        columns={[
          { key: "line", label: words.line, cell: (row) => row.label },
          {
            key: "quantity",
            label: words.quantity,
            cell: (row) =>
              row.line.price.kind === "counted" && (
                <Cell
                  name={`quantity-${row.key}`}
                  label={field(row, words.quantity)}
                  value={row.line.price.quantity}
                />
              ),
          },
          {
            key: "unit",
            label: words.unit,
            cell: (row) =>
              row.line.price.kind === "counted" && (
                <span className={styles.unit}>{words.units[row.line.price.unit]}</span>
              ),
          },
          {
            key: "rate",
            label: words.rateIn(currency),
            cell: (row) =>
              row.line.price.kind === "counted" && (
                <Cell
                  name={`rate-${row.key}`}
                  label={field(row, words.rate)}
                  value={majorText(row.line.price.rateMinor, row.line.currency)}
                />
              ),
          },
          {
            key: "tax",
            label: words.taxRate,
            cell: (row) => (
              <Cell name={`tax-${row.key}`} label={field(row, words.taxRate)} value={row.line.taxPercent} />
            ),
          },
        ]}
      />
    </fieldset>
  );
}

function ShareLines({ rows }: { rows: readonly LineRow[] }) {
  return (
    <fieldset>
      <legend>{words.sharesCaption}</legend>
      <DataTable
        caption={words.sharesCaption}
        captionHidden
        rows={rows}
        rowKey={(row) => row.key}
        columns={[
          { key: "line", label: words.line, cell: (row) => row.label },
          {
            key: "of",
            label: words.ofSum,
            cell: (row) =>
              row.line.price.kind === "share" && row.line.code !== "contingency"
                ? formatMoney({ minor: row.line.price.ofMinor, currency: row.line.currency })
                : words.expenses,
          },
          {
            key: "share",
            label: words.shareOf,
            cell: (row) =>
              row.line.price.kind === "share" && (
                <span className={styles.pair}>
                  <Cell
                    name={`share-${row.key}`}
                    label={field(row, words.shareOf)}
                    value={row.line.price.share}
                  />
                  <span className={styles.unit}>
                    {row.line.price.per === "cent" ? words.percent : words.perMille}
                  </span>
                </span>
              ),
          },
          {
            key: "times",
            label: words.times,
            cell: (row) =>
              row.line.price.kind === "share" &&
              row.line.price.unit !== "once" && (
                <span className={styles.pair}>
                  <Cell
                    name={`times-${row.key}`}
                    label={field(row, words.times)}
                    value={row.line.price.times}
                  />
                  <span className={styles.unit}>{words.units[row.line.price.unit]}</span>
                </span>
              ),
          },
          {
            key: "tax",
            label: words.taxRate,
            cell: (row) => (
              <Cell name={`tax-${row.key}`} label={field(row, words.taxRate)} value={row.line.taxPercent} />
            ),
          },
        ]}
      />
    </fieldset>
  );
}

export default async function QuotationPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/loans/${id}/money`);
  const { loan, money } = await orNotFound(async () => {
    const sheet = await readLoan(viewer, id);
    authorise(viewer, "drawUpQuotation", { institutionId: sheet.borrower.id });
    const found = await findMoney(viewer, id);
    if (!found || !statesBeforeRelease.includes(sheet.state)) throw notFound("costing");
    return { loan: sheet, money: found };
  });
  const draft = await findQuotationDraft(viewer, id);
  const before = money.quotations[0]?.content ?? null;
  const masthead = (
    <Masthead
      number={loan.number}
      title={before ? words.drawUpAgain : words.drawUp}
      latin={`${loan.borrower.name}, ${loan.venue.name}`}
      standing={<Link href={`/loans/${id}#money`}>{words.back}</Link>}
    />
  );
  if (!draft)
    return (
      <PlainPage>
        {masthead}
        <EmptyState>{words.noScale}</EmptyState>
      </PlainPage>
    );
  const { currency, taxPercent } = draft.scale;
  const rows = lineRows(draft.byScale, before);
  const foreign = [...new Set(draft.byScale.map((line) => line.currency))].filter((one) => one !== currency);
  return (
    <PlainPage>
      {masthead}
      <p>{words.pageAbout}</p>
      {draft.hasHuman && (
        <p>
          <b>{words.costRecovery}</b> {words.costRecoveryText}
        </p>
      )}
      {(loan.request.cover !== null || (loan.covers ?? []).length > 0) && (
        <p className="quiet">{words.coverOwn}</p>
      )}
      {before !== null && draft.treatmentHours !== "0" && (
        <p className="quiet">{treatmentWords.inQuotation(draft.treatmentHours)}</p>
      )}
      {draft.costsUnknown > 0 && <p className="quiet">{words.costsUnknown(draft.costsUnknown)}</p>}
      <ActForm action={quote.bind(null, id)} label={words.drawUp} button={words.drawUp}>
        <CountedLines rows={rows.filter(({ line }) => line.price.kind === "counted")} currency={currency} />
        <ShareLines rows={rows.filter(({ line }) => line.price.kind === "share")} />
        <OtherLines rows={otherRows(withoutRow(draft.byScale, before), currency, taxPercent.other)} />
        <ExchangeFields rows={exchangeRows(before?.exchange ?? [], foreign)} currency={currency} />
        <fieldset>
          <legend>{words.validity}</legend>
          <TextField
            label={words.validUntil}
            hint={words.validUntilHint}
            type="date"
            name="validUntil"
            defaultValue={draft.validUntil}
          />
          <NoteField value={before?.note ?? ""} />
        </fieldset>
        <p className="quiet small">{words.roundingText}</p>
        {before && <p className="quiet small">{words.drawUpAgainCaution}</p>}
      </ActForm>
    </PlainPage>
  );
}
