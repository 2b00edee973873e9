/** An empty box to be ticked by hand, as a figure with words for who cannot see it. */
import { type Figure, figureOf, rectangle, type VectorDrawing } from "#lib/papers/drawing.ts";

const box: VectorDrawing = {
  width: 100,
  height: 100,
  paths: [{ steps: rectangle(5, 5, 90, 90), fill: "white", stroke: { ink: "ink", width: 8 } }],
};

/** @param alternative what is said by ticking it */
export const tickBox = (alternative: string, sidePt = 9): Figure => figureOf(box, sidePt, alternative);
