/** A person's events as sentences, and as the text that calendar programs read. */
import "server-only";
import { calendarWords } from "#app/_words/en/calendar.ts";
import { sentence } from "#app/_words/sentences.ts";
import { type CalendarEvent, calendarText } from "#lib/desk/calendar.ts";
import { type DatedEvent, listCalendarEvents } from "#lib/desk/queries/calendar.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { readConfig } from "#lib/platform/config.ts";

function toEvent({ key, code, parameters, when, address, changedAt, sequence }: DatedEvent): CalendarEvent {
  const { title } = parameters;
  return {
    uid: `${key.replaceAll(" ", "-")}@anatheca`,
    sequence,
    changedAt,
    when,
    summary: sentence(code, parameters),
    description: typeof title === "string" ? title : "",
    url: new URL(address, readConfig().url).href,
  };
}

export async function calendarOf(viewer: Viewer): Promise<string> {
  const events = await listCalendarEvents(viewer);
  return calendarText({ name: calendarWords.name(viewer.name), events: events.map(toEvent) });
}
