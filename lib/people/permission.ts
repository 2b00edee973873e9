/**
 * One table answers "may this person do this to that", one "may this person see
 * this of that". Acts are the names of commands; sights are the kinds of guarded
 * data of the trade. A borrower acts on and sees only what is their own
 * institution's; what is not theirs does not exist for them.
 */

import { isBorrower, type Role, roles, type Viewer } from "#lib/people/viewer.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const collection: Role[] = ["curator", "collection manager"];
const house: Role[] = ["registrar", "curator", "conservator", "collection manager", "donor officer"];
const borrowers: Role[] = ["lecturer", "borrower registrar"];

/** Which roles may carry out which command. */
export const acts = {
  // platform and people
  configureCentre: ["administrator", "collection manager"],
  keepAccount: ["administrator"],
  keepInstitution: ["registrar", "collection manager"],
  keepVenue: ["registrar", "collection manager", "borrower registrar"],
  fileFacilityReport: ["registrar", "collection manager", "borrower registrar"],
  keepInsurance: ["registrar", "borrower registrar"],
  giveMandate: ["administrator", "collection manager", "registrar"],
  revokeMandate: ["administrator", "collection manager", "registrar"],
  makeCalendarFeed: [...roles],
  revokeCalendarFeed: [...roles],
  // provenance
  registerDonor: ["donor officer"],
  recordConsent: ["donor officer"],
  withdrawConsent: ["donor officer"],
  linkDonor: ["donor officer", ...collection],
  keepSealedRecord: ["donor officer"],
  openSealedRecord: ["donor officer", "inspector", ...collection],
  recordPermit: ["registrar", ...collection],
  withdrawPermit: ["registrar", ...collection],
  recordTitle: ["registrar", ...collection],
  // specimens
  recordSpecimen: collection,
  reviseSpecimen: [...collection, "conservator"],
  recordShown: collection,
  recordSeries: collection,
  recordPreparationStep: [...collection, "conservator"],
  addPicture: [...collection, "conservator"],
  // whereabouts
  keepPlace: ["registrar", ...collection],
  moveSpecimen: ["registrar", "conservator", ...collection],
  bookSpecimen: ["registrar", ...collection],
  releaseBooking: ["registrar", ...collection],
  // condition
  recordCheck: ["curator", "conservator", "collection manager", "borrower registrar"],
  fileClimateRecord: ["registrar", "conservator", "borrower registrar"],
  // loans
  openLoan: [...borrowers, "registrar"],
  askAgain: [...borrowers, "registrar"],
  noteSpecimen: [...borrowers, "registrar"],
  removeSpecimen: [...borrowers, "registrar"],
  substituteSpecimen: [...borrowers, "registrar"],
  stateRequest: [...borrowers, "registrar"],
  submitRequest: [...borrowers, "registrar"],
  withdrawRequest: [...borrowers, "registrar"],
  decideLoan: [...collection, "donor officer", "conservator"],
  estimateTreatment: ["conservator", ...collection],
  setAsideBar: [...collection, "donor officer", "conservator"],
  recordCover: ["registrar", "borrower registrar"],
  takeBackCover: ["registrar", "borrower registrar"],
  setFeeScale: ["collection manager", "administrator"],
  drawUpQuotation: ["registrar"],
  answerQuotation: ["borrower registrar"],
  drawUpCostStatement: ["registrar"],
  recordPayment: ["registrar"],
  putOffPayment: ["collection manager"],
  drawUpAgreement: ["registrar"],
  signAgreement: ["registrar", "collection manager", "borrower registrar"],
  countersignAgreement: ["registrar"],
  planCrates: ["registrar", "conservator"],
  sealCrate: ["registrar", "conservator", "curator"],
  planStage: ["registrar"],
  issueCarrierLink: ["registrar"],
  decideTariffCode: ["registrar"],
  dispatchLoan: ["registrar"],
  receiveLoan: ["borrower registrar", "lecturer", "registrar"],
  openCrate: ["borrower registrar", "lecturer", "registrar", "curator", "conservator"],
  sendHome: ["borrower registrar", "lecturer", "registrar"],
  receiveHome: ["registrar", "curator", "conservator"],
  countReturn: ["registrar", "curator", "conservator"],
  checkIn: ["curator", "conservator"],
  recordCustomsDischarge: ["registrar"],
  closeLoan: ["registrar"],
  openClaim: ["registrar", "conservator"],
  recordClaimEvent: ["registrar", "conservator"],
  movePlanStep: ["registrar"],
  markPlanStep: ["registrar", "conservator", ...collection],
  configurePlan: ["registrar", "collection manager"],
  askExtension: borrowers,
  answerExtension: ["registrar"],
  recallLoan: ["registrar", "collection manager", "donor officer"],
  writeMessage: [...house, ...borrowers],
  readMessages: [...house, ...borrowers],
  configureReminders: ["registrar", "collection manager"],
  holdNewLoans: ["registrar", "collection manager"],
  sendLetterAgain: ["registrar", "administrator"],
  // papers
  issuePaper: ["registrar", "curator"],
} as const satisfies Record<string, readonly Role[]>;
export type Act = keyof typeof acts;

/** Which roles may see which guarded data. Everything that is not here is open to everyone signed in. */
export const sights = {
  /** sex, age band */
  personFacts: ["curator", "conservator", "collection manager", "donor officer", "inspector", "lecturer"],
  /** scopes and limits of consent, without identity */
  consentScopes: ["registrar", "curator", "conservator", "collection manager", "donor officer", "inspector"],
  /** what a suitability rule found, with its fact and source; a lecturer sees the outcome and the way out */
  suitabilityReasons: [...house, "inspector", "borrower registrar"],
  /** the donor's pseudonym */
  donorCode: ["curator", "conservator", "collection manager", "donor officer", "inspector"],
  sealedLooks: ["donor officer", "inspector"],
  facilityFacts: [
    "registrar",
    "curator",
    "conservator",
    "collection manager",
    "donor officer",
    "inspector",
    "borrower registrar",
  ],
  replacementCost: ["registrar", "collection manager", "donor officer", "inspector", "borrower registrar"],
  /** what lending costs by the centre's scale */
  feeScale: [...house, "inspector", "administrator"],
  /** quotations and cost statements of one loan */
  costings: ["registrar", "collection manager", "inspector", "borrower registrar"],
  storeLocation: [...house, "inspector"],
  conditionRecords: [...house, "inspector", "borrower registrar"],
  allLoans: [...house, "inspector"],
  /** one loan's file; a borrower the own institution's */
  loanFile: [...house, "inspector", ...borrowers],
  institutions: [...house, "inspector", "administrator"],
  audit: [...house, "inspector", "administrator"],
  accounts: ["administrator"],
  /** every letter by mail; everybody reads the own ones */
  letters: ["registrar", "administrator"],
  /** who may sign what, and up to what cost; a borrower the own institution's */
  mandates: [...house, "inspector", "administrator", "borrower registrar"],
  /** the names of those who may be given a mandate */
  signatories: ["administrator", "collection manager", "registrar"],
  /** who was given which role, and when, without the rest of the account */
  roleHolders: ["administrator", "inspector"],
} as const satisfies Record<string, readonly Role[]>;
export type Sight = keyof typeof sights;

/** What an act or a sight is about, as far as the table asks: whose it is. */
export type Subject = { institutionId: string | null };

const holdsOneOf = (viewer: Viewer, allowed: readonly Role[]) =>
  viewer.roles.some((role) => allowed.includes(role));
const isTheirs = (viewer: Viewer, subject?: Subject) =>
  !subject ||
  !isBorrower(viewer) ||
  (viewer.institutionId !== null && subject.institutionId === viewer.institutionId);

export function mayDo(viewer: Viewer, act: Act, subject?: Subject): boolean {
  return holdsOneOf(viewer, acts[act]) && isTheirs(viewer, subject);
}

export function maySee(viewer: Viewer, sight: Sight, subject?: Subject): boolean {
  return holdsOneOf(viewer, sights[sight]) && isTheirs(viewer, subject);
}

/** @throws {Refusal} "forbidden" when the role does not allow it, "not-found" when it is somebody else's */
export function authorise(viewer: Viewer, act: Act, subject?: Subject): void {
  if (!mayDo(viewer, act)) throw new Refusal("forbidden", "permission.act", { act });
  if (!isTheirs(viewer, subject)) throw new Refusal("not-found", "record.not-found", { what: act });
}

/** @throws {Refusal} "forbidden" or "not-found", as for acts */
export function requireSight(viewer: Viewer, sight: Sight, subject?: Subject): void {
  if (!maySee(viewer, sight)) throw new Refusal("forbidden", "permission.sight", { sight });
  if (!isTheirs(viewer, subject)) throw new Refusal("not-found", "record.not-found", { what: sight });
}
