/** What the rules find and what would clear it, in German: every code with the parameters that it has in English. */
import { germanFindingValues } from "#app/_words/de/finding-values.ts";
import { germanEndOfLaw, germanLawFindings, germanLawWaysOut } from "#app/_words/de/law-findings.ts";
import { germanLoanFindings } from "#app/_words/de/loan-findings.ts";
import { germanWaysOut } from "#app/_words/de/ways-out.ts";
import type { FindingWords } from "#app/_words/finding-words.ts";

export const germanFindings: FindingWords = {
  sentences: { ...germanLoanFindings, ...germanWaysOut, ...germanLawFindings, ...germanLawWaysOut },
  values: germanFindingValues,
  endOfLaw: germanEndOfLaw,
};
