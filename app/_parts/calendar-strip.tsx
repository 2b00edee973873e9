/**
 * Months in a row, with what lies on them: one line for each specimen or loan. What
 * the eye reads by shape (full, open, hatched, dashed) stands as words in the table
 * under it, which a screen reader gets instead of the drawing.
 */
import styles from "#app/_parts/calendar-strip.module.css";
import { shellWords } from "#app/_words/en/shell.ts";
import { formatRange } from "#app/_words/format.ts";
import { addDays, daysBetween } from "#lib/platform/dates.ts";

export const stripKinds = ["free", "away", "around", "held", "barred"] as const;
export type StripKind = (typeof stripKinds)[number];

/** Half-open: the last day is the first that no longer belongs to it. */
export type StripPeriod = { startsOn: string; endsOn: string; kind: StripKind; word?: string | undefined };
export type StripRow = {
  key: string;
  label: string;
  href?: string | undefined;
  periods: readonly StripPeriod[];
};

const monthFormat = new Intl.DateTimeFormat("en-GB", { month: "short", timeZone: "UTC" });

function monthsOf(from: string, until: string): string[] {
  const days = Math.max(0, daysBetween(from, until));
  return Array.from({ length: days + 1 }, (_, day) => addDays(from, day)).filter((day) =>
    day.endsWith("-01"),
  );
}

/** Every how many months a name stands, so that none touches the next at the narrowest. */
function namedEvery(count: number): number {
  return count <= 7 ? 1 : count <= 14 ? 2 : 3;
}

export function CalendarStrip({
  title,
  from,
  until,
  today,
  rows,
}: {
  title: string;
  from: string;
  until: string;
  today?: string | undefined;
  rows: readonly StripRow[];
}) {
  const days = daysBetween(from, until);
  if (!(days > 0)) return null;
  const at = (day: string): number => Math.min(100, Math.max(0, (daysBetween(from, day) / days) * 100));
  const months = monthsOf(from, until);
  const every = namedEvery(months.length);
  const kinds = stripKinds.filter((kind) =>
    rows.some((row) => row.periods.some((period) => period.kind === kind)),
  );
  const todayAt = today !== undefined && today >= from && today < until ? at(today) : null;
  return (
    <figure className={styles.strip}>
      <div className={styles.drawing} aria-hidden="true">
        <div className={styles.months}>
          {months.map((month, position) =>
            position % every === 0 && at(month) < 95 ? (
              <svg key={month} className={styles.month} aria-hidden="true">
                <text x={`${at(month)}%`} dx="3" y="11">
                  {monthFormat.format(new Date(`${month}T00:00:00Z`))}
                  {(month.endsWith("-01-01") || position === 0) && ` ${month.slice(0, 4)}`}
                </text>
              </svg>
            ) : null,
          )}
        </div>
        {rows.map((row) => (
          <div key={row.key} className={styles.row}>
            {rows.length > 1 && <span className={styles.label}>{row.label}</span>}
            <svg className={styles.line} aria-hidden="true">
              {months.map((month) => (
                <line
                  key={month}
                  className={styles.tick}
                  x1={`${at(month)}%`}
                  x2={`${at(month)}%`}
                  y1="0"
                  y2="22"
                />
              ))}
              {row.periods.map((period) => (
                <rect
                  key={`${period.startsOn} ${period.endsOn} ${period.kind}`}
                  className={styles[period.kind]}
                  x={`${at(period.startsOn)}%`}
                  width={`${Math.max(0.3, at(period.endsOn) - at(period.startsOn))}%`}
                  y="4"
                  height="14"
                />
              ))}
              {todayAt !== null && (
                <line className={styles.today} x1={`${todayAt}%`} x2={`${todayAt}%`} y1="0" y2="22" />
              )}
            </svg>
          </div>
        ))}
      </div>
      <figcaption className={styles.legend} aria-hidden="true">
        {kinds.map((kind) => (
          <span key={kind}>
            <svg viewBox="0 0 22 10" width="22" height="10" aria-hidden="true">
              <rect className={styles[kind]} x="1" y="1" width="20" height="8" />
            </svg>
            {shellWords.stripKinds[kind]}
          </span>
        ))}
        {todayAt !== null && (
          <span>
            <svg viewBox="0 0 4 10" width="4" height="10" aria-hidden="true">
              <line className={styles.today} x1="2" x2="2" y1="0" y2="10" />
            </svg>
            {shellWords.today}
          </span>
        )}
      </figcaption>
      <details className={styles.words}>
        <summary>{shellWords.asTable}</summary>
        <table>
          <caption className="visually-hidden">{title}</caption>
          <thead>
            <tr>
              <th scope="col">{shellWords.what}</th>
              <th scope="col">{shellWords.days}</th>
              <th scope="col">{shellWords.standing}</th>
            </tr>
          </thead>
          <tbody>
            {rows.flatMap((row) =>
              row.periods.map((period) => (
                <tr key={`${row.key} ${period.startsOn} ${period.endsOn} ${period.kind}`}>
                  <th scope="row">
                    {row.href === undefined ? row.label : <a href={row.href}>{row.label}</a>}
                  </th>
                  <td>{formatRange(period.startsOn, period.endsOn)}</td>
                  <td>{period.word ?? shellWords.stripKinds[period.kind]}</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
