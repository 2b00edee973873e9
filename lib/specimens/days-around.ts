/**
 * Days that are kept free before and after the wanted ones, by what has to be
 * packed, carried and rested. The lines are given from outside, by whoever knows
 * how long that takes; of several lines the first that fits a specimen counts, and
 * a specimen that no line fits is wanted on no more than the wanted days.
 */
import { z } from "zod";
import { type SpecimenInput, specimenKinds } from "#lib/specimens/schema.ts";

const mostDays = 366;
const days = z.number().int().min(0).max(mostDays);

export const DaysAround = z.object({
  /** Fits specimens of this kind only. */
  kind: z.enum(specimenKinds).optional(),
  /** Fits specimens that weigh no more with their mount; what nobody has weighed does not fit. */
  upToKg: z.number().positive().optional(),
  before: days,
  after: days,
});
export type DaysAround = z.infer<typeof DaysAround>;

type Travels = Pick<SpecimenInput, "kind" | "massKg" | "mountedMassKg">;

function fits({ kind, upToKg }: DaysAround, specimen: Travels): boolean {
  const heaviestKg = specimen.mountedMassKg ?? specimen.massKg;
  return (
    (kind === undefined || kind === specimen.kind) &&
    (upToKg === undefined || (heaviestKg !== null && heaviestKg <= upToKg))
  );
}

/** The days around for one specimen. */
export function daysAroundOf(
  specimen: Travels,
  lines: readonly DaysAround[],
): Pick<DaysAround, "before" | "after"> {
  const line = lines.find((each) => fits(each, specimen));
  return { before: line?.before ?? 0, after: line?.after ?? 0 };
}

/** The most days around that any specimen may have. */
export function mostDaysAround(lines: readonly DaysAround[]): Pick<DaysAround, "before" | "after"> {
  return {
    before: Math.max(0, ...lines.map(({ before }) => before)),
    after: Math.max(0, ...lines.map(({ after }) => after)),
  };
}
