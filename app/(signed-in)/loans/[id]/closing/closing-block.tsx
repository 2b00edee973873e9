/** Towards the close: the customs discharge of a way that crossed a border, and what is still missing. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { closingWords as words } from "#app/_words/en/closing.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { countryName } from "#app/_words/readable.ts";
import { sentence } from "#app/_words/sentences.ts";
import { discharge } from "#app/(signed-in)/loans/[id]/closing/closing-actions.ts";
import { DischargeForm } from "#app/(signed-in)/loans/[id]/closing/discharge-form.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import type { StillMissing } from "#lib/loans/closing.ts";
import type { ClosingSheet } from "#lib/loans/queries/closing.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

function Customs({
  viewer,
  loanId,
  closing: { countries, discharges },
}: {
  viewer: Viewer;
  loanId: string;
  closing: ClosingSheet;
}) {
  return (
    <div className={styles.block} id="customs">
      <h3>{words.customs}</h3>
      <p>{words.customsAbout(countries.map(countryName).join(", "))}</p>
      <p className="quiet small">
        {words.why} {words.whySource}.
      </p>
      {discharges.length === 0 ? (
        <p className="quiet">{words.none}</p>
      ) : (
        <DataTable
          caption={words.caption}
          captionHidden
          dense
          rows={discharges}
          rowKey={({ id }) => id}
          columns={[
            {
              key: "day",
              label: words.dischargedOn,
              cell: ({ dischargedOn }) => <DateText date={dischargedOn} />,
            },
            { key: "office", label: words.office, cell: ({ office }) => office },
            { key: "reference", label: words.reference, cell: ({ reference }) => reference },
            { key: "note", label: words.note, cell: ({ note }) => note },
            { key: "by", label: words.by, cell: ({ recordedBy }) => recordedBy },
          ]}
        />
      )}
      {mayDo(viewer, "recordCustomsDischarge") && (
        <div className="no-print">
          <DischargeForm action={discharge.bind(null, loanId)} isAgain={discharges.length > 0} />
        </div>
      )}
    </div>
  );
}

function Missing({ missing }: { missing: readonly StillMissing[] }) {
  return (
    <div className={`no-print ${styles.block}`}>
      <h3>{words.title}</h3>
      {missing.length === 0 ? (
        <p className="quiet">{words.nothing}</p>
      ) : (
        <ul>
          {missing.map((one) => (
            <li key={`${one.code} ${JSON.stringify(one.parameters)}`}>
              <StateMark outcome={one.outcome}>{one.outcome === "bar" ? words.holds : words.told}</StateMark>{" "}
              {sentence(one.code, one.parameters)}{" "}
              <a href={`#${one.code === "close.not-discharged" ? "customs" : one.section}`}>
                {loanWords.sections[one.section]}
              </a>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

export function ClosingBlock({
  viewer,
  loan,
  closing,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  closing: ClosingSheet;
}) {
  return (
    <>
      {closing.countries.length > 0 && <Customs viewer={viewer} loanId={loan.id} closing={closing} />}
      {closing.missing !== null && <Missing missing={closing.missing} />}
    </>
  );
}
