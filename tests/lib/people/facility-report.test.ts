/** Facility reports as data: what may be left out, what follows for the rules, and until when a version counts. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { facilityQuestions, facilitySections } from "#lib/people/facility-questions.ts";
import {
  answeredIn,
  answersFromFacts,
  FacilityAnswers,
  factsOfReport,
  monthsLater,
} from "#lib/people/facility-report.ts";

const nothing = FacilityAnswers.parse({});

test("a report without an answer knows nothing, and every question of it is asked", () => {
  for (const section of facilitySections) {
    expect(answeredIn(nothing, section)).toEqual({
      answered: 0,
      asked: Object.keys(facilityQuestions[section]).length,
    });
  }
  expect(Object.values(factsOfReport(nothing)).every((fact) => fact === null)).toBe(true);
});

test("parsing a parsed report changes nothing, and an empty text is not known", () => {
  const once = FacilityAnswers.parse({ contact: { contactName: "  " }, climate: { setHumidity: 0.5 } });
  expect(once.contact.contactName).toBeNull();
  expect(FacilityAnswers.parse(once)).toEqual(once);
});

test.each([
  ["a humidity above saturation", { climate: { humidityHigh: 1.2 } }, "climate.humidityHigh"],
  [
    "a lowest above the highest",
    { climate: { temperatureLowC: 25, temperatureHighC: 20 } },
    "climate.temperatureHighC",
  ],
  ["half a technician", { staff: { technicians: 1.5 } }, "staff.technicians"],
  ["not a number", { light: { illuminanceLx: Number.NaN } }, "light.illuminanceLx"],
])("%s is refused at its question", (_what, answers, path) => {
  const { error } = FacilityAnswers.safeParse(answers);
  expect(error?.issues.map((issue) => issue.path.join("."))).toEqual([path]);
});

test("a licence that is there twice is refused", () => {
  const licence = { kind: "anatomy", authority: "A", number: "1", validFrom: null, validUntil: null };
  const { error } = FacilityAnswers.safeParse({ licences: [licence, licence] } as never);
  expect(error?.issues.map(({ message }) => message)).toEqual(["facility.licence-twice"]);
});

test("the facts of a venue become answers and are the same facts again", () => {
  const facts = {
    ...factsOfReport(nothing),
    temperatureLowC: 18,
    humidityHigh: 0.55,
    nightGuard: false,
    floorLoadKgPerM2: 400,
    daysOpenPerWeek: 5,
  };
  expect(factsOfReport(answersFromFacts({ ...facts, passages: [], licences: [] }))).toEqual(facts);
});

describe("a later month", () => {
  test.each([
    ["2026-11-25", 24, "2028-11-25"],
    ["2027-01-31", 1, "2027-02-28"],
    ["2024-02-29", 12, "2025-02-28"],
    ["2026-12-31", 2, "2027-02-28"],
  ])("%s and %i months is %s", (day, months, later) => {
    expect(monthsLater(day, months)).toBe(later);
  });

  test("is never earlier, and more months are never sooner", () => {
    const days = fc
      .date({ min: new Date("2000-01-01"), max: new Date("2090-01-01"), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(days, fc.integer({ min: 1, max: 60 }), (day, months) => {
        expect(monthsLater(day, months) > day).toBe(true);
        expect(monthsLater(day, months + 1) >= monthsLater(day, months)).toBe(true);
      }),
    );
  });
});
