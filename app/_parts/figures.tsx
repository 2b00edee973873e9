/** Figures as people read them: dates, money, sizes, masses; a fact that is not known is a dash. */
import styles from "#app/_parts/figures.module.css";
import {
  formatDate,
  formatDateShort,
  formatMoney,
  formatNumber,
  formatRange,
  formatSize,
} from "#app/_words/format.ts";

/** @param short on one line, for a row of a table */
export function DateText({ date, short = false }: { date: string | null | undefined; short?: boolean }) {
  if (!date) return <Unknown />;
  return (
    <time dateTime={date} className={short ? styles.whole : undefined}>
      {short ? formatDateShort(date) : formatDate(date)}
    </time>
  );
}

export function Period({ startsOn, endsOn }: { startsOn: string; endsOn: string }) {
  return <span>{formatRange(startsOn, endsOn)}</span>;
}

export function Money({ money }: { money: { minor: number; currency: string } | null | undefined }) {
  return money ? <span className={styles.whole}>{formatMoney(money)}</span> : <Unknown />;
}

export function Quantity({
  value,
  unit,
  digits,
}: {
  value: number | null | undefined;
  unit: string;
  digits?: number;
}) {
  if (value === null || value === undefined) return <Unknown />;
  return (
    <span className={styles.whole}>
      {formatNumber(value, digits)} {unit}
    </span>
  );
}

export function SizeText({
  size,
}: {
  size: { lengthMm: number; widthMm: number; heightMm: number } | null | undefined;
}) {
  return size ? <span className={styles.whole}>{formatSize(size)}</span> : <Unknown />;
}

export function Unknown() {
  return (
    <span className="quiet" title="not known">
      –<span className="visually-hidden"> not known</span>
    </span>
  );
}
