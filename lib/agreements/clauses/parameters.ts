/**
 * What the clauses leave open: each parameter with its type, its range, its standard
 * and where the standard comes from. A parameter is either set for a loan, with a
 * standard that the centre begins from, or a fact of the loan that nobody sets by
 * hand. Whole numbers only; the unit stands in the label of each language.
 * Invariant: every standard that is a number lies within its range.
 */
import { mostPracticeDays, type PracticeFigures } from "#lib/people/practice.ts";
import {
  audiences,
  displayStyles,
  plannedActivities,
  plannedPictures,
  purposes,
} from "#lib/suitability/schema.ts";
import type { Standing } from "#lib/workings/standing.ts";

/** Where a standard comes from. */
export type Basis = { title: string; standing: Standing };

/** What standards look at; everything else is a constant. */
export type StandardFacts = {
  lenderName: string;
  lenderCity: string;
  lenderEmail: string;
  /** Its number at any hour, or its telephone with the hours at which it is answered. */
  lenderEmergency: string;
  contactName: string;
  contactPhone: string;
  isPaidAdmission: boolean;
  isExhibition: boolean;
  hasJars: boolean;
  /** Whether anything speaks for a courier who travels. */
  hasCourierReason: boolean;
  /** The figures by which the house lends. */
  practice: PracticeFigures;
  heaviestKg: number;
  /** Of the accepted quotation; null where there is none. */
  cancellation: CancellationEnds | null;
};

/** Where a scale of cancellation begins and where it ends. */
export type CancellationEnds = {
  earlyDays: number;
  earlyPercent: number;
  lateDays: number;
  latePercent: number;
};

type StandardOf<Value> = Value | ((facts: StandardFacts) => Value);

export type NumberParameter = {
  kind: "number";
  least: number;
  most: number;
  standard: StandardOf<number>;
  basis: Basis;
};
export type ChoiceParameter = {
  kind: "choice";
  options: readonly string[];
  standard: StandardOf<string>;
  basis: Basis;
};
/** Words of the parties. Left empty, a language's own standard words stand where `hasStandardWords`, else "not stated". */
export type TextParameter = {
  kind: "text";
  hasStandardWords: boolean;
  standard: StandardOf<string>;
  basis: Basis;
};
export type SetParameter = NumberParameter | ChoiceParameter | TextParameter;

export const factKinds = [
  "fact text",
  "fact number",
  "fact choice",
  "fact choices",
  "fact day",
  "fact money",
  "fact country",
  "fact countries",
  "fact language",
  "fact fluids",
  "fact papers",
] as const;
export type FactParameter = { kind: (typeof factKinds)[number]; options?: readonly string[] };
export type Parameter = SetParameter | FactParameter;

const practice: Basis = { title: "", standing: "common practice, no source" };
const derived: Basis = { title: "", standing: "derived here" };
const centre: Basis = { title: "Settings of the centre", standing: "derived here" };
const request: Basis = { title: "The borrower's request", standing: "derived here" };
const memory = (title: string): Basis => ({ title, standing: "from memory" });
const read = (title: string): Basis => ({ title, standing: "read" });

const green = read("Green protocol of the group of large exhibition organisers, 2023: 16–25 °C, 40–60 %");
const incidents = read("Loan form of a collection network (DANAM): 2 and 10 working days");
const recallOfThirty = read("Loan policy of a natural history collection (ASNHC): 30 days");
const revaluation = read("Loan terms of a library, example rule: loans longer than 12 months");
const indemnity = read("Government indemnity scheme, application form: three months before cover");
const codeOfEthics = read("Code of ethics for museums 2004, 4.4: requests are answered quickly");

const number = (standard: StandardOf<number>, [least, most]: readonly [number, number], basis: Basis) =>
  ({ kind: "number", least, most, standard, basis }) as const satisfies NumberParameter;
const choice = <const Options extends readonly string[]>(
  options: Options,
  standard: StandardOf<Options[number]>,
  basis: Basis,
) => ({ kind: "choice", options, standard, basis }) as const satisfies ChoiceParameter;
const text = (standard: StandardOf<string>, basis: Basis) =>
  ({ kind: "text", hasStandardWords: false, standard, basis }) as const satisfies TextParameter;
const words = (basis: Basis) =>
  ({ kind: "text", hasStandardWords: true, standard: "", basis }) as const satisfies TextParameter;
const fact = <Kind extends FactParameter["kind"]>(kind: Kind) => ({ kind });
const factChoice = <const Options extends readonly string[]>(options: Options) =>
  ({ kind: "fact choice", options }) as const;
const factChoices = <const Options extends readonly string[]>(options: Options) =>
  ({ kind: "fact choices", options }) as const;

const hours = [1, 720] as const;
const days = [0, mostPracticeDays] as const;
const months = [1, 120] as const;
const percent = [0, 100] as const;
const bearers = ["borrower", "lender", "shared"] as const;

export const clauseParameters = {
  lender: fact("fact text"),
  lenderAddress: fact("fact text"),
  borrower: fact("fact text"),
  borrowerAddress: fact("fact text"),
  contact: fact("fact text"),
  lenderRegister: text("", practice),
  borrowerRegister: text("", practice),
  lenderSigner: text("", practice),
  borrowerSigner: text("", practice),
  lenderEmergency: text((facts) => facts.lenderEmergency, centre),
  borrowerEmergency: text((facts) => facts.contactPhone, request),
  precedence: choice(["conditions first", "clauses first"], "conditions first", derived),
  rulingLanguage: fact("fact language"),
  specimenCount: fact("fact number"),
  componentCount: fact("fact number"),
  wordsToUse: words(derived),
  wordsToAvoid: words(derived),
  purpose: factChoice(purposes),
  title: fact("fact text"),
  audience: factChoice(audiences),
  admission: factChoice(["free", "paid"]),
  style: factChoice(displayStyles),
  priceClass: choice(
    ["no admission price", "recovers costs", "usual price"],
    (facts) => (facts.isPaidAdmission ? "recovers costs" : "no admission price"),
    derived,
  ),
  consentCountries: fact("fact countries"),
  consentEndsOn: fact("fact day"),
  evidencePlace: text((facts) => `${facts.lenderName}, ${facts.lenderCity}`, centre),
  evidenceNoticeDays: number(10, days, practice),
  stopDisplayHours: number(24, hours, derived),
  withdrawalReturnDays: number(30, days, derived),
  withdrawalCosts: choice(["each its own", "borrower", "lender"], "each its own", derived),
  anonymityContact: text((facts) => facts.lenderEmail, centre),
  responsiblePerson: text((facts) => facts.contactName, request),
  licencesHeld: fact("fact papers"),
  licenceProofBy: choice(["signature", "dispatch"], "signature", derived),
  startsOn: fact("fact day"),
  returnBy: fact("fact day"),
  opensOn: fact("fact day"),
  daysBefore: fact("fact number"),
  daysAfter: fact("fact number"),
  deliveryWindowDays: number(14, days, practice),
  collectionDays: number(14, days, practice),
  graceDays: number(0, days, practice),
  venue: fact("fact text"),
  venueAddress: fact("fact text"),
  rooms: words(derived),
  moveConsentDays: number(14, days, practice),
  extensionRequestDays: number(({ practice }) => practice.extensionNoticeDays, days, practice),
  extensionAnswerDays: number(14, days, practice),
  loanMaxMonths: number((facts) => (facts.isExhibition ? 12 : 36), months, practice),
  recallDays: number(({ practice }) => practice.recallNoticeDays, days, recallOfThirty),
  recallAtOnceDays: number(7, days, practice),
  recallCosts: choice(bearers, "lender", derived),
  costOfPreparation: choice(bearers, "borrower", practice),
  costOfPacking: choice(bearers, "borrower", practice),
  costOfTransport: choice(bearers, "borrower", practice),
  costOfCover: choice(bearers, "borrower", practice),
  costOfPermits: choice(bearers, "borrower", practice),
  costOfCourier: choice(bearers, "borrower", practice),
  costOfDisplay: choice(bearers, "borrower", practice),
  currency: fact("fact text"),
  paymentDays: number(30, days, practice),
  fee: fact("fact money"),
  feeInstalments: number(1, [1, 24], practice),
  feeDays: number(30, days, practice),
  coverNeeded: fact("fact money"),
  coverSum: factChoice(["whole schedule", "least sum", "row by row"]),
  revaluationMonths: number(12, months, revaluation),
  coverKind: choice(
    ["borrower's insurance", "lender's insurance", "state indemnity"],
    "borrower's insurance",
    practice,
  ),
  coverCountries: fact("fact countries"),
  certificateDays: number(14, days, practice),
  deductible: number(0, [0, 10_000_000], practice),
  coverExclusions: words(memory("Usual exclusions of cover against all risks")),
  lossPayee: choice(["lender", "owner"], "lender", practice),
  subrogation: choice(["waived", "kept"], "waived", practice),
  liabilityCap: choice(["replacement cost", "no cap"], "replacement cost", practice),
  forceMajeureHours: number(24, hours, practice),
  remainsDays: number(14, days, derived),
  checkHours: number(24, hours, practice),
  silenceHours: number(72, hours, derived),
  photographCount: number(4, [1, 100], practice),
  alterationAnswerDays: number(10, days, practice),
  stabilisingHours: number(24, hours, practice),
  activities: factChoices(plannedActivities),
  samplingAllowed: factChoice(["no", "by permission"]),
  samplePermit: text("", derived),
  resultDays: number(30, days, practice),
  temperatureLowC: fact("fact number"),
  temperatureHighC: fact("fact number"),
  temperatureChangeK: fact("fact number"),
  humidityLowPercent: fact("fact number"),
  humidityHighPercent: fact("fact number"),
  humidityChangePercent: fact("fact number"),
  illuminanceLx: fact("fact number"),
  lightLxHours: fact("fact number"),
  uvMicrowattPerLumen: fact("fact number"),
  pollutants: words(practice),
  vibration: words(practice),
  loggingMinutes: number(30, [1, 240], practice),
  gapHours: number(2, hours, practice),
  environmentReportDays: number(30, days, practice),
  excursionHours: number(24, hours, practice),
  protection: choice(["closed case", "barrier", "case or barrier"], "case or barrier", practice),
  barrierMm: number(1_000, [0, 10_000], practice),
  heaviestKg: fact("fact number"),
  displayApprovalDays: number(30, days, practice),
  restrictedRoom: choice(["own room", "screened area", "no separation"], "own room", derived),
  minimumAge: number(14, [0, 21], practice),
  noticePlace: choice(["at the entrance", "beside each specimen"], "at the entrance", practice),
  handlersLeast: number(2, [1, 20], practice),
  gloves: choice(["nitrile gloves", "cotton gloves", "clean dry hands"], "nitrile gloves", practice),
  trainingMonths: number(24, months, practice),
  teachingUse: factChoice(["viewing", "handling"]),
  groupMost: number(12, [1, 500], derived),
  supervisor: text((facts) => facts.contactName, request),
  nightWatch: choice(["guard on site", "alarm to a manned station"], "alarm to a manned station", practice),
  keyHoldersMost: number(4, [1, 100], practice),
  fluids: fact("fact fluids"),
  trayPercent: number(110, [100, 300], practice),
  jarCheckDays: number(7, days, practice),
  packer: choice(["lender", "borrower", "agent"], "borrower", practice),
  crateLowC: number(16, [0, 40], green),
  crateHighC: number(25, [0, 40], green),
  crateHumidityLowPercent: number(40, percent, green),
  crateHumidityHighPercent: number(60, percent, green),
  carriers: fact("fact text"),
  transportMode: choice(["road", "road and air", "road and sea"], "road", practice),
  transportApprovalDays: number(14, days, practice),
  driversLeast: number(2, [1, 6], practice),
  transshipment: choice(["none", "with consent"], "none", practice),
  courier: choice(
    ["travels", "by video", "none"],
    (facts) => (facts.hasCourierReason ? "travels" : "by video"),
    practice,
  ),
  courierNights: number(3, [0, 60], practice),
  courierPerDay: number(0, [0, 10_000], practice),
  courierClass: choice(["standard class", "same class as the specimens allow"], "standard class", practice),
  borderFrom: fact("fact country"),
  borderTo: fact("fact country"),
  importer: choice(["borrower", "lender", "agent"], "borrower", practice),
  customsBasis: choice(["temporary admission", "carnet"], "temporary admission", practice),
  permitDays: number(45, days, derived),
  dischargeDays: number(30, days, practice),
  immunity: choice(["borrower asks", "not asked for"], "borrower asks", derived),
  immunityMonths: number(3, months, indemnity),
  receiptHours: number(24, hours, practice),
  restHours: number((facts) => (facts.hasJars || facts.heaviestKg > 200 ? 48 : 24), hours, practice),
  inspectionDays: number(2, days, practice),
  recordHours: number(48, hours, practice),
  incidentDays: number(2, days, incidents),
  incidentReportDays: number(10, days, incidents),
  salvageOrder: choice(["human specimens first", "order of the schedule"], "human specimens first", derived),
  emergencyPlanDays: number(14, days, practice),
  pictures: factChoices(plannedPictures),
  visitorPictures: choice(["not allowed", "without flash"], "not allowed", derived),
  threeDimensional: choice(["not published", "with consent"], "not published", derived),
  pictureAnswerDays: number(10, days, practice),
  creditLine: text((facts) => facts.lenderName, centre),
  labelApprovalDays: number(21, days, practice),
  acknowledgement: choice(["shown", "not shown"], "shown", derived),
  copies: number(2, [0, 100], practice),
  attendanceDays: number((facts) => facts.cancellation?.earlyDays ?? 60, days, practice),
  promotion: choice(["not allowed", "with approval"], "not allowed", derived),
  objectionHours: number(48, hours, codeOfEthics),
  objectionReviewDays: number(10, days, derived),
  dataContact: text((facts) => facts.lenderEmail, centre),
  retentionMonths: number(24, months, practice),
  breachHours: number(72, hours, memory("General data protection regulation, Article 33: 72 hours")),
  cancelEarlyDays: number((facts) => facts.cancellation?.earlyDays ?? 60, days, practice),
  cancelEarlyPercent: number((facts) => facts.cancellation?.earlyPercent ?? 25, percent, practice),
  cancelLateDays: number((facts) => facts.cancellation?.lateDays ?? 14, days, practice),
  cancelLatePercent: number((facts) => facts.cancellation?.latePercent ?? 100, percent, practice),
  cureDays: number(7, days, practice),
  deposit: number(0, [0, 10_000_000], practice),
  amendmentDays: number(10, days, practice),
  lawCountry: fact("fact country"),
  court: text((facts) => facts.lenderCity, centre),
  negotiationDays: number(30, days, practice),
  disputePath: choice(["mediation, then court", "court"], "mediation, then court", practice),
  signatureForm: choice(["in the program", "in ink", "qualified electronic"], "in the program", practice),
  counterparts: number(2, [1, 10], practice),
  signedDays: number(30, days, practice),
  dispositionDueOn: fact("fact day"),
  dispositionMarginDays: number(({ practice }) => practice.dispositionMarginDays, days, derived),
  dispositionBy: text((facts) => facts.lenderName, centre),
  animalPapers: fact("fact papers"),
  animalPaperDays: number(14, days, practice),
  crateReuse: choice(["existing crates first", "new crates"], "existing crates first", green),
  sustainabilityDays: number(30, days, practice),
} as const satisfies Record<string, Parameter>;

type Parameters = typeof clauseParameters;
export type ParameterName = keyof Parameters;

type NamesOf<Shape> = {
  [Name in ParameterName]: Parameters[Name] extends Shape ? Name : never;
}[ParameterName];
export type SetParameterName = NamesOf<SetParameter>;
export type FactName = NamesOf<FactParameter>;
export type WordsName = NamesOf<{ hasStandardWords: true }>;
export type ChoiceName = NamesOf<{ options: readonly string[] }>;
export type OptionOf<Name extends ChoiceName> = Parameters[Name]["options"][number];

export const parameterNames = Object.keys(clauseParameters) as ParameterName[];
export const parameterOf = (name: ParameterName): Parameter => clauseParameters[name];

export const isSetParameter = (parameter: Parameter): parameter is SetParameter => "standard" in parameter;

/** The standard of a parameter that is set; of a text, nothing where the language has its own words. */
export function standardOf(parameter: SetParameter, facts: StandardFacts): string | number {
  return typeof parameter.standard === "function" ? parameter.standard(facts) : parameter.standard;
}

const longestText = 400;

/** What is wrong with a value for a parameter, as a code; null where nothing is. */
export function faultOfParameter(parameter: SetParameter, value: string | number): string | null {
  switch (parameter.kind) {
    case "number":
      return typeof value === "number" &&
        Number.isInteger(value) &&
        value >= parameter.least &&
        value <= parameter.most
        ? null
        : "clause.out-of-range";
    case "choice":
      return typeof value === "string" && parameter.options.includes(value) ? null : "clause.not-offered";
    default:
      return typeof value === "string" && value.length <= longestText ? null : "clause.too-long";
  }
}
