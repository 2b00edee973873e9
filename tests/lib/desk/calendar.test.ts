/** The calendar as text, read back by an independent parser. */
import fc from "fast-check";
import ICAL from "ical.js";
import { expect, test } from "vitest";
import {
  type CalendarEvent,
  calendarText,
  cleanText,
  escapeText,
  foldLine,
  mostOctets,
} from "#lib/desk/calendar.ts";

const event = (said: Partial<CalendarEvent> = {}): CalendarEvent => ({
  uid: "loan-1 opening@anatheca",
  sequence: 2,
  changedAt: "2027-01-02T03:04:05.678Z",
  when: { day: "2027-06-16" },
  summary: "L 2027-001: opening",
  description: "",
  url: "https://loans.example.org/loans/1",
  ...said,
});
const read = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((part) => new ICAL.Event(part));
const octets = (line: string) => new TextEncoder().encode(line).length;

test("a day is a whole day, and a stranger's parser reads it so", () => {
  const [found] = read(calendarText({ name: "Loans", events: [event()] }));
  expect(found?.startDate.isDate).toBe(true);
  expect([found?.startDate.toString(), found?.endDate.toString()]).toEqual(["2027-06-16", "2027-06-17"]);
  expect([found?.uid, found?.sequence]).toEqual(["loan-1 opening@anatheca", 2]);
  expect(found?.component.getFirstPropertyValue("dtstamp")?.toString()).toBe("2027-01-02T03:04:05Z");
});

test("a moment is a moment in UTC", () => {
  const [found] = read(
    calendarText({ name: "Loans", events: [event({ when: { at: "2027-06-16T09:30:00+02:00" } })] }),
  );
  expect(found?.startDate.isDate).toBe(false);
  expect(found?.startDate.toJSDate().toISOString()).toBe("2027-06-16T07:30:00.000Z");
});

test("what RFC 5545 asks of each event is there, and lines end with CR LF", () => {
  const text = calendarText({ name: "Loans", events: [event()] });
  for (const line of [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "UID:loan-1 opening@anatheca",
    "DTSTART;VALUE=DATE:20270616",
    "DTSTAMP:20270102T030405Z",
  ])
    expect(text).toContain(`${line}\r\n`);
  expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
});

test("read twice it is the same text", () => {
  const one = calendarText({ name: "Loans", events: [event()] });
  expect(calendarText({ name: "Loans", events: [event()] })).toBe(one);
});

test("a calendar without events is one all the same", () => {
  expect(read(calendarText({ name: "Loans", events: [] }))).toEqual([]);
});

test("the marks of the format stand for themselves in a text", () => {
  expect(escapeText("one; two, three\\four\r\nfive")).toBe("one\\; two\\, three\\\\four\\nfive");
});

test("a long line of wide letters is cut between letters", () => {
  const line = `SUMMARY:${"ő𝔸é".repeat(40)}`;
  const folded = foldLine(line);
  expect(folded.length).toBeGreaterThan(3);
  for (const part of folded) expect(octets(part)).toBeLessThanOrEqual(mostOctets);
  expect(folded.map((part, index) => (index === 0 ? part : part.slice(1))).join("")).toBe(line);
});

test("any text comes back as it went, and no line is longer than 75 octets", () => {
  const anyText = fc.string({ unit: "grapheme", maxLength: 200 });
  fc.assert(
    fc.property(
      anyText,
      anyText,
      fc.string({ unit: "binary", maxLength: 60 }),
      (summary, description, name) => {
        const text = calendarText({ name, events: [event({ summary, description })] });
        for (const line of text.split("\r\n")) expect(octets(line)).toBeLessThanOrEqual(mostOctets);
        const [found, ...others] = read(text);
        expect(others).toEqual([]);
        expect(found?.summary).toBe(cleanText(summary));
        expect(found?.description ?? "").toBe(cleanText(description));
      },
    ),
  );
});
