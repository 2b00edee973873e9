/** One check as it was recorded, beside the one before it: what was seen, what has changed, and on what grounds. */
import type { Metadata } from "next";
import Link from "next/link";
import { BeforeAfter } from "#app/_parts/before-after.tsx";
import { CheckChanges } from "#app/_parts/check-changes.tsx";
import styles from "#app/_parts/check-form.module.css";
import { checkMarks } from "#app/_parts/check-material.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { FindingsTable } from "#app/_parts/findings-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Masthead, PlainPage, Section } from "#app/_parts/record-page.tsx";
import { SpecimenPicture, SpecimenPlate } from "#app/_parts/specimen-plate.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { fitWords } from "#app/(signed-in)/specimens/[id]/condition-section.tsx";
import { gradeWords } from "#lib/condition/grade.ts";
import { type CheckSheet, getCheck } from "#lib/condition/queries.ts";
import { occasionNames, severityMeanings } from "#lib/condition/schema.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";

export const metadata: Metadata = { title: labels.title };

type Props = { params: Promise<{ id: string; checkId: string }> };

export default async function RecordedCheckPage({ params }: Props) {
  const { id, checkId } = await params;
  const viewer = await requireViewer(`/specimens/${id}/check/${checkId}`);
  const { specimen, check, beside, comparison } = await orNotFound(async () => {
    const shown = await getCheck(viewer, checkId);
    if (shown.check.specimenId !== id) throw notFound("check");
    return { specimen: await getSpecimen(viewer, id), ...shown };
  });
  const drawn = { ...specimen, picture: null };
  const shot = (one: CheckSheet) => ({
    picture: <SpecimenPicture specimen={drawn} marks={checkMarks(one.findings)} />,
    caption: labels.marksOf(one.checkedOn),
  });
  return (
    <PlainPage>
      <Masthead
        number={specimen.accessionNumber}
        title={specimen.title}
        latin={labels.checkOf(check.checkedOn)}
        standing={
          <p>
            <Link href={`/specimens/${id}#condition`}>{labels.backToSpecimen}</Link>
          </p>
        }
      />
      <div className={styles.plates}>
        {beside ? (
          <BeforeAfter before={shot(beside)} after={shot(check)} />
        ) : (
          <SpecimenPlate
            specimen={drawn}
            marks={checkMarks(check.findings)}
            caption={labels.marksOf(check.checkedOn)}
          />
        )}
      </div>
      <Section
        id="seen"
        title={labels.findings}
        margin={
          <>
            <MarginNote
              outcome={check.grade === "D" ? "bar" : check.grade === "C" ? "attend" : "clear"}
              title={`${words.grade} ${check.grade}, ${gradeWords[check.grade]}`}
              source={labels.gradeSource}
            />
            {comparison && (
              <MarginNote
                title={`${labels.sinceCheck(beside?.checkedOn ?? "")}:`}
                outcome={comparison.needsReview ? "attend" : undefined}
              >
                {labels.totals(comparison.totals)}
              </MarginNote>
            )}
            <MarginNote title={labels.fixed}>
              {labels.recorded} <Moment at={check.recordedAt} long />. {labels.neverChanged}
            </MarginNote>
          </>
        }
      >
        <Facts
          facts={[
            [words.checkedOn, <DateText key="on" date={check.checkedOn} />],
            [words.occasion, occasionNames[check.occasion]],
            check.loanId !== null && [
              labels.onALoan,
              <Link key="loan" href={`/loans/${check.loanId}`}>
                {labels.toLoan}
              </Link>,
            ],
            [
              words.checkedBy,
              check.witness
                ? `${check.checkedBy}; ${labels.witnessedBy} ${check.witness}`
                : `${check.checkedBy}; ${labels.oneSignature}`,
            ],
            [words.fit, fitWords(check)],
            [labels.grounds, check.grounds],
          ]}
        />
        <FindingsTable findings={check.findings} />
        {comparison && beside ? (
          <CheckChanges comparison={comparison} caption={labels.sinceCheck(beside.checkedOn)} />
        ) : (
          <p className="quiet">{labels.firstCheck}</p>
        )}
        <p className="quiet small">{labels.severities(severityMeanings)}</p>
      </Section>
    </PlainPage>
  );
}
