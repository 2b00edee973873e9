/**
 * The plan on a line of time: each step a mark on its last day, filled where it is
 * done, a square where it has passed, a triangle where it is due, open where it is
 * to come. Marks that would touch stand below each other. The table beside it says
 * the same in words.
 */

import { planStepNames, planWords as words } from "#app/_words/en/loan-time.ts";
import { formatDate } from "#app/_words/format.ts";
import styles from "#app/(signed-in)/loans/[id]/plan/plan.module.css";
import type { PlanRow } from "#lib/loans/backward-plan.ts";
import { addDays, daysBetween } from "#lib/platform/dates.ts";

type Tone = keyof typeof words.legend;

export const toneOf = ({ done, outcome }: Pick<PlanRow, "done" | "outcome">): Tone =>
  done === null ? outcome : "done";

const lanes = 3;
const laneHeight = 16;
/** Further right a month's name would not fit on a narrow page. */
const lastName = 0.8;

function Mark({ tone }: { tone: Tone }) {
  if (tone === "bar") return <path d="M-4.5-4.5h9v9h-9z" className={styles.bar} />;
  if (tone === "attend") return <path d="M0-5 5 4H-5z" className={styles.attend} />;
  return <circle r="4.2" className={tone === "done" ? styles.done : styles.clear} />;
}

const monthFormat = new Intl.DateTimeFormat("en-GB", { month: "short", year: "numeric", timeZone: "UTC" });

export function PlanStrip({ rows, today }: { rows: readonly PlanRow[]; today: string }) {
  const days = [...rows.map(({ lastDay }) => lastDay), today].sort();
  const from = addDays(days[0] ?? today, -10);
  const length = Math.max(1, daysBetween(from, days.at(-1) ?? today) + 10);
  const share = (day: string) => daysBetween(from, day) / length;
  const at = (day: string) => `${(share(day) * 100).toFixed(3)}%`;
  const firsts = Array.from({ length: length + 1 }, (_, day) => addDays(from, day)).filter((day) =>
    day.endsWith("-01"),
  );
  const every = Math.max(1, Math.ceil(firsts.length / 6));
  const said = rows
    .map((row) => `${planStepNames[row.step]} ${formatDate(row.lastDay)}, ${words.legend[toneOf(row)]}`)
    .join("; ");
  return (
    <figure className={styles.strip}>
      <svg width="100%" height={20 + lanes * laneHeight} role="img" aria-label={`${words.strip}: ${said}`}>
        <title>{words.strip}</title>
        {firsts
          .filter((_, index) => index % every === 0)
          .map((day) => (
            <g key={day}>
              <line x1={at(day)} x2={at(day)} y1="0" y2="100%" className={styles.month} />
              {share(day) < lastName && (
                <text x={at(day)} dx="4" y="12" className={styles.name}>
                  {monthFormat.format(new Date(`${day}T00:00:00Z`))}
                </text>
              )}
            </g>
          ))}
        <line x1={at(today)} x2={at(today)} y1="0" y2="100%" className={styles.today} />
        {rows.map((row, index) => (
          <svg key={row.step} x={at(row.lastDay)} y={26 + (index % lanes) * laneHeight} overflow="visible">
            <title>{`${planStepNames[row.step]}, ${formatDate(row.lastDay)}`}</title>
            <Mark tone={toneOf(row)} />
          </svg>
        ))}
      </svg>
      <figcaption className={styles.legend}>
        {(Object.keys(words.legend) as Tone[])
          .filter((tone) => rows.some((row) => toneOf(row) === tone))
          .map((tone) => (
            <span key={tone}>
              <svg width="12" height="12" viewBox="-6 -6 12 12" aria-hidden="true">
                <Mark tone={tone} />
              </svg>
              {words.legend[tone]}
            </span>
          ))}
      </figcaption>
    </figure>
  );
}
