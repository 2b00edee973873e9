/** One specimen that came home: the check before it left beside the one after, the differences, the verdict. */
import Link from "next/link";
import { BeforeAfter } from "#app/_parts/before-after.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { extentWords } from "#app/_parts/findings-table.tsx";
import { SpecimenPicture } from "#app/_parts/specimen-plate.tsx";
import { type MarkTone, SeverityMark, StateMark } from "#app/_parts/state-mark.tsx";
import { conditionLabels } from "#app/_words/en/condition-labels.ts";
import { loanWords, toneOfLine } from "#app/_words/en/loan-pages.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { CheckSigned } from "#app/(signed-in)/loans/[id]/check/checks-on-loan.tsx";
import { CheckInForm } from "#app/(signed-in)/loans/[id]/journey/home-forms.tsx";
import { checkSpecimenIn } from "#app/(signed-in)/loans/[id]/journey/road-actions.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import type { MarkChange, MarkComparison } from "#lib/condition/comparison.ts";
import type { CheckSheet } from "#lib/condition/queries.ts";
import type { Finding } from "#lib/condition/schema.ts";
import { findingWord } from "#lib/condition/terms.ts";
import type { CheckInVerdict } from "#lib/loans/inputs.ts";
import type { LoanSpecimen } from "#lib/loans/queries/loan-specimens.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

const toneOfChange: Record<MarkChange, MarkTone> = {
  new: "bar",
  worse: "bar",
  same: "neutral",
  better: "clear",
  gone: "clear",
  "not-looked-at": "attend",
};

const toneOfVerdict: Record<CheckInVerdict, MarkTone> = {
  "no change": "clear",
  "change within wear": "clear",
  "needs treatment": "attend",
  damage: "bar",
};

/** Marks of a check by their numbers in it. */
function marksOf(check: CheckSheet) {
  return check.findings.flatMap((finding, index) =>
    finding.picturePoint && finding.severity !== "none"
      ? [{ number: index + 1, ...finding.picturePoint }]
      : [],
  );
}

function SeenAs({ finding }: { finding: Finding | null }) {
  if (!finding) return <span className="quiet">–</span>;
  const extent = extentWords(finding);
  return (
    <>
      <SeverityMark severity={finding.severity} />
      {extent && `, ${extent}`}
    </>
  );
}

function Differences({ marks }: { marks: readonly MarkComparison[] }) {
  return (
    <DataTable
      caption={words.differences}
      rows={marks}
      rowKey={(mark) => mark.markId}
      empty={<p>{words.noDifferences}</p>}
      columns={[
        {
          key: "mark",
          label: words.mark,
          cell: ({ before, after }) => {
            const finding = after ?? before;
            return finding && `${findingWord(finding.term)}, ${finding.place}`;
          },
        },
        {
          key: "change",
          label: words.change,
          cell: (mark) => (
            <>
              <StateMark outcome={toneOfChange[mark.change]}>{words.changes[mark.change]}</StateMark>{" "}
              <span className="quiet small">{conditionLabels.bothSaid(mark)}</span>
            </>
          ),
        },
        { key: "before", label: words.before, cell: ({ before }) => <SeenAs finding={before} /> },
        { key: "after", label: words.after, cell: ({ after }) => <SeenAs finding={after} /> },
      ]}
    />
  );
}

function Shots({ specimen, out, home }: { specimen: LoanSpecimen; out: CheckSheet; home: CheckSheet }) {
  const shot = (check: CheckSheet, title: string) => ({
    picture: <SpecimenPicture specimen={{ ...specimen, picture: null }} marks={marksOf(check)} />,
    caption: (
      <>
        {title}, <DateText date={check.checkedOn} />, {check.checkedBy}; {loanWords.grade} {check.grade}
      </>
    ),
  });
  return <BeforeAfter before={shot(out, words.outgoing)} after={shot(home, words.incoming)} />;
}

export function ReturnedSpecimen({
  viewer,
  loan,
  line,
  specimen,
  checked,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  line: LoanSheet["lines"][number];
  specimen: LoanSpecimen | undefined;
  /** The check that was just signed, as the address names it. */
  checked: string | undefined;
}) {
  const checks = line.checks;
  const isResting = line.state === "resting at home";
  const shots = specimen && checks?.out && checks.home && (
    <Shots specimen={specimen} out={checks.out} home={checks.home} />
  );
  return (
    <div className={styles.block} id={`home-${line.specimenId}`}>
      <h3>
        <Link className="mono" href={`/specimens/${line.specimenId}`}>
          {line.accessionNumber}
        </Link>{" "}
        {line.title}
      </h3>
      <p>
        <StateMark outcome={toneOfLine[line.state]}>{loanWords.lineStates[line.state]}</StateMark>
      </p>
      <CheckSigned lines={[line]} checkId={checked} isHome />
      {line.checkIn && (
        <p>
          {words.verdictOf}:{" "}
          <StateMark outcome={toneOfVerdict[line.checkIn.verdict]}>
            {words.verdicts[line.checkIn.verdict]}
          </StateMark>
          {line.checkIn.remark !== "" && <span className="quiet"> {line.checkIn.remark}</span>}
        </p>
      )}
      {checks && !checks.out && <p className="quiet">{words.noOutgoing}</p>}
      {checks && !checks.home && <p className="quiet">{words.noIncoming}</p>}
      {isResting || !shots ? (
        shots
      ) : (
        <details>
          <summary>{words.bothPictures}</summary>
          {shots}
        </details>
      )}
      {checks?.comparison && (
        <>
          <p>
            {words.differences}: {conditionLabels.totals(checks.comparison.totals)}.
          </p>
          {checks.comparison.needsReview && (
            <p>
              <StateMark outcome="attend">{words.needsReview}</StateMark>
            </p>
          )}
          <Differences marks={checks.comparison.marks} />
        </>
      )}
      {isResting && (
        <div className="no-print">
          {mayDo(viewer, "recordCheck") && (
            <p>
              <Link
                className={checks?.home ? "act plain" : "act"}
                href={`/loans/${loan.id}/check/${line.specimenId}`}
              >
                {words.recordIncoming}
                <span className="visually-hidden">: {line.accessionNumber}</span>
              </Link>
            </p>
          )}
          {checks?.home && checks.out && mayDo(viewer, "checkIn") && (
            <CheckInForm
              action={checkSpecimenIn.bind(null, loan.id, line.specimenId)}
              specimen={{ accessionNumber: line.accessionNumber }}
            />
          )}
        </div>
      )}
    </div>
  );
}
