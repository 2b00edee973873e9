/**
 * Replacement cost against cover. V1: each specimen has a stated cost. V2: the
 * cost is not older than 12 months. V3: what the borrower states, or what
 * certificates say together, reaches the sum of all specimens in one currency. Costs that
 * are not known make the sum a least sum, which can be too high but never clear.
 */
import { servesUntil } from "#lib/condition/grade.ts";
import type { AtStake } from "#lib/people/mandates.ts";
import type { Money } from "#lib/specimens/schema.ts";
import { leastCoveredMinor } from "#lib/suitability/cover-gaps.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";

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

/** What a mandate has to reach: the costs that are known, by currency, and how many are not. */
export function atStakeOf(subjects: readonly Pick<SpecimenCase, "specimen">[]): AtStake {
  const { currencies, unknown } = sumOfCosts(subjects);
  const within = (currency: string) =>
    subjects.filter(({ specimen }) => specimen.replacementCost?.currency === currency);
  return {
    sums: currencies.map((currency) => ({ currency, minor: sumOfCosts(within(currency)).minor })),
    unknown,
  };
}

type InSight = Pick<RequestFacts, "covers" | "statedCover" | "startsOn" | "endsOn">;

/**
 * What there is: what certificates come to together, or else what the borrower says
 * it will take out. Certificates of one currency add up where their times meet; the
 * least that they come to while one of them holds is what counts. Hours that none
 * covers are for the gate of release.
 */
export function coverInSight(
  { covers, statedCover, startsOn, endsOn }: InSight,
  neededCurrency: string | null = null,
): { amount: Money; isCertified: boolean } | null {
  const days = { from: `${startsOn}T00:00:00Z`, to: `${endsOn}T00:00:00Z` };
  const currencies = [...new Set(covers.map((cover) => cover.amount.currency))];
  const sums = currencies.map((currency): Money => {
    const own = covers.filter((cover) => cover.amount.currency === currency);
    const highest = Math.max(...own.map((cover) => cover.amount.minor));
    return { currency, minor: leastCoveredMinor(days, own) ?? highest };
  });
  const [first] = sums.sort(
    (a, b) =>
      Number(b.currency === neededCurrency) - Number(a.currency === neededCurrency) || b.minor - a.minor,
  );
  if (first) return { amount: first, isCertified: true };
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
  const sum = sumOfCosts(all);
  return [
    ...judgeCost(subject, request).map((verdict) =>
      find(verdict.fact === "cover.cost-old" ? "V2" : "V1", verdict),
    ),
    find("V3", judgeSum(sum, coverInSight(request, sum.currency))),
  ];
}
