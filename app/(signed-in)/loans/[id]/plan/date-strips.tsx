/**
 * The days of specimens on one line of time: the days around the loan open, the
 * loan filled, the road hatched, what is not free dashed. Places are percentages
 * of the width, so that words keep their size on a narrow page. Beside every strip
 * the same stands in words.
 */
import { Fragment } from "react";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { formatDate, formatRange } from "#app/_words/format.ts";
import styles from "#app/(signed-in)/loans/[id]/plan/date-strips.module.css";
import { addDays, daysBetween } from "#lib/platform/dates.ts";

export type Days = { startsOn: string; endsOn: string };
export type DateStrip = {
  key: string;
  label: string;
  /** What stands after the label, such as that it is not free. */
  remark?: string;
  tone: "booked" | "not held" | "not free" | "given back";
  busy: Days;
  loan: Days;
  /** Days on the road, the last one included. */
  ways: readonly Days[];
};

const mostMonths = 8;
const roadFill = "url(#road)";
const monthFormat = new Intl.DateTimeFormat("en-GB", { month: "short", timeZone: "UTC" });

function monthsWithin(from: string, days: number): { day: string; label: string }[] {
  const firsts = Array.from({ length: days + 1 }, (_, day) => addDays(from, day)).filter((day) =>
    day.endsWith("-01"),
  );
  const step = Math.max(1, Math.ceil(firsts.length / mostMonths));
  return firsts
    .filter((_, index) => index % step === 0)
    .map((day, index) => {
      const month = monthFormat.format(new Date(`${day}T00:00:00Z`));
      const showsYear = index === 0 || day.slice(5, 7) === "01";
      return { day, label: showsYear ? `${month} ${day.slice(0, 4)}` : month };
    });
}

function stripWords({ label, remark, tone, busy, loan }: DateStrip): string {
  return [
    label,
    remark,
    `${(tone === "booked" ? words.busy : words.wouldBeBusy).toLowerCase()}: ${formatRange(busy.startsOn, busy.endsOn)}`,
    `${words.loanDays.toLowerCase()}: ${formatRange(loan.startsOn, loan.endsOn)}`,
  ]
    .filter(Boolean)
    .join(", ");
}

export function DateStrips({ strips, today }: { strips: readonly DateStrip[]; today: string }) {
  const [first] = [...strips].map((strip) => strip.busy.startsOn).sort();
  const last = [...strips]
    .map((strip) => strip.busy.endsOn)
    .sort()
    .at(-1);
  if (first === undefined || last === undefined) return null;
  const margin = Math.max(7, Math.round(daysBetween(first, last) / 20));
  const from = addDays(first, -margin);
  const days = daysBetween(from, addDays(last, margin));
  const at = (day: string) => `${((daysBetween(from, day) / days) * 100).toFixed(3)}%`;
  const span = ({ startsOn, endsOn }: Days) =>
    `${((Math.max(0, daysBetween(startsOn, endsOn)) / days) * 100).toFixed(3)}%`;
  const months = monthsWithin(from, days);
  const showsToday = today >= from && today <= addDays(from, days);
  const rules = months.map(({ day }) => (
    <line key={day} x1={at(day)} x2={at(day)} y1="0" y2="100%" className={styles.month} />
  ));
  const todayRule = showsToday && (
    <line x1={at(today)} x2={at(today)} y1="0" y2="100%" className={styles.today} />
  );

  return (
    <figure className={styles.strips}>
      <svg width="100%" height="18" aria-hidden="true">
        <defs>
          <pattern id="road" width="5" height="5" patternUnits="userSpaceOnUse">
            <path d="M0 5 5 0" className={styles.hatch} />
          </pattern>
        </defs>
        {rules}
        {months.map(({ day, label }) => (
          <text key={day} x={at(day)} dx="4" y="13" className={styles.name}>
            {label}
          </text>
        ))}
      </svg>
      {strips.map((strip) => (
        <Fragment key={strip.key}>
          <p className={styles.label}>
            <span className="mono">{strip.label}</span>
            {strip.remark && <span className="quiet">, {strip.remark}</span>}
          </p>
          <svg width="100%" height="20" role="img" aria-label={stripWords(strip)}>
            <title>{stripWords(strip)}</title>
            {rules}
            <rect
              x={at(strip.busy.startsOn)}
              width={span(strip.busy)}
              y="3"
              height="14"
              className={strip.tone === "not free" ? styles.taken : styles.buffer}
            />
            {(strip.tone === "booked" || strip.tone === "not held") && (
              <rect
                x={at(strip.loan.startsOn)}
                width={span(strip.loan)}
                y="3"
                height="14"
                className={styles.loan}
              />
            )}
            {strip.ways.map((way) => (
              <rect
                key={way.startsOn}
                x={at(way.startsOn)}
                width={span(way)}
                y="3"
                height="14"
                fill={roadFill}
                className={styles.way}
              />
            ))}
            {todayRule}
          </svg>
        </Fragment>
      ))}
      <figcaption className={styles.legend}>
        {(["buffer", "loan", "way", "taken"] as const)
          .filter((kind) => kind !== "taken" || strips.some((strip) => strip.tone === "not free"))
          .filter((kind) => kind !== "way" || strips.some((strip) => strip.ways.length > 0))
          .map((kind) => (
            <span key={kind}>
              <svg width="26" height="12" aria-hidden="true">
                <rect
                  x="1"
                  y="1"
                  width="24"
                  height="10"
                  fill={kind === "way" ? roadFill : undefined}
                  className={styles[kind]}
                />
              </svg>
              {words.legend[kind]}
            </span>
          ))}
        {showsToday && (
          <span>
            <svg width="12" height="12" aria-hidden="true">
              <line x1="6" x2="6" y1="0" y2="12" className={styles.today} />
            </svg>
            {words.today.toLowerCase()}, {formatDate(today)}
          </span>
        )}
      </figcaption>
    </figure>
  );
}
