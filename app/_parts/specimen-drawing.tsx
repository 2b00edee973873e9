/**
 * The schematic plate of a specimen, drawn from its facts, with the Latin names and
 * the numbered marks of a check where they are asked for. It is one picture to a
 * screen reader: `label` says what it shows, and the marks stand in words elsewhere.
 */
import styles from "#app/_parts/specimen-drawing.module.css";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import { type Mark, placeMarks } from "#lib/specimens/drawing/marks.ts";

/** @param marks places as fractions of the picture's width and height */
export function SpecimenDrawing({
  request,
  named,
  label,
  marks = [],
}: {
  request: DrawingRequest;
  named: boolean;
  label: string;
  marks?: readonly Mark[];
}) {
  const drawing = drawSpecimen(request, named);
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      width={drawing.width}
      height={drawing.height}
      role="img"
      aria-label={label}
    >
      {drawing.shapes.map((shape, position) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: the shapes of one drawing never move
          key={position}
          className={[
            shape.fill === null ? undefined : styles[`wash-${shape.fill}`],
            shape.stroke === null ? undefined : styles[`line-${shape.stroke}`],
          ]
            .filter(Boolean)
            .join(" ")}
          d={shape.d}
        />
      ))}
      {drawing.labels.map((name) => (
        <g key={`${name.text} ${name.x} ${name.y}`} lang="la">
          <path className={styles.leader} d={name.leader} />
          <text className={styles.name} x={name.x} y={name.y} textAnchor={name.anchor}>
            {name.text}
          </text>
        </g>
      ))}
      {placeMarks(marks).map((mark) => (
        <g key={mark.number}>
          {mark.area !== null && <path className={styles.area} d={mark.area} />}
          <circle className={styles.spot} cx={mark.x} cy={mark.y} r={mark.radius} />
          <text className={styles.number} x={mark.x} y={mark.y + 3.1}>
            {mark.number}
          </text>
        </g>
      ))}
    </svg>
  );
}
