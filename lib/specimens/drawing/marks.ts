/**
 * Numbered marks on a plate: a finding of a check, at its place on the picture.
 * Places are fractions of the picture's width and height, so that a mark holds on
 * any rendition; numbers stay legible and never leave the picture.
 */
import { box, pathData } from "#lib/specimens/drawing/pen.ts";
import { plateHeight, plateWidth } from "#lib/specimens/drawing/plate.ts";

export type Mark = {
  number: number;
  /** Middle of the mark, 0 at the left and the top, 1 at the right and the bottom. */
  x: number;
  y: number;
  /** The extent of what was found, where it has one. */
  width?: number | undefined;
  height?: number | undefined;
};

export type DrawnMark = { number: number; x: number; y: number; radius: number; area: string | null };

const radius = 7.5;

function held(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}

/** @throws {RangeError} when a place is not a fraction of the picture */
export function placeMarks(marks: readonly Mark[]): DrawnMark[] {
  return marks.map((mark) => {
    if (!(mark.x >= 0 && mark.x <= 1 && mark.y >= 0 && mark.y <= 1)) {
      throw new RangeError(`mark ${mark.number} lies outside the picture`);
    }
    const middleX = mark.x * plateWidth;
    const middleY = mark.y * plateHeight;
    const wide = (mark.width ?? 0) * plateWidth;
    const high = (mark.height ?? 0) * plateHeight;
    const hasArea = wide > 0 && high > 0;
    const left = held(middleX - wide / 2, 1, plateWidth - 1);
    const top = held(middleY - high / 2, 1, plateHeight - 1);
    const right = held(middleX + wide / 2, 1, plateWidth - 1);
    const bottom = held(middleY + high / 2, 1, plateHeight - 1);
    return {
      number: mark.number,
      x: held(hasArea ? right : middleX, radius + 1, plateWidth - radius - 1),
      y: held(hasArea ? top : middleY, radius + 1, plateHeight - radius - 1),
      radius,
      area: hasArea ? pathData(box(left, top, right - left, bottom - top)) : null,
    };
  });
}
