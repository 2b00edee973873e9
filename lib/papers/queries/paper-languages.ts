/**
 * The languages in which the papers of a loan can be issued, those of the borrower
 * first and in its order; for a command or query that has authorised.
 */
import { type PaperLanguage, paperLanguagesFor } from "#lib/papers/languages.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";

/** The first one is that of the papers where nobody chooses: the borrower's, or English. */
export async function languagesForLoan(
  reader: Database | Transaction,
  loanId: string,
): Promise<[PaperLanguage, ...PaperLanguage[]]> {
  const loan = await reader.loan.findUniqueOrThrow({
    where: { id: loanId },
    select: { borrower: { select: { languages: true } } },
  });
  return paperLanguagesFor(loan.borrower.languages);
}
