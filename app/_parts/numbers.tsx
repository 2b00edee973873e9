/** Accession numbers in a row; a number is never broken, the row is. */
import { Fragment } from "react";
import { numberRanges } from "#app/_words/number-range.ts";

/** @param most how many numbers or ranges are told before "and so many more" */
export function Numbers({ numbers, most = 6 }: { numbers: readonly string[]; most?: number }) {
  const ranges = numberRanges(numbers);
  const rest = ranges.length - most;
  return (
    <>
      {ranges.slice(0, most).map((range, index) => (
        <Fragment key={range}>
          {index > 0 && ", "}
          <span className="mono">{range}</span>
        </Fragment>
      ))}
      {rest > 0 && ` and ${rest} more`}
    </>
  );
}
