/** All loans of the scenario. */
import type { ScenarioLoan } from "#seed/scenario/loan-words.ts";
import { loansAbroad } from "#seed/scenario/loans-abroad.ts";
import { loansAtHome } from "#seed/scenario/loans-at-home.ts";
import { loansAway } from "#seed/scenario/loans-away.ts";
import { loansCalledOff } from "#seed/scenario/loans-called-off.ts";
import { pastLoans } from "#seed/scenario/loans-past.ts";

export const loans: ScenarioLoan[] = [
  ...pastLoans,
  ...loansAway,
  ...loansAtHome,
  ...loansAbroad,
  ...loansCalledOff,
];
