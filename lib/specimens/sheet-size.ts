/**
 * The size of a sheet as it is told: the record keeps whole millimetres, and the
 * thickness of a sheet is known finer than that. The thinnest side of its size is
 * told as that thickness where the two differ by rounding alone; where they differ
 * by more, the record speaks of something else, a frame or a case, and stands.
 */
import type { Size } from "#lib/specimens/schema.ts";

/** Two figures of one thickness, of which one was taken to whole millimetres. */
const ROUNDING_MM = 1;

/** @param thicknessMm of the sheet; null for what is none */
export function sizeWithThickness(size: Size | null, thicknessMm: number | null): Size | null {
  if (size === null || thicknessMm === null) return size;
  const sides = ["heightMm", "widthMm", "lengthMm"] as const;
  const thinnest = sides.reduce((least, side) => (size[side] < size[least] ? side : least));
  if (!(Math.abs(size[thinnest] - thicknessMm) < ROUNDING_MM)) return size;
  return { ...size, [thinnest]: thicknessMm };
}
