import { describe, expect, test } from "vitest";
import { cautionsFor, limitsFor } from "#lib/environment/limits.ts";
import { Limits, limitQuantities, type PreparationCode, preparationCodes } from "#lib/environment/schema.ts";
import { sources } from "#lib/workings/sources.ts";

/** Target, warning and alarm of temperature and humidity in %, change of humidity in % and of temperature in K, light, ultraviolet, shock. */
type Row = [
  code: PreparationCode,
  temperature: number[],
  humidityPercent: number[],
  humidityChangePercent: number[],
  temperatureChange: number[],
  light: number[],
  ultraviolet: number[],
  shock: number[],
];

// The table of defaults, common practice with the grounds that each figure names.
const rows: Row[] = [
  [
    "silicone-body",
    [18, 22, 15, 25, 5, 30],
    [40, 60, 35, 65, 30, 70],
    [10, 20],
    [4, 8],
    [100, 150_000],
    [10, 75],
    [24, 40],
  ],
  [
    "silicone-organ",
    [18, 22, 15, 25, 5, 30],
    [40, 60, 35, 65, 30, 70],
    [10, 20],
    [4, 8],
    [100, 150_000],
    [10, 75],
    [36, 60],
  ],
  [
    "epoxy-sheet",
    [16, 20, 15, 23, 5, 28],
    [35, 55, 30, 60, 25, 65],
    [10, 20],
    [4, 8],
    [100, 150_000],
    [10, 50],
    [30, 50],
  ],
  [
    "polyester-sheet",
    [16, 20, 15, 23, 5, 28],
    [35, 50, 30, 55, 25, 60],
    [10, 20],
    [4, 8],
    [50, 150_000],
    [10, 50],
    [30, 50],
  ],
  [
    "alcohol-jar",
    [17, 18, 16, 20, 15, 23],
    [40, 60, 35, 65, 30, 70],
    [15, 25],
    [3, 6],
    [50, 150_000],
    [10, 75],
    [18, 30],
  ],
  [
    "aqueous-jar",
    [17, 20, 16, 22, 15, 25],
    [40, 60, 35, 65, 30, 70],
    [15, 25],
    [3, 6],
    [50, 150_000],
    [10, 75],
    [18, 30],
  ],
  [
    "corrosion-cast",
    [16, 22, 15, 25, 5, 30],
    [35, 60, 30, 65, 25, 70],
    [15, 25],
    [5, 10],
    [150, 600_000],
    [10, 75],
    [12, 20],
  ],
  [
    "bone",
    [16, 20, 15, 22, 10, 25],
    [45, 55, 40, 60, 35, 65],
    [8, 15],
    [4, 8],
    [200, 600_000],
    [75, 75],
    [15, 25],
  ],
  [
    "teeth",
    [16, 20, 15, 22, 10, 25],
    [45, 55, 42, 58, 38, 62],
    [5, 10],
    [3, 6],
    [200, 600_000],
    [75, 75],
    [18, 30],
  ],
  [
    "slide",
    [15, 20, 12, 22, 5, 25],
    [30, 50, 25, 55, 20, 60],
    [10, 20],
    [4, 8],
    [50, 15_000],
    [10, 50],
    [24, 40],
  ],
  [
    "wax",
    [16, 20, 15, 22, 12, 25],
    [45, 55, 42, 58, 35, 65],
    [10, 15],
    [2, 4],
    [50, 150_000],
    [10, 75],
    [12, 20],
  ],
  [
    "dry",
    [16, 20, 14, 22, 5, 25],
    [40, 50, 35, 55, 30, 60],
    [8, 15],
    [4, 8],
    [50, 50_000],
    [10, 75],
    [15, 25],
  ],
];

function ends({ target, warn, alarm }: Limits["humidity"], factor = 1): number[] {
  return [target, warn, alarm]
    .flatMap((band) => [band.low, band.high])
    .map((end) => Math.round(end * factor * 1e6) / 1e6);
}

describe("the table of limits", () => {
  test("has a row for every preparation", () =>
    expect(rows.map(([code]) => code)).toEqual([...preparationCodes]));

  test.each(rows)(
    "%s",
    (code, temperature, humidity, humidityChange, temperatureChange, light, ultraviolet, shock) => {
      const limits = limitsFor(code);
      expect(ends(limits.temperatureC)).toEqual(temperature);
      expect(ends(limits.humidity, 100)).toEqual(humidity);
      expect([limits.humidityChange24h.warn * 100, limits.humidityChange24h.alarm * 100]).toEqual(
        humidityChange,
      );
      expect([limits.temperatureChange24hK.warn, limits.temperatureChange24hK.alarm]).toEqual(
        temperatureChange,
      );
      expect([limits.illuminanceLx.max, limits.lightLxHoursPerYear.max]).toEqual(light);
      expect([limits.uvMicrowattPerLumen.target, limits.uvMicrowattPerLumen.alarm]).toEqual(ultraviolet);
      expect([limits.shockG.warn, limits.shockG.alarm]).toEqual(shock);
      // The warning of a shock stands at 60 % of its alarm.
      expect(limits.shockG.warn / limits.shockG.alarm).toBeCloseTo(0.6, 12);
    },
  );

  test.each(preparationCodes)("%s fits the schema and cites known sources for every figure", (code) => {
    const limits = limitsFor(code);
    expect(Limits.parse(limits)).toEqual(limits);
    for (const quantity of limitQuantities) {
      for (const { id, title, standing } of limits[quantity].ground) {
        expect(sources).toHaveProperty([id], expect.objectContaining({ title, standing }));
      }
    }
  });

  test.each(["epoxy-sheet", "polyester-sheet"] as const)("%s bears 35 °C on the road", (code) =>
    expect(limitsFor(code).transitTemperatureC.alarm).toEqual({ low: 5, high: 35 }),
  );

  test("on the road every other preparation keeps the alarm band of the store", () => {
    for (const code of ["silicone-body", "alcohol-jar", "wax", "bone"] as const) {
      expect(limitsFor(code).transitTemperatureC.alarm).toEqual(limitsFor(code).temperatureC.alarm);
    }
  });

  test("no jar may go below 15 °C on the road", () => {
    expect(limitsFor("alcohol-jar").transitTemperatureC.alarm.low).toBe(15);
    expect(limitsFor("aqueous-jar").transitTemperatureC.alarm.low).toBe(15);
  });
});

describe("traits of colour", () => {
  test("a dyed cast takes 50 lx and 150 000 lx·h", () => {
    const limits = limitsFor("corrosion-cast", ["dyed-resin"]);
    expect([limits.illuminanceLx.max, limits.lightLxHoursPerYear.max]).toEqual([50, 150_000]);
  });

  test("tissue with preserved colour takes 15 000 lx·h", () =>
    expect(limitsFor("alcohol-jar", ["colour-preserved"]).lightLxHoursPerYear.max).toBe(15_000));

  test.each(preparationCodes)("never widen the light of %s", (code) => {
    const plain = limitsFor(code);
    const narrowed = limitsFor(code, ["dyed-resin", "colour-preserved"]);
    expect(narrowed.illuminanceLx.max).toBeLessThanOrEqual(plain.illuminanceLx.max);
    expect(narrowed.lightLxHoursPerYear.max).toBeLessThanOrEqual(plain.lightLxHoursPerYear.max);
    expect(Limits.parse(narrowed)).toEqual(narrowed);
  });
});

test("shock follows the class of the specimen, everything else the preparation", () => {
  const loose = limitsFor("bone", [], "bone");
  expect(loose.shockG).toMatchObject({ warn: 27, alarm: 45 });
  expect({ ...loose, shockG: null }).toEqual({ ...limitsFor("bone"), shockG: null });
});

test("the limits of teeth lie within those of bone", () => {
  const [bone, teeth] = [limitsFor("bone"), limitsFor("teeth")];
  for (const quantity of ["temperatureC", "humidity"] as const)
    for (const level of ["target", "warn", "alarm"] as const) {
      expect(teeth[quantity][level].low).toBeGreaterThanOrEqual(bone[quantity][level].low);
      expect(teeth[quantity][level].high).toBeLessThanOrEqual(bone[quantity][level].high);
    }
  for (const quantity of ["temperatureChange24hK", "humidityChange24h"] as const)
    for (const level of ["warn", "alarm"] as const)
      expect(teeth[quantity][level]).toBeLessThanOrEqual(bone[quantity][level]);
  expect(teeth.illuminanceLx.max).toBeLessThanOrEqual(bone.illuminanceLx.max);
  expect(teeth.uvMicrowattPerLumen.alarm).toBeLessThanOrEqual(bone.uvMicrowattPerLumen.alarm);
  for (const caution of cautionsFor("bone")) expect(cautionsFor("teeth")).toContain(caution);
});

test("changed limits do not change the table", () => {
  const limits = limitsFor("bone");
  limits.humidity.target.low = 0.46;
  limits.shockG.ground.pop();
  expect(limitsFor("bone").humidity.target.low).toBe(0.45);
  expect(limitsFor("bone").shockG.ground).toHaveLength(2);
});

test.each(preparationCodes)("%s has cautions that are whole sentences", (code) => {
  expect(cautionsFor(code).length).toBeGreaterThan(0);
  for (const caution of cautionsFor(code)) expect(caution).toMatch(/^[A-Z0-9].*\.$/);
});
