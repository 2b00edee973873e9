/** What of a specimen's record its drawing is made from: the one place that turns a record into a request. */
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";
import type { SheetPlace } from "#lib/specimens/drawing/sheet-place.ts";
import type { Shown } from "#lib/specimens/schema.ts";

/** A specimen as its queries give it. */
export type DrawnSpecimen = {
  accessionNumber: string;
  title: string;
  latinTitle: string;
  kind: string;
  preparation: string;
  scientificName: string;
  side: string;
  shown: readonly (Pick<Shown, "structureId" | "state"> & { latin: string })[];
  /** Where a sheet lies in its series; null for what is none. */
  sheetPlace: SheetPlace | null;
};

export function drawingRequestOf(specimen: DrawnSpecimen): DrawingRequest {
  const { sheetPlace } = specimen;
  return {
    kind: specimen.kind,
    preparation: specimen.preparation,
    species: specimen.scientificName,
    title: specimen.title,
    latinTitle: specimen.latinTitle,
    side: specimen.side,
    shown: specimen.shown
      .filter(({ state }) => state === "shown" || state === "variant")
      .map(({ structureId, latin }) => ({ structure: structureId, latin })),
    sheet: sheetPlace,
    seed: sheetPlace?.code ?? specimen.accessionNumber,
  };
}
