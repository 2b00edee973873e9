/** What loggers wrote at a venue: curves against the default limits, how each record stands, and how it was read. */
import { ClimateCurve, type CurveLimits } from "#app/_parts/climate-curve.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { formatNumber } from "#app/_words/format.ts";
import type {
  JudgedLine,
  JudgedQuantity,
  Judgement,
  ReadingLimits,
} from "#lib/environment/logger-judgement.ts";
import { type CurveQuantity, curveQuantities, type JudgedRecord } from "#lib/loans/climate-record.ts";
import type { ClimateRecordSheet } from "#lib/loans/queries/climate-records.ts";

const isShare = (quantity: JudgedQuantity) => quantity === "humidity" || quantity === "humidityChange24h";
const figure = (quantity: JudgedQuantity, value: number) =>
  formatNumber(Math.round(value * (isShare(quantity) ? 100 : 1) * 10) / 10);

function limitText({ quantity, clearWithin }: JudgedLine): string {
  if (clearWithin === null) return words.noLimit;
  if (typeof clearWithin === "number") return words.atMost(figure(quantity, clearWithin));
  return words.bandOf(figure(quantity, clearWithin.low), figure(quantity, clearWithin.high));
}

function JudgementTable({ caption, judgement }: { caption: string; judgement: Judgement }) {
  const { lines, gaps, gapHours, lightLxHours } = judgement;
  return (
    <>
      <DataTable<JudgedLine>
        caption={caption}
        dense
        rows={lines}
        rowKey={(line) => line.quantity}
        columns={[
          { key: "quantity", label: words.quantity, cell: (line) => words.quantities[line.quantity] },
          {
            key: "lowest",
            label: words.lowest,
            right: true,
            cell: (line) => (line.lowest === null ? "" : figure(line.quantity, line.lowest)),
          },
          {
            key: "highest",
            label: words.highest,
            right: true,
            cell: (line) => figure(line.quantity, line.highest),
          },
          { key: "limit", label: words.limit, right: true, cell: limitText },
          {
            key: "outside",
            label: words.outside,
            right: true,
            cell: (line) => formatNumber(Math.round(line.hoursOutsideWarn * 10) / 10),
          },
          { key: "judged", label: words.judged, cell: (line) => <StateMark outcome={line.outcome} /> },
        ]}
      />
      <p className="small">
        {gaps.length > 0 && (
          <>
            <StateMark outcome="attend" />{" "}
          </>
        )}
        {words.gaps(gaps.length, formatNumber(Math.round(gapHours * 10) / 10))}{" "}
        {lightLxHours !== null && words.light(formatNumber(Math.round(lightLxHours)))}
      </p>
    </>
  );
}

function curveLimits(quantity: CurveQuantity, limits: ReadingLimits): CurveLimits {
  const limit = limits[quantity].warn;
  if (limit === null) return { low: null, high: null };
  return typeof limit === "number" ? { low: null, high: limit } : limit;
}

function Curves({ name, judged }: { name: string; judged: JudgedRecord }) {
  // The last stands for the loan that is there, where one is; its limits are the narrower ones.
  const limits = judged.judgements.at(-1)?.limits;
  if (limits === undefined) return null;
  return curveQuantities.map((quantity) => {
    const points = judged.curves[quantity];
    if (points.length === 0) return null;
    const times = isShare(quantity) ? 100 : 1;
    const scaled = points.map(({ at, low, high }) => ({ at, low: low * times, high: high * times }));
    const { low, high } = curveLimits(quantity, limits);
    const bounds = { low: low === null ? null : low * times, high: high === null ? null : high * times };
    const shown = (value: number | null) =>
      value === null ? "–" : formatNumber(Math.round(value * 10) / 10);
    const label = `${words.curveOf(words.quantities[quantity], name)}, ${words.curveText(
      shown(Math.min(...scaled.map((point) => point.low))),
      shown(Math.max(...scaled.map((point) => point.high))),
      words.bandOf(shown(bounds.low), shown(bounds.high)),
    )}`;
    return (
      <figure key={quantity} style={{ margin: 0 }}>
        <figcaption className="small">{words.quantities[quantity]}</figcaption>
        <ClimateCurve points={scaled} limits={bounds} label={label} />
      </figure>
    );
  });
}

function clockText(minutes: number): string {
  const size = Math.abs(minutes);
  return `${minutes < 0 ? "−" : "+"}${String(Math.floor(size / 60)).padStart(2, "0")}:${String(size % 60).padStart(2, "0")}`;
}

function HowRead({ how }: Pick<JudgedRecord, "how">) {
  return (
    <details>
      <summary>{words.howRead}</summary>
      <p>
        {words.howOf({
          separator: words.separators[how.separator],
          decimal: words.decimals[how.decimal],
          line: how.headerLine,
          order: words.orders[how.dateOrder],
          clock: clockText(how.utcOffsetMinutes),
        })}{" "}
        {how.columns.map(({ head, as }) => words.columnAs(head, as)).join("; ")}.{" "}
        {words.passedOver(how.passedOver)}
      </p>
    </details>
  );
}

export function Records({ venueId, records }: { venueId: string; records: readonly ClimateRecordSheet[] }) {
  if (records.length === 0) return <EmptyState>{words.noRecords}</EmptyState>;
  return records.map(({ id, name, startsAt, endsAt, readingCount, judged }) => (
    <section key={id} aria-labelledby={`record-${id}`}>
      <h3 id={`record-${id}`}>{name}</h3>
      <p className="small">
        <Moment at={startsAt} long /> – <Moment at={endsAt} long />; {words.readings}:{" "}
        {formatNumber(readingCount)}.{" "}
        <a className="no-print" href={`/venues/${venueId}/records/${id}`} download>
          {words.download}
          <span className="visually-hidden">: {name}</span>
        </a>
      </p>
      <Curves name={name} judged={judged} />
      {judged.judgements.map(({ loan, judgement }) => (
        <JudgementTable
          key={loan?.id ?? "default"}
          caption={loan ? words.againstLoan(loan.number, loan.specimens) : words.againstDefault}
          judgement={judgement}
        />
      ))}
      <HowRead how={judged.how} />
    </section>
  ));
}
