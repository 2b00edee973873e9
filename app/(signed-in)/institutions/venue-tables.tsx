/** The way in to a venue and its licences, as tables. */
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { type MarkTone, StateMark } from "#app/_parts/state-mark.tsx";
import { facilityWords } from "#app/_words/en/facility.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { formatNumber } from "#app/_words/format.ts";
import { type PaperState, paperStateOn } from "#lib/people/facility-gaps.ts";
import type { ReportedLicence } from "#lib/people/facility-report.ts";
import type { Licence, Passage } from "#lib/people/schema.ts";

const toneOf: Record<PaperState, MarkTone> = {
  valid: "clear",
  "not yet valid": "attend",
  lapsed: "bar",
  "no end stated": "attend",
};

const orEmpty = (value: number | null) => (value === null ? "" : formatNumber(value));

export function Passages({ name, passages }: { name: string; passages: readonly Passage[] }) {
  if (passages.length === 0) return <EmptyState>{words.noPassage}</EmptyState>;
  return (
    <DataTable
      caption={words.wayInTo(name)}
      rows={passages.map((passage, place) => ({ ...passage, place }))}
      rowKey={({ place }) => String(place)}
      columns={[
        { key: "name", label: words.passageName, cell: (passage) => passage.name },
        { key: "kind", label: words.kind, cell: ({ kind }) => words.passageKinds[kind] },
        {
          key: "width",
          label: words.widthMm,
          right: true,
          cell: ({ widthMm, secondWidthMm }) =>
            secondWidthMm === null
              ? formatNumber(widthMm)
              : words.thenWidth(formatNumber(widthMm), formatNumber(secondWidthMm)),
        },
        { key: "height", label: words.heightMm, right: true, cell: ({ heightMm }) => formatNumber(heightMm) },
        { key: "depth", label: words.depthMm, right: true, cell: ({ depthMm }) => orEmpty(depthMm) },
        { key: "load", label: words.loadKg, right: true, cell: ({ loadKg }) => orEmpty(loadKg) },
        {
          key: "slope",
          label: words.slopePercent,
          right: true,
          cell: ({ slopePercent }) => orEmpty(slopePercent),
        },
      ]}
    />
  );
}

export function Licences({
  name,
  licences,
  day,
}: {
  name: string;
  licences: readonly (Licence & Partial<Pick<ReportedLicence, "responsiblePerson">>)[];
  day: string;
}) {
  if (licences.length === 0) return <p className="quiet">{words.noLicence}</p>;
  const named = licences.some(({ responsiblePerson = "" }) => responsiblePerson !== "");
  return (
    <DataTable
      caption={words.licencesOf(name)}
      rows={licences}
      rowKey={({ kind, number }) => `${kind} ${number}`}
      columns={[
        { key: "kind", label: words.licence, cell: ({ kind }) => words.licenceKinds[kind] },
        { key: "number", label: words.number, cell: ({ number }) => <span className="mono">{number}</span> },
        { key: "authority", label: words.authority, cell: ({ authority }) => authority },
        ...(named
          ? [
              {
                key: "person",
                label: facilityWords.responsible,
                cell: ({ responsiblePerson = "" }: { responsiblePerson?: string }) => responsiblePerson,
              },
            ]
          : []),
        { key: "until", label: words.validUntil, cell: ({ validUntil }) => <DateText date={validUntil} /> },
        {
          key: "state",
          label: words.state,
          cell: (licence) => {
            const state = paperStateOn(licence, day);
            return <StateMark outcome={toneOf[state]}>{words.licenceStates[state]}</StateMark>;
          },
        },
      ]}
    />
  );
}
