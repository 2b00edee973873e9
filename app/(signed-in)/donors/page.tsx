/** Donors by pseudonym, with how each consent stands today. */
import type { Metadata } from "next";
import Link from "next/link";
import { ActionForm } from "#app/_parts/action-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { pageLinks, parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import { registerNewDonor } from "#app/(signed-in)/donors/actions.ts";
import { ConsentStateMark } from "#app/(signed-in)/donors/consent-marks.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { listDonors } from "#lib/provenance/queries.ts";

export const metadata: Metadata = { title: words.title };

const rowsOnAPage = 100;

export default async function DonorsPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/donors", search));
  const { rows, next } = await orNotFound(() =>
    listDonors(viewer, { after: parameterOf(search, "after") ?? null, limit: rowsOnAPage }),
  );
  const register = mayDo(viewer, "registerDonor") && (
    <ActionForm action={registerNewDonor} label={words.register} className="no-print">
      <button type="submit">{words.register}</button>
    </ActionForm>
  );
  return (
    <PlainPage>
      <Masthead title={words.title} standing={register} />
      <p>{words.about}</p>
      <DataTable
        caption={words.caption}
        rows={rows}
        rowKey={({ code }) => code}
        empty={<EmptyState>{words.none}</EmptyState>}
        columns={[
          {
            key: "code",
            label: words.pseudonym,
            cell: ({ code }) => (
              <Link className="mono" href={`/donors/${code}`}>
                {code}
              </Link>
            ),
          },
          {
            key: "consent",
            label: words.consent,
            cell: ({ consent }) => <ConsentStateMark status={consent?.status ?? null} />,
          },
          {
            key: "basis",
            label: words.basis,
            cell: ({ consent }) => consent && words.bases[consent.basis as keyof typeof words.bases],
          },
          {
            key: "signed",
            label: words.signedOn,
            cell: ({ consent }) => consent && <DateText date={consent.signedOn} />,
          },
          {
            key: "ends",
            label: words.ends,
            cell: ({ consent }) =>
              consent &&
              (consent.status.endsOn === null ? (
                <span className="quiet">{words.noEnd}</span>
              ) : (
                <DateText date={consent.status.endsOn} />
              )),
          },
          { key: "specimens", label: words.specimens, right: true, cell: ({ specimens }) => specimens },
        ]}
      />
      <Pager {...pageLinks("/donors", search, next)} />
    </PlainPage>
  );
}
