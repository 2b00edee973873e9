/**
 * The picture beside each specimen of an agreement's schedule. Pictures are looked up
 * when the paper is printed and are no part of the frozen terms: the hash stays what
 * it was, whether there is a photograph or not. A specimen without a picture is drawn
 * from what its own row says.
 */
import type { ScheduleRow } from "#lib/agreements/frozen-terms.ts";
import type { Figure } from "#lib/papers/drawing.ts";
import { type ThumbnailFacts, thumbnailFigure } from "#lib/papers/thumbnail.ts";
import type { PaperWords } from "#lib/papers/words.ts";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";

/** By accession number. */
export type SchedulePictures = ReadonlyMap<string, Omit<ThumbnailFacts, "accessionNumber">>;

const scheduleThumbnailPt = { width: 48, height: 36 };

/** What the row alone says of the specimen's look. */
function drawingOfRow(row: ScheduleRow): DrawingRequest {
  const { kind, preparation, scientificName, title, latinTitle, accessionNumber } = row;
  return {
    kind,
    preparation,
    species: scientificName,
    title,
    latinTitle,
    side: "",
    shown: [],
    sheet: null,
    seed: accessionNumber,
  };
}

/** Whether somebody could be recognised in a picture of it: then it is drawn, whatever else is allowed. */
const isRecognisable = ({ restrictions }: ScheduleRow) =>
  restrictions.some(({ code }) => code === "restriction.recognisable");

export function scheduleFigure(row: ScheduleRow, words: PaperWords, pictures: SchedulePictures): Figure {
  const { accessionNumber } = row;
  const known = pictures.get(accessionNumber);
  const facts = {
    accessionNumber,
    drawing: known?.drawing ?? drawingOfRow(row),
    picture: isRecognisable(row) ? null : (known?.picture ?? null),
  };
  return thumbnailFigure(facts, scheduleThumbnailPt, words);
}
