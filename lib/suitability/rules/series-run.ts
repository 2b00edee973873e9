/**
 * U6: sheets of a series are read in their order, so a loan takes a run without
 * gaps. A number that the series never had, or has lost, is no gap of the loan;
 * it is told all the same, since whoever counts at the other end will ask.
 */
import type { SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";

/** Numbers between the first and the last of the loan that stay behind, and that the series does not hold. */
export function gapsInRun(lent: readonly number[], held: readonly number[]) {
  const [first, last] = [Math.min(...lent), Math.max(...lent)];
  const between = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  return {
    first,
    last,
    left: between.filter((number) => !lent.includes(number) && held.includes(number)),
    absent: between.filter((number) => !held.includes(number)),
  };
}

function verdictOnRun(lent: readonly number[], held: readonly number[] | null): Verdict {
  if (held === null || lent.length === 0)
    return { outcome: "attend", fact: "use.run-not-known", wayOut: "way.whole-run" };
  const { first, last, left, absent } = gapsInRun(lent, held);
  const parameters = { first, last, left: left.length, absent: absent.length };
  return left.length === 0
    ? { outcome: "clear", fact: "use.whole-run", parameters }
    : { outcome: "attend", fact: "use.gaps-in-run", parameters, wayOut: "way.whole-run" };
}

export function judgeSeriesRun(
  { specimen, numbersOfSeries }: SpecimenCase,
  all: readonly Pick<SpecimenCase, "specimen">[],
): Finding[] {
  const { id, seriesId } = specimen;
  if (seriesId === null) return [];
  const lent = all.flatMap((one) =>
    one.specimen.seriesId === seriesId && one.specimen.numberInSeries !== null
      ? [one.specimen.numberInSeries]
      : [],
  );
  return [findingsFor(id, "use")("U6", verdictOnRun(lent, numbersOfSeries))];
}
