/** Tables of places: the tree of the house, the places in one place, those outside. */
import Link from "next/link";
import { type Column, DataTable } from "#app/_parts/data-table.tsx";
import { placePageWords as words } from "#app/_words/en/whereabouts.ts";
import type { PlaceCounted } from "#lib/whereabouts/queries/places.ts";

/** The name stands as far in as the place lies. */
const indented = (depth: number) => ({ paddingInlineStart: `${Math.min(depth, 8) * 1.15}rem` });

const count = (specimens: number) => (specimens === 0 ? <span className="quiet">0</span> : specimens);

/** @param from the depth at which the table begins */
export function PlaceTable({
  caption,
  captionHidden = false,
  places,
  from = 0,
  counts = "tree",
}: {
  caption: string;
  captionHidden?: boolean;
  places: readonly PlaceCounted[];
  from?: number;
  counts?: "tree" | "plain";
}) {
  const columns: Column<PlaceCounted>[] = [
    {
      key: "name",
      label: words.name,
      cell: ({ id, name, depth, within }) => (
        <span style={{ display: "block", ...indented(depth - from) }}>
          <Link href={`/places/${id}`}>{name}</Link>
          {depth > from && <span className="visually-hidden">, {within.at(-1)}</span>}
        </span>
      ),
    },
    { key: "code", label: words.code, cell: ({ code }) => <span className="mono">{code}</span> },
    { key: "kind", label: words.kind, cell: ({ kind }) => words.kinds[kind] },
  ];
  const numbers: Column<PlaceCounted>[] =
    counts === "plain"
      ? [{ key: "here", label: words.specimens, right: true, cell: ({ here }) => count(here) }]
      : [
          { key: "here", label: words.here, right: true, cell: ({ here }) => count(here) },
          { key: "total", label: words.total, right: true, cell: ({ total }) => count(total) },
        ];
  return (
    <DataTable
      caption={caption}
      captionHidden={captionHidden}
      rows={places}
      rowKey={({ id }) => id}
      columns={[...columns, ...numbers]}
    />
  );
}
