/** What is kept of the chosen venue and of the institution, to be looked at and confirmed instead of typed again. */
import Link from "next/link";
import { Facts } from "#app/_parts/facts.tsx";
import { keptFactsWords as words } from "#app/_words/en/borrow.ts";
import { formatDate, formatNumber } from "#app/_words/format.ts";
import { countryName } from "#app/_words/readable.ts";
import type { KeptFacts as Kept, KeptPaper } from "#lib/people/queries/kept-facts.ts";

/** The facts of all venues that may be chosen, and where what no longer holds is corrected. */
export type KeptOfBorrower = {
  venues: readonly Kept[];
  /** Null for who may not change them. */
  correct: { institutionId: string } | null;
};

function climateOf({ climate }: Kept): string {
  if (climate === null) return "";
  const { temperatureLowC, temperatureHighC, humidityLow, humidityHigh, illuminanceLx } = climate;
  const percent = (share: number) => formatNumber(share * 100);
  const known = [
    temperatureLowC !== null &&
      temperatureHighC !== null &&
      words.temperature(formatNumber(temperatureLowC), formatNumber(temperatureHighC)),
    humidityLow !== null &&
      humidityHigh !== null &&
      words.humidity(percent(humidityLow), percent(humidityHigh)),
    illuminanceLx !== null && words.light(formatNumber(illuminanceLx)),
  ].filter(Boolean);
  return known.length > 0 ? known.join(", ") : words.climateUnknown;
}

function papersOf(papers: readonly KeptPaper[]): string {
  if (papers.length === 0) return words.nonePapers;
  return papers
    .map(({ what, number, validUntil }) =>
      words.paper([what, number].filter(Boolean).join(" "), validUntil && formatDate(validUntil)),
    )
    .join("; ");
}

export function KeptFacts({ kept, venueId }: { kept: KeptOfBorrower; venueId: string }) {
  const venue = kept.venues.find((one) => one.venueId === venueId);
  if (!venue) return <p className="quiet">{words.noVenue}</p>;
  const { report, reportedOn } = venue;
  return (
    <>
      <Facts
        facts={[
          [words.address, `${venue.address}, ${countryName(venue.countryCode)}`],
          venue.climate !== null && [words.climate, climateOf(venue)],
          [words.wayIn, words.passages(venue.passages)],
          [
            words.reportedOn,
            reportedOn === null ? words.notReported : words.reported(formatDate(reportedOn)),
          ],
          [
            words.report,
            report === null
              ? words.noReport
              : words.reportOf(report.version, formatDate(report.reportedOn), formatDate(report.validUntil)),
          ],
          [words.licences, papersOf(venue.licences)],
          [words.insurances, papersOf(venue.insurances)],
        ]}
      />
      {kept.correct ? (
        <p>
          <Link href={`/venues/${venueId}/report`}>{words.correctVenue}</Link>
          {" · "}
          <Link href={`/institutions/${kept.correct.institutionId}`}>{words.correctInstitution}</Link>
        </p>
      ) : (
        <p className="quiet small">{words.byRegistrar}</p>
      )}
    </>
  );
}
