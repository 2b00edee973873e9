/**
 * Why the lender would send a courier: the house asks for the reason first, and a
 * reason only proposes one. A whole body, a large jar, a specimen that breaks easily,
 * a replacement cost above the house's figure, a borrower who has few loans behind it,
 * and a change of vehicle. The figures are the house's own; one of nothing leaves its
 * reason out. What is not known is no reason by itself. Common practice, no source.
 */

import { minorDigits } from "#lib/platform/money.ts";
import { type FragilityClassName, fragilityClassOf } from "#lib/specimens/classes.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { practiceFor } from "#lib/suitability/rules/case.ts";

export const courierReasons = [
  "whole body",
  "large jar",
  "breaks easily",
  "replacement cost",
  "few loans before",
  "change of vehicle",
] as const;
export type CourierReason = (typeof courierReasons)[number];

export type CourierCase = {
  request: RequestFacts;
  subjects: readonly SpecimenCase[];
  /** In which the house's figure stands. */
  currency: string;
  parameters: Readonly<{ transportMode?: string | number; transshipment?: string | number }>;
};

const brittle: readonly FragilityClassName[] = ["corrosion-cast", "articulated-skeleton"];

const breaksEasily = ({ specimen }: SpecimenCase): boolean =>
  specimen.partsAtRisk.trim() !== "" || brittle.includes(fragilityClassOf(specimen));

/** The highest replacement cost of one specimen in the currency, in whole minor units. */
function highestMinor(subjects: readonly SpecimenCase[], currency: string): number {
  const costs = subjects.flatMap(({ specimen: { replacementCost: cost } }) =>
    cost !== null && cost.currency === currency ? [cost.minor] : [],
  );
  return Math.max(0, ...costs);
}

/** The reasons that there are, in their order; none where nothing speaks for a courier. */
export function reasonsForCourier({ request, subjects, currency, parameters }: CourierCase): CourierReason[] {
  const { courierJarMl, courierCost, courierLoans } = practiceFor(request);
  const { transportMode = "road", transshipment = "none" } = parameters;
  const costMinor = courierCost * 10 ** minorDigits(currency);
  const holds: Record<CourierReason, boolean> = {
    "whole body": subjects.some(({ specimen }) => specimen.kind === "whole body"),
    "large jar":
      courierJarMl > 0 && subjects.some(({ specimen }) => (specimen.legal.freeFluidMl ?? 0) > courierJarMl),
    "breaks easily": subjects.some(breaksEasily),
    "replacement cost": courierCost > 0 && highestMinor(subjects, currency) > costMinor,
    "few loans before": request.borrower.record.loans < courierLoans,
    "change of vehicle": transportMode !== "road" || transshipment !== "none",
  };
  return courierReasons.filter((reason) => holds[reason]);
}
