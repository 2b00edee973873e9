import { expect, test } from "vitest";
import { isPicture } from "#lib/papers/drawing.ts";
import { paperWordsIn } from "#lib/papers/languages.ts";
import { thumbnailFigure } from "#lib/papers/thumbnail.ts";
import { someCase } from "#tests/lib/papers/paper-cases.ts";

const [specimen] = someCase({ specimens: 1, crates: 1 }).specimens;
if (specimen === undefined) throw new RangeError("There is a specimen.");
const { accessionNumber, drawing } = specimen;
const most = { width: 48, height: 36 };
const picture = (widthPx: number, heightPx: number) => ({
  mime: "image/jpeg" as const,
  bytes: new Uint8Array(),
  widthPx,
  heightPx,
});

test.each([
  ["wide", 400, 100, 48, 12],
  ["high", 100, 400, 9, 36],
  ["small", 4, 3, 48, 36],
])("a %s picture fits and keeps its proportions", (_name, widthPx, heightPx, widthPt, heightPt) => {
  const facts = { accessionNumber, drawing, picture: picture(widthPx, heightPx) };
  const figure = thumbnailFigure(facts, most, paperWordsIn("de"));
  expect([figure.widthPt, figure.heightPt]).toEqual([widthPt, heightPt]);
  expect(figure.alternative).toBe(`Bild von ${accessionNumber}`);
});

test("without a picture it is drawn, as high as there is room, with lines that a printer shows", () => {
  const { image, heightPt, alternative } = thumbnailFigure(
    { accessionNumber, drawing, picture: null },
    most,
    paperWordsIn("fr"),
  );
  if (isPicture(image)) throw new RangeError("It is drawn.");
  expect(heightPt).toBe(36);
  expect(alternative).toBe(`Dessin schématique de ${accessionNumber}`);
  for (const { stroke } of image.paths)
    if (stroke !== undefined) expect((stroke.width * heightPt) / image.height).toBeGreaterThanOrEqual(0.249);
});
