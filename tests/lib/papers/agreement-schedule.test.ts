import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { consentBlocks, limitsBlocks, rangesOf, scheduleBlocks } from "#lib/papers/agreement-schedule.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { cellText, onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";

const five = someTerms(5);
const rowsOf = (blocks: Parameters<typeof onlyTable>[0]) =>
  onlyTable(blocks).rows.map((row) => row.map(cellText));

test.each([
  [[], ""],
  [[4], "4"],
  [[1, 2], "1, 2"],
  [[1, 2, 3, 5, 7, 8], "1–3, 5, 7, 8"],
])("%j is written as “%s”", (numbers, written) => {
  expect(rangesOf(numbers)).toBe(written);
});

test("ranges name every number and no other", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 80 })), (some) => {
      const numbers = [...some].sort((first, second) => first - second);
      const read = rangesOf(numbers)
        .split(", ")
        .filter((part) => part !== "")
        .flatMap((part) => {
          const [first = 0, last = first] = part.split("–").map(Number);
          return Array.from({ length: last - first + 1 }, (_none, index) => first + index);
        });
      expect(read).toEqual(numbers);
    }),
  );
});

describe("the schedule", () => {
  const rows = rowsOf(scheduleBlocks(five, words));

  test("has a row for each specimen, in the order of the terms, numbered", () => {
    expect(rows.map(([number, accessionNumber]) => [number, accessionNumber])).toEqual(
      five.schedule.map((row, index) => [String(index + 1), row.accessionNumber]),
    );
  });

  test("gives sizes, mass and replacement cost, with the mount where there is one", () => {
    expect(rows[0]?.slice(3)).toEqual(["780", "240", "160", "4.35", "12,000.00"]);
    expect(rows[1]?.slice(3)).toEqual(["180", "180", "210", "1.2", "3,850.50"]);
    expect(rows[1]?.[2]).toContain("With mount.");
    expect(rows[0]?.[2]).not.toContain("With mount.");
  });

  test("names title, Latin name, kind, components, hazards and the last check", () => {
    expect(rows[0]?.[2]).toBe(
      [
        "Upper limb, brachial plexus and axillary vessels",
        "Plexus brachialis",
        "Body region, silicone-impregnated; human.",
        "Components: limb on rod; scapula, loose; 12 × label pin.",
        "Checked on 10 November 2026: good (A).",
        "Cost stated on 1 May 2026: cost of preparation.",
      ].join("\n"),
    );
    expect(rows[2]?.[2]).toContain("in fluid: ethanol 70 %");
    expect(rows[2]?.[2]).toContain("Hazards: alcohol, 70 %. For viewing only.");
    expect(rows[3]?.[2]).toContain("sheet 43 of series TR-3");
    expect(rows[4]?.[2]).toContain("Equus caballus.");
  });

  test("ends with what is to be covered", () => {
    expect(onlyTable(scheduleBlocks(five, words)).total?.map(cellText).slice(-1)).toEqual(["51,850.50"]);
  });

  test("says what is not known, and that the sum is then a least one", () => {
    const [first, ...others] = five.schedule;
    if (first === undefined) throw new RangeError("no row");
    const bare = { ...first, size: null, massKg: null, replacementCost: null, condition: null };
    const blocks = scheduleBlocks({ ...five, schedule: [bare, ...others] }, words);
    const [row] = rowsOf(blocks);
    expect(row?.slice(3)).toEqual(["–", "–", "–", "–", "–"]);
    expect(row?.[2]).toContain("No check on record.");
    expect(row?.[2]).toContain("Replacement cost not stated.");
    expect(onlyTable(blocks).total?.map(cellText).join(" ")).toContain("at least");
  });

  test("names the currency of each row where there are several, and sums nothing", () => {
    const schedule = five.schedule.map((row, index) => ({
      ...row,
      replacementCost:
        row.replacementCost === null
          ? null
          : { ...row.replacementCost, currency: index === 0 ? "NOK" : "EUR" },
    }));
    const blocks = scheduleBlocks({ ...five, schedule, cover: { ...five.cover, needed: null } }, words);
    expect(rowsOf(blocks).map((row) => row.at(-1))).toEqual(["NOK", "EUR", "EUR", "EUR", "EUR"]);
    expect(onlyTable(blocks).total).toBeUndefined();
    expect(onlyTable(scheduleBlocks(five, words)).columns).toHaveLength(8);
  });
});

describe("the limits", () => {
  test("stand first for all together, then for each group that shares them", () => {
    const rows = rowsOf(limitsBlocks(five, words));
    expect(rows.map(([names]) => names)).toEqual(["All together", "1, 2, 5", "3", "4"]);
    expect(rows[1]?.slice(1)).toEqual(["15–25", "4", "35–65", "10", "100", "150,000", "10"]);
    expect(rows[0]?.[1]).toBe("16–20");
  });

  test("are one row where all specimens share them", () => {
    expect(rowsOf(limitsBlocks(someTerms(2), words)).map(([names]) => names)).toEqual(["Each specimen"]);
  });

  test("say where there is nothing in common, and which specimens are kept apart", () => {
    const groupLimits = {
      ...five.groupLimits,
      limits: { ...five.groupLimits.limits, humidity: null },
      conflicts: ["AN 1 and AN 2 have no common relative humidity. They are kept apart."],
    };
    const text = textOfBlocks(limitsBlocks({ ...five, groupLimits }, words));
    expect(text).toContain("none in common");
    expect(text).toContain("Kept apart\nAN 1 and AN 2 have no common relative humidity.");
  });

  test("have their sources below them, with their standing", () => {
    const sources: typeof five.groupLimits.sources = [
      { quantity: "illuminanceLx", title: "Control of damage by light", where: "table 3", standing: "read" },
      {
        quantity: "humidity",
        title: "Practice of the store",
        where: "",
        standing: "common practice, no source",
      },
    ];
    const text = textOfBlocks(
      limitsBlocks({ ...five, groupLimits: { ...five.groupLimits, sources } }, words),
    );
    expect(text).toContain("Light\nControl of damage by light, table 3");
    expect(text).toContain("Relative humidity\nPractice of the store, common practice, no source");
  });
});

describe("what the donors allowed", () => {
  test("stands once for those that share it, and never for an animal", () => {
    const rows = rowsOf(consentBlocks(five, words));
    expect(rows.map(([numbers]) => numbers)).toEqual(["1, 4", "2, 3"]);
    expect(rows[0]?.[1]).toBe("No restriction beyond the clauses.");
    expect(rows[1]?.[1]).toContain("Shown to professionals only.");
    expect(rows[1]?.[1]).toContain("Only in: Ireland, Norway.");
  });

  test("says nothing of who the donors were", () => {
    expect(textOfBlocks(consentBlocks(five, words))).not.toMatch(/D-[0-9A-Z]/);
  });
});
