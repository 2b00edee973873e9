/** What two versions of a report differ in. */
import { expect, test } from "vitest";
import { answerOf, facilityChanges } from "#lib/people/facility-changes.ts";
import { FacilityAnswers } from "#lib/people/facility-report.ts";

const door = {
  kind: "door",
  name: "Yard door",
  widthMm: 1200,
  heightMm: 2100,
  depthMm: null,
  secondWidthMm: null,
  loadKg: null,
  slopePercent: null,
} as const;
const licence = {
  kind: "anatomy",
  authority: "Inspectorate",
  number: "A 1",
  validFrom: null,
  validUntil: "2028-01-01",
} as const;
const first = FacilityAnswers.parse({
  climate: { setTemperatureC: 20 },
  passages: [door],
  licences: [licence],
});

test("a version that repeats the one before changes nothing", () => {
  expect(facilityChanges(first, structuredClone(first))).toEqual([]);
});

test("answers are told with what they were and are, rows by what became of them", () => {
  const second = FacilityAnswers.parse({
    ...first,
    climate: { ...first.climate, setTemperatureC: 19 },
    water: { pipesAbove: true },
    passages: [
      { ...door, widthMm: 1100 },
      { ...door, name: "Room door" },
    ],
    licences: [],
  });
  expect(facilityChanges(first, second)).toEqual([
    { of: "answer", section: "climate", question: "setTemperatureC", before: 20, after: 19 },
    { of: "answer", section: "water", question: "pipesAbove", before: null, after: true },
    { of: "passage", name: "Yard door", became: "other" },
    { of: "passage", name: "Room door", became: "new" },
    { of: "licence", name: "A 1", became: "gone" },
  ]);
  expect(answerOf(second, "water", "pipesAbove")).toBe(true);
});

test("two doors of one name are told apart, and one that goes is missed", () => {
  const twice = FacilityAnswers.parse({ ...first, passages: [door, door] });
  expect(facilityChanges(first, twice)).toEqual([{ of: "passage", name: "Yard door", became: "new" }]);
  expect(facilityChanges(twice, first)).toEqual([{ of: "passage", name: "Yard door", became: "gone" }]);
});
