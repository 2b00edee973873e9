/**
 * Two loggers' files of the scenario, written by a rule and not by chance, so that
 * they are the same each time: one of a room that is kept, with an evening on which
 * humidity rose by more than ten percent and a gap over a weekend; one of a reading
 * bay that is too dry and too bright. They differ in marks and heads as loggers do.
 */
import type { AccountKey } from "#seed/scenario/accounts.ts";
import type { VenueKey } from "#seed/scenario/borrowers.ts";
import type { Day } from "#seed/scenario/shape.ts";

const hourMs = 3_600_000;
const wave = (hour: number, period: number) => Math.sin((2 * Math.PI * hour) / period);
const two = (value: number) => String(value).padStart(2, "0");

/** Every half hour over three weeks, with a decimal comma and semicolons; 26 hours are missing. */
export function keptRoomFile(endsAt: Date): string {
  const days = 21;
  const begins = endsAt.getTime() - days * 24 * hourMs;
  const lines = ["Logger 07;teaching room 2", "Interval;30 min", "Clock;UTC+00:00", ""];
  lines.push("Datum;Zeit;Temperatur °C;rel. Feuchte %;Licht lux");
  for (let half = 0; half <= days * 48; half += 1) {
    const hour = half / 2;
    if (hour > 250 && hour < 276) continue;
    const at = new Date(begins + hour * hourMs);
    // From 48 to 59 % within twenty hours: inside 40–60 %, and still too quick.
    const rise =
      hour >= 120 && hour < 140
        ? (11 * (hour - 120)) / 20
        : hour >= 140 && hour < 170
          ? 11 - (11 * (hour - 140)) / 30
          : 0;
    const temperature = 20 + 0.6 * wave(hour, 24);
    const humidity = 48 + rise + (rise === 0 ? 0.4 * wave(hour, 24) : 0);
    const lit = at.getUTCHours() >= 9 && at.getUTCHours() < 16;
    const comma = (value: number, digits: number) => value.toFixed(digits).replace(".", ",");
    lines.push(
      [
        `${two(at.getUTCDate())}.${two(at.getUTCMonth() + 1)}.${at.getUTCFullYear()}`,
        `${two(at.getUTCHours())}:${two(at.getUTCMinutes())}`,
        comma(temperature, 2),
        comma(humidity, 1),
        lit ? "48" : "0",
      ].join(";"),
    );
  }
  return `${lines.join("\r\n")}\r\n`;
}

/** Every hour over two weeks, ISO times, humidity as a fraction. */
export function readingBayFile(endsAt: Date): string {
  const days = 14;
  const begins = Math.floor((endsAt.getTime() - days * 24 * hourMs) / hourMs) * hourMs;
  const lines = ["timestamp,temperature (°C),RH,illuminance (lx)"];
  for (let hour = 0; hour <= days * 24; hour += 1) {
    const at = new Date(begins + hour * hourMs);
    const weekly = 0.06 * wave(hour, 168);
    const lit = at.getUTCHours() >= 8 && at.getUTCHours() < 20;
    lines.push(
      [
        at.toISOString(),
        (22.5 + 2.4 * wave(hour, 24)).toFixed(2),
        (0.38 + weekly + 0.05 * wave(hour + 6, 24)).toFixed(3),
        lit ? "240" : "5",
      ].join(","),
    );
  }
  return `${lines.join("\n")}\n`;
}

export const loggerFiles: readonly {
  venue: VenueKey;
  by: AccountKey;
  day: Day;
  name: string;
  write: (endsAt: Date) => string;
}[] = [
  {
    venue: "kestrel teaching",
    by: "kestrel registrar",
    day: -8,
    name: "Teaching room 2, case 1",
    write: keptRoomFile,
  },
  { venue: "selwyn library", by: "conservator", day: -30, name: "Reading bay, shelf", write: readingBayFile },
];
