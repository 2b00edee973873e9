/** The list of specimens: each row with why it is there, and when it is free. */
import Link from "next/link";
import type { ReactNode } from "react";
import { DataTable } from "#app/_parts/data-table.tsx";
import { type Period, Strip, StripScale } from "#app/_parts/strip.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { specimenListWords as listWords } from "#app/_words/en/specimens.ts";
import { SlipButton } from "#app/(signed-in)/specimens/slip-button.tsx";
import { daysToBeHad, type StripWindow } from "#app/(signed-in)/specimens/strip-window.ts";
import { addDays } from "#lib/platform/dates.ts";
import { type DaysAround, daysAroundOf } from "#lib/specimens/days-around.ts";
import type { SpecimenListRow } from "#lib/specimens/queries/list-specimens.ts";

const mostNamed = 4;

/** Why a row is in the list: what it shows of what was searched, or by which of its own words it was found. */
function reasonsOf({ shows, hit, accessionNumber }: SpecimenListRow, said: Said): string[] {
  const named = shows.slice(0, mostNamed).map(({ english, side, seen }) => {
    const how = side === "not applicable" ? seen : `${side}, ${seen}`;
    return `${english} (${how})`;
  });
  if (shows.length > mostNamed) named.push(listWords.further(shows.length - mostNamed));
  const reasons = named.length > 0 ? [listWords[said.implied ? "impliedBy" : "shows"](named.join("; "))] : [];
  if (hit?.by === "number")
    reasons.push(
      hit.number === accessionNumber ? listWords.hits.ownNumber : listWords.hits.number(hit.number),
    );
  else if (hit) reasons.push(listWords.hits[hit.by]);
  else if (said.text && shows.length === 0) reasons.push(listWords.hits.alike);
  return reasons;
}

type Said = { text: boolean; implied: boolean };

export function SpecimenTable({
  rows,
  free,
  window,
  asked,
  around,
  said,
  notes,
  empty,
}: {
  rows: readonly SpecimenListRow[];
  free: ReadonlyMap<string, readonly Period[]>;
  window: StripWindow;
  /** The days that were looked for, and the days that are kept free around them. */
  asked: Period | null;
  around: readonly DaysAround[];
  /** Whether a text was searched, and whether for what is implied only. */
  said: Said;
  /** Whether the rows may be noted on a slip. */
  notes: boolean;
  empty: ReactNode;
}) {
  const withAround = (row: SpecimenListRow): Period | undefined => {
    if (asked === null) return undefined;
    const { before, after } = daysAroundOf(row, around);
    return { startsOn: addDays(asked.startsOn, -before), endsOn: addDays(asked.endsOn, after) };
  };
  // Who borrows sees, before any days are asked for, on which days it could be there.
  const isToBeHad = notes && asked === null;
  const freeWords = isToBeHad ? listWords.toBeHad : asked === null ? listWords.free : listWords.freeWithin;
  const daysOf = (row: SpecimenListRow) => {
    const days = free.get(row.id) ?? [];
    return isToBeHad ? daysToBeHad(days, window, daysAroundOf(row, around)) : days;
  };
  return (
    <DataTable<SpecimenListRow>
      dense
      caption={words.specimens}
      captionHidden
      rowKey={(row) => row.id}
      rows={rows}
      empty={empty}
      columns={[
        {
          key: "number",
          label: words.number,
          cell: (row) => (
            <Link className="mono" href={`/specimens/${row.id}`}>
              {row.accessionNumber}
            </Link>
          ),
        },
        {
          key: "title",
          label: words.title,
          onCard: "bare",
          cell: (row) => (
            <>
              {row.title}
              {!row.human && (
                <>
                  {" "}
                  <i className="quiet">{row.scientificName}</i>
                </>
              )}
              {reasonsOf(row, said).map((reason) => (
                <span key={reason} className="quiet small" style={{ display: "block" }}>
                  {reason}
                </span>
              ))}
            </>
          ),
        },
        { key: "kind", label: words.kind, onCard: "left out", cell: (row) => row.kind },
        { key: "preparation", label: words.preparation, cell: (row) => row.preparation },
        { key: "use", label: words.use, cell: (row) => words.useWords[row.use] },
        {
          key: "free",
          label: freeWords,
          head: <StripScale label={freeWords} {...window} />,
          cell: (row) => (
            <Strip
              label={row.accessionNumber}
              {...window}
              free={daysOf(row)}
              asked={asked ?? undefined}
              around={withAround(row)}
            />
          ),
        },
        ...(notes
          ? [
              {
                key: "slip",
                label: words.addToSlip,
                onCard: "bare" as const,
                cell: (row: SpecimenListRow) => (
                  <SlipButton specimenId={row.id} number={row.accessionNumber} days={asked} />
                ),
              },
            ]
          : []),
      ]}
    />
  );
}
