import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  acclimatisation,
  notBefore,
  type RestFacts,
  type RestReason,
} from "#lib/environment/acclimatisation.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const mild: RestFacts = {
  outsideC: 15,
  roomC: 20,
  roomHumidity: 0.5,
  coldestInsideC: 16,
  halfTimeHours: 4,
  massKg: 80,
  hasJars: false,
};

describe("rest by custom", () => {
  // 24 hours: common practice, no source; the longer cases are derived.
  test.each<[string, Partial<RestFacts>, number, RestReason[]]>([
    ["an ordinary crate", {}, 24, []],
    ["a difference just below 15 K", { outsideC: 5.1 }, 24, []],
    ["a difference of 15 K", { outsideC: 5 }, 48, ["large-difference"]],
    ["a difference of 15 K upward", { outsideC: 35 }, 48, ["large-difference"]],
    ["a crate of 200 kg", { massKg: 200 }, 24, []],
    ["a crate above 200 kg", { massKg: 200.5 }, 48, ["heavy"]],
    ["jars", { hasJars: true }, 48, ["jars"]],
    ["an unknown temperature outside", { outsideC: null }, 48, ["difference-not-known"]],
    ["an unknown room", { roomC: null, roomHumidity: null }, 48, ["difference-not-known"]],
    ["an unknown mass", { massKg: null }, 48, ["mass-not-known"]],
    ["unknown contents", { hasJars: null }, 48, ["jars-not-known"]],
    ["all at once", { outsideC: -5, massKg: 400, hasJars: true }, 48, ["large-difference", "heavy", "jars"]],
  ])("%s", (_what, part, hours, reasons) => {
    expect(acclimatisation({ ...mild, ...part })).toMatchObject({ customaryHours: hours, hours, reasons });
  });

  test("nothing known at all rests 48 hours and says why", () => {
    expect(acclimatisation({})).toMatchObject({
      hours: 48,
      reasons: ["difference-not-known", "mass-not-known", "jars-not-known"],
      dewPointState: "not-known",
    });
  });
});

describe("rest by the dew point", () => {
  // Worked example: core 5 °C, room 21 °C at 50 %, half-time 4.63 h: 3.3 h, and 18.5 h to within 1 K.
  test("a core of 5 °C in a room of 21 °C at 50 % waits 3.3 h, and is even after 18.5 h", () => {
    const result = acclimatisation({ ...mild, roomC: 21, coldestInsideC: 5, halfTimeHours: 4.63 });
    expect(result.dewPointState).toBe("waits");
    expect(Math.abs((result.dewPointHours ?? 0) - 3.3)).toBeLessThan(0.05);
    expect(Math.abs((result.withinOneKelvinHours ?? 0) - 18.5)).toBeLessThan(0.05);
    expect(result.hours).toBe(24);
  });

  test("a slow crate waits longer than the custom", () => {
    const result = acclimatisation({ ...mild, roomHumidity: 0.85, coldestInsideC: 8, halfTimeHours: 20 });
    expect(result.dewPointHours).toBeGreaterThan(48);
    expect(result.hours).toBe(result.dewPointHours);
  });

  test("a surface above the dew point and its margin is free at once", () =>
    expect(acclimatisation(mild)).toMatchObject({ dewPointState: "free-at-once", dewPointHours: 0 }));

  test("in a room too damp no rest helps", () =>
    expect(acclimatisation({ ...mild, roomHumidity: 0.97, coldestInsideC: 10 })).toMatchObject({
      dewPointState: "too-damp",
      dewPointHours: null,
      hours: 24,
    }));

  test("without a half-time a cold crate's wait is not known", () =>
    expect(acclimatisation({ ...mild, coldestInsideC: 2, halfTimeHours: null })).toMatchObject({
      dewPointState: "not-known",
      dewPointHours: null,
    }));

  test("the temperature outside stands in for an unknown inside", () => {
    const stated = acclimatisation({ ...mild, outsideC: 6, coldestInsideC: 6 });
    expect(acclimatisation({ ...mild, outsideC: 6, coldestInsideC: null })).toEqual(stated);
  });

  test("after the wait the surface stands exactly 1 K above the dew point", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 16, max: 26, noNaN: true }),
        fc.double({ min: 0.3, max: 0.9, noNaN: true }),
        fc.double({ min: -10, max: 15, noNaN: true }),
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        (roomC, roomHumidity, coldestInsideC, halfTimeHours) => {
          const result = acclimatisation({ ...mild, roomC, roomHumidity, coldestInsideC, halfTimeHours });
          if (result.dewPointState !== "waits") return;
          const surfaceC =
            roomC - (roomC - coldestInsideC) * 2 ** (-(result.dewPointHours ?? 0) / halfTimeHours);
          expect(surfaceC).toBeCloseTo((result.dewPointC ?? 0) + 1, 6);
        },
      ),
    );
  });

  test("a damper room never shortens the wait", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.7, noNaN: true }),
        fc.double({ min: 0.01, max: 0.15, noNaN: true }),
        (roomHumidity, more) => {
          const rest = (humidity: number) =>
            acclimatisation({ ...mild, coldestInsideC: -5, roomHumidity: humidity }).dewPointHours ??
            Infinity;
          expect(rest(roomHumidity + more)).toBeGreaterThanOrEqual(rest(roomHumidity));
        },
      ),
    );
  });
});

describe("the moment", () => {
  test("is the arrival and the rest, in UTC", () =>
    expect(notBefore("2026-03-02T14:20:00+01:00", mild)).toEqual({
      notBefore: "2026-03-03T13:20:00.000Z",
      hours: 24,
      reasons: [],
      dewPointState: "free-at-once",
    }));

  test("does not bend over a change of the clocks", () =>
    expect(notBefore("2026-03-28T12:00:00+01:00", mild).notBefore).toBe("2026-03-29T11:00:00.000Z"));

  test("is rounded up to the whole minute", () =>
    expect(notBefore("2026-03-02T14:20:00.001Z", mild).notBefore).toBe("2026-03-03T14:21:00.000Z"));

  test.each(["2026-03-02T14:20:00", "2026-03-02", "yesterday", ""])("refuses the arrival %j", (arrived) =>
    expect(() => notBefore(arrived, mild)).toThrow(RangeError),
  );

  test("refuses a humidity in percent", () =>
    expect(() => notBefore("2026-03-02T14:20:00Z", { ...mild, roomHumidity: 50 })).toThrow(Refusal));
});
