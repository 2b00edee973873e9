/** All loans of the scenario. */
import type { ScenarioLoan } from "#seed/scenario/loan-words.ts";
import { loansAtHome } from "#seed/scenario/loans-at-home.ts";
import { loansAway } from "#seed/scenario/loans-away.ts";
import { pastLoans } from "#seed/scenario/loans-past.ts";

export const loans: ScenarioLoan[] = [...pastLoans, ...loansAway, ...loansAtHome];
