/**
 * The geometry of a body or region cut into sheets. Positions run along the axis
 * of numbering, from the first face of the first sheet, in millimetres of fresh
 * tissue. Each sheet takes its thickness, each cut between two sheets its loss:
 *
 *   z0 ├─ sheet 1 ─┤ loss ├─ sheet 2 ─┤ loss ├─ sheet 3 ─┤
 *      │◂── t ────▸│◂ k ─▸│                    pitch p = t + k
 *
 * A sheet that is missing, lent or of another thickness still has its place, so
 * every position is a running sum over the sheets before it, never number × pitch.
 */

export type SeriesCut = {
  firstNumber: number;
  sheetCount: number;
  /** Thickness as cut. */
  thicknessMm: number;
  /** Lost at each cut. */
  sawLossMm: number;
  /** Position of the first face of the first sheet. */
  startLevelMm: number;
  /** Sheets that are thicker or thinner than the series, by number. */
  otherThicknessMm?: ReadonlyMap<number, number>;
};

export type SheetPosition = {
  number: number;
  fromMm: number;
  toMm: number;
  centreMm: number;
  thicknessMm: number;
};

function guard(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high))
    throw new RangeError(`${name} must lie between ${low} and ${high}, not ${value}`);
}

function guardWhole(name: string, value: number, low: number, high: number): void {
  guard(name, value, low, high);
  if (!Number.isInteger(value)) throw new RangeError(`${name} must be a whole number, not ${value}`);
}

function guardCut({ thicknessMm, sawLossMm }: { thicknessMm: number; sawLossMm: number }): void {
  guard("thicknessMm", thicknessMm, 0.001, 1_000);
  guard("sawLossMm", sawLossMm, 0, 1_000);
}

/**
 * Where every sheet of the series lies, missing ones included, in the order of their numbers.
 * @throws {RangeError}
 */
export function sheetPositions(cut: SeriesCut): SheetPosition[] {
  guardCut(cut);
  guardWhole("firstNumber", cut.firstNumber, 0, 1_000_000);
  guardWhole("sheetCount", cut.sheetCount, 1, 1_000_000);
  guard("startLevelMm", cut.startLevelMm, -100_000, 100_000);
  const positions: SheetPosition[] = [];
  let fromMm = cut.startLevelMm;
  for (let index = 0; index < cut.sheetCount; index += 1) {
    const number = cut.firstNumber + index;
    const thicknessMm = cut.otherThicknessMm?.get(number) ?? cut.thicknessMm;
    guard("thickness of a sheet in mm", thicknessMm, 0.001, 1_000);
    const toMm = fromMm + thicknessMm;
    positions.push({ number, fromMm, toMm, centreMm: fromMm + thicknessMm / 2, thicknessMm });
    fromMm = toMm + cut.sawLossMm;
  }
  return positions;
}

/**
 * Length of the block that the sheets and the cuts between them used up.
 * @returns mm: N·t + (N − 1)·k for sheets of one thickness
 */
export function blockLengthMm(positions: readonly SheetPosition[]): number {
  const first = positions[0];
  const last = positions.at(-1);
  return first && last ? last.toMm - first.fromMm : 0;
}

/**
 * How many sheets a block gives.
 * @returns ⌊(L + k) / p⌋
 * @throws {RangeError}
 */
export function sheetCountOf(lengthMm: number, thicknessMm: number, sawLossMm: number): number {
  guardCut({ thicknessMm, sawLossMm });
  guard("lengthMm", lengthMm, 0, 100_000);
  // A length written in decimals may fall a rounding short of the last whole sheet.
  return Math.floor((lengthMm + sawLossMm) / (thicknessMm + sawLossMm) + 1e-9);
}

/**
 * The part of the block's length that the sheets at hand hold; the rest went with the saw or is missing.
 * @param present numbers at hand; all of them when left out
 * @returns 0 to 1; N·t / L when nothing is missing, which nears t / p for a long series
 */
export function coverage(positions: readonly SheetPosition[], present?: ReadonlySet<number>): number {
  const lengthMm = blockLengthMm(positions);
  if (lengthMm === 0) return 0;
  let heldMm = 0;
  for (const { number, thicknessMm } of positions) if (present?.has(number) ?? true) heldMm += thicknessMm;
  return heldMm / lengthMm;
}

/**
 * Chance that a feature of a certain height at a random place is met by at least one sheet of an unbroken series.
 * @returns min(1, (h + t) / p); certain once the feature is as high as the loss
 * @throws {RangeError}
 */
export function cutChance(heightMm: number, thicknessMm: number, sawLossMm: number): number {
  guardCut({ thicknessMm, sawLossMm });
  guard("heightMm", heightMm, 0, 100_000);
  return Math.min(1, (heightMm + thicknessMm) / (thicknessMm + sawLossMm));
}

/** Numbers of the sheets that meet the open interval between two positions. */
export function sheetsCutting(positions: readonly SheetPosition[], fromMm: number, toMm: number): number[] {
  return positions.filter((sheet) => sheet.fromMm < toMm && sheet.toMm > fromMm).map((sheet) => sheet.number);
}

export type NearestSheet = {
  number: number;
  /** 0 inside a sheet. */
  distanceMm: number;
  /** Whether the position fell to the saw, or lies before the first or behind the last sheet. */
  between: {
    before: number | null;
    beforeMm: number | null;
    behind: number | null;
    behindMm: number | null;
  } | null;
};

/**
 * The sheet at a position, or the nearest one with both neighbours where the position lies in no sheet.
 * @param present numbers at hand; all of them when left out
 * @returns null when no sheet is at hand
 */
export function nearestSheet(
  positions: readonly SheetPosition[],
  positionMm: number,
  present?: ReadonlySet<number>,
): NearestSheet | null {
  if (Number.isNaN(positionMm)) throw new RangeError("positionMm must be a number");
  let before: SheetPosition | null = null;
  let behind: SheetPosition | null = null;
  for (const sheet of positions) {
    if (present && !present.has(sheet.number)) continue;
    if (sheet.fromMm <= positionMm && positionMm <= sheet.toMm)
      return { number: sheet.number, distanceMm: 0, between: null };
    if (sheet.toMm < positionMm) before = sheet;
    else {
      behind = sheet;
      break;
    }
  }
  const beforeMm = before ? positionMm - before.toMm : null;
  const behindMm = behind ? behind.fromMm - positionMm : null;
  const between = { before: before?.number ?? null, beforeMm, behind: behind?.number ?? null, behindMm };
  if (before && beforeMm !== null && (behindMm === null || beforeMm <= behindMm))
    return { number: before.number, distanceMm: beforeMm, between };
  if (behind && behindMm !== null) return { number: behind.number, distanceMm: behindMm, between };
  return null;
}

/** Numbers of the series for which there is no sheet, in order. */
export function missingNumbers(
  cut: Pick<SeriesCut, "firstNumber" | "sheetCount">,
  present: ReadonlySet<number>,
): number[] {
  return Array.from({ length: cut.sheetCount }, (_, index) => cut.firstNumber + index).filter(
    (number) => !present.has(number),
  );
}

/** Consecutive numbers drawn together: 4, 5, 6, 9 are 4 to 6 and 9 to 9. */
export function numberRuns(numbers: readonly number[]): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (const number of [...numbers].sort((one, other) => one - other)) {
    const last = runs.at(-1);
    if (last && number <= last.to + 1) last.to = Math.max(last.to, number);
    else runs.push({ from: number, to: number });
  }
  return runs;
}
