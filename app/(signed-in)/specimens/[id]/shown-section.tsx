/** What the specimen shows, and what is stated not to be there. */
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import styles from "#app/(signed-in)/specimens/[id]/sections.module.css";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";

type ShownRow = SpecimenSheet["shown"][number];

export function ShownSection({ viewer, specimen }: { viewer: Viewer; specimen: SpecimenSheet }) {
  const edit = mayDo(viewer, "recordShown") && (
    <Link className="no-print" href={`/specimens/${specimen.id}/shown`}>
      {words.editShown}
    </Link>
  );
  const has = (name: "state" | "remark") =>
    specimen.shown.some((row) => (name === "state" ? row.state !== "shown" : row.remark !== ""));
  const gone = specimen.shown.filter((row) => row.state === "removed" || row.state === "absent");
  return (
    <Section
      id="shows"
      title={words.shows}
      margin={
        gone.length > 0 && (
          <MarginNote title={words.notThere}>
            {gone.map((row) => `${row.english} (${row.state})`).join("; ")}
          </MarginNote>
        )
      }
    >
      <DataTable
        caption={words.shows}
        captionHidden
        dense
        rows={specimen.shown}
        rowKey={(row) => `${row.structureId} ${row.side}`}
        empty={<EmptyState action={edit}>{words.noShown}</EmptyState>}
        columns={[
          { key: "structure", label: words.structure, cell: (row) => row.english },
          { key: "latin", label: words.latin, cell: (row) => <i>{row.latin}</i> },
          { key: "side", label: words.side, cell: (row) => row.side },
          {
            key: "seen",
            label: words.seen,
            cell: (row) => (
              <span className={styles.whole}>
                {row.state === "removed" || row.state === "absent" ? "–" : row.seen}
              </span>
            ),
          },
          ...(has("state")
            ? [
                {
                  key: "state",
                  label: words.state,
                  cell: (row: ShownRow) => (row.state === "shown" ? "" : row.state),
                },
              ]
            : []),
          ...(has("remark")
            ? [{ key: "remark", label: words.remark, cell: (row: ShownRow) => row.remark }]
            : []),
        ]}
      />
      {specimen.shown.length > 0 && edit}
    </Section>
  );
}
