/**
 * The geometry of a series of sheets as workings that a reader can open: how much
 * of a block its sheets hold, which sheet lies at a position, and how large
 * something was in fresh tissue that was measured on a sheet.
 */
import { z } from "zod";
import {
  blockLengthMm as lengthOfBlock,
  missingNumbers,
  nearestSheet,
  coverage as partCovered,
  sheetPositions,
} from "#lib/specimens/series.ts";
import { freshLengthMm as freshLength, linearFromArea, volumeFromArea } from "#lib/specimens/shrinkage.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

const Cut = z.object({
  thicknessMm: z.number().min(0.01).max(100).meta({ title: "Thickness as cut", unit: "mm" }),
  sawLossMm: z.number().min(0).max(20).meta({ title: "Loss at each cut", unit: "mm" }),
  sheetCount: z.number().int().min(1).max(10_000).meta({ title: "Sheets in the series" }),
  firstNumber: z.number().int().min(0).max(10_000).default(1).meta({ title: "First number" }),
  startLevelMm: z
    .number()
    .min(-5_000)
    .max(5_000)
    .default(0)
    .meta({ title: "Position of the first face", unit: "mm" }),
  missing: z.array(z.number().int()).max(10_000).default([]).meta({ title: "Numbers that are missing" }),
});

function layOut({ missing, ...cut }: z.output<typeof Cut>) {
  const positions = sheetPositions(cut);
  const gone = new Set(missing);
  return {
    positions,
    present: new Set(positions.map(({ number }) => number).filter((number) => !gone.has(number))),
    cut,
  };
}

export const sheetSeries = working({
  id: "sheet-series",
  title: "Coverage of a series of sheets",
  about: "How long the block was, what the saw took, and what part of it the sheets hold.",
  input: Cut,
  output: z.object({
    blockLengthMm: z.number().meta({ title: "Length of the block", unit: "mm" }),
    pitchMm: z.number().meta({ title: "From sheet to sheet", unit: "mm" }),
    lossMm: z.number().meta({ title: "Lost to the saw", unit: "mm" }),
    coverage: z.number().meta({ title: "Part of the block that the sheets at hand hold", unit: "fraction" }),
    missing: z.array(z.number()).meta({ title: "Numbers that are missing" }),
  }),
  sources: [cite("derived", "a running sum of thicknesses and losses over the sheets")],
  cautions: ["Positions are those of the frozen block; sheets shrink while they are made."],
  compute(input, note) {
    const { positions, present, cut } = layOut(input);
    const pitchMm = note("from sheet to sheet", cut.thicknessMm + cut.sawLossMm, "mm", "p = t + k");
    const lossMm = note("lost to the saw", (cut.sheetCount - 1) * cut.sawLossMm, "mm", "(N − 1) · k");
    const blockLengthMm = note("length of the block", lengthOfBlock(positions), "mm", "N · t + (N − 1) · k");
    const coverage = note(
      "part that the sheets at hand hold",
      partCovered(positions, present),
      "fraction",
      "n · t / L",
    );
    return { blockLengthMm, pitchMm, lossMm, coverage, missing: missingNumbers(cut, present) };
  },
});

export const sheetAtPosition = working({
  id: "sheet-at-position",
  title: "Sheet at a position",
  about: "Which sheet lies at a position of the block, or which is nearest where the saw or a gap took it.",
  input: Cut.extend({
    positionMm: z.number().min(-10_000).max(100_000).meta({ title: "Position", unit: "mm" }),
  }),
  output: z.object({
    number: z.number().nullable().meta({ title: "Sheet" }),
    distanceMm: z.number().nullable().meta({ title: "Distance to its nearer face", unit: "mm" }),
    before: z.number().nullable().meta({ title: "Neighbour before" }),
    behind: z.number().nullable().meta({ title: "Neighbour behind" }),
  }),
  sources: [cite("derived", "the sheets at hand, in order of their faces")],
  cautions: ["Positions are those of the frozen block; sheets shrink while they are made."],
  compute({ positionMm, ...series }, note) {
    const { positions, present } = layOut(series);
    const nearest = nearestSheet(positions, positionMm, present);
    if (!nearest) return { number: null, distanceMm: null, before: null, behind: null };
    note("nearest sheet", nearest.number);
    const distanceMm = note("distance to its nearer face", nearest.distanceMm, "mm");
    return {
      number: nearest.number,
      distanceMm,
      before: nearest.between?.before ?? null,
      behind: nearest.between?.behind ?? null,
    };
  },
});

export const sheetShrinkage = working({
  id: "sheet-shrinkage",
  title: "Fresh size from a measure on a sheet",
  about: "How long something was in fresh tissue, from its length on the face of a sheet that has shrunk.",
  input: z.object({
    measuredMm: z.number().min(0).max(10_000).meta({ title: "Length on the sheet", unit: "mm" }),
    areaShrinkage: z
      .number()
      .min(0)
      .max(0.9)
      .meta({ title: "Lost part of the fresh area", unit: "fraction" }),
  }),
  output: z.object({
    linearShrinkage: z.number().meta({ title: "Lost part of a length", unit: "fraction" }),
    volumeShrinkage: z
      .number()
      .meta({ title: "Lost part of a volume, were it alike all ways", unit: "fraction" }),
    freshLengthMm: z.number().meta({ title: "Length in fresh tissue", unit: "mm" }),
  }),
  sources: [cite("derived", "area is length squared, volume is length cubed")],
  cautions: ["A sheet is clamped while it cures: its thickness need not shrink like its face."],
  compute({ measuredMm, areaShrinkage }, note) {
    const linearShrinkage = note(
      "lost part of a length",
      linearFromArea(areaShrinkage),
      "fraction",
      "1 − √(1 − s)",
    );
    const volumeShrinkage = note(
      "lost part of a volume",
      volumeFromArea(areaShrinkage),
      "fraction",
      "1 − (1 − s)^1.5",
    );
    const freshLengthMm = note(
      "length in fresh tissue",
      freshLength(measuredMm, areaShrinkage),
      "mm",
      "l / (1 − s_lin)",
    );
    return { linearShrinkage, volumeShrinkage, freshLengthMm };
  },
});
