/**
 * The days that a loan keeps free around the wanted ones, as the catalogue searches
 * with them: the same that a request adds for packing, travel, rest and checks. A
 * specimen that joins others waits as long as the slowest of them.
 */

import type { DaysAround } from "#lib/specimens/days-around.ts";
import { type Buffers, bufferDays } from "#lib/suitability/period.ts";
import { onePersonFilterKg } from "#lib/transport/handling.ts";

/** @param others what is on the slip already, with the days around it */
export function loanDaysAround(others: Buffers = { daysBefore: 0, daysAfter: 0 }): DaysAround[] {
  const around = (days: number) => ({
    before: Math.max(days, others.daysBefore),
    after: Math.max(days, others.daysAfter),
  });
  return [
    { kind: "whole body", ...around(bufferDays["whole body"]) },
    { kind: "body region", ...around(bufferDays.crate) },
    { upToKg: onePersonFilterKg.men, ...around(bufferDays.small) },
    around(bufferDays.crate),
  ];
}
