import { describe, expect, it } from "vitest";
import { drawingRequestOf } from "#lib/specimens/drawing/request.ts";

const specimen = {
  accessionNumber: "AN 2020.0001",
  title: "Heart",
  latinTitle: "Cor",
  kind: "organ",
  preparation: "silicone-impregnated",
  scientificName: "Homo sapiens",
  side: "median",
  shown: [
    { structureId: "arch-of-aorta", state: "shown", latin: "arcus aortae" },
    { structureId: "foramen-ovale-of-heart", state: "variant", latin: "foramen ovale cordis" },
    { structureId: "fibrous-pericardium", state: "removed", latin: "pericardium fibrosum" },
    { structureId: "left-atrium", state: "absent", latin: "atrium sinistrum" },
    { structureId: "right-atrium", state: "not assessed", latin: "atrium dextrum" },
  ],
  sheetPlace: null,
} as const;

describe("the request for a specimen's drawing", () => {
  it("names what is there, not what was removed, is absent or was not looked for", () => {
    expect(drawingRequestOf(specimen).shown.map(({ structure }) => structure)).toEqual([
      "arch-of-aorta",
      "foramen-ovale-of-heart",
    ]);
  });

  it("keeps a drawing the same by the accession number, a sheet by its series", () => {
    expect(drawingRequestOf(specimen).seed).toBe("AN 2020.0001");
    const sheetPlace = {
      code: "SR 03",
      title: "Trunk, transverse sheets",
      plane: "transverse",
      imagedFace: "lower",
      number: 67,
      vertebra: 20,
      fromMedianMm: null,
    } as const;
    const request = drawingRequestOf({ ...specimen, sheetPlace });
    expect(request.seed).toBe("SR 03");
    expect(request.sheet).toEqual(sheetPlace);
  });
});
