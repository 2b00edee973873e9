/** Facts of a venue that nobody stated, and licences on a day. */
import { describe, expect, test } from "vitest";
import { facilityFacts, paperStateOn, unstatedFacts } from "#lib/people/facility-gaps.ts";
import { VenueClimate, type VenueFacts } from "#lib/people/schema.ts";

const nothing = Object.fromEntries(facilityFacts.map((fact) => [fact, null]));
const aVenue = (said: Partial<VenueFacts> = {}) =>
  ({ ...nothing, passages: [], licences: [], ...said }) as unknown as VenueFacts;
const aDoor = {
  kind: "door",
  name: "Dock",
  widthMm: 900,
  heightMm: 2000,
  depthMm: null,
  secondWidthMm: null,
  loadKg: null,
  slopePercent: null,
} as const;

describe("unstated facts", () => {
  test("of a venue of which nothing is known are all of them", () => {
    expect(unstatedFacts(aVenue())).toEqual([...facilityFacts, "passages"]);
  });

  test("leave out what was stated, also where it is nought or no", () => {
    const missing = unstatedFacts(aVenue({ illuminanceLx: 0, nightGuard: false, passages: [aDoor] }));
    expect(missing).not.toContain("illuminanceLx");
    expect(missing).not.toContain("nightGuard");
    expect(missing).not.toContain("passages");
    expect(missing).toContain("humidityLow");
  });

  test("cover every figure of the climate", () => {
    for (const figure of Object.keys(VenueClimate.shape)) expect(facilityFacts).toContain(figure);
  });
});

describe("a licence", () => {
  test.each([
    [null, null, "no end stated"],
    ["2026-01-01", null, "no end stated"],
    ["2026-01-01", "2027-03-10", "valid"],
    ["2026-01-01", "2027-03-09", "lapsed"],
    ["2027-03-11", "2028-01-01", "not yet valid"],
    ["2027-03-10", "2027-03-10", "valid"],
  ])("from %s until %s is %s on 10 March 2027", (validFrom, validUntil, state) => {
    expect(paperStateOn({ validFrom, validUntil }, "2027-03-10")).toBe(state);
  });
});
