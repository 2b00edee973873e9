/** What could stand in for one specimen of a request, and the act that puts it in its place. */
import type { Metadata } from "next";
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { standInWords as words } from "#app/_words/en/stand-ins.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { substitute } from "#app/(signed-in)/loans/[id]/stand-ins/[specimenId]/actions.ts";
import { findStandIns, type StandIn } from "#lib/loans/queries/stand-ins.ts";

type Props = { params: Promise<{ id: string; specimenId: string }> };

export const metadata: Metadata = { title: words.link };

export default async function StandInsPage({ params }: Props) {
  const { id, specimenId } = await params;
  const viewer = await requireViewer(`/loans/${id}/stand-ins/${specimenId}`);
  const { loan, specimen, shows, rows } = await orNotFound(() => findStandIns(viewer, id, specimenId));
  return (
    <PlainPage>
      <Masthead number={specimen.accessionNumber} title={words.title(specimen.title)} />
      <p>{words.about}</p>
      <DataTable<StandIn>
        caption={words.caption}
        rows={rows}
        rowKey={({ id: standInId }) => standInId}
        empty={<EmptyState>{shows === 0 ? words.nothingShown : words.none}</EmptyState>}
        columns={[
          {
            key: "number",
            label: words.number,
            cell: ({ id: standInId, accessionNumber }) => (
              <Link className="mono" href={`/specimens/${standInId}`}>
                {accessionNumber}
              </Link>
            ),
          },
          { key: "title", label: words.what, cell: ({ title }) => title },
          { key: "preparation", label: words.preparation, cell: ({ preparation }) => preparation },
          { key: "use", label: words.use, cell: ({ use }) => use },
          { key: "shared", label: words.shared, cell: ({ shared }) => words.sharedOf(shared, shows) },
          {
            key: "take",
            label: words.act,
            onCard: "bare",
            cell: ({ id: standInId, accessionNumber }) => (
              <span className={styles.row}>
                <ActForm
                  action={substitute.bind(null, loan.id, specimen.id, standInId)}
                  label={words.takeFor(accessionNumber)}
                  button={words.takeFor(accessionNumber)}
                  look="plain"
                />
              </span>
            ),
          },
        ]}
      />
      <p className="no-print">
        <Link href={`/loans/${loan.id}#specimens`}>{words.back(loan.number)}</Link>
      </p>
    </PlainPage>
  );
}
