import { expect, test } from "vitest";
import type { VenueFacts } from "#lib/people/schema.ts";
import { displayDays, judgeClimate, judgeLightLeft } from "#lib/suitability/rules/climate.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const judge = (venue: Partial<VenueFacts>, spentLxHours: number | null = 0) =>
  judgeClimate(aSpecimenCase({ spentLxHours }), aRequestFact({ venue: aVenueFact(venue) }));
const about = (findings: ReturnType<typeof judge>, quantity: string) =>
  findings.find((finding) => finding.parameters.quantity === quantity);

test("a steady room with little light is clear in every quantity", () => {
  const findings = judge({});
  expect(findings.filter(({ group }) => group === "climate")).toHaveLength(4);
  expect(findings.filter(({ group }) => group === "light")).toHaveLength(4);
  expect(findings.every(({ outcome }) => outcome === "clear")).toBe(true);
});

// Silicone-impregnated: warning 15–25 °C, alarm 5–30 °C; warning 35–65 %, alarm 30–70 %; 100 lx; 75 µW/lm.
test.each([
  [
    "26 °C is outside the warning band",
    { temperatureHighC: 26 },
    "temperatureC",
    "attend",
    "climate.temperature-outside-warn",
  ],
  [
    "31 °C is outside the alarm band",
    { temperatureHighC: 31 },
    "temperatureC",
    "bar",
    "climate.temperature-outside-alarm",
  ],
  [
    "a temperature nobody has stated is attend",
    { temperatureLowC: null, temperatureHighC: null },
    "temperatureC",
    "attend",
    "climate.temperature-not-stated",
  ],
  [
    "28 % humidity is outside the alarm band",
    { humidityLow: 0.28 },
    "humidity",
    "bar",
    "climate.humidity-outside-alarm",
  ],
  [
    "a humidity that moves by 15 % is attend",
    { humiditySwing24h: 0.15 },
    "humidityChange24h",
    "attend",
    "climate.humidity-change-outside-warn",
  ],
  ["120 lx is too bright", { illuminanceLx: 120 }, "illuminanceLx", "bar", "climate.illuminance-over-limit"],
  [
    "80 µW/lm is too much ultraviolet",
    { uvMicrowattPerLumen: 80 },
    "uvMicrowattPerLumen",
    "bar",
    "climate.ultraviolet-over-limit",
  ],
] as const)("%s", (_what, venue, quantity, outcome, fact) => {
  expect(about(judge(venue), quantity)).toMatchObject({ outcome, fact });
});

test("light that was already taken this year counts", () => {
  // 50 lx · 6 h · 88 days = 26 400 lx·h of 150 000 lx·h a year.
  expect(about(judge({}, 120_000), "lightLxHoursPerYear")?.outcome).toBe("clear");
  expect(about(judge({}, 130_000), "lightLxHoursPerYear")?.outcome).toBe("bar");
  expect(about(judge({}, null), "lightLxHoursPerYear")?.outcome).toBe("attend");
});

test("122 days at 5 days a week are 88 days of light", () => {
  expect(displayDays(aRequestFact())).toBe(88);
  expect(displayDays(aRequestFact({ venue: aVenueFact({ daysOpenPerWeek: null }) }))).toBeNull();
});

test("an old report, or none, is attend", () => {
  expect(judge({ reportedOn: "2024-11-24" }).at(-1)).toMatchObject({
    outcome: "attend",
    fact: "climate.old-report",
  });
  expect(judge({ reportedOn: "2024-11-25" }).every(({ outcome }) => outcome === "clear")).toBe(true);
  expect(judge({ reportedOn: null }).at(-1)).toMatchObject({ outcome: "attend", fact: "climate.no-report" });
});

test.each([
  ["nothing taken", 0, "clear", "light.left"],
  ["a fifth left", 80_000, "clear", "light.left"],
  ["less than a fifth left", 80_001, "attend", "light.little-left"],
  ["nothing left", 100_000, "bar", "light.none-left"],
  ["more taken than allowed", 120_000, "bar", "light.none-left"],
  ["nobody knows what was taken", null, "attend", "light.spent-not-known"],
] as const)("of 100 000 lx·h a year, %s", (_what, spent, outcome, fact) => {
  expect(judgeLightLeft(spent, 100_000)).toMatchObject({ outcome, fact });
});
