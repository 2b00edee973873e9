/** The content of a report on paper: nothing is left out, also what nobody answered. */
import { expect, test } from "vitest";
import { facilityContent } from "#lib/people/facility-content.ts";
import { facilityQuestions, facilitySections } from "#lib/people/facility-questions.ts";
import { FacilityAnswers } from "#lib/people/facility-report.ts";

const venue = { name: "Room", address: "1 Quiet Street", countryCode: "NO" };
const report = {
  version: 3,
  answers: FacilityAnswers.parse({ climate: { setHumidity: 0.5 }, light: { illuminanceLx: 50 } }),
  reportedOn: "2026-01-10",
  validUntil: "2028-01-10",
  reportedBy: "Registrar",
};

test("every section and question stands in it, in order, with its unit", () => {
  const content = facilityContent(venue, "School", report, "2026-11-25");
  expect(content.sections.map(({ section }) => section)).toEqual(facilitySections);
  for (const { section, lines } of content.sections)
    expect(lines.map(({ question }) => question)).toEqual(Object.keys(facilityQuestions[section]));
  const lines = content.sections.flatMap((section) => section.lines);
  expect(lines.find(({ question }) => question === "setHumidity")).toMatchObject({ unit: "%", answer: 0.5 });
  expect(lines.find(({ question }) => question === "illuminanceLx")).toMatchObject({
    unit: "lx",
    answer: 50,
  });
});

test("it counts until the day on which it no longer does", () => {
  const countsOn = (day: string) => facilityContent(venue, "School", report, day).counts;
  expect([countsOn("2028-01-09"), countsOn("2028-01-10")]).toEqual([true, false]);
});
