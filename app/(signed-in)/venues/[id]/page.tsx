/** One venue: its facility report as it stands, the way in, licences, what loggers wrote there, and earlier versions. */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Unknown } from "#app/_parts/figures.tsx";
import {
  MarginNote,
  Masthead,
  NextBox,
  type NextThing,
  RecordPage,
  Section,
} from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { institutionsWords } from "#app/_words/en/institutions.ts";
import { countryName } from "#app/_words/readable.ts";
import { Licences, Passages } from "#app/(signed-in)/institutions/venue-tables.tsx";
import { Answers } from "#app/(signed-in)/venues/[id]/answers.tsx";
import { ConfirmForm } from "#app/(signed-in)/venues/[id]/confirm-form.tsx";
import { RecordForm } from "#app/(signed-in)/venues/[id]/record-form.tsx";
import { Records } from "#app/(signed-in)/venues/[id]/records.tsx";
import { Versions } from "#app/(signed-in)/venues/[id]/versions.tsx";
import { confirmReport, fileRecord } from "#app/(signed-in)/venues/actions.ts";
import { listClimateRecords } from "#lib/loans/queries/climate-records.ts";
import { paperLanguagesFor } from "#lib/papers/languages.ts";
import { paperStateOn } from "#lib/people/facility-gaps.ts";
import { facilitySections } from "#lib/people/facility-questions.ts";
import { answeredIn, answersFromFacts, type FacilityAnswers } from "#lib/people/facility-report.ts";
import { mayDo } from "#lib/people/permission.ts";
import { getVenueSheet, type VenueSheet } from "#lib/people/queries/facility.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";

type Props = { params: Promise<{ id: string }> };

/** Days before its end on which a report is announced; common practice, no source. */
const announceDays = 60;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { id } = await params;
  const viewer = await requireViewer(`/venues/${id}`);
  return { title: (await orNotFound(() => getVenueSheet(viewer, id))).venue.name };
}

const unansweredIn = (answers: FacilityAnswers) =>
  facilitySections.reduce((sum, section) => {
    const { answered, asked } = answeredIn(answers, section);
    return sum + asked - answered;
  }, 0);

function thingsNext({ venue, reports }: VenueSheet, day: string, mayFile: boolean): NextThing[] {
  const [newest] = reports;
  const file = mayFile && (
    <Link className="act outline" href={`/venues/${venue.id}/report`}>
      {newest ? words.newVersion : words.fileReport}
    </Link>
  );
  const things: NextThing[] = [];
  const add = (key: string, outcome: NextThing["outcome"], text: string) =>
    things.push({ key, outcome, text, action: file });
  if (newest === undefined) add("report", "attend", words.noReport);
  else if (newest.validUntil <= day) add("report", "attend", words.noLonger(newest.version));
  else if (newest.validUntil <= addDays(day, announceDays))
    add("report", "attend", words.endsSoon(newest.version));
  const unanswered = newest ? unansweredIn(newest.answers) : 0;
  if (unanswered > 0) add("unanswered", "attend", words.unanswered(unanswered));
  for (const licence of venue.licences)
    if (paperStateOn(licence, day) === "lapsed")
      add(licence.number, "bar", institutionsWords.licenceLapsed(venue.name, licence.number));
  return things;
}

export default async function VenuePage({ params }: Props) {
  const { id } = await params;
  const viewer = await requireViewer(`/venues/${id}`);
  const sheet = await orNotFound(() => getVenueSheet(viewer, id));
  const records = await listClimateRecords(viewer, id);
  const { venue, institution, reports } = sheet;
  const [newest] = reports;
  const subject = { institutionId: venue.institutionId };
  const mayFile = mayDo(viewer, "fileFacilityReport", subject);
  const answers = newest?.answers ?? answersFromFacts(venue);
  const day = today();
  return (
    <RecordPage
      masthead={
        <Masthead
          title={venue.name}
          latin={institutionsWords.placeKinds[venue.kind]}
          standing={
            <p>
              <Link href={`/institutions/${venue.institutionId}`}>{institution}</Link>
            </p>
          }
        />
      }
      next={<NextBox things={thingsNext(sheet, day, mayFile)} />}
      index={[
        { id: "place", label: institutionsWords.place },
        { id: "report", label: words.report },
        { id: "way-in", label: words.wayIn, count: venue.passages.length || undefined },
        { id: "licences", label: words.licences, count: venue.licences.length || undefined },
        { id: "records", label: words.climateRecords, count: records.length || undefined },
        ...(reports.length > 0 ? [{ id: "versions", label: words.versions, count: reports.length }] : []),
      ]}
    >
      <Section id="place" title={institutionsWords.place}>
        <Facts
          facts={[
            [institutionsWords.address, venue.address],
            [institutionsWords.country, countryName(venue.countryCode)],
            [institutionsWords.subdivision, venue.subdivisionCode ?? <Unknown key="subdivision" />],
            venue.town !== "" && [institutionsWords.town, venue.town],
            newest && [words.version, newest.version],
            newest && [words.reportedOn, <DateText key="on" date={newest.reportedOn} />],
            newest && [words.reportedBy, newest.reportedBy],
            newest && [words.countsUntil, <DateText key="until" date={newest.validUntil} />],
          ]}
        />
        {mayDo(viewer, "keepVenue", subject) && (
          <p className="no-print">
            <Link href={`/venues/${id}/edit`}>{words.editPlace}</Link>
          </p>
        )}
      </Section>
      <Section
        id="report"
        title={words.report}
        margin={
          <>
            <MarginNote title={words.confidential} />
            {newest && unansweredIn(newest.answers) > 0 && (
              <MarginNote
                outcome="attend"
                title={words.unanswered(unansweredIn(newest.answers))}
                source={words.unansweredSource}
              />
            )}
          </>
        }
      >
        {newest === undefined && <EmptyState>{words.noReport}</EmptyState>}
        {mayFile && (
          <p className="no-print">
            <Link className="act outline" href={`/venues/${id}/report`}>
              {newest ? words.newVersion : words.fileReport}
            </Link>
          </p>
        )}
        {mayFile && newest && <ConfirmForm action={confirmReport.bind(null, id)} version={newest.version} />}
        <Answers answers={answers} />
      </Section>
      <Section id="way-in" title={words.wayIn}>
        <Passages name={venue.name} passages={answers.passages} />
      </Section>
      <Section id="licences" title={words.licences}>
        <Licences name={venue.name} licences={answers.licences} day={day} />
      </Section>
      <Section
        id="records"
        title={words.climateRecords}
        margin={records.length > 0 && <MarginNote title={words.rangeSource} />}
      >
        {mayDo(viewer, "fileClimateRecord", subject) && <RecordForm action={fileRecord.bind(null, id)} />}
        <Records venueId={id} records={records} />
      </Section>
      {reports.length > 0 && (
        <Section id="versions" title={words.versions}>
          <Versions venueId={id} languages={paperLanguagesFor(sheet.languages)} reports={reports} />
        </Section>
      )}
    </RecordPage>
  );
}
