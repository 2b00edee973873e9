/**
 * One body or region cut into sheets, drawn as a ruler at true scale: one bar for
 * each sheet where it lay, levels at the left, numbers at the right. A lent sheet is
 * an open bar drawn out of the stack, a missing one a dotted gap, the open one is
 * full and pointed at; the words stand in the list below the ruler.
 */
import Link from "next/link";
import styles from "#app/_parts/level-ruler.module.css";
import { RulerKeys } from "#app/_parts/ruler-keys.tsx";
import { shellWords } from "#app/_words/en/shell.ts";

export type RulerSheet = {
  number: number;
  fromMm: number;
  toMm: number;
  state: "here" | "lent" | "missing";
  href: string;
  label: string;
};

const widthPx = 276;
const topPx = 20;
const stack = { left: 62, width: 132, lentShift: 20 };
const middle = stack.left + stack.width / 2;
const numberAt = 244;

/**
 * @param breadthAt how broad the body is at a share (0 to 1) of its length, 1 at its
 *   broadest; the stack then shows the body's outline
 */
export function LevelRuler({
  title,
  sheets,
  levels,
  ends,
  current,
  heightPx = 680,
  breadthAt = () => 1,
}: {
  title: string;
  sheets: readonly RulerSheet[];
  levels: readonly { level: string; atMm: number }[];
  /** What lies beyond the first sheet and beyond the last: "head" and "foot". */
  ends: readonly [string, string];
  current: number | null;
  heightPx?: number;
  breadthAt?: (share: number) => number;
}) {
  const first = sheets[0];
  const last = sheets.at(-1);
  if (!first || !last) return null;
  const lengthMm = last.toMm - first.fromMm;
  const scale = (heightPx - 2 * topPx) / lengthMm;
  const at = (mm: number) => topPx + (mm - first.fromMm) * scale;
  const scaleBarMm = lengthMm >= 200 ? 100 : 10;
  return (
    <RulerKeys label={`${title}. ${shellWords.rulerKeys}`}>
      <svg
        className={styles.ruler}
        viewBox={`0 0 ${widthPx} ${heightPx}`}
        width={widthPx}
        height={heightPx}
        role="presentation"
      >
        <text className={styles.end} x={middle} y={topPx - 8}>
          {ends[0]}
        </text>
        <text className={styles.end} x={middle} y={heightPx - topPx + 15}>
          {ends[1]}
        </text>
        {levels.map(({ level, atMm }) => (
          <g key={level}>
            <path className={styles.tick} d={`M36 ${at(atMm)}H${stack.left - 6}`} />
            <text className={styles.level} x="31" y={at(atMm) + 3.8}>
              {level}
            </text>
          </g>
        ))}
        {sheets.map((sheet) => {
          const y = at(sheet.fromMm);
          const height = Math.max(1.2, (sheet.toMm - sheet.fromMm) * scale);
          const share = ((sheet.fromMm + sheet.toMm) / 2 - first.fromMm) / lengthMm;
          const width = stack.width * Math.min(1, Math.max(0.1, breadthAt(share)));
          const left = middle - width / 2 + (sheet.state === "lent" ? stack.lentShift : 0);
          const isOpen = sheet.number === current;
          return (
            <Link
              key={sheet.number}
              href={sheet.href}
              scroll={false}
              prefetch={false}
              className={styles.sheet}
              aria-label={sheet.label}
              aria-current={isOpen ? "true" : undefined}
            >
              <title>{sheet.label}</title>
              <rect className={styles.reach} x={stack.left - 4} y={y - 1} width={200} height={height + 2} />
              {sheet.state === "missing" ? (
                <path className={styles.missing} d={`M${left} ${y + height / 2}H${left + width}`} />
              ) : (
                <rect className={styles[sheet.state]} x={left} y={y} width={width} height={height} rx="0.8" />
              )}
              {isOpen && (
                <g>
                  <path
                    className={styles.pointer}
                    d={`M${stack.left + stack.width + 24} ${y + height / 2}l7 -4.5v9z`}
                  />
                  <text className={styles.open} x={stack.left + stack.width + 36} y={y + height / 2 + 4}>
                    {sheet.number}
                  </text>
                </g>
              )}
            </Link>
          );
        })}
        {sheets
          .filter(
            (sheet) =>
              sheet.number % 10 === 0 && Math.abs(sheet.number - (current ?? Infinity)) * scale * 4 > 14,
          )
          .map((sheet) => (
            <text
              key={sheet.number}
              className={styles.number}
              x={numberAt}
              y={at((sheet.fromMm + sheet.toMm) / 2) + 3.4}
            >
              {sheet.number}
            </text>
          ))}
        <g>
          <path className={styles.tick} d={`M4 ${heightPx - topPx}h8m-4 0v${-scaleBarMm * scale}m-4 0h8`} />
          <text
            className={styles.number}
            transform={`translate(20 ${heightPx - topPx - (scaleBarMm * scale) / 2}) rotate(-90)`}
            textAnchor="middle"
          >
            {scaleBarMm} mm
          </text>
        </g>
      </svg>
    </RulerKeys>
  );
}
