/** One venue with the facts a lender asks for; what nobody stated is named in the margin. */
import Link from "next/link";
import type { ReactNode } from "react";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Quantity, Unknown } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { fractionToPercent } from "#app/_parts/typed-number.ts";
import { facilityWords } from "#app/_words/en/facility.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { formatNumber } from "#app/_words/format.ts";
import { Licences, Passages } from "#app/(signed-in)/institutions/venue-tables.tsx";
import { unstatedFacts } from "#lib/people/facility-gaps.ts";
import type { VenueFacts } from "#lib/people/schema.ts";

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
          [words.subdivision, venue.subdivisionCode ?? <Unknown key="subdivision" />],
          venue.town !== "" && [words.town, venue.town],
          [words.floorLoad, <Quantity key="floor" value={venue.floorLoadKgPerM2} unit="kg/m²" />],
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
      <Passages name={venue.name} passages={venue.passages} />
      <Licences name={venue.name} licences={venue.licences} day={day} />
      <p className="no-print">
        <Link href={`/venues/${venue.id}`}>{facilityWords.reportOf(venue.name)}</Link>
        {mayEdit && (
          <>
            {", "}
            <Link href={`/venues/${venue.id}/edit`}>{words.editVenueTitle(venue.name)}</Link>
          </>
        )}
      </p>
    </Section>
  );
}
