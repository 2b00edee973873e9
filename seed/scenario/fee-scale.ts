/** The fee scale of the invented centre, as it was first set and as it counts now. Every figure is made up. */
import { type FeeScale, lineCodes } from "#lib/costing/schema.ts";
import type { Day } from "#seed/scenario/shape.ts";

/** Lines of the scenario that bear no tax, or a lower rate. */
const otherTaxes: Partial<FeeScale["taxPercent"]> = {
  "cover on the way": "0",
  "cover of the stay": "0",
  "transport out by distance": "13.5",
  "transport out": "13.5",
  "transport home by distance": "13.5",
  "transport home": "13.5",
  "courier fare": "13.5",
};

const now: FeeScale = {
  currency: "EUR",
  loanFees: {
    teaching: { baseMinor: 18_000, included: 2, furtherMinor: 4_500 },
    exhibition: { baseMinor: 32_000, included: 2, furtherMinor: 8_000 },
    research: { baseMinor: 12_000, included: 5, furtherMinor: 2_000 },
    "picture-taking": { baseMinor: 9_000, included: 3, furtherMinor: 1_500 },
  },
  rates: {
    preparation: 6_240,
    "condition check": 6_240,
    "new crate": 14_000,
    "crate volume": 68_500,
    "reused crate": 5_200,
    mount: 9_500,
    packing: 5_150,
    kilometre: 192,
    stage: 46_500,
    "courier days": 19_500,
    permits: 7_000,
    customs: 11_000,
    installation: 5_800,
  },
  cover: { transitPerMille: "0.35", transitBasis: "transit", stayPerMille: "0.0041", stayBasis: "day" },
  recall: { percent: "60", leastMinor: 25_000 },
  contingencyPercent: "4",
  taxPercent: {
    ...(Object.fromEntries(lineCodes.map((code) => [code, "25.5"])) as FeeScale["taxPercent"]),
    ...otherTaxes,
  },
  validDays: 30,
  cancellation: [
    { daysBefore: 60, percent: "10" },
    { daysBefore: 30, percent: "25" },
    { daysBefore: 14, percent: "50" },
    { daysBefore: 0, percent: "80" },
  ],
};

export const feeScales: readonly { day: Day; scale: FeeScale }[] = [
  {
    day: -1_400,
    scale: {
      ...now,
      rates: { ...now.rates, preparation: 5_900, "condition check": 5_900, stage: 43_000, kilometre: 178 },
      recall: { percent: "60", leastMinor: 20_000 },
    },
  },
  { day: -365, scale: now },
];
