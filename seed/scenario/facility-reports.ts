/**
 * What venues of the scenario say beyond the facts that the rules read: some answer
 * everything, some leave gaps, one confirmed anew that nothing had changed. Days of
 * later versions count from the day of loading.
 */
import type { FacilityAnswersInput } from "#lib/people/facility-report.ts";
import type { VenueKey } from "#seed/scenario/borrowers.ts";
import type { Day } from "#seed/scenario/shape.ts";

type Said = Omit<FacilityAnswersInput, "passages" | "licences">;

/** A room that has received loans for years and answers everything. */
export const everythingSaid: Said = {
  contact: {
    contactName: "Registrar of the anatomy department",
    contactRole: "Registrar",
    contactPhone: "+353 91 555 018",
    outOfHoursPhone: "+353 91 555 099",
    accreditation: "Inspected each third year by the inspectorate named under licences",
  },
  building: {
    construction: "masonry",
    yearBuilt: 1931,
    lastRenovated: 2016,
    worksPlanned: false,
    worksNote: "None planned within two years",
    temporaryWalls: false,
    floorLoadKgPerM2: 500,
  },
  receiving: {
    receivingHours: "Mondays to Fridays, 8 to 15 h, by appointment",
    dockHeightMm: 0,
    underRoof: true,
    secureUnloading: true,
    largestVehicle: "Lorry of 7.5 t; no trailer in the yard",
    nightDelivery: false,
    routeNote: "Yard, ramp, yard door, corridor with one turn, room. All on one level after the ramp.",
  },
  storage: {
    secureStore: true,
    storeClimateKept: true,
    emptyCratesKept: true,
    emptyCratesNote: "Dry cellar beneath the room, locked",
  },
  handling: {
    palletTruckLoadKg: 2_000,
    forkliftLoadKg: 0,
    trolley: true,
    trainedHandlers: 4,
    handlersNote: "Two technicians and two demonstrators, each with at least five years of specimens",
  },
  climate: {
    system: "heating and humidity control",
    runsDayAndNight: true,
    setTemperatureC: 20,
    setHumidity: 0.5,
    instruments: "loggers",
    recordsOfYear: true,
  },
  light: { daylight: false, daylightShut: true, lamps: "light-emitting diodes", uvFiltered: true },
  fire: {
    fireServiceLinked: true,
    suppression: "extinguishers only",
    fireServiceMinutes: 8,
    fireTraining: true,
  },
  security: {
    attendantsWhenOpen: 1,
    intruderAlarm: true,
    alarmLinked: true,
    cameras: true,
    keysHeldBy: "Registrar, head technician, porter",
    bagsLeftOutside: true,
  },
  staff: { technicians: 2, conservatorAtHand: false, volunteersHandle: false },
  pests: { pestsWatched: true, pestsNote: "Nothing found in the past year", foodKeptOut: true },
  water: { pipesAbove: false, belowGround: false, floodedBefore: false, waterAlarm: false },
  display: {
    lockedCases: true,
    caseClimate: false,
    barriers: true,
    caseNote: "Four table cases with laminated glass, 1.2 × 0.6 m",
    contentNotice: true,
  },
  fluids: { ventilated: true, ignitionKeptOut: true, jarsHeld: true },
  teaching: { mostLearners: 16, handlingRules: true, glovesAndWipes: true },
  respect: {
    picturePolicy: "forbidden",
    pictureRuleKept: true,
    complaintRoute: "To the registrar in person or in writing; the lender is told within two days",
    nothingDiscarded: true,
    notLentOn: true,
  },
  insurance: { loansInsured: true, nailToNail: true, insuranceNote: "War, wear" },
  references: {
    loansInFiveYears: 11,
    earlierLenders: "The centre, and two schools of the country",
    lossesInFiveYears: "None",
    plansAtHand: true,
  },
};

/** A venue that answers what it was asked on the telephone, and leaves the rest open. */
const mostLeftOpen: Said = {
  building: {
    construction: "concrete",
    yearBuilt: 1974,
    worksPlanned: true,
    worksNote: "New windows next door",
  },
  climate: { system: "heating only", runsDayAndNight: false, instruments: "none", recordsOfYear: false },
  light: { daylight: true, daylightShut: false, lamps: "several kinds", uvFiltered: false },
  fire: { suppression: "water sprinklers" },
  water: { pipesAbove: true },
  respect: { picturePolicy: "free" },
  references: { loansInFiveYears: 2 },
};

/** A hall for visitors: cases, notices and attendants. */
const hallForVisitors: Said = {
  ...everythingSaid,
  contact: { contactName: "Head of exhibitions", contactRole: "Head of exhibitions" },
  security: { ...everythingSaid.security, attendantsWhenOpen: 3 },
  teaching: {},
  references: { loansInFiveYears: 6, plansAtHand: true },
};

export const saidByVenue: Partial<Record<VenueKey, Said>> = {
  "kestrel teaching": everythingSaid,
  "kestrel dissection": { ...everythingSaid, water: { pipesAbove: true, belowGround: false } },
  "selwyn hall": everythingSaid,
  "selwyn library": mostLeftOpen,
  "vesterlunde room": { ...everythingSaid, references: { loansInFiveYears: 4, plansAtHand: false } },
  "norrvassa quiet": hallForVisitors,
  "norrvassa vault": hallForVisitors,
  "frame hall": { ...mostLeftOpen, display: { lockedCases: true, barriers: true, contentNotice: false } },
};

/** Versions after the first: what changed, or nothing where it was only confirmed. */
export const laterVersions: Partial<Record<VenueKey, { day: Day; changed: Said }[]>> = {
  "kestrel teaching": [
    { day: -100, changed: { handling: { ...everythingSaid.handling, trainedHandlers: 5 } } },
    { day: -41, changed: {} },
  ],
};
