/** A moment in a row of a table, on one line where there is room for it. */
import { formatMomentShort } from "#app/_words/format.ts";

export function Moment({ at }: { at: string }) {
  const [day, ...time] = formatMomentShort(at).split(", ");
  return (
    <time dateTime={at} className="small">
      <span style={{ whiteSpace: "nowrap" }}>{day},</span>{" "}
      <span style={{ whiteSpace: "nowrap" }}>{time.join(", ")}</span>
    </time>
  );
}
