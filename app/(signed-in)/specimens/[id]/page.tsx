/** One specimen on one sheet. */
import type { Metadata } from "next";
import Link from "next/link";
import { Masthead, NextBox, RecordPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { ConditionSection } from "#app/(signed-in)/specimens/[id]/condition-section.tsx";
import { CrateSection } from "#app/(signed-in)/specimens/[id]/crate-section.tsx";
import { HappenedSection } from "#app/(signed-in)/specimens/[id]/happened-section.tsx";
import { LimitsSection } from "#app/(signed-in)/specimens/[id]/limits-section.tsx";
import { ProvenanceSection } from "#app/(signed-in)/specimens/[id]/provenance-section.tsx";
import { RecordSection } from "#app/(signed-in)/specimens/[id]/record-section.tsx";
import { ShownSection } from "#app/(signed-in)/specimens/[id]/shown-section.tsx";
import { Standing } from "#app/(signed-in)/specimens/[id]/standing.tsx";
import { thingsNext } from "#app/(signed-in)/specimens/[id]/things-next.tsx";
import { BookingsSection, WhereaboutsSection } from "#app/(signed-in)/specimens/[id]/whereabouts-section.tsx";
import { SlipButton } from "#app/(signed-in)/specimens/slip-button.tsx";
import { checksOf } from "#lib/condition/queries.ts";
import { listLentOf } from "#lib/desk/queries/lent.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { getProvenance } from "#lib/provenance/queries.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";
import { freePeriodsOf, getWhereabouts } from "#lib/whereabouts/queries.ts";

type Props = { params: Promise<{ id: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { id } = await params;
  const viewer = await requireViewer(`/specimens/${id}`);
  const specimen = await orNotFound(() => getSpecimen(viewer, id));
  return { title: `${specimen.accessionNumber} ${specimen.title}` };
}

export default async function SpecimenPage({ params }: Props) {
  const { id } = await params;
  const viewer = await requireViewer(`/specimens/${id}`);
  const specimen = await orNotFound(() => getSpecimen(viewer, id));
  const [from, until] = [today(), addDays(today(), 365)];
  const seesChecks = maySee(viewer, "conditionRecords") && !isBorrower(viewer);
  const [whereabouts, provenance, free, checks, lent] = await Promise.all([
    getWhereabouts(viewer, id),
    getProvenance(viewer, id),
    freePeriodsOf(viewer, [id], from, until),
    seesChecks ? checksOf(viewer, id) : null,
    maySee(viewer, "allLoans") ? listLentOf(viewer, [id]) : [],
  ]);
  const freeNow = free.get(id) ?? [];
  const isFree = freeNow[0]?.startsOn === from;

  return (
    <RecordPage
      masthead={
        <Masthead
          number={specimen.accessionNumber}
          title={specimen.title}
          latin={specimen.latinTitle}
          standing={
            <>
              <Standing
                lent={lent}
                isFree={isFree}
                holder={whereabouts.custody?.holder ?? null}
                today={from}
              />
              {mayDo(viewer, "reviseSpecimen") && (
                <p className="no-print">
                  <Link href={`/specimens/${id}/edit`}>{words.edit}</Link>
                </p>
              )}
              {isBorrower(viewer) && <SlipButton specimenId={id} number={specimen.accessionNumber} />}
            </>
          }
        />
      }
      next={
        !isBorrower(viewer) && (
          <NextBox things={thingsNext({ viewer, specimen, provenance, checks, lent, today: from })} />
        )
      }
      index={[
        { id: "record", label: words.record },
        { id: "shows", label: words.shows, count: specimen.shown.length },
        ...(checks ? [{ id: "condition", label: words.condition, count: checks.length }] : []),
        { id: "provenance", label: words.provenance },
        { id: "limits", label: words.limits },
        { id: "whereabouts", label: words.whereabouts },
        { id: "bookings", label: words.bookings },
        { id: "crate", label: words.crate },
        ...(maySee(viewer, "audit") ? [{ id: "happened", label: words.happened }] : []),
      ]}
    >
      <RecordSection viewer={viewer} specimen={specimen} />
      <ShownSection viewer={viewer} specimen={specimen} />
      {checks && <ConditionSection viewer={viewer} specimen={specimen} checks={checks} />}
      <ProvenanceSection viewer={viewer} provenance={provenance} />
      <LimitsSection specimen={specimen} />
      <WhereaboutsSection viewer={viewer} whereabouts={whereabouts} />
      <BookingsSection
        viewer={viewer}
        whereabouts={whereabouts}
        free={freeNow}
        from={from}
        until={until}
        number={specimen.accessionNumber}
      />
      <CrateSection specimenId={id} viewer={viewer} />
      {maySee(viewer, "audit") && <HappenedSection viewer={viewer} specimenId={id} />}
    </RecordPage>
  );
}
