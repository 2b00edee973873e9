/** Something that shows all of this between these days: the question, and the set that is proposed. */
import type { Metadata } from "next";
import { parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orRefused } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { borrowWords as words } from "#app/_words/en/borrow.ts";
import { readSetFields } from "#app/(signed-in)/borrow/read-question.ts";
import { SetForm } from "#app/(signed-in)/borrow/set-form.tsx";
import { SetResult } from "#app/(signed-in)/borrow/set-result.tsx";
import { structuresNamed } from "#lib/anatomy/queries.ts";
import { proposeSet } from "#lib/loans/queries/propose-set.ts";
import { mostWanted } from "#lib/loans/wanted.ts";
import { mayDo } from "#lib/people/permission.ts";
import { listVenueNames } from "#lib/people/queries.ts";
import { isBorrower } from "#lib/people/viewer.ts";

export const metadata: Metadata = { title: words.title };

export default async function BorrowPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/borrow", search));
  const fields = readSetFields(search);
  const wanted = (await structuresNamed(viewer, fields.shows, fields.names)).slice(0, mostWanted);
  const venues = await listVenueNames(viewer);
  // Who borrows asks for a venue of its own; the house may leave it open.
  const venue = venues.find(({ id }) => id === fields.venue) ?? (isBorrower(viewer) ? venues[0] : undefined);
  const isTried = parameterOf(search, "use") !== undefined;
  const isAsked = wanted.length > 0 && fields.from !== "" && fields.until !== "";
  const { found, refused } = await orRefused(async () =>
    isAsked
      ? await proposeSet(viewer, {
          structureIds: wanted.map(({ id }) => id),
          startsOn: fields.from,
          endsOn: fields.until,
          use: fields.use,
          purpose: fields.purpose,
          audience: fields.audience,
          paidAdmission: fields.paid,
          venueId: venue?.id ?? null,
          ...(fields.origin === "" ? {} : { human: fields.origin === "human" }),
          sheets: fields.sheets,
        })
      : null,
  );
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <p>{words.about}</p>
      <SetForm
        key={JSON.stringify(fields)}
        fields={{ ...fields, venue: venue?.id ?? "" }}
        wanted={wanted}
        most={mostWanted}
        venues={venues.map(({ id, name, institution, countryCode }) => [
          id,
          isBorrower(viewer) ? `${name}, ${countryCode}` : `${institution}: ${name}, ${countryCode}`,
        ])}
        lacks={{
          wanted: isTried && wanted.length === 0,
          from: isTried && fields.from === "",
          until: isTried && fields.until === "",
        }}
        noVenue={isBorrower(viewer) ? undefined : words.noVenue}
      />
      <h2 id="set" tabIndex={-1}>
        {words.set}
      </h2>
      {refused && (
        <p role="alert" className="form-refused">
          {refused.join(" ")}
        </p>
      )}
      {!(found || refused) && <p className="quiet">{words.notYet}</p>}
      {found && (
        <SetResult
          proposal={found}
          venue={venue?.name ?? null}
          fields={{ ...fields, venue: venue?.id ?? "" }}
          notes={isBorrower(viewer) && mayDo(viewer, "openLoan")}
        />
      )}
    </PlainPage>
  );
}
