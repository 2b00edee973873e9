/**
 * Writes the letters that an event of a loan calls for, in the transaction of that
 * event. One line in a command; who gets them and what they say is decided by the
 * plan of letters.
 */
import {
  type LetterEvent,
  type LetterFactsGiven,
  type LoanPeople,
  letterCode,
  letterFacts,
  recipientsOf,
} from "#lib/loans/letters.ts";
import type { Work } from "#lib/people/command.ts";
import { findCentre } from "#lib/people/queries.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { mailLanguageOf, queueMail } from "#lib/platform/mail.ts";

/** The people of both sides of a loan, and what every letter says of it. */
async function readLoan({ transaction }: Work, loanId: string) {
  const loan = await transaction.loan.findUniqueOrThrow({
    where: { id: loanId },
    select: {
      number: true,
      title: true,
      startsOn: true,
      endsOn: true,
      contactEmail: true,
      createdById: true,
      borrowerId: true,
      borrower: { select: { name: true, email: true, languages: true } },
    },
  });
  const accounts = await transaction.account.findMany({
    where: { active: true, OR: [{ institutionId: null }, { institutionId: loan.borrowerId }] },
    select: { id: true, email: true, roles: true, institutionId: true },
    orderBy: { id: "asc" },
  });
  const centre = (await findCentre(transaction))?.settings;
  const people: LoanPeople = {
    contactEmail: loan.contactEmail,
    institutionEmail: loan.borrower.email,
    institutionLanguages: loan.borrower.languages,
    centreLanguages: centre?.languages ?? [],
    askerId: loan.createdById,
    borrowerId: loan.borrowerId,
    accounts,
  };
  const facts: LetterFactsGiven = {
    loan: loan.number,
    title: loan.title,
    borrower: loan.borrower.name,
    centre: centre?.name ?? "",
    startsOn: toDateText(loan.startsOn),
    endsOn: toDateText(loan.endsOn),
  };
  return { people, facts };
}

/** @param said what the letter says beyond the loan itself, such as how many specimens */
export async function writeLetters(
  work: Work,
  loanId: string,
  event: LetterEvent,
  said: LetterFactsGiven = {},
): Promise<void> {
  const { people, facts } = await readLoan(work, loanId);
  const parameters = letterFacts(event, { ...facts, ...said });
  await queueMail(
    work,
    recipientsOf(event, people, work.viewer.accountId).map(({ accountId, address, languages }) => ({
      accountId,
      address,
      language: mailLanguageOf(languages),
      code: letterCode(event),
      parameters,
      about: `loan/${loanId}`,
    })),
  );
}
