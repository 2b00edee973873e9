/** Words of the forms and acts on a loan's file, in English. */
import type { LoanState } from "#lib/loans/schema.ts";
import type { Act } from "#lib/people/permission.ts";
import type { Role } from "#lib/people/viewer.ts";
import type { offices } from "#lib/suitability/schema.ts";

/** The one act that clears a thing: what it is called, and the section where it is done. */
export const actPlaces: Partial<Record<Act, { label: string; section: string }>> = {
  noteSpecimen: { label: "Note a specimen", section: "specimens" },
  removeSpecimen: { label: "See the specimens", section: "specimens" },
  stateRequest: { label: "State the request", section: "request" },
  submitRequest: { label: "Submit the request", section: "request" },
  decideLoan: { label: "Give your word", section: "decision" },
  drawUpAgreement: { label: "Draw up the agreement", section: "agreement" },
  signAgreement: { label: "Read and sign", section: "agreement" },
  recordCover: { label: "Record cover", section: "cover" },
  reviseSpecimen: { label: "See the specimens", section: "specimens" },
  keepVenue: { label: "See what the rules found", section: "suitability" },
  recordPermit: { label: "See what the rules found", section: "suitability" },
  recordCheck: { label: "Check the specimens", section: "specimens" },
  recordPayment: { label: "Record a payment", section: "money" },
  recordCustomsDischarge: { label: "Record the discharge", section: "home" },
  planCrates: { label: "Plan the crates", section: "crates" },
  sealCrate: { label: "Pack and seal", section: "crates" },
  planStage: { label: "Plan the way", section: "crates" },
  issueCarrierLink: { label: "Give the carrier its link", section: "crates" },
  dispatchLoan: { label: "Let it go out", section: "release" },
  receiveLoan: { label: "Receive the crates", section: "venue" },
  openCrate: { label: "Open and count", section: "venue" },
  sendHome: { label: "Send home", section: "venue" },
  receiveHome: { label: "Receive the crates", section: "home" },
  countReturn: { label: "Count the return", section: "home" },
  checkIn: { label: "Check in", section: "home" },
  closeLoan: { label: "Close the loan", section: "home" },
  recallLoan: { label: "Ask them back", section: "longer" },
  answerExtension: { label: "Answer the wish", section: "longer" },
};

const between = (end: string) => `What stands between now and ${end}`;
const titles: Record<LoanState, string> = {
  enquiry: between("the request"),
  requested: between("the decision"),
  accepted: between("the agreement"),
  agreed: between("the release"),
  preparing: between("the release"),
  "travelling out": between("the arrival"),
  "at venue": between("the way home"),
  "travelling home": between("the return"),
  "home, to be checked": between("the check-in"),
  "checked in": between("the close"),
  closed: "Closed",
  declined: "Declined",
  withdrawn: "Withdrawn",
};

const roles: Record<Role, string> = {
  registrar: "registrar",
  curator: "curator",
  conservator: "conservator",
  "collection manager": "collection manager",
  "donor officer": "donor officer",
  inspector: "inspector",
  administrator: "administrator",
  lecturer: "lecturer",
  "borrower registrar": "borrower's registrar",
};

export const nextWords = {
  titles,
  roles,
  or: "or",
  waitsForLender: "Waits for the lender.",
  waitsForBorrower: "Waits for the borrower.",
  waitsForRoles: (roles: string) => `Waits for the ${roles}.`,
} as const;

export const decisionWords = {
  about:
    "The registrar does not decide alone. Where consent is not clear the donor officer speaks first, and where a condition is poor the conservator signs it off or not; the curator speaks last.",
  voices: "Voices asked for",
  offices: {
    curator: "Curator",
    "donor officer": "Donor officer",
    "oversight body": "Oversight body",
    conservator: "Conservator",
  } satisfies Record<(typeof offices)[number], string>,
  waiting: "not yet",
  accepts: "accepts",
  declines: "declines",
  earlier: "said before the request was changed; it no longer counts",
  said: "What was said",
  none: "Nobody has spoken yet.",
  office: "Office",
  by: "By",
  on: "On",
  outcome: "Word",
  grounds: "Grounds",
  groundsHint: "At least ten characters; they stand in the file.",
  conditions: "Conditions",
  conditionsHint: "They go into the agreement. Leave it empty when there are none.",
  reference: "Paper of the oversight body",
  referenceHint: "Its number or date; asked for where you write down the oversight body's word.",
  signOff: "As conservator you say whether what is in poor condition may travel and be used as asked.",
  giveWord: "Give your word",
  speakAs: "You speak as",
  recuses: "recuses themselves",
  accept: "accept",
  decline: "decline",
  recuse: "recuse myself",
  recuseAbout:
    "Recuse yourself where you have an interest of your own in the loan: say which in the grounds. You then speak no more in this office on it.",
  which: "Specimens that are accepted",
  whichHint:
    "As curator you may accept some of them; those without a tick are declined and their days released.",
  record: "Record this word",
  fixed: "A word stays in the file as it was given. The curator's word, when every other is there, decides.",
  recorded: "The word is on the file.",
  notSubmitted: "A decision follows once the request is submitted.",
} as const;

export const coverWords = {
  needed: "Needed: sum of the replacement costs",
  unknownCosts: (count: number) =>
    count === 1 ? "1 specimen has no stated cost" : `${count} specimens have no stated cost`,
  severalCurrencies: "in several currencies",
  stated: "Stated by the borrower",
  notStated: "nothing yet",
  certificates: "Certificates",
  none: "No certificate is on record. Cover runs from nail to nail: from when a specimen leaves its place until it is back in it.",
  insurer: "Insurer",
  policy: "Policy number",
  amount: "Amount",
  currency: "Currency",
  from: "From",
  until: "Until",
  firstDay: "First day",
  lastDay: "Last day",
  transit: "Covers the road",
  transitField: "It covers the specimens on the road",
  stay: "Covers the venue",
  stayField: "It covers the specimens while they are at the venue",
  territories: "Countries",
  yes: "yes",
  no: "no",
  gapSource: "Stages that nobody has planned take all the days kept for them (worked out here)",
  record: "Record a certificate",
  recorded: "The certificate is on record.",
  takeBackWhich: (policy: string) => `Take certificate ${policy} back`,
  takeBackOf: (policy: string) => `Take ${policy} off the record`,
  takenBack: "The certificate is off the record.",
  takeBackFollows: [
    "It is for a certificate that was recorded wrongly. It goes off the record, with your name in what happened, and counts no more for cover.",
    "The hours that it covered are uncovered until another certificate is recorded, and nothing leaves before that.",
  ],
  takeBackSigned: (version: number) =>
    `Version ${version} of the agreement names it and keeps naming it. Draw up a new version afterwards.`,
  needsTerritories: "A certificate without countries has not said where it holds, so it counts nowhere.",
  hidden: "Replacement costs are for the registrars of both sides to see.",
} as const;

export const agreementWords = {
  none: "No agreement has been drawn up. It freezes the terms of this day: specimens, days, limits, crates, conditions.",
  notYet: "An agreement follows the decision.",
  version: "Version",
  versionOf: (version: number) => `Version ${version}`,
  drawnUp: "Drawn up",
  hash: "SHA-256 of the terms",
  pdf: "Read the agreement (PDF)",
  signatures: "Signatures",
  parties: { lender: "Lender", borrower: "Borrower" },
  unsigned: "not signed",
  earlier: (count: number) => (count === 1 ? "1 earlier version" : `${count} earlier versions`),
  superseded: "A later version has taken its place; its signatures count no more.",
  drawUp: "Draw up the agreement",
  drawUpAgain: "Draw up a new version",
  drawUpCaution: "A new version takes the place of this one, and both parties sign again.",
  drawnUpDone: "Drawn up.",
  sign: (version: number) => `Sign version ${version}`,
  signFor: "You sign for",
  role: "Your role, as it will stand under the agreement",
  fixed:
    "Your name, role, the time and this hash are fixed. A signed version never changes; what is agreed later is a new version.",
  readFirst: "Read the PDF first; the hash below is printed on each of its pages.",
  signed: "Signed.",
} as const;

export const releaseWords = {
  about: "Nothing leaves until every gate holds. They are judged anew at the moment of release.",
  holds: "holds",
  holdsNot: "does not hold",
  gate: "Gate",
  facts: "What decides it",
  more: (count: number) => `and ${count} more`,
  dispatch: "Release and hand over to the carrier",
  dispatchTitle: "What will be fixed",
  dispatchFixed: (specimens: number, carrier: string) =>
    `${specimens === 1 ? "1 specimen passes" : `${specimens} specimens pass`} into the hands of ${carrier}; custody and place are written and cannot be taken back.`,
  dispatched: "It is on its way.",
  waits: "The release waits for the gates that do not hold.",
} as const;
