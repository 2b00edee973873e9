/** What the rules find and what would clear it, in French: every code with the parameters that it has in English. */

import type { FindingWords } from "#app/_words/finding-words.ts";
import { frenchFindingValues } from "#app/_words/fr/finding-values.ts";
import { frenchEndOfLaw, frenchLawFindings, frenchLawWaysOut } from "#app/_words/fr/law-findings.ts";
import { frenchLoanFindings } from "#app/_words/fr/loan-findings.ts";
import { frenchWaysOut } from "#app/_words/fr/ways-out.ts";

export const frenchFindings: FindingWords = {
  sentences: { ...frenchLoanFindings, ...frenchWaysOut, ...frenchLawFindings, ...frenchLawWaysOut },
  values: frenchFindingValues,
  endOfLaw: frenchEndOfLaw,
};
