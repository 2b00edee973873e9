/**
 * Cover over the whole way, nail to nail, on a line of time: filled where
 * certificates reach, dashed where they do not, and each certificate by itself
 * below. The table says the same in words, by stage of the way.
 */
import { DataTable } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { coverLineWords as words } from "#app/_words/en/loan-time.ts";
import { formatMoment, formatMoney } from "#app/_words/format.ts";
import { numbersInWords } from "#app/_words/number-range.ts";
import styles from "#app/(signed-in)/loans/[id]/plan/plan.module.css";
import { isLive } from "#lib/loans/loan-state.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { CoverPart } from "#lib/suitability/cover-gaps.ts";

const hoursOf = ({ from, to }: Pick<CoverPart, "from" | "to">) =>
  (Date.parse(to) - Date.parse(from)) / 3_600_000;

/** The first part on the road leads out; what follows the stay leads home. */
function stageOf(parts: readonly CoverPart[], index: number): string {
  if (!parts[index]?.isTransit) return words.stay;
  return parts.slice(0, index).some((part) => !part.isTransit) ? words.home : words.out;
}

function partWords(part: CoverPart, stage: string): string {
  const state = part.reason === null ? words.covered : words.reasons[part.reason];
  return `${stage}, ${formatMoment(part.from)} – ${formatMoment(part.to)}: ${state}`;
}

export function CoverLine({ loan }: { loan: LoanSheet }) {
  const parts = loan.time.cover ?? [];
  const covers = loan.covers ?? [];
  const [first] = parts;
  const last = parts.at(-1);
  if (!first || !last) return null;
  const currency = loan.coverNeeded?.currency ?? covers[0]?.currency ?? null;
  const [from, to] = [Date.parse(first.from), Date.parse(last.to)];
  const at = (moment: string) =>
    Math.max(0, Math.min(100, ((Date.parse(moment) - from) / (to - from)) * 100));
  const place = (start: string, end: string) => ({
    x: `${at(start).toFixed(3)}%`,
    width: `${Math.max(0.4, at(end) - at(start)).toFixed(3)}%`,
  });
  const gaps = parts.filter(({ reason }) => reason !== null).length;
  const rows = parts.map((part, index) => ({ part, stage: stageOf(parts, index) }));
  const numbers = loan.lines.filter((line) => isLive(line.state)).map((line) => line.accessionNumber);
  return (
    <>
      <figure className={styles.strip}>
        <p className={styles.label}>
          {words.title}. {words.specimens(numbersInWords(numbers, 3))}
        </p>
        <svg
          width="100%"
          height={22 + covers.length * 12}
          role="img"
          aria-label={`${words.title}: ${rows.map(({ part, stage }) => partWords(part, stage)).join("; ")}`}
        >
          <title>{words.title}</title>
          {rows.map(({ part, stage }) => (
            <rect
              key={part.from}
              {...place(part.from, part.to)}
              y="2"
              height="14"
              className={part.reason === null ? styles.covered : styles.gap}
            >
              <title>{partWords(part, stage)}</title>
            </rect>
          ))}
          {covers.map((cover, index) =>
            at(cover.endsAt) <= 0 || at(cover.startsAt) >= 100 ? null : (
              <rect
                key={cover.id}
                {...place(cover.startsAt, cover.endsAt)}
                y={22 + index * 12}
                height="6"
                className={styles.certificate}
              >
                <title>{cover.insurer}</title>
              </rect>
            ),
          )}
        </svg>
        <figcaption className={styles.legend}>
          {(["covered", "gap"] as const).map((kind) => (
            <span key={kind}>
              <svg width="26" height="12" aria-hidden="true">
                <rect x="1" y="1" width="24" height="10" className={styles[kind]} />
              </svg>
              {words.legend[kind]}
            </span>
          ))}
          <span>{words.gaps(gaps)}</span>
        </figcaption>
      </figure>
      <DataTable
        caption={words.caption}
        captionHidden
        dense
        rows={rows}
        rowKey={({ part }) => part.from}
        columns={[
          { key: "stage", label: words.stage, cell: ({ stage }) => stage },
          { key: "from", label: words.from, cell: ({ part }) => <Moment at={part.from} /> },
          { key: "until", label: words.until, cell: ({ part }) => <Moment at={part.to} /> },
          { key: "where", label: words.where, cell: ({ part }) => part.territories.join(", ") },
          {
            key: "sum",
            label: words.inForce,
            right: true,
            cell: ({ part }) =>
              currency === null || part.coveredMinor === 0
                ? null
                : formatMoney({ minor: part.coveredMinor, currency }),
          },
          {
            key: "state",
            label: words.state,
            cell: ({ part }) =>
              part.reason === null ? (
                <StateMark outcome="clear">{words.covered}</StateMark>
              ) : (
                <StateMark outcome="bar">{`${words.reasons[part.reason]}, ${words.hours(hoursOf(part))}`}</StateMark>
              ),
          },
        ]}
      />
    </>
  );
}
