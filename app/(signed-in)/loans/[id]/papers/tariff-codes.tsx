/** The tariff codes of each stage that leaves the country: what is decided, by whom, and what is open. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { FieldGrid, SelectField, TextField } from "#app/_parts/fields.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { roadWords } from "#app/_words/en/loan-road.ts";
import { tariffWords as words } from "#app/_words/en/tariff.ts";
import { numbersInWords } from "#app/_words/number-range.ts";
import { countryName } from "#app/_words/readable.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { decideCode } from "#app/(signed-in)/loans/[id]/papers/tariff-actions.ts";
import { type TariffSheet, tariffCodesOf } from "#lib/loans/queries/tariff-codes.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { offeredHeadings } from "#lib/loans/tariff.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

const numbersOf = (specimens: readonly { accessionNumber: string }[]) =>
  numbersInWords(specimens.map(({ accessionNumber }) => accessionNumber));

type Row = TariffSheet["decisions"][number] | TariffSheet["open"][number];
const isDecided = (row: Row): row is TariffSheet["decisions"][number] => "code" in row;

function Codes({ sheet }: { sheet: TariffSheet }) {
  return (
    <DataTable
      caption={words.caption(roadWords[sheet.direction])}
      captionHidden
      dense
      rows={[...sheet.decisions, ...sheet.open] as Row[]}
      rowKey={(row) => JSON.stringify([row.countryCode, isDecided(row) && row, numbersOf(row.specimens)])}
      columns={[
        { key: "country", label: words.country, cell: (row) => countryName(row.countryCode) },
        {
          key: "code",
          label: words.code,
          cell: (row) =>
            isDecided(row) ? (
              <span className="mono">{row.code}</span>
            ) : (
              <StateMark outcome="attend">{words.open}</StateMark>
            ),
        },
        { key: "for", label: words.specimens, cell: (row) => numbersOf(row.specimens) },
        { key: "by", label: words.decidedBy, cell: (row) => (isDecided(row) ? row.decidedBy : "") },
        {
          key: "on",
          label: words.decidedOn,
          cell: (row) => (isDecided(row) ? <DateText date={row.decidedOn} /> : ""),
        },
        { key: "note", label: words.note, cell: (row) => (isDecided(row) ? row.note : "") },
      ]}
    />
  );
}

function DecideForm({ loanId, sheet }: { loanId: string; sheet: TariffSheet }) {
  const label = words.decideOn(roadWords[sheet.direction]);
  const of = (name: string) => ({ id: `tariff-${sheet.direction}-${name}`, name });
  const list = `tariff-${sheet.direction}-headings`;
  const { open, human, animal, all } = words.groups;
  const groups: [string, string][] = [
    ["open", open],
    ...(sheet.specimens.some((one) => one.human) && sheet.specimens.some((one) => !one.human)
      ? ([
          ["human", human],
          ["animal", animal],
        ] satisfies [string, string][])
      : []),
    ["all", all],
  ];
  return (
    <details>
      <summary>{label}</summary>
      <ActForm
        action={decideCode.bind(null, loanId, sheet.stageId)}
        label={label}
        button={words.decide}
        look="outline"
      >
        <datalist id={list}>
          {offeredHeadings.map((heading) => (
            <option key={heading} value={heading}>
              {words.headings[heading]}
            </option>
          ))}
        </datalist>
        <FieldGrid>
          <SelectField
            label={words.country}
            {...of("countryCode")}
            options={sheet.countries.map((code) => [code, countryName(code)])}
          />
          <TextField
            label={words.code}
            hint={
              <>
                {words.codeHint}
                {offeredHeadings.map((heading) => ` ${heading}: ${words.headings[heading]}.`)}
              </>
            }
            {...of("code")}
            list={list}
            autoComplete="off"
            required
          />
          <SelectField
            label={words.specimens}
            {...of("which")}
            options={[
              ...groups,
              ...sheet.specimens.map(({ id, accessionNumber }): [string, string] => [id, accessionNumber]),
            ]}
          />
          <TextField
            label={words.decidedBy}
            hint={words.decidedByHint}
            {...of("decidedBy")}
            maxLength={160}
            required
          />
          <TextField label={words.decidedOn} type="date" {...of("decidedOn")} required />
          <TextField label={words.note} {...of("note")} maxLength={500} />
        </FieldGrid>
      </ActForm>
    </details>
  );
}

export async function TariffCodes({ viewer, loan }: { viewer: Viewer; loan: LoanSheet }) {
  const sheets = loan.stages.length === 0 ? [] : await tariffCodesOf(viewer, loan.id);
  const decides =
    mayDo(viewer, "decideTariffCode") && !["closed", "declined", "withdrawn"].includes(loan.state);
  return sheets.map((sheet) => (
    <div key={sheet.stageId} className={styles.block}>
      <h3>{words.title(roadWords[sheet.direction])}</h3>
      <p className="quiet small">{words.about}</p>
      <Codes sheet={sheet} />
      {decides && (
        <div className="no-print">
          <DecideForm loanId={loan.id} sheet={sheet} />
        </div>
      )}
    </div>
  ));
}
