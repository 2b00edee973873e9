/**
 * The clause library: fifty-two clauses by number, each with its version, the
 * parameters that its text holds and the rule that includes it. The words are one
 * file for each language. A clause keeps its number wherever it stands, so that one
 * clause can name another; a number that is left out does not apply. A text that is
 * reworded gets the next version. The words are a house draft and no legal advice.
 */
import type { ParameterName } from "#lib/agreements/clauses/parameters.ts";

/** What the rules of inclusion look at. */
export type ClauseFacts = {
  hasHuman: boolean;
  hasAnimal: boolean;
  hasJars: boolean;
  isExport: boolean;
  isTeaching: boolean;
  isShown: boolean;
  hasDisposition: boolean;
};

export type ClauseRule = {
  number: number;
  version: number;
  /** Particular to anatomical material. */
  isParticular: boolean;
  parameters: readonly ParameterName[];
  includes: (facts: ClauseFacts) => boolean;
};

const always = () => true;
const human = (facts: ClauseFacts) => facts.hasHuman;

const common = (
  number: number,
  parameters: readonly ParameterName[],
  includes: ClauseRule["includes"] = always,
): ClauseRule => ({ number, version: 1, isParticular: false, parameters, includes });

const particular = (
  number: number,
  parameters: readonly ParameterName[],
  includes: ClauseRule["includes"] = human,
): ClauseRule => ({ ...common(number, parameters, includes), isParticular: true });

export const clauseLibrary = {
  parties: common(1, [
    "lender",
    "lenderAddress",
    "lenderRegister",
    "lenderSigner",
    "lenderEmergency",
    "borrower",
    "borrowerAddress",
    "borrowerRegister",
    "borrowerSigner",
    "borrowerEmergency",
    "contact",
  ]),
  precedence: common(2, ["precedence", "rulingLanguage"]),
  specimens: common(3, ["specimenCount", "componentCount"]),
  ownership: common(4, []),
  "human-material": particular(5, ["wordsToUse", "wordsToAvoid"]),
  purpose: common(6, ["purpose", "title", "audience", "admission", "priceClass", "style"]),
  consent: particular(7, ["consentCountries", "consentEndsOn", "evidencePlace", "evidenceNoticeDays"]),
  withdrawal: particular(8, ["stopDisplayHours", "withdrawalReturnDays", "withdrawalCosts"]),
  anonymity: particular(9, ["anonymityContact"]),
  licences: particular(10, ["responsiblePerson", "licencesHeld", "venue", "licenceProofBy"]),
  term: common(11, [
    "startsOn",
    "returnBy",
    "opensOn",
    "deliveryWindowDays",
    "collectionDays",
    "graceDays",
    "daysBefore",
    "daysAfter",
  ]),
  venue: common(12, ["venue", "venueAddress", "rooms", "moveConsentDays"]),
  extension: common(13, ["extensionRequestDays", "extensionAnswerDays", "loanMaxMonths"]),
  recall: common(14, ["recallAtOnceDays", "recallDays", "recallCosts"]),
  costs: common(15, [
    "costOfPreparation",
    "costOfPacking",
    "costOfTransport",
    "costOfCover",
    "costOfPermits",
    "costOfCourier",
    "costOfDisplay",
    "currency",
    "paymentDays",
  ]),
  fee: common(16, ["fee", "feeInstalments", "feeDays"]),
  "replacement-cost": common(17, ["coverNeeded", "coverSum", "revaluationMonths"]),
  cover: common(18, [
    "coverKind",
    "coverCountries",
    "deductible",
    "currency",
    "coverExclusions",
    "lossPayee",
    "subrogation",
    "certificateDays",
  ]),
  care: common(19, ["liabilityCap", "forceMajeureHours"]),
  "total-loss": particular(20, ["remainsDays"]),
  condition: common(21, ["checkHours", "photographCount", "silenceHours"]),
  "no-alteration": common(22, ["activities", "alterationAnswerDays", "stabilisingHours"]),
  sampling: particular(23, ["samplingAllowed", "samplePermit", "resultDays"], always),
  environment: common(24, [
    "temperatureLowC",
    "temperatureHighC",
    "temperatureChangeK",
    "humidityLowPercent",
    "humidityHighPercent",
    "humidityChangePercent",
    "illuminanceLx",
    "lightLxHours",
    "uvMicrowattPerLumen",
    "pollutants",
    "vibration",
    "loggingMinutes",
    "gapHours",
    "environmentReportDays",
    "excursionHours",
  ]),
  display: common(
    25,
    [
      "protection",
      "barrierMm",
      "heaviestKg",
      "displayApprovalDays",
      "restrictedRoom",
      "noticePlace",
      "minimumAge",
    ],
    (facts) => facts.isShown,
  ),
  handling: common(26, ["handlersLeast", "gloves", "trainingMonths"]),
  teaching: particular(27, ["teachingUse", "supervisor", "groupMost"], (facts) => facts.isTeaching),
  security: common(28, ["nightWatch", "keyHoldersMost"]),
  jars: particular(29, ["fluids", "trayPercent", "jarCheckDays"], (facts) => facts.hasJars),
  packing: common(30, [
    "packer",
    "crateLowC",
    "crateHighC",
    "crateHumidityLowPercent",
    "crateHumidityHighPercent",
  ]),
  transport: {
    ...common(31, ["carriers", "transportMode", "transportApprovalDays", "driversLeast", "transshipment"]),
    version: 2,
  },
  courier: {
    ...common(32, ["courier", "courierNights", "courierPerDay", "currency", "courierClass"]),
    version: 2,
  },
  border: common(
    33,
    ["borderFrom", "borderTo", "importer", "customsBasis", "permitDays", "dischargeDays"],
    (facts) => facts.isExport,
  ),
  immunity: common(34, ["immunity", "immunityMonths"], (facts) => facts.isExport),
  receipt: { ...common(35, ["receiptHours", "restHours"]), version: 2 },
  access: common(36, ["inspectionDays", "recordHours"]),
  incident: common(37, ["lenderEmergency", "incidentDays", "incidentReportDays"]),
  emergency: common(38, ["salvageOrder", "emergencyPlanDays"]),
  pictures: common(39, ["pictures", "visitorPictures", "threeDimensional", "pictureAnswerDays"]),
  credit: common(40, ["creditLine", "labelApprovalDays", "acknowledgement"]),
  publications: common(41, ["copies", "attendanceDays"]),
  promotion: particular(42, ["promotion"]),
  objections: particular(43, ["objectionHours", "objectionReviewDays"]),
  confidentiality: common(44, ["dataContact", "retentionMonths", "breachHours"]),
  cancellation: common(45, ["cancelEarlyDays", "cancelEarlyPercent", "cancelLateDays", "cancelLatePercent"]),
  breach: common(46, ["cureDays", "deposit", "currency"]),
  changes: common(47, ["amendmentDays"]),
  law: common(48, ["lawCountry", "court", "negotiationDays", "disputePath", "rulingLanguage"]),
  signature: common(49, ["signatureForm", "counterparts", "signedDays"]),
  disposition: particular(
    50,
    ["dispositionDueOn", "dispositionMarginDays", "dispositionBy"],
    (facts) => facts.hasDisposition,
  ),
  animals: particular(51, ["animalPapers", "animalPaperDays"], (facts) => facts.hasAnimal),
  sustainability: common(52, ["crateReuse", "sustainabilityDays"]),
} as const satisfies Record<string, ClauseRule>;

export type ClauseId = keyof typeof clauseLibrary;

/** All clauses, in the order of their numbers. */
export const clauseIds = (Object.keys(clauseLibrary) as ClauseId[]).sort(
  (one, other) => clauseLibrary[one].number - clauseLibrary[other].number,
);

export const clauseRule = (id: ClauseId): ClauseRule => clauseLibrary[id];

/** The clauses that apply to a loan. */
export function clausesThatApply(facts: ClauseFacts): ClauseId[] {
  return clauseIds.filter((id) => clauseRule(id).includes(facts));
}
