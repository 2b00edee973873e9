import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  coverGaps,
  coverParts,
  leastCoveredMinor,
  nailToNailStretches,
  type Stretch,
} from "#lib/suitability/cover-gaps.ts";
import type { CoverFacts } from "#lib/suitability/rules/case.ts";

const needed = { minor: 1_000, currency: "EUR" };
const cover = (startsAt: string, endsAt: string, said: Partial<CoverFacts> = {}): CoverFacts => ({
  amount: needed,
  startsAt,
  endsAt,
  coversTransit: true,
  territories: ["NO", "FR"],
  ...said,
});
const stretch = (from: string, to: string, said: Partial<Stretch> = {}): Stretch => ({
  from,
  to,
  isTransit: true,
  territories: ["NO", "FR"],
  ...said,
});

describe("nail to nail from 20 February 2027, 8 h, to 12 July, 16 h", () => {
  const way = [stretch("2027-02-20T08:00:00Z", "2027-07-12T16:00:00Z")];

  test("a certificate that ends with 30 June leaves a gap from 1 July", () => {
    expect(coverGaps(way, [cover("2027-02-20T00:00:00Z", "2027-07-01T00:00:00Z")], needed)).toEqual([
      {
        from: "2027-07-01T00:00:00.000Z",
        to: "2027-07-12T16:00:00.000Z",
        reason: "no-cover",
        coveredMinor: 0,
      },
    ]);
  });
  test("one hour between two certificates is found", () => {
    const covers = [
      cover("2027-02-20T00:00:00Z", "2027-05-01T11:00:00Z"),
      cover("2027-05-01T12:00:00Z", "2027-08-01T00:00:00Z"),
    ];
    expect(coverGaps(way, covers, needed)).toEqual([
      {
        from: "2027-05-01T11:00:00.000Z",
        to: "2027-05-01T12:00:00.000Z",
        reason: "no-cover",
        coveredMinor: 0,
      },
    ]);
  });
  test("two certificates that meet leave none", () => {
    const covers = [
      cover("2027-02-20T08:00:00Z", "2027-05-01T12:00:00Z"),
      cover("2027-05-01T12:00:00Z", "2027-07-12T16:00:00Z"),
    ];
    expect(coverGaps(way, covers, needed)).toEqual([]);
  });
});

const day = [stretch("2027-03-01T00:00:00Z", "2027-03-02T00:00:00Z")];
const allDay = (said: Partial<CoverFacts>) => [cover("2027-01-01T00:00:00Z", "2027-12-31T00:00:00Z", said)];

test.each([
  [
    "a certificate without transit does not count on the road",
    allDay({ coversTransit: false }),
    "not-on-the-road",
  ],
  ["a certificate for one country does not count for two", allDay({ territories: ["NO"] }), "other-country"],
  ["a certificate without countries counts nowhere", allDay({ territories: [] }), "other-country"],
  [
    "a certificate in another currency does not count",
    allDay({ amount: { minor: 9_999, currency: "NOK" } }),
    "other-currency",
  ],
  ["a certificate for less leaves a gap", allDay({ amount: { minor: 999, currency: "EUR" } }), "too-low"],
] as const)("%s", (_what, covers, reason) => {
  expect(coverGaps(day, covers, needed)).toMatchObject([{ reason }]);
});

test("certificates at one moment add up", () => {
  const half = { amount: { minor: 500, currency: "EUR" } };
  expect(coverGaps(day, [...allDay(half), ...allDay(half)], needed)).toEqual([]);
});

test("at the venue a certificate without transit counts", () => {
  const stay = [
    stretch("2027-03-01T00:00:00Z", "2027-03-02T00:00:00Z", { isTransit: false, territories: ["FR"] }),
  ];
  expect(coverGaps(stay, allDay({ coversTransit: false, territories: ["FR"] }), needed)).toEqual([]);
});

test("a carrier's certificate ends at the venue's door", () => {
  const [road, stay] = [
    stretch("2027-03-01T00:00:00Z", "2027-03-02T00:00:00Z"),
    stretch("2027-03-02T00:00:00Z", "2027-03-03T00:00:00Z", { isTransit: false, territories: ["FR"] }),
  ];
  expect(coverGaps([road, stay], allDay({ coversStay: false }), needed)).toMatchObject([
    { from: "2027-03-02T00:00:00.000Z", reason: "not-at-the-venue" },
  ]);
  const both = [...allDay({ coversStay: false }), ...allDay({ coversTransit: false, territories: ["FR"] })];
  expect(coverGaps([road, stay], both, needed)).toEqual([]);
});

test("the parts of the way follow each other and say what is covered in each", () => {
  const way = [
    stretch("2027-03-01T00:00:00.000Z", "2027-03-03T00:00:00.000Z"),
    stretch("2027-03-03T00:00:00.000Z", "2027-03-10T00:00:00.000Z", {
      isTransit: false,
      territories: ["FR"],
    }),
  ];
  const covers = [
    cover("2027-01-01T00:00:00Z", "2027-03-05T00:00:00Z", { amount: { minor: 400, currency: "EUR" } }),
    cover("2027-01-01T00:00:00Z", "2027-12-01T00:00:00Z", { amount: { minor: 600, currency: "EUR" } }),
  ];
  expect(coverParts(way, covers, needed)).toMatchObject([
    { from: "2027-03-01T00:00:00.000Z", to: "2027-03-03T00:00:00.000Z", reason: null, coveredMinor: 1_000 },
    { from: "2027-03-03T00:00:00.000Z", to: "2027-03-05T00:00:00.000Z", reason: null, isTransit: false },
    {
      from: "2027-03-05T00:00:00.000Z",
      to: "2027-03-10T00:00:00.000Z",
      reason: "too-low",
      coveredMinor: 600,
    },
  ]);
});

test("what certificates come to together is the least of the time in which one holds", () => {
  const time = { from: "2027-03-01T00:00:00Z", to: "2027-03-10T00:00:00Z" };
  const [early, late] = [
    cover("2027-01-01T00:00:00Z", "2027-03-05T00:00:00Z"),
    cover("2027-03-04T00:00:00Z", "2027-04-01T00:00:00Z", { amount: { minor: 700, currency: "EUR" } }),
  ];
  expect(leastCoveredMinor(time, [early, late])).toBe(700);
  expect(leastCoveredMinor(time, [early])).toBe(1_000);
  expect(leastCoveredMinor(time, [cover("2026-01-01T00:00:00Z", "2027-03-01T00:00:00Z")])).toBeNull();
});

test("a cover more never opens a gap, and gaps lie inside the way in order", () => {
  const hour = fc
    .integer({ min: 0, max: 240 })
    .map((hours) => new Date(Date.UTC(2027, 2, 1, hours)).toISOString());
  const anyCover = fc
    .tuple(hour, hour)
    .filter(([a, b]) => a < b)
    .map(([a, b]) => cover(a, b));
  const way = [stretch("2027-03-02T00:00:00.000Z", "2027-03-09T00:00:00.000Z")];
  const hours = (gaps: { from: string; to: string }[]) =>
    gaps.reduce((sum, gap) => sum + (Date.parse(gap.to) - Date.parse(gap.from)) / 3_600_000, 0);
  fc.assert(
    fc.property(fc.array(anyCover, { maxLength: 5 }), anyCover, (covers, more) => {
      const gaps = coverGaps(way, covers, needed);
      expect(hours(coverGaps(way, [...covers, more], needed))).toBeLessThanOrEqual(hours(gaps));
      for (const [index, gap] of gaps.entries()) {
        expect(gap.from < gap.to).toBe(true);
        expect(gap.from >= (gaps[index - 1]?.to ?? "2027-03-02T00:00:00.000Z")).toBe(true);
        expect(gap.to <= "2027-03-09T00:00:00.000Z").toBe(true);
      }
    }),
  );
});

describe("the stretches of a loan", () => {
  const loan = {
    startsOn: "2027-03-01",
    endsOn: "2027-07-01",
    daysBefore: 14,
    daysAfter: 14,
    lenderCountry: "NO",
    venueCountry: "FR",
    out: null,
    home: null,
  };
  test("take all days kept for the loan while no stage is planned", () => {
    expect(nailToNailStretches(loan)).toEqual([
      stretch("2027-02-15T00:00:00.000Z", "2027-03-02T00:00:00.000Z"),
      stretch("2027-03-02T00:00:00.000Z", "2027-07-01T00:00:00.000Z", {
        isTransit: false,
        territories: ["FR"],
      }),
      stretch("2027-07-01T00:00:00.000Z", "2027-07-15T00:00:00.000Z"),
    ]);
  });
  test("follow the stages that are planned", () => {
    const planned = nailToNailStretches({
      ...loan,
      out: { departsOn: "2027-02-26", arrivesOn: "2027-02-28" },
      home: { departsOn: "2027-06-29", arrivesOn: "2027-07-02" },
    });
    expect(planned.map(({ from, to, isTransit }) => [from.slice(0, 10), to.slice(0, 10), isTransit])).toEqual(
      [
        ["2027-02-26", "2027-03-01", true],
        ["2027-03-01", "2027-06-29", false],
        ["2027-06-29", "2027-07-03", true],
      ],
    );
  });
  test("leave no hour between the first and the last", () => {
    const days = fc.integer({ min: -20, max: 20 });
    const on = (base: string, offset: number) =>
      new Date(Date.parse(base) + offset * 86_400_000).toISOString().slice(0, 10);
    fc.assert(
      fc.property(days, fc.nat(6), days, fc.nat(6), (outStart, outDays, homeStart, homeDays) => {
        const stretches = nailToNailStretches({
          ...loan,
          out: { departsOn: on("2027-02-25", outStart), arrivesOn: on("2027-02-25", outStart + outDays) },
          home: { departsOn: on("2027-07-01", homeStart), arrivesOn: on("2027-07-01", homeStart + homeDays) },
        });
        for (const [index, { from }] of stretches.entries())
          if (index > 0) expect(from).toBe(stretches[index - 1]?.to);
      }),
    );
  });
});
