/** The rows of the open catalogue. */
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Strip, StripScale } from "#app/_parts/strip.tsx";
import { publicWords as words } from "#app/_words/en/borrow.ts";
import { catalogueWords } from "#app/_words/en/catalogue.ts";
import styles from "#app/catalogue/catalogue.module.css";
import type { PublicRow } from "#lib/specimens/queries/public-catalogue.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

const mostNamed = 8;

function structuresOf({ structures }: PublicRow): string {
  const named = structures.slice(0, mostNamed);
  const further = structures.length - named.length;
  return [...named, ...(further > 0 ? [words.more(further)] : [])].join(", ");
}

function Picture({ row, showsHuman }: { row: PublicRow; showsHuman: boolean }) {
  if (!row.hasPicture) return null;
  if (row.human && !showsHuman) return <span className="quiet small">{words.pictureBehindChoice}</span>;
  return (
    <img
      className={styles.picture}
      src={`/catalogue/pictures/${row.id}`}
      alt={words.pictureOf(row.accessionNumber, row.title)}
      loading="lazy"
    />
  );
}

export function PublicTable({
  rows,
  months,
  window,
  showsHuman,
}: {
  rows: readonly PublicRow[];
  /** Free months of each specimen. */
  months: ReadonlyMap<string, readonly Period[]>;
  window: { from: string; until: string };
  showsHuman: boolean;
}) {
  const pictured = rows.some(({ hasPicture }) => hasPicture);
  return (
    <DataTable<PublicRow>
      caption={words.caption}
      captionHidden
      rows={rows}
      rowKey={({ id }) => id}
      empty={<EmptyState>{words.none}</EmptyState>}
      columns={[
        {
          key: "number",
          label: catalogueWords.number,
          cell: (row) => <span className="mono">{row.accessionNumber}</span>,
        },
        {
          key: "title",
          label: catalogueWords.title,
          onCard: "bare",
          cell: (row) => (
            <>
              {row.title} {row.latinTitle !== "" && <i className="quiet">{row.latinTitle}</i>}
            </>
          ),
        },
        { key: "shows", label: words.structures, cell: structuresOf },
        { key: "species", label: words.species, cell: (row) => <i>{row.scientificName}</i> },
        { key: "preparation", label: catalogueWords.preparation, cell: (row) => row.preparation },
        { key: "use", label: catalogueWords.use, cell: (row) => catalogueWords.useWords[row.use] },
        {
          key: "months",
          label: words.months,
          head: <StripScale label={words.months} {...window} />,
          cell: (row) => <Strip label={row.accessionNumber} {...window} free={months.get(row.id) ?? []} />,
        },
        ...(pictured
          ? [
              {
                key: "picture",
                label: words.picture,
                cell: (row: PublicRow) => <Picture row={row} showsHuman={showsHuman} />,
              },
            ]
          : []),
      ]}
    />
  );
}
