/**
 * Reads the table that a climate logger writes: lines before the header are passed
 * over, the separator and the decimal mark are taken from the table itself, columns
 * are known by their heads. Nothing is guessed in silence: how a file was read is
 * told, and where two readings are possible it is refused with what to say. Humidity
 * comes out as a fraction, moments in UTC, readings in order of time, each moment once.
 */

import { type DateOrder, readClock } from "#lib/environment/logger-clock.ts";
import { columnsOf, type LoggerColumns } from "#lib/environment/logger-columns.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export type LoggerReadingRow = {
  /** ISO 8601 in UTC. */
  at: string;
  temperatureC: number | null;
  humidity: number | null;
  illuminanceLx: number | null;
  uvMicrowattPerLumen: number | null;
};

/** What whoever files it may say where the file does not. */
export type SaidOfFile = {
  /** Minutes that the logger's clock is ahead of UTC; null as the file says. */
  utcOffsetMinutes: number | null;
  dateOrder: DateOrder | null;
};

export type HowRead = {
  separator: "," | ";" | "tab";
  decimal: "." | ",";
  /** The line of the heads, counted from 1. */
  headerLine: number;
  columns: { head: string; as: string }[];
  temperatureUnit: "°C" | "°F" | "K" | null;
  humidityUnit: "percent" | "fraction" | null;
  dateOrder: DateOrder;
  utcOffsetMinutes: number;
  /** Lines without a reading, with an impossible one, and moments that came twice. */
  passedOver: { withoutReading: number; impossible: number; twice: number };
};

export type LoggerFile = { readings: LoggerReadingRow[]; how: HowRead };

export const mostLoggerBytes = 8_000_000;
const mostReadings = 200_000;
const separators = [";", "\t", ","] as const;
/** The heads stand within the first lines; loggers write at most a page before them. */
const longestPreamble = 60;

/** UTF-16 and UTF-8 by their marks, else UTF-8, else the western code page that loggers still write. */
export function textOfLoggerFile(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** The cells of one line; a quoted cell may hold the separator. */
function cellsOf(line: string, separator: string): string[] {
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (let at = 0; at < line.length; at += 1) {
    const letter = line[at];
    if (letter === '"') {
      if (quoted && line[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = !quoted;
    } else if (letter === separator && !quoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += letter;
  }
  cells.push(cell.trim());
  return cells;
}

type Table = { separator: string; headerLine: number; columns: LoggerColumns; rows: string[][] };

const numberLike = /^[-+]?\d+(?:[.,]\d+)?$/;

/** The first line whose heads name a time and a quantity, and below which a reading stands. */
function findTable(lines: readonly string[]): Table | null {
  for (const separator of separators)
    for (let at = 0; at < Math.min(lines.length - 1, longestPreamble); at += 1) {
      const heads = cellsOf(lines[at] ?? "", separator);
      if (heads.length < 2) continue;
      const columns = columnsOf(heads);
      if (columns === null) continue;
      const rows = lines.slice(at + 1).map((line) => cellsOf(line, separator));
      const [first] = columns.quantities;
      if (rows.slice(0, 20).some((row) => first !== undefined && numberLike.test(row[first.index] ?? "")))
        return { separator, headerLine: at + 1, columns, rows };
    }
  return null;
}

/** A decimal comma in cells of numbers settles it; a file that has both marks is not to be trusted. */
function decimalOf({ rows, columns }: Table): "." | "," {
  let [points, commas] = [false, false];
  for (const row of rows)
    for (const { index } of columns.quantities) {
      const cell = row[index] ?? "";
      if (!numberLike.test(cell)) continue;
      points ||= cell.includes(".");
      commas ||= cell.includes(",");
    }
  if (points && commas) throw new Refusal("invalid", "logger.two-decimal-marks");
  return commas ? "," : ".";
}

type Quantity = LoggerColumns["quantities"][number]["quantity"];
type RawRow = { line: number; clock: string; values: Partial<Record<Quantity, number>> };

function rawRows(table: Table, decimal: "." | ","): { rows: RawRow[]; withoutReading: number } {
  const rows: RawRow[] = [];
  let withoutReading = 0;
  table.rows.forEach((cells, at) => {
    if (cells.every((cell) => cell === "")) return;
    const clock = table.columns.clock
      .map((index) => cells[index] ?? "")
      .join(" ")
      .trim();
    const values: RawRow["values"] = {};
    for (const { index, quantity } of table.columns.quantities) {
      const cell = cells[index] ?? "";
      // A whole number without a fraction is one too; -999 and the like stand for no reading.
      if (!numberLike.test(cell)) continue;
      const value = Number(decimal === "," ? cell.replace(",", ".") : cell);
      if (Number.isFinite(value) && value !== -999 && value !== -9999) values[quantity] = value;
    }
    if (clock === "" || Object.keys(values).length === 0) withoutReading += 1;
    else rows.push({ line: table.headerLine + 1 + at, clock, values });
  });
  return { rows, withoutReading };
}

const valuesOf = (rows: readonly RawRow[], quantity: Quantity) =>
  rows.flatMap(({ values }) => values[quantity] ?? []);
const greatest = (values: readonly number[]) => values.reduce((most, one) => Math.max(most, one), -Infinity);

/** Without a unit a room that is never below 30, or ever above 45, may be warm in °C or cold in °F. */
function temperatureUnitOf(
  unit: "°C" | "°F" | "K" | null,
  rows: readonly RawRow[],
): HowRead["temperatureUnit"] {
  const values = valuesOf(rows, "temperature");
  if (values.length === 0) return null;
  if (unit !== null) return unit;
  const least = -greatest(values.map((value) => -value));
  if (greatest(values) > 45 || least > 30) throw new Refusal("invalid", "logger.temperature-unit");
  return "°C";
}

function humidityUnitOf(saysPercent: boolean, rows: readonly RawRow[]): HowRead["humidityUnit"] {
  const values = valuesOf(rows, "humidity");
  if (values.length === 0) return null;
  const most = greatest(values);
  if (most > 1.05) return "percent";
  // Half a percent in a room does not occur: the head and the figures say different things.
  if (saysPercent && most > 0) throw new Refusal("invalid", "logger.humidity-unit");
  return "fraction";
}

function toCelsius(value: number | undefined, unit: HowRead["temperatureUnit"]): number | null {
  if (value === undefined) return null;
  const celsius = unit === "°F" ? (value - 32) / 1.8 : unit === "K" ? value - 273.15 : value;
  return Math.round(celsius * 1000) / 1000;
}

/** Sensors read up to 105 % in saturated air; that is saturation. */
function toFraction(value: number | undefined, unit: HowRead["humidityUnit"]): number | null {
  if (value === undefined) return null;
  const fraction = unit === "percent" ? value / 100 : value;
  return fraction > 1 && fraction <= 1.05 ? 1 : Math.round(fraction * 1e5) / 1e5;
}

const outside = (value: number | null, low: number, high: number) =>
  value !== null && !(value >= low && value <= high);
const isImpossible = (row: LoggerReadingRow) =>
  outside(row.temperatureC, -60, 80) ||
  outside(row.humidity, 0, 1) ||
  outside(row.illuminanceLx, 0, 200_000) ||
  outside(row.uvMicrowattPerLumen, 0, 10_000);

/** @throws {Refusal} "logger.…" with what it lacks, or what somebody has to say of it */
export function readLoggerFile(text: string, said: SaidOfFile): LoggerFile {
  const lines = text.replace(/^\ufeff/, "").split(/\r\n|\n|\r/);
  const table = findTable(lines);
  if (table === null) throw new Refusal("invalid", "logger.no-table");
  const decimal = decimalOf(table);
  const { rows, withoutReading } = rawRows(table, decimal);
  if (rows.length < 2) throw new Refusal("invalid", "logger.too-few");
  if (rows.length > mostReadings) throw new Refusal("invalid", "logger.too-many", { most: mostReadings });
  const { columns } = table;
  const preamble = lines.slice(0, table.headerLine).join("\n");
  const clock = readClock(rows, preamble, said);
  const temperatureUnit = temperatureUnitOf(columns.temperatureUnit, rows);
  const humidityUnit = humidityUnitOf(columns.saysPercent, rows);
  const readings = new Map<string, LoggerReadingRow>();
  const passedOver = { withoutReading, impossible: 0, twice: 0 };
  rows.forEach(({ values }, at) => {
    const moment = clock.moments[at] ?? "";
    const reading: LoggerReadingRow = {
      at: moment,
      temperatureC: toCelsius(values.temperature, temperatureUnit),
      humidity: toFraction(values.humidity, humidityUnit),
      illuminanceLx: values.light ?? null,
      uvMicrowattPerLumen: values.ultraviolet ?? null,
    };
    if (isImpossible(reading)) passedOver.impossible += 1;
    else if (readings.has(moment)) passedOver.twice += 1;
    else readings.set(moment, reading);
  });
  if (readings.size < 2) throw new Refusal("invalid", "logger.too-few");
  return {
    readings: [...readings.values()].sort((a, b) => (a.at < b.at ? -1 : 1)),
    how: {
      separator: table.separator === "\t" ? "tab" : (table.separator as "," | ";"),
      decimal,
      headerLine: table.headerLine,
      columns: columns.told,
      temperatureUnit,
      humidityUnit,
      dateOrder: clock.dateOrder,
      utcOffsetMinutes: clock.utcOffsetMinutes,
      passedOver,
    },
  };
}
