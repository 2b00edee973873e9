import { describe, expect, test } from "vitest";
import { limitsFor } from "#lib/environment/limits.ts";
import { Limits } from "#lib/environment/schema.ts";

describe("the limits schema", () => {
  test("parsing parsed limits changes nothing", () => {
    const once = Limits.parse(limitsFor("wax"));
    expect(Limits.parse(once)).toEqual(once);
    expect(once).toEqual(limitsFor("wax"));
  });

  test.each<[string, (limits: Limits) => void, string]>([
    ["a target outside its warning band", (limits) => (limits.humidity.target.low = 0.1), "humidity.target"],
    [
      "a warning band outside its alarm band",
      (limits) => (limits.temperatureC.warn.high = 26),
      "temperatureC.warn",
    ],
    [
      "a band upside down",
      (limits) => (limits.transitTemperatureC.alarm.low = 90),
      "transitTemperatureC.alarm.low",
    ],
    ["a warning above its alarm", (limits) => (limits.shockG.warn = 21), "shockG.warn"],
    [
      "a target of ultraviolet above its alarm",
      (limits) => (limits.uvMicrowattPerLumen.target = 76),
      "uvMicrowattPerLumen.target",
    ],
    ["a humidity in percent", (limits) => (limits.humidity.alarm.high = 65), "humidity.alarm.high"],
    [
      "a figure that is not a number",
      (limits) => (limits.illuminanceLx.max = Number.NaN),
      "illuminanceLx.max",
    ],
    [
      "a figure without a ground",
      (limits) => (limits.lightLxHoursPerYear.ground = []),
      "lightLxHoursPerYear.ground",
    ],
  ])("refuses %s", (_what, spoil, path) => {
    const limits = limitsFor("wax");
    spoil(limits);
    const result = Limits.safeParse(limits);
    expect(result.error?.issues.map((issue) => issue.path.join("."))).toContain(path);
  });
});
