/**
 * Series geometry against what public section projects published of themselves,
 * and shrinkage against published measurements of sheets.
 *
 * VHP   Visible Human Project, fact sheet of the library that keeps it: male at 1 mm, 1,871 sections;
 *       female at 0.33 mm. The female count of 5,189 is from memory (the fact sheet says "over 5,000").
 * VK    Visible Korean: Anat Sci Educ 2011, abstract: 1,702 sets at 1 mm for the male; 0.2 mm sections in the
 *       project's essay, the count of 8,506 from memory. Head: J Korean Med Sci 34(34):e218, 2019: 4,000 at 0.04 mm.
 * CVH   Chinese Visible Human, female, abstract: stature 1,620 mm, head at 0.25 mm, the rest at 0.50 mm, 3,640 sections.
 * THIN  Ultrathin epoxy slices, Clin Anat 23:539–544 (2010), doi 10.1002/ca.20972: blocks up to 150 mm,
 *       slices of 0.98 ± 0.01 mm, loss below 2 % a slice, volume shrinkage up to 6 %.
 * PELV  Epoxy sheets of a pelvis, J Int Soc Plast 17:23–27 (2002), doi 10.56507/DIUH4490: 3.5 mm, area shrinkage
 *       6.65 % in all, 4.52 % of it between the last bath and curing.
 */
import { describe, expect, test } from "vitest";
import { blockLengthMm, coverage, sheetCountOf, sheetPositions } from "#lib/specimens/series.ts";
import {
  afterStages,
  areaFromLinear,
  earlierStages,
  linearFromArea,
  linearFromVolume,
  volumeFromArea,
} from "#lib/specimens/shrinkage.ts";

const sections = (sheetCount: number, spacingMm: number) =>
  sheetPositions({ firstNumber: 1, sheetCount, thicknessMm: spacingMm, sawLossMm: 0, startLevelMm: 0 });

describe("public section projects", () => {
  test.each([
    // project, sections, spacing mm, covered length mm, first to last centre mm, tolerance mm
    ["VHP male", 1_871, 1, 1_871, 1_870, 1e-9],
    ["VHP female (count from memory)", 5_189, 0.33, 1_712.37, 1_712.04, 1e-6],
    [
      "VHP female, spacing a third of a millimetre (count from memory)",
      5_189,
      1 / 3,
      1_729.667,
      1_729.333,
      1e-3,
    ],
    ["VK male at 0.2 mm (count from memory)", 8_506, 0.2, 1_701.2, 1_701, 1e-6],
    ["VK male at 1 mm", 1_702, 1, 1_702, 1_701, 1e-9],
    ["VK head", 4_000, 0.04, 160, 159.96, 1e-6],
  ])(
    "%s: %i sections at %f mm cover %f mm",
    (_project, count, spacingMm, coveredMm, centresMm, toleranceMm) => {
      const positions = sections(count, spacingMm);
      const [first, last] = [positions[0], positions.at(-1)];
      expect(Math.abs(blockLengthMm(positions) - coveredMm)).toBeLessThanOrEqual(toleranceMm);
      expect(Math.abs((last?.centreMm ?? 0) - (first?.centreMm ?? 0) - centresMm)).toBeLessThanOrEqual(
        toleranceMm,
      );
      expect(coverage(positions)).toBeCloseTo(1, 9);
      expect(sheetCountOf(coveredMm + toleranceMm, spacingMm, 0)).toBe(count);
    },
  );

  test("VK male: 8,506 sections at 0.2 mm and 1,702 sets at 1 mm are the same body, to the millimetre", () => {
    expect(
      Math.abs(blockLengthMm(sections(8_506, 0.2)) - blockLengthMm(sections(1_702, 1))),
    ).toBeLessThanOrEqual(1);
  });

  test("CVH female: 3,640 sections of two spacings make up her stature of 1,620 mm exactly", () => {
    // n_head + n_rest = 3640 and 0.25 n_head + 0.5 n_rest = 1620 have one solution: 800 and 2,840.
    const headCount = 800;
    const otherThicknessMm = new Map(Array.from({ length: headCount }, (_, index) => [index + 1, 0.25]));
    const positions = sheetPositions({
      firstNumber: 1,
      sheetCount: 3_640,
      thicknessMm: 0.5,
      sawLossMm: 0,
      startLevelMm: 0,
      otherThicknessMm,
    });
    expect(blockLengthMm(positions)).toBe(1_620);
    expect(positions[headCount]?.fromMm).toBe(200);
    expect(blockLengthMm(positions.slice(headCount))).toBe(1_420);
  });

  test("VHP male: file numbers 1001 to 2878 span 1,878 places, of which 7 are missing (from memory)", () => {
    const positions = sheetPositions({
      firstNumber: 1_001,
      sheetCount: 1_878,
      thicknessMm: 1,
      sawLossMm: 0,
      startLevelMm: 0,
    });
    expect(positions.at(-1)?.number).toBe(2_878);
    const present = new Set(positions.slice(0, 1_871).map(({ number }) => number));
    expect(coverage(positions, present)).toBeCloseTo(1_871 / 1_878, 12);
  });
});

test("THIN: a block of 150 mm gives about 150 slices of 0.98 mm with less than 2 % loss", () => {
  expect(sheetCountOf(150, 0.98, 0.02)).toBe(150);
  expect(sheetCountOf(150, 0.98, 0)).toBe(153);
});

describe("shrinkage", () => {
  test("PELV: 6.65 % of the area is 3.382 % of a length and 9.807 % of a volume", () => {
    expect(linearFromArea(0.0665)).toBeCloseTo(0.03382, 5);
    expect(volumeFromArea(0.0665)).toBeCloseTo(0.09807, 5);
  });

  test("PELV: with 4.52 % in the last stage the earlier ones took 2.231 %", () => {
    expect(earlierStages(0.0665, 0.0452)).toBeCloseTo(0.02231, 5);
    expect(afterStages([earlierStages(0.0665, 0.0452), 0.0452])).toBeCloseTo(0.0665, 12);
  });

  test.each([
    ["THIN", 0.06, 0.02041, 0.04041],
    // Thin epoxy, shoulder block: Mater. Plast. 52(2), 2015.
    ["thin epoxy sheets", 0.0623, 0.02121, 0.04198],
  ])("%s: a volume shrunk by %f", (_name, volume, linear, area) => {
    expect(linearFromVolume(volume)).toBeCloseTo(linear, 5);
    expect(areaFromLinear(linearFromVolume(volume))).toBeCloseTo(area, 5);
  });
});
