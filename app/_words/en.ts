/** The English catalogue: every room's sentences in one flat table, by code. */
import { accountsWords } from "#app/_words/en/accounts.ts";
import { anatomyWords } from "#app/_words/en/anatomy.ts";
import { centreWords } from "#app/_words/en/centre.ts";
import { conditionWords } from "#app/_words/en/condition.ts";
import { deskWords } from "#app/_words/en/desk.ts";
import { loanFindingWords } from "#app/_words/en/loan-findings.ts";
import { loansWords } from "#app/_words/en/loans.ts";
import { peopleWords } from "#app/_words/en/people.ts";
import { platformWords } from "#app/_words/en/platform.ts";
import { provenanceWords } from "#app/_words/en/provenance.ts";
import { shipmentsWords } from "#app/_words/en/shipments.ts";
import { signInWords } from "#app/_words/en/sign-in.ts";
import { specimensWords } from "#app/_words/en/specimens.ts";
import { whereaboutsWords } from "#app/_words/en/whereabouts.ts";

export const english: Readonly<Record<string, string>> = {
  ...platformWords.refusals,
  ...peopleWords.refusals,
  ...centreWords.refusals,
  ...accountsWords.refusals,
  ...signInWords.refusals,
  ...anatomyWords.refusals,
  ...deskWords.sentences,
  ...provenanceWords.refusals,
  ...specimensWords.refusals,
  ...whereaboutsWords.refusals,
  ...conditionWords.refusals,
  ...shipmentsWords.refusals,
  ...loansWords.refusals,
  ...loansWords.gates,
  ...loansWords.steps,
  ...loanFindingWords.facts,
  ...loanFindingWords.waysOut,
};
