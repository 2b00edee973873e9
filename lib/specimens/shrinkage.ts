/**
 * Shrinkage of tissue on its way to a sheet. It is measured on the face of a
 * sheet as a lost fraction of the fresh area; a sheet is clamped between plates
 * while it cures, so its thickness need not shrink alike and is kept apart.
 * Stages one after the other multiply what they leave.
 */

function guardFraction(name: string, value: number): void {
  if (!(value >= 0 && value < 1))
    throw new RangeError(`${name} must lie from 0 up to, not including, 1, not ${value}`);
}

/** @returns lost fraction of a length, from the lost fraction of an area: 1 − √(1 − s) */
export function linearFromArea(areaShrinkage: number): number {
  guardFraction("areaShrinkage", areaShrinkage);
  return 1 - Math.sqrt(1 - areaShrinkage);
}

/** @returns lost fraction of a volume, from the lost fraction of an area, for tissue that shrinks alike all ways: 1 − (1 − s)^1.5 */
export function volumeFromArea(areaShrinkage: number): number {
  guardFraction("areaShrinkage", areaShrinkage);
  return 1 - (1 - areaShrinkage) ** 1.5;
}

/** @returns lost fraction of a length, from the lost fraction of a volume */
export function linearFromVolume(volumeShrinkage: number): number {
  guardFraction("volumeShrinkage", volumeShrinkage);
  return 1 - Math.cbrt(1 - volumeShrinkage);
}

/** @returns lost fraction of an area, from the lost fraction of a length: 1 − (1 − s)² */
export function areaFromLinear(linearShrinkage: number): number {
  guardFraction("linearShrinkage", linearShrinkage);
  return 1 - (1 - linearShrinkage) ** 2;
}

/** @returns what the stages together take away */
export function afterStages(stages: readonly number[]): number {
  let left = 1;
  for (const stage of stages) {
    guardFraction("shrinkage of a stage", stage);
    left *= 1 - stage;
  }
  return 1 - left;
}

/** @returns what the earlier stages took away, from the total and the last stage */
export function earlierStages(total: number, lastStage: number): number {
  guardFraction("total", total);
  guardFraction("lastStage", lastStage);
  if (!(lastStage <= total))
    throw new RangeError("the last stage cannot take away more than all stages together");
  return 1 - (1 - total) / (1 - lastStage);
}

/** A length measured on the face of a sheet as it was in fresh tissue, in mm. */
export function freshLengthMm(measuredMm: number, areaShrinkage: number): number {
  if (!(measuredMm >= 0 && measuredMm <= 100_000))
    throw new RangeError(`measuredMm must lie between 0 and 100000, not ${measuredMm}`);
  return measuredMm / (1 - linearFromArea(areaShrinkage));
}
