import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupLimits } from "#lib/environment/group-limits.ts";
import { limitsFor } from "#lib/environment/limits.ts";
import { preparationCodes } from "#lib/environment/schema.ts";
import {
  type ClimateQuantity,
  type ClimateReason,
  compareVenueClimate,
  StatedClimate,
} from "#lib/environment/venue-climate.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

const limits = limitsFor("silicone-body");
const good: StatedClimate = {
  temperatureLowC: 18,
  temperatureHighC: 22,
  humidityLow: 0.45,
  humidityHigh: 0.55,
  temperatureSwing24hK: 2,
  humiditySwing24h: 0.05,
  illuminanceLx: 50,
  uvMicrowattPerLumen: 5,
  lightHoursPerDay: 8,
  displayDays: 90,
};

function findingOn(quantity: ClimateQuantity, part: Partial<StatedClimate>, spent: number | null = 0) {
  const finding = compareVenueClimate({ ...good, ...part }, limits, spent).find(
    (one) => one.quantity === quantity,
  );
  if (!finding) throw new Error(`${quantity} was not compared.`);
  return finding;
}

test("a good venue is clear in every quantity", () => {
  const comparisons = compareVenueClimate(good, limits);
  expect(comparisons.map((one) => one.quantity)).toEqual([
    "temperatureC",
    "temperatureChange24hK",
    "humidity",
    "humidityChange24h",
    "illuminanceLx",
    "lightLxHoursPerYear",
    "uvMicrowattPerLumen",
  ]);
  expect(new Set(comparisons.map((one) => one.outcome))).toEqual(new Set(["clear"]));
});

describe("against a silicone-impregnated body", () => {
  test.each<[ClimateQuantity, Partial<StatedClimate>, Outcome, ClimateReason]>([
    ["temperatureC", { temperatureLowC: 15, temperatureHighC: 25 }, "clear", "within"],
    ["temperatureC", { temperatureHighC: 25.5 }, "attend", "outside-warn"],
    ["temperatureC", { temperatureLowC: 5 }, "attend", "outside-warn"],
    ["temperatureC", { temperatureHighC: 30.5 }, "bar", "outside-alarm"],
    ["temperatureC", { temperatureLowC: 4.9 }, "bar", "outside-alarm"],
    ["temperatureC", { temperatureHighC: null }, "attend", "not-stated"],
    ["temperatureC", { temperatureLowC: 4, temperatureHighC: null }, "bar", "outside-alarm"],
    ["humidity", { humidityLow: 0.35, humidityHigh: 0.65 }, "clear", "within"],
    ["humidity", { humidityHigh: 0.68 }, "attend", "outside-warn"],
    ["humidity", { humidityHigh: 0.71 }, "bar", "outside-alarm"],
    ["humidity", { humidityLow: null, humidityHigh: null }, "attend", "not-stated"],
    ["humidityChange24h", { humiditySwing24h: 0.1 }, "clear", "within"],
    ["humidityChange24h", { humiditySwing24h: 0.15 }, "attend", "outside-warn"],
    ["humidityChange24h", { humiditySwing24h: 0.21 }, "bar", "outside-alarm"],
    ["humidityChange24h", { humiditySwing24h: null, humidityHigh: 0.6 }, "attend", "not-stated"],
    ["temperatureChange24hK", { temperatureSwing24hK: 4.5 }, "attend", "outside-warn"],
    ["temperatureChange24hK", { temperatureSwing24hK: 9 }, "bar", "outside-alarm"],
    ["illuminanceLx", { illuminanceLx: 100 }, "clear", "within"],
    ["illuminanceLx", { illuminanceLx: 101 }, "bar", "over-limit"],
    ["illuminanceLx", { illuminanceLx: null }, "attend", "not-stated"],
    [
      "lightLxHoursPerYear",
      { illuminanceLx: 100, lightHoursPerDay: 10, displayDays: 150 },
      "clear",
      "within",
    ],
    [
      "lightLxHoursPerYear",
      { illuminanceLx: 100, lightHoursPerDay: 10, displayDays: 151 },
      "bar",
      "over-limit",
    ],
    ["lightLxHoursPerYear", { lightHoursPerDay: null }, "attend", "not-stated"],
    ["lightLxHoursPerYear", { illuminanceLx: null, displayDays: 0 }, "clear", "within"],
    ["uvMicrowattPerLumen", { uvMicrowattPerLumen: 10 }, "clear", "within"],
    ["uvMicrowattPerLumen", { uvMicrowattPerLumen: 75 }, "attend", "over-target"],
    ["uvMicrowattPerLumen", { uvMicrowattPerLumen: 76 }, "bar", "over-limit"],
    ["uvMicrowattPerLumen", { uvMicrowattPerLumen: null }, "attend", "not-stated"],
  ])("%s with %o is %s, %s", (quantity, part, outcome, reason) => {
    expect(findingOn(quantity, part)).toMatchObject({ outcome, reason });
  });

  test("the figures stand beside the outcome", () =>
    expect(findingOn("humidity", { humidityHigh: 0.68 })).toMatchObject({
      stated: { low: 0.45, high: 0.68 },
      clearWithin: { low: 0.35, high: 0.65 },
      barBeyond: { low: 0.3, high: 0.7 },
    }));

  test("a narrow band settles a swing that is not stated", () => {
    expect(findingOn("humidityChange24h", { humiditySwing24h: null })).toMatchObject({ outcome: "clear" });
    expect(findingOn("temperatureChange24hK", { temperatureSwing24hK: null })).toMatchObject({
      outcome: "clear",
    });
  });

  test("light already taken in the year counts, and when it is not known it is attend", () => {
    expect(findingOn("lightLxHoursPerYear", {}, 114_000)).toMatchObject({
      outcome: "clear",
      stated: { high: 150_000 },
    });
    expect(findingOn("lightLxHoursPerYear", {}, 114_001)).toMatchObject({ outcome: "bar" });
    expect(findingOn("lightLxHoursPerYear", {}, null)).toMatchObject({
      outcome: "attend",
      reason: "not-stated",
    });
    expect(findingOn("lightLxHoursPerYear", { displayDays: 365, lightHoursPerDay: 12 }, null)).toMatchObject({
      outcome: "bar",
    });
    expect(() => compareVenueClimate(good, limits, -1)).toThrow(RangeError);
    expect(() => compareVenueClimate(good, limits, Number.NaN)).toThrow(RangeError);
  });

  test("a show of two years has the light of two years", () =>
    expect(findingOn("lightLxHoursPerYear", { displayDays: 730 })).toMatchObject({
      outcome: "clear",
      clearWithin: { high: 300_000 },
    }));
});

test("specimens without a common alarm band bar a shared room, without a common warning band they ask for attention", () => {
  const wax = { id: "wax", limits: limitsFor("wax") };
  wax.limits.humidity.target = { low: 0.61, high: 0.62 };
  wax.limits.humidity.warn = { low: 0.6, high: 0.63 };
  const slide = { id: "slide", limits: limitsFor("slide") };
  const onHumidity = () =>
    compareVenueClimate({ ...good, humidityHigh: 0.5 }, groupLimits([wax, slide]).limits).find(
      (one) => one.quantity === "humidity",
    );
  expect(onHumidity()).toMatchObject({ outcome: "attend", reason: "no-common-band", clearWithin: null });
  wax.limits.humidity.alarm = { low: 0.601, high: 0.65 };
  expect(onHumidity()).toMatchObject({ outcome: "bar", reason: "no-common-band", barBeyond: null });
});

describe("whatever the venue states", () => {
  const maybe = (most: number) => fc.option(fc.double({ min: 0, max: most, noNaN: true }), { nil: null });
  const anyClimate = fc
    .record({
      temperatureLowC: maybe(20),
      temperatureRise: maybe(20),
      humidityLow: maybe(0.6),
      humidityRise: maybe(0.4),
      temperatureSwing24hK: maybe(15),
      humiditySwing24h: maybe(0.4),
      illuminanceLx: maybe(300),
      uvMicrowattPerLumen: maybe(100),
      lightHoursPerDay: maybe(24),
      displayDays: fc.option(fc.integer({ min: 0, max: 800 }), { nil: null }),
    })
    .map(({ temperatureRise, humidityRise, ...stated }) => ({
      ...stated,
      temperatureHighC: temperatureRise === null ? null : (stated.temperatureLowC ?? 0) + temperatureRise,
      humidityHigh: humidityRise === null ? null : Math.min(1, (stated.humidityLow ?? 0) + humidityRise),
    }));
  const anyLimits = fc.constantFrom(...preparationCodes).map((code) => limitsFor(code));
  const gravity: Record<Outcome, number> = { clear: 0, attend: 1, bar: 2 };

  test("it is seven comparisons, and a figure that is not known is never clear", () => {
    fc.assert(
      fc.property(anyClimate, anyLimits, (stated, own) => {
        const comparisons = compareVenueClimate(stated, own);
        expect(comparisons).toHaveLength(7);
        for (const one of comparisons) {
          if (one.stated.high === null) expect(one.outcome).not.toBe("clear");
        }
      }),
    );
  });

  test("saying less makes nothing clear, except a swing that the width of its band settles", () => {
    const keys = Object.keys(good) as (keyof StatedClimate)[];
    fc.assert(
      fc.property(anyClimate, anyLimits, fc.constantFrom(...keys), (stated, own, dropped) => {
        const full = compareVenueClimate(stated, own);
        const less = compareVenueClimate({ ...stated, [dropped]: null }, own);
        less.forEach((one, index) => {
          if (one.outcome !== "clear") return;
          const before = full[index];
          if (before?.outcome !== "clear") expect(one.quantity).toMatch(/Change24h/);
        });
      }),
    );
  });

  test("a group is never judged milder than each of its specimens", () => {
    fc.assert(
      fc.property(anyClimate, anyLimits, anyLimits, (stated, first, second) => {
        const group = groupLimits([
          { id: "first", limits: first },
          { id: "second", limits: second },
        ]);
        const together = compareVenueClimate(stated, group.limits);
        for (const own of [first, second]) {
          compareVenueClimate(stated, own).forEach((alone, index) => {
            expect(gravity[together[index]?.outcome ?? "clear"]).toBeGreaterThanOrEqual(
              gravity[alone.outcome],
            );
          });
        }
      }),
    );
  });
});

describe("the stated climate", () => {
  test("an empty form means that nothing is known", () => {
    const stated = StatedClimate.parse({});
    expect(Object.values(stated).every((value) => value === null)).toBe(true);
    expect(StatedClimate.parse(stated)).toEqual(stated);
    // Dark, or never shown, would be known; nothing here is.
    expect(compareVenueClimate(stated, limits).every((one) => one.outcome === "attend")).toBe(true);
  });

  test.each([
    [{ temperatureLowC: 22, temperatureHighC: 18 }, "temperatureLowC"],
    [{ humidityLow: 0.6, humidityHigh: 0.4 }, "humidityLow"],
    [{ humidityHigh: 55 }, "humidityHigh"],
    [{ lightHoursPerDay: 25 }, "lightHoursPerDay"],
  ])("refuses %o", (part, path) => {
    const result = StatedClimate.safeParse({ ...good, ...part });
    expect(result.error?.issues.map((issue) => issue.path.join("."))).toEqual([path]);
  });
});
