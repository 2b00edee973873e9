/** The English catalogue: every room's sentences in one flat table, by code. */
import { accountsWords } from "#app/_words/en/accounts.ts";
import { agreementTermsWords } from "#app/_words/en/agreement-terms.ts";
import { anatomyWords } from "#app/_words/en/anatomy.ts";
import { calendarSentences } from "#app/_words/en/calendar.ts";
import { centreWords } from "#app/_words/en/centre.ts";
import { claimWords } from "#app/_words/en/claims.ts";
import { closingWords } from "#app/_words/en/closing.ts";
import { conditionWords } from "#app/_words/en/condition.ts";
import { deskWords } from "#app/_words/en/desk.ts";
import { facilityWords } from "#app/_words/en/facility.ts";
import { lawFindingWords } from "#app/_words/en/law-findings.ts";
import { lettersWords } from "#app/_words/en/letters.ts";
import { loanFindingWords } from "#app/_words/en/loan-findings.ts";
import { loanTimeWords } from "#app/_words/en/loan-time.ts";
import { loansWords } from "#app/_words/en/loans.ts";
import { mandateWords, signingWords } from "#app/_words/en/mandates.ts";
import { moneyWords } from "#app/_words/en/money.ts";
import { papersWords } from "#app/_words/en/papers.ts";
import { paymentWords } from "#app/_words/en/payments.ts";
import { peopleWords } from "#app/_words/en/people.ts";
import { platformWords } from "#app/_words/en/platform.ts";
import { provenanceWords } from "#app/_words/en/provenance.ts";
import { setAsideWords } from "#app/_words/en/set-aside.ts";
import { shipmentsWords } from "#app/_words/en/shipments.ts";
import { signInWords } from "#app/_words/en/sign-in.ts";
import { specimensWords } from "#app/_words/en/specimens.ts";
import { tariffWords } from "#app/_words/en/tariff.ts";
import { treatmentWords } from "#app/_words/en/treatment.ts";
import { whereaboutsWords } from "#app/_words/en/whereabouts.ts";

export const english: Readonly<Record<string, string>> = {
  ...platformWords.refusals,
  ...peopleWords.refusals,
  ...facilityWords.refusals,
  ...facilityWords.due,
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
  ...tariffWords.refusals,
  ...treatmentWords.refusals,
  ...papersWords.refusals,
  ...claimWords.refusals,
  ...setAsideWords.refusals,
  ...mandateWords.refusals,
  ...signingWords.refusals,
  ...loansWords.refusals,
  ...agreementTermsWords.refusals,
  ...loansWords.gates,
  ...loansWords.steps,
  ...loanTimeWords.refusals,
  ...loanTimeWords.steps,
  ...loanTimeWords.due,
  ...lettersWords.refusals,
  ...lettersWords.due,
  ...lettersWords.letters,
  ...lettersWords.frame,
  ...calendarSentences,
  ...moneyWords.refusals,
  ...paymentWords.refusals,
  ...closingWords.refusals,
  ...closingWords.missing,
  ...closingWords.due,
  ...loanFindingWords.facts,
  ...loanFindingWords.waysOut,
  ...lawFindingWords.facts,
  ...lawFindingWords.waysOut,
};
