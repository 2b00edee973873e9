/**
 * Some days in a row: filled where a specimen is free, open where it is promised, a
 * tick at the first of each month. The days that somebody looks for stand in a
 * frame, the days around them on a thin line. What the eye sees stands in words
 * beside it for whoever does not see it.
 */
import type { ReactNode } from "react";
import styles from "#app/_parts/strip.module.css";
import { stripWords as words } from "#app/_words/en/specimens.ts";
import { formatRange } from "#app/_words/format.ts";
import { addDays, daysBetween } from "#lib/platform/dates.ts";

export type Period = { startsOn: string; endsOn: string };

const width = 156;
const barHeight = 14;
const lettersHeight = 9;
/** A month narrower than this has no room for its letter. */
const narrowestMonth = 9;
/** Half of a year's four figures, so that they stay within the strip. */
const halfYear = 11;

const monthLetters = "JFMAMJJASOND";
const letterOf = (month: string) => monthLetters[Number(month.slice(5, 7)) - 1] ?? "";

type Window = { from: string; until: string };

function scaleOf({ from, until }: Window) {
  const days = daysBetween(from, until);
  return (day: string) => (Math.max(0, Math.min(days, daysBetween(from, day))) / days) * width;
}

/** The first days of months within the window. */
export function monthsWithin({ from, until }: Window): string[] {
  const months: string[] = [];
  let month = `${from.slice(0, 7)}-01`;
  if (month < from) month = `${addDays(month, 31).slice(0, 7)}-01`;
  for (; month < until; month = `${addDays(month, 31).slice(0, 7)}-01`) months.push(month);
  return months;
}

/** The letters of the months, in the middle of each; the year where months are too narrow. */
function Letters({ y, ...window }: Window & { y: number }) {
  const at = scaleOf(window);
  const months = monthsWithin(window);
  const isNarrow = width / Math.max(1, months.length) < narrowestMonth;
  const marks = isNarrow ? months.filter((month) => month.endsWith("-01-01")) : months;
  return (
    <g className={styles.letters}>
      {marks.map((month) => {
        const middle = isNarrow
          ? Math.min(width - halfYear, Math.max(halfYear, at(month)))
          : (at(month) + at(addDays(month, 30))) / 2;
        return (
          <text key={month} x={middle} y={y}>
            {isNarrow ? month.slice(0, 4) : letterOf(month)}
          </text>
        );
      })}
    </g>
  );
}

function Bar({ x, end }: { x: number; end: number }) {
  return <rect x={x} y="3" width={Math.max(1, end - x)} height="8" fill="var(--accent)" />;
}

function Ground({ end }: { end: number }) {
  return (
    <rect
      x="0.5"
      y="3.5"
      width={end - 1}
      height="7"
      fill="none"
      stroke="var(--quiet)"
      strokeWidth="0.7"
      strokeDasharray="2 2"
    />
  );
}

function Frame({ x, end }: { x: number; end: number }) {
  return (
    <rect
      x={x}
      y="1"
      width={Math.max(2, end - x)}
      height="12"
      fill="none"
      stroke="var(--ink)"
      strokeWidth="1.6"
    />
  );
}

function Around({ x, end }: { x: number; end: number }) {
  return <path d={`M${x} 13H${end}`} stroke="var(--ink)" strokeWidth="1.4" />;
}

export function Strip({
  label,
  from,
  until,
  free,
  asked,
  around,
}: {
  label: string;
  from: string;
  until: string;
  free: readonly Period[];
  /** The days that somebody looks for. */
  asked?: Period | undefined;
  /** The same with the days around them. */
  around?: Period | undefined;
}) {
  const window = { from, until };
  const at = scaleOf(window);
  const text = words.strip(
    label,
    formatRange(from, until),
    free.map((period) => formatRange(period.startsOn, period.endsOn)),
  );
  return (
    <svg
      viewBox={`0 0 ${width} ${barHeight}`}
      width={width}
      height={barHeight}
      role="img"
      aria-label={text}
      className={styles.strip}
    >
      <title>{text}</title>
      <Ground end={width} />
      {free.map((period) => (
        <Bar key={period.startsOn} x={at(period.startsOn)} end={at(period.endsOn)} />
      ))}
      {monthsWithin(window).map((month) => (
        <path key={month} d={`M${at(month)} 0V${barHeight}`} stroke="var(--ground)" strokeWidth="1" />
      ))}
      {around && <Around x={at(around.startsOn)} end={at(around.endsOn)} />}
      {asked && <Frame x={at(asked.startsOn)} end={at(asked.endsOn)} />}
      <Letters {...window} y={barHeight + 7} />
    </svg>
  );
}

/** The head of a column of strips: what they cover, and the letters of the months above them. */
export function StripScale({ label, from, until }: { label: string; from: string; until: string }) {
  return (
    <>
      {label}
      <svg
        viewBox={`0 0 ${width} ${lettersHeight}`}
        width={width}
        height={lettersHeight}
        aria-hidden="true"
        style={{ display: "block" }}
      >
        <Letters from={from} until={until} y={7} />
      </svg>
    </>
  );
}

const sample = 22;

/** What the marks of the strips mean. */
export function StripLegend({
  asked = false,
  toBeHad = false,
}: {
  asked?: boolean;
  /** Whether the days around a loan are taken off the free days. */
  toBeHad?: boolean;
}) {
  const sign = (children: ReactNode) => (
    <svg viewBox={`0 0 ${sample} ${barHeight}`} width={sample} height={barHeight} aria-hidden="true">
      {children}
    </svg>
  );
  return (
    <p className={styles.legend}>
      <span>
        {sign(<Bar x={0} end={sample} />)}
        {toBeHad ? words.toBeHad : words.free}
      </span>
      <span>
        {sign(<Ground end={sample} />)}
        {toBeHad ? words.notToBeHad : words.promised}
      </span>
      {asked && (
        <>
          <span>
            {sign(<Frame x={1} end={sample - 1} />)}
            {words.asked}
          </span>
          <span>
            {sign(<Around x={0} end={sample} />)}
            {words.around}
          </span>
        </>
      )}
      <span>{words.letters}</span>
    </p>
  );
}
