import { describe, expect, test } from "vitest";
import { limitsBlocks } from "#lib/papers/agreement-limits.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { conflictingTerms, someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { cellText, onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";

const five = someTerms(5);
const rowsOf = (blocks: Parameters<typeof onlyTable>[0]) =>
  onlyTable(blocks).rows.map((row) => row.map(cellText));

describe("the limits", () => {
  test("stand first for all together, then for each group that shares them", () => {
    const rows = rowsOf(limitsBlocks(five, words));
    expect(rows.map(([names]) => names)).toEqual(["All together", "1, 2, 5", "3", "4"]);
    expect(rows[1]?.slice(1)).toEqual(["15–25", "4", "35–65", "10", "100", "150,000", "75"]);
    expect(rows[0]?.[1]).toBe("16–20");
  });

  test("say of each figure whether it is a band to keep within or the most that is allowed", () => {
    const blocks = limitsBlocks(five, words);
    const { columns } = onlyTable(blocks);
    for (const { header } of columns.slice(1))
      expect([header, /at most/.test(header)]).toEqual([
        header,
        !/^(Temperature|Relative humidity)/.test(header),
      ]);
    for (const lead of [words.limits.lead, words.limits.leadOfOne])
      expect(lead).toMatch(/band is kept within.*single figure is the most that is allowed/);
  });

  test("are one row where all specimens share them", () => {
    expect(rowsOf(limitsBlocks(someTerms(2), words)).map(([names]) => names)).toEqual(["Each specimen"]);
  });

  test("say where there is nothing in common, and which specimens are kept apart, in one sentence for many pairs", () => {
    const blocks = limitsBlocks(conflictingTerms(), words);
    const [together] = blocks.filter((block) => block.kind === "together");
    const text = textOfBlocks(together ? [together] : []);
    expect(text).toContain("All together\tnone in common\t3\tnone in common");
    expect(text).toContain(
      [
        "Kept apart",
        "No temperature in common: at least 21 °C for No. 1, at most 20 °C for No. 2–5.",
        "No relative humidity in common: at least 55 % for No. 2–5, at most 52.5 % for No. 1.",
      ].join("\n"),
    );
  });

  test("keep figures apart that differ, and say when it is the way that excludes", () => {
    const conflicts: typeof five.groupLimits.conflicts = [10, 12].map((atLeast, index) => ({
      quantity: "transitTemperatureC",
      needsAtLeast: five.schedule[index]?.accessionNumber ?? "",
      atLeast,
      allowsAtMost: five.schedule[4]?.accessionNumber ?? "",
      atMost: 8,
    }));
    const text = textOfBlocks(
      limitsBlocks({ ...five, groupLimits: { ...five.groupLimits, conflicts } }, words),
    );
    for (const [number, atLeast] of [
      [1, 10],
      [2, 12],
    ])
      expect(text).toContain(
        `No temperature on the way in common: at least ${atLeast} °C for No. ${number}, at most 8 °C for No. 5.`,
      );
  });

  test("have each source once below them, with what rests on it and how well it is known", () => {
    const sources: typeof five.groupLimits.sources = [
      { quantity: "humidity", title: "Practice", where: "", standing: "common practice, no source" },
      { quantity: "illuminanceLx", title: "Control of light", where: "150 000 lx·h", standing: "read" },
      { quantity: "lightLxHoursPerYear", title: "Control of light", where: "150 000 lx·h", standing: "read" },
      {
        quantity: "uvMicrowattPerLumen",
        title: "Control of light",
        where: "75 µW/lm",
        standing: "from memory",
      },
    ];
    const [, table] = limitsBlocks({ ...five, groupLimits: { ...five.groupLimits, sources } }, words).filter(
      (block) => block.kind === "table",
    );
    expect(rowsOf(table ? [table] : [])).toEqual(
      [
        ["Practice (no published source)", "Relative humidity"],
        ["Control of light, 150 000 lx·h", "Light and light in a year"],
        ["Control of light, 75 µW/lm (from memory)", "Ultraviolet"],
      ].map((row) => row.map((text) => text.normalize("NFKC"))),
    );
  });

  test("do not tear a figure from its unit or its thousands", () => {
    const printed = limitsBlocks(five, words)
      .map((block) => JSON.stringify(block))
      .join();
    expect(printed).not.toMatch(/\d (°C|%|lx|µW|000)/);
    expect(printed).toMatch(/150\u00A0000\u00A0lx·h/);
  });
});
