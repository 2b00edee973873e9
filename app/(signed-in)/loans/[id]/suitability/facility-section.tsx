/** The venue against what the specimens on the loan need: only what deviates, and until when the report counts. */
import Link from "next/link";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Numbers } from "#app/_parts/numbers.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { formatDate, formatNumber } from "#app/_words/format.ts";
import type { ClimateComparison } from "#lib/environment/venue-climate.ts";
import type { FacilityOfLoan } from "#lib/loans/queries/facility-needs.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

type Row = { key: string; need: string; stands: string; outcome: Outcome; specimens: readonly string[] };

const quantityWord = ({ quantity }: ClimateComparison) =>
  quantity === "lightLxHoursPerYear" ? words.lightOfYear : words.quantities[quantity];

function bounds(
  { quantity }: ClimateComparison,
  { low, high }: { low: number | null; high: number | null },
): string {
  const times = quantity === "humidity" || quantity === "humidityChange24h" ? 100 : 1;
  const figure = (value: number | null) =>
    value === null ? words.notKnown : formatNumber(Math.round(value * times * 10) / 10);
  if (low === null && high === null) return words.notKnown;
  const hasLow = quantity === "temperatureC" || quantity === "humidity";
  return hasLow ? words.climateStated(figure(low), figure(high)) : figure(high);
}

function neededText(comparison: ClimateComparison): string {
  const { clearWithin } = comparison;
  if (clearWithin === null) return words.noLimit;
  const text = bounds(comparison, clearWithin);
  return clearWithin.low === null ? words.atMost(text) : text;
}

function rowsOf({ needs, climate }: FacilityOfLoan): Row[] {
  return [
    ...climate.map((comparison) => ({
      key: comparison.quantity,
      need: `${quantityWord(comparison)}: ${neededText(comparison)}`,
      stands: bounds(comparison, comparison.stated),
      outcome: comparison.outcome,
      specimens: [],
    })),
    ...needs.map(({ need, state, specimens }) => ({
      key: need,
      need: words.needs[need],
      stands: state === "lacking" ? words.lacking : words.notKnown,
      outcome: "attend" as const,
      specimens,
    })),
  ];
}

export function FacilitySection({
  facility,
  today,
  fold,
}: {
  facility: FacilityOfLoan;
  today: string;
  fold?: string | undefined;
}) {
  const { report, venueId, venue } = facility;
  const rows = rowsOf(facility);
  return (
    <Section
      id="facility"
      title={words.needsTitle}
      fold={fold}
      margin={
        report === null ? (
          <MarginNote outcome="attend" title={words.needsNoReport} />
        ) : (
          <MarginNote
            outcome={report.validUntil > today ? "clear" : "attend"}
            title={
              report.validUntil > today
                ? words.needsReport(report.version, formatDate(report.reportedOn))
                : words.noLonger(report.version)
            }
            source={`${words.countsUntil} ${formatDate(report.validUntil)}`}
          />
        )
      }
    >
      {rows.length === 0 ? (
        <p>
          <StateMark outcome="clear" /> {words.needsNone}
        </p>
      ) : (
        <>
          <p>{words.needsAbout}</p>
          <DataTable<Row>
            caption={words.needsTitle}
            captionHidden
            rows={rows}
            rowKey={({ key }) => key}
            columns={[
              { key: "need", label: words.need, cell: ({ need }) => need },
              { key: "stands", label: words.stands, cell: ({ stands }) => stands },
              { key: "judged", label: words.judged, cell: ({ outcome }) => <StateMark outcome={outcome} /> },
              {
                key: "by",
                label: words.neededBy,
                cell: ({ specimens }) =>
                  specimens.length === 0 ? words.wholeLoan : <Numbers numbers={[...specimens]} most={3} />,
              },
            ]}
          />
        </>
      )}
      <p className="no-print">
        <Link href={`/venues/${venueId}`}>
          {words.openReport}
          <span className="visually-hidden">: {venue}</span>
        </Link>
      </p>
    </Section>
  );
}
