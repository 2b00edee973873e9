/**
 * A logger's curve against limits: what was read as a line that is as thick as its
 * readings differ within a stretch, the limits as a band with thin edges, a break
 * where nothing was read. What the eye sees stands in words beside it.
 */
import styles from "#app/_parts/climate-curve.module.css";
import { formatDate } from "#app/_words/format.ts";
import type { CurvePoint } from "#lib/environment/logger-judgement.ts";

const width = 640;
const height = 150;
const left = 40;
const bottom = 18;
const top = 8;
/** A break longer than this share of the whole, and than some stretches, is no reading. */
const breakStretches = 3;

export type CurveLimits = { low: number | null; high: number | null };

type Scale = { x: (at: string) => number; y: (value: number) => number; low: number; high: number };

function scaleOf(points: readonly CurvePoint[], limits: CurveLimits): Scale {
  const values = [
    ...points.flatMap(({ low, high }) => [low, high]),
    ...[limits.low, limits.high].filter((limit) => limit !== null),
  ];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = Math.max((most - least) * 0.08, Math.abs(most) * 0.01, 0.1);
  const [low, high] = [least < 0 ? least - room : Math.max(0, least - room), most + room];
  const [from, until] = [Date.parse(points[0]?.at ?? ""), Date.parse(points.at(-1)?.at ?? "")];
  const span = Math.max(1, until - from);
  const round = (value: number) => Math.round(value * 10) / 10;
  return {
    x: (at) => round(left + ((Date.parse(at) - from) / span) * (width - left - 4)),
    y: (value) => round(top + ((high - value) / (high - low)) * (height - top - bottom)),
    low,
    high,
  };
}

/** Stretches of points without a break between them. */
function runsOf(points: readonly CurvePoint[]): CurvePoint[][] {
  const steps = points
    .slice(1)
    .map((point, at) => Date.parse(point.at) - Date.parse(points[at]?.at ?? ""))
    .sort((a, b) => a - b);
  const usual = steps[Math.floor(steps.length / 2)] ?? 0;
  const runs: CurvePoint[][] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const point of points) {
    const at = Date.parse(point.at);
    if (at - last > usual * breakStretches) runs.push([]);
    runs.at(-1)?.push(point);
    last = at;
  }
  return runs;
}

function pathOf(run: readonly CurvePoint[], { x, y }: Scale): string {
  const upper = run.map(({ at, high }) => `${x(at)} ${y(high)}`);
  const lower = run.map(({ at, low }) => `${x(at)} ${y(low)}`).reverse();
  return `M${[...upper, ...lower].join("L")}Z`;
}

/** Round figures for the scale at the left: three to six of them. */
function ticksOf(low: number, high: number): number[] {
  const raw = (high - low) / 4;
  const magnitude = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((factor) => factor * magnitude).find((one) => one >= raw) ?? magnitude * 10;
  const first = Math.ceil(low / step);
  return Array.from({ length: Math.floor(high / step) - first + 1 }, (_, at) => {
    return Number(((first + at) * step).toPrecision(12));
  });
}

export function ClimateCurve({
  points,
  limits,
  label,
}: {
  points: readonly CurvePoint[];
  limits: CurveLimits;
  label: string;
}) {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return null;
  const scale = scaleOf(points, limits);
  const { x, y, low, high } = scale;
  const bandTop = y(limits.high ?? high);
  const bandEnd = y(limits.low ?? low);
  return (
    <svg className={styles.curve} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <title>{label}</title>
      <rect
        x={left}
        y={bandTop}
        width={width - left - 4}
        height={Math.max(0, bandEnd - bandTop)}
        className={styles.band}
      />
      {[limits.low, limits.high].map(
        (limit) =>
          limit !== null && (
            <path key={limit} d={`M${left} ${y(limit)}H${width - 4}`} className={styles.limit} />
          ),
      )}
      {ticksOf(low, high).map((tick) => (
        <g key={tick} className={styles.tick}>
          <path d={`M${left - 4} ${y(tick)}H${left}`} />
          <text x={left - 7} y={y(tick) + 3}>
            {tick}
          </text>
        </g>
      ))}
      <path d={`M${left} ${top}V${height - bottom}H${width - 4}`} className={styles.axis} />
      {runsOf(points).map((run) => (
        <path key={run[0]?.at} d={pathOf(run, scale)} className={styles.line} />
      ))}
      <text x={x(first.at)} y={height - 5} className={styles.day}>
        {formatDate(first.at.slice(0, 10))}
      </text>
      <text x={width - 4} y={height - 5} className={styles.lastDay}>
        {formatDate(last.at.slice(0, 10))}
      </text>
    </svg>
  );
}
