/** Insurance that borrowers of the scenario hold beyond one loan; days count from the day of loading. */
import type { AccountKey } from "#seed/scenario/accounts.ts";
import type { BorrowerKey } from "#seed/scenario/borrowers.ts";
import type { Day } from "#seed/scenario/shape.ts";

export const insurances: readonly {
  borrower: BorrowerKey;
  by: AccountKey;
  kept: Day;
  insurer: string;
  policyNumber: string;
  euros: number;
  from: Day;
  until: Day;
  coversTransit: boolean;
  territories: string[];
}[] = [
  {
    borrower: "kestrel",
    by: "kestrel registrar",
    kept: -200,
    insurer: "Tarrowgate Mutual",
    policyNumber: "TG 40-2201",
    euros: 250_000,
    from: -220,
    until: 145,
    coversTransit: true,
    territories: ["IE", "GB", "FI"],
  },
  {
    borrower: "norrvassa",
    by: "norrvassa registrar",
    kept: -300,
    insurer: "Skumring Insurance",
    policyNumber: "SK-1180-200",
    euros: 400_000,
    from: -340,
    until: 25,
    coversTransit: false,
    territories: ["SE"],
  },
];
