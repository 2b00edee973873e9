/**
 * How a loan of the scenario is written down: what was asked, and how far its
 * story has gone, each step on its day. A step that is left out has not happened.
 */
import type { DrawUpInput } from "#lib/agreements/agreement-input.ts";
import type { ClaimEventInput } from "#lib/loans/claims.ts";
import type { checkInVerdicts } from "#lib/loans/inputs.ts";
import type { DecisionInput } from "#lib/loans/schema.ts";
import type { LoanInput } from "#lib/suitability/schema.ts";
import type { AccountKey } from "#seed/scenario/accounts.ts";
import type { VenueKey } from "#seed/scenario/borrowers.ts";
import type { Day, Examiner, Mark, Reading } from "#seed/scenario/shape.ts";

type Decided = {
  day: Day;
  by: "curator" | "donor officer" | "collection manager";
  office: DecisionInput["office"];
  outcome: DecisionInput["outcome"];
  grounds: string;
  conditions?: string;
  reference?: string;
  /** Accession numbers of what is accepted, where it is not all. */
  specimens?: string[];
};

/** A bar that an office set aside for these specimens, and the paper that its word rests on. */
type SetAside = {
  day: Day;
  by: AccountKey;
  specimens: string[];
  rule: string;
  fact: string;
  office: DecisionInput["office"];
  grounds: string;
  evidence: string;
};

/** A claim with what happened to it after it was opened. */
type Claimed = {
  day: Day;
  by: AccountKey;
  specimen: string;
  note: string;
  events: { day: Day; kind: ClaimEventInput["kind"]; euros?: number; note: string }[];
};

/** A look at one specimen of a loan. Marks that are not named are as they were. */
export type LoanLook = {
  grounds: string;
  readings?: Record<string, Reading>;
  /** Marks that were not there before. */
  newMarks?: Record<string, Mark>;
  uses?: string;
};

export type Looks = { day: Day; by: Examiner | AccountKey; looks: Record<string, string | LoanLook> };

export type Carriage = {
  carrier: string;
  vehicle: string;
  /** Countries between the two ends. */
  through?: string[];
  planned: Day;
  departs: Day;
  arrives: Day;
};

export type ChosenTerms = Partial<Pick<DrawUpInput, "languages" | "parameters">>;

export type LoanStory = {
  opened: Day;
  submitted?: Day;
  /** Another specimen in the place of one that was asked for; the request is then submitted again. */
  substituted?: { day: Day; by: AccountKey; specimen: string; standIn: string; submittedAgain: Day };
  withdrawn?: Day;
  setAside?: SetAside[];
  decided?: Decided[];
  drawnUp?: Day;
  /** What is chosen for the agreement where the standard does not serve. */
  terms?: ChosenTerms;
  signedByLender?: Day;
  signedByBorrower?: Day;
  /** Who signed for the borrower on paper; the centre's registrar then keeps the scan. */
  signedOnPaper?: { name: string; role: string };
  /** The name that the borrower drew instead of typing it. */
  drawnByBorrower?: string;
  /** A change after the signatures, signed again by both. */
  amended?: { day: Day; terms: ChosenTerms; signedByLender: Day; signedByBorrower: Day };
  covered?: { day: Day; insurer: string; policy: string; from: Day; until: Day };
  out?: Carriage;
  cratesPlanned?: Day;
  checkedOut?: Looks;
  sealed?: Day;
  dispatched?: Day;
  received?: Day;
  /** When the crates were opened at the venue, and what was seen. */
  unpacked?: { day: Day; looks?: Record<string, string | LoanLook> };
  home?: Carriage;
  sentHome?: Day;
  receivedHome?: Day;
  counted?: { day: Day; missing?: Record<string, string> };
  checkedHome?: Looks;
  checkedIn?: Day;
  /** Where the verdict at check-in is not "no change". */
  verdicts?: Record<string, { verdict: (typeof checkInVerdicts)[number]; remark: string }>;
  closed?: Day;
  claimed?: Claimed[];
};

export type ScenarioLoan = {
  key: string;
  venue: VenueKey;
  lecturer: AccountKey;
  /** Signs for the borrower. */
  signer: AccountKey | null;
  asked: Pick<
    LoanInput,
    "title" | "purpose" | "teachingUse" | "audience" | "paidAdmission" | "displayStyle"
  > &
    Pick<LoanInput, "pictures" | "activities" | "note"> & {
      starts: Day;
      ends: Day;
      coverEuros: number | null;
    };
  /** Accession numbers. */
  specimens: string[];
  story: LoanStory;
};

type Asked = Partial<ScenarioLoan["asked"]> & { title: string; starts: Day; ends: Day };

export function teaching(asked: Asked): ScenarioLoan["asked"] {
  return {
    purpose: "teaching",
    teachingUse: "handling",
    audience: "enrolled students",
    paidAdmission: false,
    displayStyle: "didactic",
    pictures: [],
    activities: [],
    note: "",
    coverEuros: null,
    ...asked,
  };
}

export function showing(asked: Asked): ScenarioLoan["asked"] {
  return teaching({ purpose: "exhibition", teachingUse: "viewing", audience: "general public", ...asked });
}

export function accepted(day: Day, grounds: string, conditions = ""): Decided {
  return { day, by: "curator", office: "curator", outcome: "accept", grounds, conditions };
}

/** Somebody leaves the decision to others, and says why. */
export function recuses(day: Day, by: "collection manager", grounds: string): Decided {
  return { day, by, office: "curator", outcome: "recuse", grounds };
}

/** The donor officer's word, asked where anything about consent is not plain. */
export function donorOfficerAgrees(day: Day, grounds: string): Decided {
  return { day, by: "donor officer", office: "donor officer", outcome: "accept", grounds };
}

/** The oversight body's word, as the donor officer writes it down. */
export function oversightAgrees(day: Day, reference: string, grounds: string): Decided {
  return { day, by: "donor officer", office: "oversight body", outcome: "accept", grounds, reference };
}

export function byVan(planned: Day, departs: Day, arrives: Day): Carriage {
  return {
    carrier: "Vannmark Fine Transport",
    vehicle: "Van with air suspension, 18 °C",
    planned,
    departs,
    arrives,
  };
}

export function byLorry(planned: Day, departs: Day, arrives: Day): Carriage {
  return {
    carrier: "Skerry Line Museum Haulage",
    vehicle: "Lorry with tail lift, two drivers, by ferry",
    planned,
    departs,
    arrives,
  };
}

/** Sheets of series SR 03 from one number to another, missing ones left out by the caller. */
export function trunkSheets(from: number, to: number): string[] {
  return Array.from(
    { length: to - from + 1 },
    (_, index) => `SR 03.${String(from + index).padStart(3, "0")}`,
  );
}
