/** The pictures beside the schedule: photograph or drawing, in every language, no part of the hash. */
import sharp from "sharp";
import { beforeAll, describe, expect, test } from "vitest";
import { agreementDocument } from "#lib/papers/agreement-document.ts";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import { scheduleBlocks } from "#lib/papers/agreement-schedule.ts";
import { figureIn } from "#lib/papers/blocks.ts";
import { isPicture } from "#lib/papers/drawing.ts";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";
import { type SchedulePictures, scheduleFigure } from "#lib/papers/schedule-pictures.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { hashOf, someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { onlyTable } from "#tests/lib/papers/block-text.ts";
import { faultsOf } from "#tests/lib/papers/paper-checks.ts";

const english = paperWordsIn("en");
const terms = someTerms(5);
const [row] = terms.schedule;
if (row === undefined) throw new RangeError("There is a row.");
const drawing = {
  kind: "organ",
  preparation: "silicone-impregnated",
  species: "Homo sapiens",
  title: "Heart",
  latinTitle: "Cor",
  side: "",
  shown: [],
  sheet: null,
  seed: "x",
};
let pictures: SchedulePictures = new Map();
beforeAll(async () => {
  const bytes = await sharp({ create: { width: 200, height: 100, channels: 3, background: "#884422" } })
    .jpeg()
    .toBuffer();
  const picture = { mime: "image/jpeg" as const, bytes: new Uint8Array(bytes), widthPx: 200, heightPx: 100 };
  pictures = new Map([[row.accessionNumber, { drawing, picture }]]);
});
const paint = async (of = terms, beside: SchedulePictures = new Map()) =>
  await paintAgreement({
    terms: of,
    version: of.loan.version,
    sha256: hashOf(of),
    drawnUpAt: "2026-11-25T10:00:00Z",
    signatures: [],
    pictures: beside,
  });

describe("beside its number", () => {
  test("stands the photograph where there is one, in its proportions", () => {
    const { image, widthPt, heightPt, alternative } = scheduleFigure(row, english, pictures);
    expect(isPicture(image)).toBe(true);
    expect(widthPt / heightPt).toBeCloseTo(2, 6);
    expect(alternative).toBe(`Picture of ${row.accessionNumber}`);
  });

  test("stands a drawing where there is none, and where somebody could be recognised", () => {
    const recognisable = {
      ...row,
      restrictions: [{ code: "restriction.recognisable" as const, parameters: {} }],
    };
    for (const figure of [
      scheduleFigure(row, english, new Map()),
      scheduleFigure(recognisable, english, pictures),
    ]) {
      expect(isPicture(figure.image)).toBe(false);
      expect(figure.alternative).toBe(`Schematic drawing of ${row.accessionNumber}`);
    }
  });

  test.each(paperLanguages)("every specimen has one in %s, clipped on neither sheet", (language) => {
    const words = paperWordsIn(language);
    const own = someTerms(5, { languages: [language] });
    const figures = onlyTable(scheduleBlocks(own, words, { pictures })).rows.map(([, cell]) =>
      figureIn(cell ?? ""),
    );
    expect(figures).toHaveLength(5);
    expect(figures.map((figure) => figure?.alternative)).toEqual(
      own.schedule.map(({ accessionNumber }) =>
        (accessionNumber === row.accessionNumber
          ? words.travel.packing.pictureOf
          : words.travel.packing.drawingOf
        ).replace("{accessionNumber}", accessionNumber),
      ),
    );
    const facts = { terms: own, sha256: hashOf(own), signatures: [], pictures };
    for (const size of paperSizes) expect(faultsOf(agreementDocument(facts, words), size)).toEqual([]);
  });
});

test("a picture changes the bytes and not the hash of the terms", async () => {
  const before = hashOf(terms);
  const [without, with_] = [await paint(), await paint(terms, pictures)];
  expect(Buffer.from(without).equals(Buffer.from(with_))).toBe(false);
  expect(Buffer.from(with_).equals(Buffer.from(await paint(terms, pictures)))).toBe(true);
  expect(hashOf(terms)).toBe(before);
});

test("alike specimens share one drawing in the file", async () => {
  const [first] = terms.schedule;
  if (first === undefined) throw new RangeError("There is a row.");
  const many = { ...terms, schedule: Array.from({ length: 40 }, () => first) };
  const different = {
    ...terms,
    schedule: Array.from({ length: 40 }, (_none, index) => ({
      ...first,
      accessionNumber: `AN 2004.${1000 + index}`,
    })),
  };
  const [alike, unlike] = [(await paint(many)).byteLength, (await paint(different)).byteLength];
  expect(unlike - alike).toBeGreaterThan(20_000);
});

test("three hundred specimens are painted with their pictures, small enough to send", async () => {
  const bytes = await paint(someTerms(300));
  expect(bytes.byteLength).toBeLessThan(1_500_000);
}, 120_000);
