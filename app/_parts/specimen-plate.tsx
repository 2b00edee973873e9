/** The picture of a specimen: its photograph, or the schematic drawing the program makes. */
import { SpecimenDrawing } from "#app/_parts/specimen-drawing.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";
import type { Mark } from "#lib/specimens/drawing/marks.ts";

export type PlateSpecimen = {
  id: string;
  accessionNumber: string;
  title: string;
  kind: string;
  preparation: string;
  scientificName: string;
  side: string;
  picture?: { id: string } | null;
  shown?: readonly { english: string; state: string }[];
  /** Where a sheet lies in its series, 0 at the first and 1 at the last. */
  sheet?: { code: string; level: number; plane: string } | null;
};

export function drawingRequestOf(specimen: PlateSpecimen): DrawingRequest {
  const { sheet, shown } = specimen;
  return {
    kind: specimen.kind,
    preparation: specimen.preparation,
    species: specimen.scientificName,
    title: specimen.title,
    structures: shown
      ?.filter((row) => row.state === "shown")
      .map((row) => row.english)
      .slice(0, 12),
    side: specimen.side,
    seed: sheet ? sheet.code : specimen.accessionNumber,
    ...(sheet ? { level: sheet.level, plane: sheet.plane } : {}),
  };
}

/** The picture alone. Marks stand on the drawing, whose places they were set on. */
export function SpecimenPicture({
  specimen,
  marks = [],
  named = false,
}: {
  specimen: PlateSpecimen;
  marks?: readonly Mark[];
  named?: boolean;
}) {
  const label = `${specimen.accessionNumber} ${specimen.title}`;
  if (specimen.picture && marks.length === 0)
    return <img src={`/specimens/${specimen.id}/picture?${specimen.picture.id}`} alt={label} />;
  return <SpecimenDrawing request={{ ...drawingRequestOf(specimen), named }} label={label} marks={marks} />;
}

export function SpecimenPlate({
  specimen,
  marks = [],
  caption,
}: {
  specimen: PlateSpecimen;
  marks?: readonly Mark[];
  caption?: string | undefined;
}) {
  return (
    <figure className="plate">
      <SpecimenPicture specimen={specimen} marks={marks} named={marks.length === 0} />
      <figcaption>
        {caption ?? (specimen.picture && marks.length === 0 ? words.photograph : words.schematic)}
      </figcaption>
    </figure>
  );
}
