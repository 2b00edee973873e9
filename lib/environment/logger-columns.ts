/**
 * Which column of a logger's table is which, by its head. Heads are words of several
 * languages with units, offsets and serial numbers around them. A quantity that two
 * columns claim is not settled by taking the first.
 */
import { Refusal } from "#lib/platform/refusal.ts";

export const loggerQuantities = ["temperature", "humidity", "light", "ultraviolet"] as const;
export type LoggerQuantity = (typeof loggerQuantities)[number];

export type LoggerColumns = {
  /** The columns of day and time, one or two. */
  clock: number[];
  quantities: { index: number; quantity: LoggerQuantity }[];
  temperatureUnit: "°C" | "°F" | "K" | null;
  saysPercent: boolean;
  /** The heads that are used and what they were taken for. */
  told: { head: string; as: string }[];
};

/** What follows from others, or is no reading of the room. */
const derived =
  /dew|frost|taupunkt|rosée|absol|mixing|enthalp|battery|batterie|mkt|alarm|min\b|max\b|avg|mean/i;
const heads: Readonly<Record<LoggerQuantity, RegExp>> = {
  ultraviolet: /\buv\b|ultra.?violet|µw|uw\/lm/i,
  humidity: /\brh\b|r\.h\.|humid|feucht|hygro|\brf\b|luftfukt|fugt|vochtig|umidit|humedad|%\s*r/i,
  temperature: /temp|°\s?[cf]\b|celsius|fahrenheit|\bt\b/i,
  light: /\blux\b|\blx\b|illumin|light|licht|beleucht|éclair|belys/i,
};
const dateHead = /date|datum|dato|fecha|\bday\b|\btag\b|timestamp|zeitpunkt/i;
const timeHead = /time|zeit|uhr|\btid\b|heure|hora|\bclock\b/i;

function unitOf(head: string): LoggerColumns["temperatureUnit"] {
  if (/°\s?f\b|fahrenheit|\(f\)|\bdeg\.? ?f\b/i.test(head)) return "°F";
  if (/°\s?c\b|celsius|\(c\)|\bdeg\.? ?c\b/i.test(head)) return "°C";
  return /[([,]\s*k\s*[)\]]?\s*$|kelvin/i.test(head) ? "K" : null;
}

/** Null where the line names no time, or no quantity. @throws {Refusal} "logger.two-columns" */
export function columnsOf(line: readonly string[]): LoggerColumns | null {
  const taken = new Map<number, LoggerQuantity>();
  line.forEach((head, index) => {
    if (derived.test(head)) return;
    const quantity = (Object.keys(heads) as LoggerQuantity[]).find((one) => heads[one].test(head));
    if (quantity !== undefined && !(dateHead.test(head) && !/%|°|lux|\blx\b/i.test(head)))
      taken.set(index, quantity);
  });
  const free = line.map((head, index) => ({ head, index })).filter(({ index }) => !taken.has(index));
  const day = free.find(({ head }) => dateHead.test(head));
  const hour = free.find(({ head, index }) => timeHead.test(head) && index !== day?.index);
  const isWhole = day !== undefined && timeHead.test(day.head) && !/^date$|^datum$/i.test(day.head);
  const clock =
    day === undefined ? (hour ? [hour] : []) : isWhole || hour === undefined ? [day] : [day, hour];
  if (clock.length === 0 || taken.size === 0) return null;
  const quantities = [...taken].map(([index, quantity]) => ({ index, quantity }));
  for (const quantity of loggerQuantities) {
    const claimed = quantities.filter((one) => one.quantity === quantity);
    if (claimed.length > 1)
      throw new Refusal("invalid", "logger.two-columns", {
        heads: claimed.map(({ index }) => line[index] ?? "").join(", "),
      });
  }
  const headOf = (quantity: LoggerQuantity) =>
    line[quantities.find((one) => one.quantity === quantity)?.index ?? -1] ?? "";
  return {
    clock: clock.map(({ index }) => index),
    quantities,
    temperatureUnit: unitOf(headOf("temperature")),
    saysPercent: headOf("humidity").includes("%"),
    told: [
      ...clock.map(({ head }) => ({ head, as: "time" })),
      ...quantities.map(({ index, quantity }) => ({ head: line[index] ?? "", as: quantity as string })),
    ],
  };
}
