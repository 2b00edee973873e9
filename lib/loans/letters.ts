/**
 * Who is written to when something happens to a loan, and what the letter may
 * say. Facts of a letter are a closed list of numbers, days and names of the loan;
 * nothing of a donor, of consent or of a specimen's condition is among them, so
 * that nothing of it leaves the house by mail. Nobody is told of what they did
 * themselves, and nobody twice.
 */
import { borrowerRoles, type Role } from "#lib/people/viewer.ts";
import type { LetterFacts } from "#lib/platform/mail.ts";

export const addressees = [
  "contact",
  "asker",
  "borrower registrars",
  "institution",
  "registrars",
  "curators",
  "donor officers",
] as const;
export type Addressee = (typeof addressees)[number];

/** Everything that a letter may be told. */
export const letterFactNames = [
  "loan",
  "title",
  "borrower",
  "centre",
  "startsOn",
  "endsOn",
  "count",
  "version",
  "days",
  "neededFrom",
  "returnBy",
  "askedUntil",
  "claim",
  "coverEndsOn",
] as const;
export type LetterFactName = (typeof letterFactNames)[number];
export type LetterFactsGiven = Partial<Record<LetterFactName, string | number | null>>;

/** What every letter says of the loan it is about. */
export const factsOfEvery = ["loan", "title", "borrower", "centre"] as const;

type Plan = { to: readonly Addressee[]; says?: readonly LetterFactName[] };
const borrower: readonly Addressee[] = ["contact", "asker", "borrower registrars"];
const both: readonly Addressee[] = [...borrower, "registrars"];

/** Every letter there is: to whom it goes, and what it says beyond what each says. */
export const letterPlan = {
  submitted: {
    to: ["registrars", "curators", "contact", "asker"],
    says: ["startsOn", "endsOn", "count", "days"],
  },
  "donor-office-asked": { to: ["donor officers"] },
  "office-spoken": { to: ["curators", "registrars"] },
  "office-recused": { to: ["curators", "registrars"] },
  "bar-set-aside": { to: ["curators", "registrars"] },
  substituted: { to: both },
  decided: { to: both, says: ["startsOn", "endsOn", "count"] },
  declined: { to: both },
  quotation: { to: borrower, says: ["version"] },
  "quotation-accepted": { to: ["registrars"], says: ["version"] },
  "quotation-refused": { to: ["registrars"], says: ["version"] },
  "cost-statement": { to: borrower, says: ["version"] },
  agreement: { to: ["contact", "borrower registrars"], says: ["version"] },
  "agreement-to-sign": { to: both, says: ["version"] },
  signed: { to: both, says: ["version"] },
  dispatched: { to: both, says: ["count"] },
  received: { to: ["registrars", "curators", "borrower registrars"], says: ["count"] },
  opened: { to: ["registrars", "curators", "borrower registrars"], says: ["count"] },
  harm: { to: ["registrars", "curators", "borrower registrars"] },
  "sent-home": { to: ["registrars", "curators"], says: ["count"] },
  "received-home": { to: [...borrower, "curators", "registrars"], says: ["count"] },
  "missing-home": { to: ["registrars", "curators", "borrower registrars"], says: ["count"] },
  "checked-in": { to: ["registrars"] },
  claim: { to: both, says: ["claim"] },
  "judged-worse": { to: ["registrars"], says: ["count"] },
  "cover-ends": { to: ["registrars", "borrower registrars"], says: ["coverEndsOn", "days"] },
  closed: { to: both },
  withdrawn: { to: both },
  cancelled: { to: [...both, "curators"] },
  "cover-taken-back": { to: ["registrars", "borrower registrars"] },
  "message-to-borrower": { to: borrower },
  "message-to-centre": { to: ["registrars"] },
  "reminder-ahead": { to: ["contact", "asker"], says: ["endsOn", "days", "neededFrom"] },
  "reminder-today": { to: borrower, says: ["endsOn", "neededFrom"] },
  "reminder-overdue": { to: borrower, says: ["endsOn", "days", "neededFrom"] },
  "reminder-urgent": {
    to: [...borrower, "institution", "registrars"],
    says: ["endsOn", "days", "neededFrom"],
  },
  "reminder-last": { to: [...borrower, "institution", "registrars"], says: ["endsOn", "days", "neededFrom"] },
  recalled: { to: [...borrower, "institution", "registrars"], says: ["returnBy", "count"] },
  "extension-asked": { to: ["registrars"], says: ["endsOn", "askedUntil"] },
  "extension-granted": { to: both, says: ["endsOn"] },
  "extension-refused": { to: both, says: ["endsOn", "askedUntil"] },
} as const satisfies Record<string, Plan>;
export type LetterEvent = keyof typeof letterPlan;
export const letterEvents = Object.keys(letterPlan) as LetterEvent[];

export const letterCode = (event: LetterEvent) => `letter.${event}` as const;

/** The people of a loan, of both sides. */
export type LoanPeople = {
  contactEmail: string;
  institutionEmail: string;
  institutionLanguages: readonly string[];
  centreLanguages: readonly string[];
  /** The account that opened the loan. */
  askerId: string;
  borrowerId: string;
  /** Accounts of the house and of the borrower that are open. */
  accounts: readonly { id: string; email: string; roles: readonly string[]; institutionId: string | null }[];
};

export type Recipient = { accountId: string | null; address: string; languages: readonly string[] };

const holds = ({ roles }: { roles: readonly string[] }, role: Role) => roles.includes(role);
const ofBorrower = (account: LoanPeople["accounts"][number], borrowerId: string) =>
  account.institutionId === borrowerId && borrowerRoles.some((role) => holds(account, role));

/** Who an addressee is on one loan. */
function peopleOf(addressee: Addressee, people: LoanPeople): Recipient[] {
  const { accounts, borrowerId, institutionLanguages, centreLanguages } = people;
  const own = accounts.filter((account) => ofBorrower(account, borrowerId));
  const house = accounts.filter(({ institutionId }) => institutionId === null);
  const written = (found: typeof accounts, languages: readonly string[]): Recipient[] =>
    found.map(({ id, email }) => ({ accountId: id, address: email, languages }));
  const outside = (address: string): Recipient[] => {
    const account = accounts.find(({ email }) => email.toLowerCase() === address.toLowerCase());
    return [{ accountId: account?.id ?? null, address, languages: institutionLanguages }];
  };
  const ofHouse = (role: Role) =>
    written(
      house.filter((account) => holds(account, role)),
      centreLanguages,
    );
  switch (addressee) {
    case "contact":
      return outside(people.contactEmail);
    case "institution":
      return outside(people.institutionEmail);
    case "asker":
      return written(
        own.filter(({ id }) => id === people.askerId),
        institutionLanguages,
      );
    case "borrower registrars":
      return written(
        own.filter((account) => holds(account, "borrower registrar")),
        institutionLanguages,
      );
    case "registrars":
      return ofHouse("registrar");
    case "curators":
      return ofHouse("curator");
    case "donor officers":
      return ofHouse("donor officer");
  }
}

/** Who is written to, each address once. @param actorId the account whose act it is, which is not told of it */
export function recipientsOf(event: LetterEvent, people: LoanPeople, actorId: string): Recipient[] {
  const found = new Map<string, Recipient>();
  for (const addressee of letterPlan[event].to)
    for (const recipient of peopleOf(addressee, people)) {
      const key = recipient.address.trim().toLowerCase();
      if (key === "" || recipient.accountId === actorId || found.has(key)) continue;
      found.set(key, recipient);
    }
  return [...found.values()];
}

/** What the letter is told: of what is given, what its plan names, and nothing else. */
export function letterFacts(event: LetterEvent, given: LetterFactsGiven): LetterFacts {
  const plan: Plan = letterPlan[event];
  const names: readonly LetterFactName[] = [...factsOfEvery, ...(plan.says ?? [])];
  const told = names.flatMap((name) => {
    const value = given[name];
    return value === undefined || value === null ? [] : [[name, value] as const];
  });
  return Object.fromEntries(told);
}
