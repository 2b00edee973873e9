/** The checks of the specimen: the last one in full, the earlier ones as a list to open. */
import Link from "next/link";
import { CheckChanges } from "#app/_parts/check-changes.tsx";
import { checkMarks } from "#app/_parts/check-material.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { FindingsTable } from "#app/_parts/findings-table.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { SpecimenPlate } from "#app/_parts/specimen-plate.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { conditionLabels } from "#app/_words/en/condition-labels.ts";
import { checkBeside } from "#lib/condition/beside.ts";
import { compareChecks } from "#lib/condition/comparison.ts";
import { gradeWords } from "#lib/condition/grade.ts";
import type { CheckSheet } from "#lib/condition/queries.ts";
import { isFitTo, occasionNames, severityMeanings, verdictUses } from "#lib/condition/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";

/** "show, handle" or that it is fit for nothing. */
export function fitWords(check: CheckSheet): string {
  return verdictUses.filter((use) => isFitTo(use, check.verdict)).join(", ") || conditionLabels.fitForNothing;
}

export function ConditionSection({
  viewer,
  specimen,
  checks,
}: {
  viewer: Viewer;
  specimen: SpecimenSheet;
  checks: readonly CheckSheet[];
}) {
  const [last, ...earlier] = checks;
  const record = mayDo(viewer, "recordCheck") && (
    <Link className="act outline no-print" href={`/specimens/${specimen.id}/check`}>
      {words.recordCheck}
    </Link>
  );
  if (!last)
    return (
      <Section id="condition" title={words.condition}>
        <EmptyState action={record}>{words.noCheck}</EmptyState>
      </Section>
    );
  const beside = checkBeside(last, earlier);
  const comparison = beside && compareChecks(beside, last);
  return (
    <Section
      id="condition"
      title={words.condition}
      margin={
        <>
          <MarginNote
            outcome={last.grade === "D" ? "bar" : last.grade === "C" ? "attend" : "clear"}
            title={`${words.grade} ${last.grade}, ${gradeWords[last.grade]}`}
            source={conditionLabels.gradeSource}
          >
            {last.grounds}
          </MarginNote>
          {comparison && (
            <MarginNote
              title={`${conditionLabels.sinceCheck(beside.checkedOn)}:`}
              outcome={comparison.needsReview ? "attend" : undefined}
            >
              {conditionLabels.totals(comparison.totals)}
            </MarginNote>
          )}
        </>
      }
    >
      <div className="side-by-side">
        <SpecimenPlate
          specimen={specimen}
          marks={checkMarks(last.findings)}
          caption={conditionLabels.marksOf(last.checkedOn)}
        />
        <Facts
          facts={[
            [words.lastCheck, <DateText key="on" date={last.checkedOn} />],
            [words.occasion, occasionNames[last.occasion]],
            [
              words.checkedBy,
              last.witness
                ? `${last.checkedBy}; ${conditionLabels.witnessedBy} ${last.witness}`
                : `${last.checkedBy}; ${conditionLabels.oneSignature}`,
            ],
            [words.fit, fitWords(last)],
          ]}
        />
      </div>
      <FindingsTable findings={last.findings} />
      {comparison && (
        <CheckChanges comparison={comparison} caption={conditionLabels.sinceCheck(beside.checkedOn)} />
      )}
      <DataTable
        caption={conditionLabels.allChecks}
        rows={checks}
        rowKey={(check) => check.id}
        columns={[
          {
            key: "on",
            label: words.checkedOn,
            cell: (check) => (
              <Link href={`/specimens/${specimen.id}/check/${check.id}`}>
                <DateText date={check.checkedOn} />
              </Link>
            ),
          },
          { key: "occasion", label: words.occasion, cell: (check) => occasionNames[check.occasion] },
          { key: "by", label: words.checkedBy, cell: (check) => check.checkedBy },
          { key: "grade", label: words.grade, cell: (check) => `${check.grade}, ${gradeWords[check.grade]}` },
          {
            key: "findings",
            label: words.findings,
            right: true,
            cell: (check) => check.findings.filter((finding) => finding.severity !== "none").length,
          },
          { key: "fit", label: words.fit, cell: fitWords },
        ]}
      />
      {record}
      <p className="quiet small">{conditionLabels.severities(severityMeanings)}</p>
    </Section>
  );
}
