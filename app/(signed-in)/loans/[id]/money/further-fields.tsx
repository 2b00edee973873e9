/** What both forms of money end with: lines in the writer's own words, rates of exchange, a note. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { TextAreaField } from "#app/_parts/fields.tsx";
import { moneyWords as words } from "#app/_words/en/money.ts";
import styles from "#app/(signed-in)/loans/[id]/money/money-form.module.css";
import type { ExchangeRow, OtherRow } from "#app/(signed-in)/loans/[id]/money/rows.ts";

/** A field in a row of a table, named for who does not see the table. */
export function Cell({
  name,
  label,
  value,
  type = "text",
  wide = false,
}: {
  name: string;
  label: string;
  value: string;
  type?: "text" | "date";
  wide?: boolean;
}) {
  return (
    <input
      type={type}
      name={name}
      aria-label={label}
      defaultValue={value}
      inputMode={type === "text" && !wide ? "decimal" : undefined}
      autoComplete="off"
      className={wide ? styles.wide : styles.cell}
    />
  );
}

export function OtherLines({ rows }: { rows: readonly OtherRow[] }) {
  const label = (row: OtherRow, field: string) =>
    words.fieldOf(words.rowOf(words.lines.other, Number(row.key) + 1), field);
  return (
    <fieldset>
      <legend>{words.othersCaption}</legend>
      <DataTable
        caption={words.othersCaption}
        captionHidden
        rows={rows}
        rowKey={(row) => row.key}
        columns={[
          {
            key: "text",
            label: words.text,
            cell: (row) => (
              <Cell name={`other-text-${row.key}`} label={label(row, words.text)} value={row.text} wide />
            ),
          },
          {
            key: "amount",
            label: words.amount,
            cell: (row) => (
              <Cell name={`other-amount-${row.key}`} label={label(row, words.amount)} value={row.amount} />
            ),
          },
          {
            key: "currency",
            label: words.currency,
            cell: (row) => (
              <input
                name={`other-currency-${row.key}`}
                aria-label={label(row, words.currency)}
                defaultValue={row.currency}
                autoCapitalize="characters"
                className={styles.cell}
              />
            ),
          },
          {
            key: "tax",
            label: words.taxRate,
            cell: (row) => (
              <Cell name={`other-tax-${row.key}`} label={label(row, words.taxRate)} value={row.tax} />
            ),
          },
        ]}
      />
    </fieldset>
  );
}

export function ExchangeFields({ rows, currency }: { rows: readonly ExchangeRow[]; currency: string }) {
  const label = (row: ExchangeRow, field: string) =>
    words.fieldOf(words.rowOf(words.exchange, Number(row.key) + 1), field);
  return (
    <fieldset>
      <legend>{words.exchange}</legend>
      <p className="quiet small">{words.exchangeAbout}</p>
      <DataTable
        caption={words.exchange}
        captionHidden
        rows={rows}
        rowKey={(row) => row.key}
        columns={[
          {
            key: "from",
            label: words.exchangeFrom,
            cell: (row) => (
              <input
                name={`exchange-from-${row.key}`}
                aria-label={label(row, words.exchangeFrom)}
                defaultValue={row.from}
                autoCapitalize="characters"
                className={styles.cell}
              />
            ),
          },
          {
            key: "rate",
            label: `${words.exchangeRate}, ${words.exchangeTo(currency)}`,
            cell: (row) => (
              <Cell
                name={`exchange-rate-${row.key}`}
                label={label(row, words.exchangeRate)}
                value={row.rate}
              />
            ),
          },
          {
            key: "on",
            label: words.exchangeOn,
            cell: (row) => (
              <Cell
                name={`exchange-on-${row.key}`}
                label={label(row, words.exchangeOn)}
                value={row.on}
                type="date"
              />
            ),
          },
        ]}
      />
    </fieldset>
  );
}

export function NoteField({ value }: { value: string }) {
  return <TextAreaField label={words.note} hint={words.noteHint} name="note" defaultValue={value} />;
}
