/** The picture of a specimen: its photograph, or the schematic drawing the program makes. */
import { SpecimenDrawing } from "#app/_parts/specimen-drawing.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import type { Mark } from "#lib/specimens/drawing/marks.ts";
import { type DrawnSpecimen, drawingRequestOf } from "#lib/specimens/drawing/request.ts";

export type PlateSpecimen = DrawnSpecimen & { id: string; picture: { id: string } | null };

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
  return <SpecimenDrawing request={drawingRequestOf(specimen)} named={named} label={label} marks={marks} />;
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
