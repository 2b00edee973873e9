/**
 * What a lender asks of a venue, as data: sections in the order of a facility
 * report, each with its questions and the shape of their answers. Form, page,
 * paper and comparison follow from this one list. Where a plain column of the
 * venue holds the same fact, the question has the column's name.
 */

/** How a question is answered; every answer may also be "not known". */
export type Question =
  | { kind: "yes or no" }
  | { kind: "text"; most: number }
  | { kind: "choice"; of: readonly string[] }
  | { kind: "number"; least: number; most: number; unit: string; whole: boolean }
  | { kind: "share" };

const yesNo = { kind: "yes or no" } as const;
const share = { kind: "share" } as const;
const text = (most: number) => ({ kind: "text", most }) as const;
const choice = <const Words extends readonly string[]>(...of: Words) => ({ kind: "choice", of }) as const;
const number = (least: number, most: number, unit: string) =>
  ({ kind: "number", least, most, unit, whole: false }) as const;
const count = (most: number, unit = "") => ({ kind: "number", least: 0, most, unit, whole: true }) as const;
const year = { kind: "number", least: 1000, most: 2200, unit: "", whole: true } as const;

export const facilityQuestions = {
  contact: {
    contactName: text(120),
    contactRole: text(120),
    contactPhone: text(60),
    outOfHoursPhone: text(60),
    accreditation: text(300),
  },
  building: {
    construction: choice("masonry", "concrete", "steel frame", "timber", "mixed"),
    yearBuilt: year,
    lastRenovated: year,
    worksPlanned: yesNo,
    worksNote: text(600),
    temporaryWalls: yesNo,
    floorLoadKgPerM2: number(1, 100_000, "kg/m²"),
  },
  receiving: {
    receivingHours: text(200),
    dockHeightMm: count(5_000, "mm"),
    underRoof: yesNo,
    secureUnloading: yesNo,
    largestVehicle: text(200),
    nightDelivery: yesNo,
    routeNote: text(600),
  },
  storage: {
    secureStore: yesNo,
    storeClimateKept: yesNo,
    emptyCratesKept: yesNo,
    emptyCratesNote: text(300),
  },
  handling: {
    palletTruckLoadKg: number(0, 20_000, "kg"),
    forkliftLoadKg: number(0, 50_000, "kg"),
    trolley: yesNo,
    trainedHandlers: count(500),
    handlersNote: text(600),
  },
  climate: {
    system: choice(
      "full air conditioning",
      "heating and humidity control",
      "heating only",
      "portable units",
      "none",
    ),
    runsDayAndNight: yesNo,
    setTemperatureC: number(-30, 60, "°C"),
    setHumidity: share,
    temperatureLowC: number(-30, 50, "°C"),
    temperatureHighC: number(-30, 60, "°C"),
    temperatureSwing24hK: number(0, 40, "K"),
    humidityLow: share,
    humidityHigh: share,
    humiditySwing24h: share,
    instruments: choice("loggers", "building system", "chart recorder", "hand readings", "none"),
    recordsOfYear: yesNo,
  },
  light: {
    daylight: yesNo,
    daylightShut: yesNo,
    lamps: choice("light-emitting diodes", "fluorescent", "halogen", "several kinds"),
    uvFiltered: yesNo,
    illuminanceLx: number(0, 100_000, "lx"),
    uvMicrowattPerLumen: number(0, 5_000, "µW/lm"),
    hoursOpenPerDay: number(0, 24, "h"),
    daysOpenPerWeek: number(0, 7, "d"),
  },
  fire: {
    fireDetection: yesNo,
    fireServiceLinked: yesNo,
    suppression: choice("none", "extinguishers only", "water sprinklers", "water mist", "gas"),
    fireServiceMinutes: count(600, "min"),
    fireTraining: yesNo,
  },
  security: {
    attendantsWhenOpen: count(500),
    nightGuard: yesNo,
    intruderAlarm: yesNo,
    alarmLinked: yesNo,
    cameras: yesNo,
    keysHeldBy: text(300),
    bagsLeftOutside: yesNo,
  },
  staff: {
    supervisedRoom: yesNo,
    technicians: count(500),
    conservatorAtHand: yesNo,
    volunteersHandle: yesNo,
  },
  pests: { pestsWatched: yesNo, pestsNote: text(300), foodKeptOut: yesNo },
  water: { pipesAbove: yesNo, belowGround: yesNo, floodedBefore: yesNo, waterAlarm: yesNo },
  display: {
    lockedCases: yesNo,
    caseClimate: yesNo,
    barriers: yesNo,
    caseNote: text(300),
    restrictedView: yesNo,
    contentNotice: yesNo,
  },
  fluids: { ventilated: yesNo, ignitionKeptOut: yesNo, spillProvision: yesNo, jarsHeld: yesNo },
  teaching: { mostLearners: count(1_000), handlingRules: yesNo, glovesAndWipes: yesNo },
  respect: {
    picturePolicy: choice("forbidden", "on request", "free"),
    pictureRuleKept: yesNo,
    complaintRoute: text(300),
    nothingDiscarded: yesNo,
    notLentOn: yesNo,
  },
  insurance: { loansInsured: yesNo, nailToNail: yesNo, insuranceNote: text(300) },
  references: {
    loansInFiveYears: count(100_000),
    earlierLenders: text(600),
    lossesInFiveYears: text(600),
    plansAtHand: yesNo,
  },
} as const satisfies Record<string, Record<string, Question>>;

export type FacilitySection = keyof typeof facilityQuestions;
export const facilitySections = Object.keys(facilityQuestions) as FacilitySection[];

/** The questions of one section, in order. */
export type QuestionOf<Section extends FacilitySection> = keyof (typeof facilityQuestions)[Section] & string;

type AnswerTo<Asked> = Asked extends { kind: "yes or no" }
  ? boolean | null
  : Asked extends { kind: "choice"; of: readonly (infer Word)[] }
    ? Word | null
    : Asked extends { kind: "text" }
      ? string | null
      : number | null;

/** Answers by section and question; null is not known. */
export type SectionAnswers = {
  [Section in FacilitySection]: {
    -readonly [Name in QuestionOf<Section>]: AnswerTo<(typeof facilityQuestions)[Section][Name]>;
  };
};

/** Every word that a choice may be answered with. */
export type ChoiceWord = {
  [Section in FacilitySection]: {
    [Name in QuestionOf<Section>]: (typeof facilityQuestions)[Section][Name] extends {
      kind: "choice";
      of: readonly (infer Word)[];
    }
      ? Word
      : never;
  }[QuestionOf<Section>];
}[FacilitySection];
