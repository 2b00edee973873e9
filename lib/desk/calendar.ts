/**
 * Events as a calendar that other programs read (RFC 5545): one VCALENDAR, lines
 * ended by CR LF and folded at 75 octets without parting a letter, text escaped. A
 * day is a DATE, a moment a DATE-TIME in UTC; an event that is read twice is the
 * same text, because its stamp is when its record last changed. What a line cannot
 * hold (control characters, half letters) is left out of it.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";

export type CalendarEvent = {
  /** The same for as long as it is the same event. */
  uid: string;
  /** How often its record changed. */
  sequence: number;
  /** ISO 8601: when its record last changed. */
  changedAt: string;
  when: { day: DateText } | { at: string };
  summary: string;
  description: string;
  /** Where it is read in the program. */
  url: string;
};

/** Octets of a line without its end. @source RFC 5545, section 3.1 */
export const mostOctets = 75;

/** @source RFC 5545, section 3.3.11 */
export function escapeText(text: string): string {
  return cleanText(text)
    .replace(/([\\;,])/g, "\\$1")
    .replace(/\n/g, "\\n");
}

/** Text as a line may hold it: one kind of line end, no control characters but the tab, whole letters. */
export function cleanText(text: string): string {
  return (
    text
      .replace(/\p{Surrogate}/gu, "\ufffd")
      .replace(/\r\n?/g, "\n")
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is left out
      .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, "")
  );
}

const encoder = new TextEncoder();

/** Cuts a line into lines of at most 75 octets; each further one begins with a space. */
export function foldLine(line: string): string[] {
  const lines: string[] = [];
  let current = "";
  let octets = 0;
  for (const letter of line) {
    const size = encoder.encode(letter).length;
    if (octets + size > mostOctets) {
      lines.push(current);
      current = " ";
      octets = 1;
    }
    current += letter;
    octets += size;
  }
  return [...lines, current];
}

const dayText = (day: DateText) => day.replaceAll("-", "");
const momentText = (moment: string) =>
  new Date(moment)
    .toISOString()
    .replace(/[-:]/g, "")
    .replace(/\.\d{3}Z$/, "Z");

function eventLines({ uid, sequence, changedAt, when, summary, description, url }: CalendarEvent): string[] {
  const times =
    "day" in when
      ? [`DTSTART;VALUE=DATE:${dayText(when.day)}`, `DTEND;VALUE=DATE:${dayText(addDays(when.day, 1))}`]
      : [`DTSTART:${momentText(when.at)}`];
  return [
    "BEGIN:VEVENT",
    `UID:${escapeText(uid)}`,
    `DTSTAMP:${momentText(changedAt)}`,
    `LAST-MODIFIED:${momentText(changedAt)}`,
    `SEQUENCE:${sequence}`,
    ...times,
    `SUMMARY:${escapeText(summary)}`,
    ...(description === "" ? [] : [`DESCRIPTION:${escapeText(description)}`]),
    `URL:${url}`,
    "CLASS:CONFIDENTIAL",
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ];
}

/** The whole calendar as it is sent; it is read anew every six hours. */
export function calendarText({ name, events }: { name: string; events: readonly CalendarEvent[] }): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Anatheca//Lending office//EN",
    "CALSCALE:GREGORIAN",
    `NAME:${escapeText(name)}`,
    `X-WR-CALNAME:${escapeText(name)}`,
    "REFRESH-INTERVAL;VALUE=DURATION:PT6H",
    ...events.flatMap(eventLines),
    "END:VCALENDAR",
  ];
  return lines
    .flatMap(foldLine)
    .map((line) => `${line}\r\n`)
    .join("");
}
