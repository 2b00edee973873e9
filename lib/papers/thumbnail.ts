/**
 * A specimen as a thumbnail on a paper: its photograph where one is given, else its
 * schematic drawing. Whether a photograph may be shown is decided by who gives it. The
 * alternative text says which of the two it is, in the language of the paper.
 */
import type { Figure, Picture } from "#lib/papers/drawing.ts";
import { plateFigure } from "#lib/papers/plate-figure.ts";
import { fill, type PaperWords } from "#lib/papers/words.ts";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";

export type SizedPicture = Picture & { widthPx: number; heightPx: number };

/** Pictures by id, made small; what is not here is drawn. */
export type Pictures = ReadonlyMap<string, SizedPicture>;

export type ThumbnailFacts = {
  accessionNumber: string;
  drawing: DrawingRequest;
  picture: SizedPicture | null;
};

export function thumbnailFigure(
  { accessionNumber, drawing, picture }: ThumbnailFacts,
  most: { width: number; height: number },
  words: PaperWords,
): Figure {
  const said = words.travel.packing;
  if (picture === null) return plateFigure(drawing, most.height, fill(said.drawingOf, { accessionNumber }));
  const scale = Math.min(most.width / picture.widthPx, most.height / picture.heightPx);
  return {
    image: picture,
    widthPt: picture.widthPx * scale,
    heightPt: picture.heightPx * scale,
    alternative: fill(said.pictureOf, { accessionNumber }),
  };
}
