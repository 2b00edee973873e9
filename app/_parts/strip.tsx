/**
 * A year in a row: filled where a specimen is free, open where it is promised, a
 * tick at the first of each month. What the eye sees stands in words beside it for
 * whoever does not see it.
 */
import { formatRange } from "#app/_words/format.ts";
import { addDays, daysBetween } from "#lib/platform/dates.ts";

export type Period = { startsOn: string; endsOn: string };

const width = 156;
const height = 14;

export function Strip({
  label,
  from,
  until,
  free,
}: {
  label: string;
  from: string;
  until: string;
  free: readonly Period[];
}) {
  const days = daysBetween(from, until);
  const at = (day: string) => (daysBetween(from, day) / days) * width;
  const months = Array.from({ length: days + 1 }, (_, day) => addDays(from, day)).filter((day) =>
    day.endsWith("-01"),
  );
  const words =
    free.length === 0
      ? `${label}: not free`
      : `${label} free: ${free.map((period) => formatRange(period.startsOn, period.endsOn)).join("; ")}`;
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label={words}
      style={{ minWidth: width, verticalAlign: "middle" }}
    >
      <title>{words}</title>
      <rect
        x="0.5"
        y="3.5"
        width={width - 1}
        height="7"
        fill="none"
        stroke="var(--quiet)"
        strokeWidth="0.7"
        strokeDasharray="2 2"
      />
      {free.map((period) => (
        <rect
          key={period.startsOn}
          x={at(period.startsOn)}
          y="3"
          width={Math.max(1, at(period.endsOn) - at(period.startsOn))}
          height="8"
          fill="var(--accent)"
        />
      ))}
      {months.map((month) => (
        <path key={month} d={`M${at(month)} 0V14`} stroke="var(--ground)" strokeWidth="1" />
      ))}
    </svg>
  );
}
