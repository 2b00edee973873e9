import { expect, test } from "vitest";
import { SheetTemplate, sheetRecord } from "#lib/specimens/sheet-template.ts";

const template = SheetTemplate.parse({
  numberStem: "AN 2019.0100/",
  digits: 3,
  titleStem: "Trunk, transverse sheet",
  human: true,
  scientificName: "Homo sapiens",
  sex: "male",
  ageBand: "70–79",
  side: "both",
  size: { lengthMm: 420, widthMm: 300, heightMm: 4 },
  massKg: 0.6,
  use: "viewing only",
  light: "ordinary",
  replacementCost: null,
  preparedOn: "2019-05-01",
  acquiredOn: null,
  publishable: false,
  missing: [4],
});

test("a sheet has its number in its number and title, and its preparation from the embedding", () => {
  expect(sheetRecord(template, { embedding: "epoxy" }, 7)).toMatchObject({
    accessionNumber: "AN 2019.0100/007",
    title: "Trunk, transverse sheet 7",
    kind: "sheet",
    preparation: "epoxy sheet",
    side: "both",
    massKg: 0.6,
    preparedOn: "2019-05-01",
    wholeId: null,
  });
  expect(sheetRecord(template, { embedding: "polyester" }, 7).preparation).toBe("polyester sheet");
});

test("the record of a sheet is one the catalogue takes: an animal's sheet has no age band", () =>
  expect(() =>
    sheetRecord({ ...template, human: false, scientificName: "Equus caballus" }, { embedding: "epoxy" }, 1),
  ).toThrow());
