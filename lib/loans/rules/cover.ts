/**
 * Replacement cost against cover. V1: each specimen has a stated cost. V2: the
 * cost is not older than 12 months. V3: what the borrower states, or what
 * certificates say, reaches the sum of all specimens in one currency. Costs that
 * are not known make the sum a least sum, which can be too high but never clear.
 */
import { servesUntil } from "#lib/condition/grade.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/loans/rules/case.ts";
import { findingsFor } from "#lib/loans/rules/case.ts";
import type { Finding } from "#lib/loans/schema.ts";
import type { Money } from "#lib/specimens/schema.ts";

/** The sum of the costs that are known, where they share a currency. */
export type CostSum = { minor: number; currency: string | null; currencies: string[]; unknown: number };

export function sumOfCosts(subjects: readonly Pick<SpecimenCase, "specimen">[]): CostSum {
  const costs = subjects.map(({ specimen }) => specimen.replacementCost);
  const known = costs.filter((cost) => cost !== null);
  const currencies = [...new Set(known.map((cost) => cost.currency))].sort();
  return {
    minor: known.reduce((sum, cost) => sum + cost.minor, 0),
    currency: currencies.length === 1 ? (currencies[0] ?? null) : null,
    currencies,
    unknown: costs.length - known.length,
  };
}

/** What there is: the highest certificate, or else what the borrower says it will take out. */
export function coverInSight({ covers, statedCover }: Pick<RequestFacts, "covers" | "statedCover">) {
  const [highest] = [...covers].map((cover) => cover.amount).sort((a, b) => b.minor - a.minor);
  if (highest) return { amount: highest, isCertified: true };
  return statedCover === null ? null : { amount: statedCover, isCertified: false };
}

function judgeCost({ specimen }: SpecimenCase, request: RequestFacts): Verdict[] {
  const { replacementCost: cost } = specimen;
  if (cost === null) return [{ outcome: "attend", fact: "cover.cost-not-known", wayOut: "way.state-cost" }];
  const parameters = {
    minor: cost.minor,
    currency: cost.currency,
    statedOn: cost.statedOn,
    basis: cost.basis,
  };
  return servesUntil(cost.statedOn, "approval") < request.today
    ? [{ outcome: "attend", fact: "cover.cost-old", parameters, wayOut: "way.state-cost" }]
    : [{ outcome: "clear", fact: "cover.cost-stated", parameters }];
}

/** The whole loan's sum against what covers it. */
export function judgeSum(sum: CostSum, inSight: { amount: Money; isCertified: boolean } | null): Verdict {
  const needed = { neededMinor: sum.minor, neededCurrency: sum.currency, unknown: sum.unknown };
  if (inSight === null)
    return { outcome: "attend", fact: "cover.not-stated", parameters: needed, wayOut: "way.state-cover" };
  const { amount, isCertified } = inSight;
  const parameters = { ...needed, minor: amount.minor, currency: amount.currency, isCertified };
  if (sum.currencies.some((currency) => currency !== amount.currency))
    return {
      outcome: "attend",
      fact: "cover.other-currency",
      parameters: { ...parameters, neededCurrency: sum.currencies.join(", ") },
      wayOut: "way.one-currency",
    };
  if (sum.minor > amount.minor)
    return { outcome: "bar", fact: "cover.too-low", parameters, wayOut: "way.raise-cover" };
  if (sum.unknown > 0)
    return { outcome: "attend", fact: "cover.sum-not-known", parameters, wayOut: "way.state-cost" };
  return { outcome: "clear", fact: isCertified ? "cover.certified" : "cover.stated", parameters };
}

export function judgeCover(
  subject: SpecimenCase,
  request: RequestFacts,
  all: readonly SpecimenCase[],
): Finding[] {
  const find = findingsFor(subject.specimen.id, "cover");
  return [
    ...judgeCost(subject, request).map((verdict) =>
      find(verdict.fact === "cover.cost-old" ? "V2" : "V1", verdict),
    ),
    find("V3", judgeSum(sumOfCosts(all), coverInSight(request))),
  ];
}
