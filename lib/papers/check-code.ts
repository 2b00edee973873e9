/**
 * A QR code as a drawing. The modules are drawn as black runs on white; around them
 * stands the quiet zone of four modules that a reader needs (ISO/IEC 18004, from
 * memory), so that no neighbour of the figure can come too near. Error correction M:
 * a creased corner still reads.
 */
import { encode } from "uqr";
import { type DrawnPath, type Figure, figureOf, rectangle, type VectorDrawing } from "#lib/papers/drawing.ts";

/** Modules of white on each side. */
export const quietModules = 4;

export function codeDrawing(text: string): VectorDrawing {
  const { data } = encode(text, { ecc: "M", border: 0 });
  const side = data.length + 2 * quietModules;
  const runs = data.flatMap((row, y) => {
    const steps: DrawnPath["steps"][number][] = [];
    for (let x = 0; x < row.length; x += 1) {
      if (row[x] !== true) continue;
      let end = x;
      while (row[end + 1] === true) end += 1;
      steps.push(...rectangle(x + quietModules, y + quietModules, end - x + 1, 1));
      x = end;
    }
    return steps;
  });
  return {
    width: side,
    height: side,
    paths: [
      { steps: rectangle(0, 0, side, side), fill: "white" },
      { steps: runs, fill: "black" },
    ],
  };
}

export function codeFigure(text: string, sidePt: number, alternative: string): Figure {
  return figureOf(codeDrawing(text), sidePt, alternative);
}
