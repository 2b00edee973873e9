/**
 * The days that a loan keeps free around the wanted ones, as the catalogue searches
 * with them: the same that a request adds for packing, travel, rest and checks. A
 * specimen that joins others waits as long as the slowest of them.
 */

import type { DaysAround } from "#lib/specimens/days-around.ts";
import type { BufferDays, Buffers } from "#lib/suitability/period.ts";
import { onePersonFilterKg } from "#lib/transport/handling.ts";

/** @param own the centre's days by what travels @param others what is on the slip already, with the days around it */
export function loanDaysAround(
  own: BufferDays,
  others: Buffers = { daysBefore: 0, daysAfter: 0 },
): DaysAround[] {
  const around = (days: number) => ({
    before: Math.max(days, others.daysBefore),
    after: Math.max(days, others.daysAfter),
  });
  return [
    { kind: "whole body", ...around(own["whole body"]) },
    { kind: "body region", ...around(own.crate) },
    { upToKg: onePersonFilterKg.men, ...around(own.small) },
    around(own.crate),
  ];
}
