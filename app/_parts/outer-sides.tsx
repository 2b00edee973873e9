/** The outside of a crate as length, width and height, on one line. */
import { formatNumber } from "#app/_words/format.ts";

export function OuterSides({
  crate,
}: {
  crate: { outerLengthMm: number; outerWidthMm: number; outerHeightMm: number };
}) {
  const sides = [crate.outerLengthMm, crate.outerWidthMm, crate.outerHeightMm];
  return <span style={{ whiteSpace: "nowrap" }}>{sides.map((side) => formatNumber(side)).join(" × ")}</span>;
}
