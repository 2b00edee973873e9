/** One institution: who it is, its venues with the facts a lender asks for, its loans, and what happened. */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Happened } from "#app/_parts/happened.tsx";
import {
  MarginNote,
  Masthead,
  NextBox,
  type NextThing,
  RecordPage,
  Section,
} from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { facilityWords } from "#app/_words/en/facility.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { InsuranceSection } from "#app/(signed-in)/institutions/[id]/insurance-section.tsx";
import { LoansSection } from "#app/(signed-in)/institutions/[id]/loans-section.tsx";
import { VenueSection } from "#app/(signed-in)/institutions/[id]/venue-section.tsx";
import { happenedToInstitution } from "#lib/desk/queries/happened.ts";
import { listLoans } from "#lib/loans/queries/list-loans.ts";
import { paperStateOn, unstatedFacts } from "#lib/people/facility-gaps.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { listInsurances } from "#lib/people/queries/facility.ts";
import { getInstitution, type InstitutionSheet } from "#lib/people/queries.ts";
import { today } from "#lib/platform/clock.ts";

const newestLoans = 20;

type Props = { params: Promise<{ id: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { id } = await params;
  const viewer = await requireViewer(`/institutions/${id}`);
  return { title: (await orNotFound(() => getInstitution(viewer, id))).name };
}

function thingsNext(
  institution: InstitutionSheet,
  day: string,
  may: { keepInstitution: boolean; keepVenue: boolean },
): NextThing[] {
  const edit = may.keepInstitution && (
    <Link className="act outline" href={`/institutions/${institution.id}/edit`}>
      {words.edit}
    </Link>
  );
  const editVenue = (venueId: string, name: string) =>
    may.keepVenue && (
      <Link className="act outline" href={`/venues/${venueId}/report`}>
        {facilityWords.fileReport}
        <span className="visually-hidden">: {name}</span>
      </Link>
    );
  return [
    ...(institution.standing === "on hold"
      ? [{ key: "hold", outcome: "bar", text: words.onHold, action: edit } as const]
      : []),
    ...(institution.verifiedOn === null
      ? [{ key: "verified", outcome: "attend", text: words.neverVerified, action: edit } as const]
      : []),
    ...(institution.venues.length === 0
      ? [{ key: "venue", outcome: "attend", text: words.noVenue } as const]
      : []),
    ...institution.venues.flatMap((venue): NextThing[] => {
      const action = editVenue(venue.id, venue.name);
      const missing = unstatedFacts(venue).length;
      return [
        ...(missing > 0
          ? [
              {
                key: venue.id,
                outcome: "attend",
                text: words.venueLacks(venue.name, missing),
                action,
              } as const,
            ]
          : []),
        ...venue.licences
          .filter((licence) => paperStateOn(licence, day) === "lapsed")
          .map((licence) => ({
            key: `${venue.id} ${licence.number}`,
            outcome: "bar" as const,
            text: words.licenceLapsed(venue.name, licence.number),
            action,
          })),
      ];
    }),
  ];
}

export default async function InstitutionPage({ params }: Props) {
  const { id } = await params;
  const viewer = await requireViewer(`/institutions/${id}`);
  const institution = await orNotFound(() => getInstitution(viewer, id));
  const day = today();
  const subject = { institutionId: id };
  const may = {
    keepInstitution: mayDo(viewer, "keepInstitution"),
    keepVenue: mayDo(viewer, "keepVenue", subject),
  };
  // The centre lends; it has no loans of its own.
  const loans =
    institution.kind !== "centre" && maySee(viewer, "loanFile", subject)
      ? await listLoans(viewer, { borrowerId: institution.id }, { limit: newestLoans })
      : null;
  const insurances = await listInsurances(viewer, id);
  const happened = maySee(viewer, "audit") ? await happenedToInstitution(viewer, id) : null;
  return (
    <RecordPage
      masthead={
        <Masthead
          title={institution.name}
          standing={
            <>
              <p>
                <StateMark outcome={institution.standing === "good" ? "clear" : "bar"}>
                  {words.standings[institution.standing]}
                </StateMark>
              </p>
              <p>
                {institution.city}, {institution.countryCode}
              </p>
            </>
          }
        />
      }
      next={<NextBox things={thingsNext(institution, day, may)} />}
      index={[
        { id: "record", label: words.record },
        { id: "venues", label: words.venues, count: institution.venues.length },
        ...(loans ? [{ id: "loans", label: words.loans }] : []),
        { id: "insurance", label: facilityWords.insurance, count: insurances.length || undefined },
        ...institution.venues.map((venue) => ({ id: `venue-${venue.id}`, label: venue.name })),
        ...(happened ? [{ id: "happened", label: words.happened }] : []),
      ]}
    >
      <Section
        id="record"
        title={words.record}
        margin={
          institution.verifiedOn === null && <MarginNote outcome="attend" title={words.neverVerified} />
        }
      >
        <Facts
          facts={[
            [words.kind, words.kinds[institution.kind]],
            [words.address, institution.address],
            [words.languages, institution.languages.join(", ")],
            [
              words.email,
              <a key="email" href={`mailto:${institution.email}`}>
                {institution.email}
              </a>,
            ],
            [words.phone, institution.phone],
            [words.verifiedOn, <DateText key="verified" date={institution.verifiedOn} />],
            institution.note !== "" && [words.note, institution.note],
          ]}
        />
        {may.keepInstitution && (
          <p className="no-print">
            <Link href={`/institutions/${id}/edit`}>{words.edit}</Link>
          </p>
        )}
      </Section>
      <Section id="venues" title={words.venues}>
        {institution.venues.length === 0 ? (
          <EmptyState>{words.noVenue}</EmptyState>
        ) : (
          <ul>
            {institution.venues.map((venue) => (
              <li key={venue.id}>
                <a href={`#venue-${venue.id}`}>{venue.name}</a>, {words.placeKinds[venue.kind]}
              </li>
            ))}
          </ul>
        )}
        {may.keepVenue && (
          <Link className="act outline no-print" href={`/institutions/${id}/venues/new`}>
            {words.newVenue}
          </Link>
        )}
      </Section>
      {loans && <LoansSection viewer={viewer} institution={institution} loans={loans} />}
      <InsuranceSection
        institutionId={id}
        insurances={insurances}
        day={day}
        mayKeep={mayDo(viewer, "keepInsurance", subject)}
      />
      {institution.venues.map((venue) => (
        <VenueSection key={venue.id} venue={venue} day={day} mayEdit={may.keepVenue} />
      ))}
      {happened && (
        <Section id="happened" title={words.happened}>
          <Happened entries={happened} />
        </Section>
      )}
    </RecordPage>
  );
}
