/** The next version of a venue's facility report: it begins with the last one. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { fileReport } from "#app/(signed-in)/venues/actions.ts";
import { ReportForm } from "#app/(signed-in)/venues/report-form.tsx";
import { writeReport } from "#app/(signed-in)/venues/report-sent.ts";
import { answersFromFacts } from "#lib/people/facility-report.ts";
import { mayDo } from "#lib/people/permission.ts";
import { getVenueSheet } from "#lib/people/queries/facility.ts";
import { today } from "#lib/platform/clock.ts";

export const metadata: Metadata = { title: words.report };

export default async function ReportPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/venues/${id}/report`);
  const { venue, institution, reports } = await orNotFound(() => getVenueSheet(viewer, id));
  if (!mayDo(viewer, "fileFacilityReport", { institutionId: venue.institutionId })) notFound();
  const [newest] = reports;
  const follows = newest?.version ?? 0;
  const title = words.reportOf(venue.name);
  return (
    <PlainPage>
      <Masthead title={title} standing={<p>{institution}</p>} />
      <p>{words.formAbout}</p>
      <ReportForm
        action={fileReport.bind(null, id, follows)}
        start={{
          ...writeReport(newest?.answers ?? answersFromFacts(venue)),
          reportedOn: today(),
          reportedBy: viewer.name,
        }}
        back={`/venues/${id}`}
        label={title}
        draftKey={`facility report ${id} ${follows}`}
      />
    </PlainPage>
  );
}
