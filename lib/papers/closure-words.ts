/** What the closure of a loan says by itself; one value of this type for each language. */
import type { CheckInVerdict } from "#lib/loans/inputs.ts";

/** Words with {names} are filled by `fill`. */
export type ClosureWords = {
  name: string;
  about: string;
  parties: string;
  lender: string;
  borrower: string;
  loan: string;
  days: string;
  daysText: string;
  closedOn: string;
  returned: string;
  returnedText: string;
  verdicts: Readonly<Record<CheckInVerdict, string>>;
  counted: string;
  specimens: string;
  number: string;
  accessionNumber: string;
  specimen: string;
  backOn: string;
  checks: string;
  out: string;
  home: string;
  verdict: string;
  /** {when}, the {day}, the {grade}. */
  checked: string;
  notChecked: string;
  notKnown: string;
  settles: string;
  settlesRows: readonly { term: string; text: string }[];
  signatures: string;
  party: string;
  signature: string;
  personName: string;
  time: string;
};
