import { describe, expect, test } from "vitest";
import { scheduleBlocks } from "#lib/papers/agreement-schedule.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { cellText, onlyTable } from "#tests/lib/papers/block-text.ts";

const five = someTerms(5);
const rowsOf = (blocks: Parameters<typeof onlyTable>[0]) =>
  onlyTable(blocks).rows.map((row) => row.map(cellText));

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

  test("gives the thickness of a sheet with its decimal", () => {
    const [first] = five.schedule;
    if (first === undefined) throw new RangeError("no row");
    const sheet = { ...first, size: { lengthMm: 420, widthMm: 300, heightMm: 3.5 } };
    const blocks = scheduleBlocks({ ...five, schedule: [sheet] }, words);
    expect(rowsOf(blocks)[0]?.slice(3, 6)).toEqual(["420", "300", "3.5"]);
    expect(onlyTable(blocks).columns[5]).toMatchObject({ header: words.schedule.height, align: "decimal" });
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
    expect(rows[2]?.[2]).toContain("Fluid-preserved specimen, in ethanol 70 %; human.");
    expect(rows[2]?.[2]).toContain("Hazards: alcohol 70 %. For viewing only.");
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
