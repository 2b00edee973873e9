/** One venue with the facts a lender asks for; what nobody stated is named in the margin. */
import Link from "next/link";
import type { ReactNode } from "react";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Quantity, Unknown } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { type MarkTone, StateMark } from "#app/_parts/state-mark.tsx";
import { fractionToPercent } from "#app/_parts/typed-number.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { formatNumber } from "#app/_words/format.ts";
import { type PaperState, paperStateOn, unstatedFacts } from "#lib/people/facility-gaps.ts";
import type { VenueFacts } from "#lib/people/schema.ts";

const toneOf: Record<PaperState, MarkTone> = {
  valid: "clear",
  "not yet valid": "attend",
  lapsed: "bar",
  "no end stated": "attend",
};

function figure(value: number | null): string {
  return value === null ? "–" : formatNumber(value);
}
const percent = (fraction: number | null) => (fraction === null ? null : fractionToPercent(fraction));

/** A range and its swing; each end that is not known is a dash. */
function Band({
  low,
  high,
  swing,
  unit,
  swingUnit,
}: {
  low: number | null;
  high: number | null;
  swing: number | null;
  unit: string;
  swingUnit: string;
}): ReactNode {
  if (low === null && high === null && swing === null) return <Unknown />;
  return (
    <>
      {words.range(figure(low), figure(high), unit)}; {words.swingOf(figure(swing), swingUnit)}
    </>
  );
}

function YesNo({ value }: { value: boolean | null }) {
  return value === null ? <Unknown /> : value ? words.yes : words.no;
}

function Passages({ venue: { name, passages } }: { venue: VenueFacts }) {
  if (passages.length === 0) return <EmptyState>{words.noPassage}</EmptyState>;
  return (
    <DataTable
      caption={words.wayInTo(name)}
      rows={passages.map((passage, place) => ({ ...passage, place }))}
      rowKey={({ place }) => String(place)}
      columns={[
        { key: "name", label: words.passageName, cell: ({ name }) => name },
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
        {
          key: "depth",
          label: words.depthMm,
          right: true,
          cell: ({ depthMm }) => (depthMm === null ? "" : formatNumber(depthMm)),
        },
        {
          key: "load",
          label: words.loadKg,
          right: true,
          cell: ({ loadKg }) => (loadKg === null ? "" : formatNumber(loadKg)),
        },
        {
          key: "slope",
          label: words.slopePercent,
          right: true,
          cell: ({ slopePercent }) => (slopePercent === null ? "" : formatNumber(slopePercent)),
        },
      ]}
    />
  );
}

function Licences({ venue: { name, licences }, day }: { venue: VenueFacts; day: string }) {
  if (licences.length === 0) return <p className="quiet">{words.noLicence}</p>;
  return (
    <DataTable
      caption={words.licencesOf(name)}
      rows={licences}
      rowKey={({ kind, number }) => `${kind} ${number}`}
      columns={[
        { key: "kind", label: words.licence, cell: ({ kind }) => words.licenceKinds[kind] },
        { key: "number", label: words.number, cell: ({ number }) => <span className="mono">{number}</span> },
        { key: "authority", label: words.authority, cell: ({ authority }) => authority },
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

export function VenueSection({ venue, day, mayEdit }: { venue: VenueFacts; day: string; mayEdit: boolean }) {
  const missing = unstatedFacts(venue);
  return (
    <Section
      id={`venue-${venue.id}`}
      title={venue.name}
      margin={
        <>
          {missing.length > 0 ? (
            <MarginNote outcome="attend" title={words.lacks} source={words.notKnownIsNotGood}>
              {missing.map((fact) => words.shortFacts[fact]).join(", ")}.
            </MarginNote>
          ) : (
            <MarginNote outcome="clear" title={words.allKnown} />
          )}
          {venue.reportedOn === null && <MarginNote outcome="attend" title={words.notReported} />}
        </>
      }
    >
      <Facts
        facts={[
          [words.venueKind, words.placeKinds[venue.kind]],
          [words.address, `${venue.address}, ${venue.countryCode}`],
          [words.reportedOn, <DateText key="reported" date={venue.reportedOn} />],
          [
            words.temperature,
            <Band
              key="temperature"
              low={venue.temperatureLowC}
              high={venue.temperatureHighC}
              swing={venue.temperatureSwing24hK}
              unit="°C"
              swingUnit="K"
            />,
          ],
          [
            words.humidity,
            <Band
              key="humidity"
              low={percent(venue.humidityLow)}
              high={percent(venue.humidityHigh)}
              swing={percent(venue.humiditySwing24h)}
              unit="%"
              swingUnit="%"
            />,
          ],
          [words.illuminance, <Quantity key="light" value={venue.illuminanceLx} unit="lx" />],
          [words.ultraviolet, <Quantity key="uv" value={venue.uvMicrowattPerLumen} unit="µW/lm" />],
          [
            words.open,
            venue.hoursOpenPerDay === null && venue.daysOpenPerWeek === null ? (
              <Unknown key="open" />
            ) : (
              words.openOf(figure(venue.hoursOpenPerDay), figure(venue.daysOpenPerWeek))
            ),
          ],
          ...(
            ["supervisedRoom", "restrictedView", "spillProvision", "fireDetection", "nightGuard"] as const
          ).map(
            (fact) => [words.facts[fact], <YesNo key={fact} value={venue[fact]} />] as [string, ReactNode],
          ),
        ]}
      />
      <Passages venue={venue} />
      <Licences venue={venue} day={day} />
      {mayEdit && (
        <p className="no-print">
          <Link href={`/venues/${venue.id}/edit`}>{words.editVenueTitle(venue.name)}</Link>
        </p>
      )}
    </Section>
  );
}
