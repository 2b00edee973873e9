/** Facts for tests of the rules of lending: a request and a specimen that nothing is against, until a test says otherwise. */

import type { VenueFacts } from "#lib/people/schema.ts";
import { nothingKnownInLaw } from "#lib/specimens/schema.ts";
import type { LentSpecimen, RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { aConsentFact } from "#tests/support/consents.ts";

export const theBorrower = "01920000-0000-7000-8000-0000000000b0";

export function aVenueFact(said: Partial<VenueFacts> = {}): VenueFacts {
  return {
    id: "01920000-0000-7000-8000-0000000000e0",
    institutionId: theBorrower,
    name: "Hall 2",
    kind: "teaching room",
    address: "Quay 4, Port Selwyn",
    countryCode: "NO",
    temperatureLowC: 19,
    temperatureHighC: 21,
    temperatureSwing24hK: 1,
    humidityLow: 0.45,
    humidityHigh: 0.52,
    humiditySwing24h: 0.04,
    illuminanceLx: 50,
    uvMicrowattPerLumen: 5,
    hoursOpenPerDay: 6,
    daysOpenPerWeek: 5,
    supervisedRoom: true,
    restrictedView: true,
    spillProvision: true,
    fireDetection: true,
    nightGuard: false,
    subdivisionCode: null,
    town: "",
    floorLoadKgPerM2: 500,
    reportedOn: "2026-09-01",
    passages: [
      {
        kind: "door",
        name: "Dock door",
        widthMm: 1600,
        heightMm: 2400,
        depthMm: null,
        secondWidthMm: null,
        loadKg: null,
        slopePercent: null,
      },
    ],
    licences: [],
    ...said,
  };
}

export function aRequestFact(said: Partial<RequestFacts> = {}): RequestFacts {
  return {
    purpose: "teaching",
    teachingUse: "viewing",
    audience: "enrolled students",
    paidAdmission: false,
    displayStyle: "didactic",
    pictures: [],
    activities: [],
    startsOn: "2027-03-01",
    endsOn: "2027-07-01",
    daysBefore: 14,
    daysAfter: 14,
    today: "2026-11-25",
    lenderCountry: "NO",
    requestedOn: "2026-11-25",
    borrower: {
      id: theBorrower,
      standing: "good",
      verified: true,
      kind: "medical school",
      town: "Port Selwyn",
      record: { loans: 0, late: 0, damaged: 0 },
    },
    venue: aVenueFact(),
    statedCover: { minor: 5_000_000, currency: "EUR" },
    covers: [],
    through: [],
    oversight: null,
    conservator: null,
    ...said,
  };
}

export function aLentSpecimen(said: Partial<LentSpecimen> = {}): LentSpecimen {
  return {
    id: "01920000-0000-7000-8000-000000000101",
    accessionNumber: "AN 2019.0142",
    title: "Upper limb, brachial plexus",
    kind: "organ",
    preparation: "silicone-impregnated",
    fluidName: null,
    fluidPercent: null,
    human: true,
    scientificName: "Homo sapiens",
    ageBand: "70–79",
    size: { lengthMm: 200, widthMm: 150, heightMm: 120 },
    massKg: 1.2,
    mountedSize: null,
    mountedMassKg: null,
    partsAtRisk: "",
    use: "handling",
    light: "ordinary",
    replacementCost: {
      minor: 1_200_000,
      currency: "EUR",
      basis: "preparation cost",
      statedOn: "2026-05-01",
      statedBy: "Collection manager",
    },
    preparedOn: "2015-06-01",
    acquiredOn: "2014-02-01",
    components: [],
    hazards: [],
    legal: nothingKnownInLaw,
    seriesId: null,
    numberInSeries: null,
    sheetThicknessMm: null,
    hasTeeth: false,
    ...said,
  };
}

export function aSpecimenCase(
  said: Partial<Omit<SpecimenCase, "specimen">> & { specimen?: Partial<LentSpecimen> } = {},
): SpecimenCase {
  const { specimen, ...rest } = said;
  return {
    specimen: aLentSpecimen(specimen),
    provenance: {
      consents: [aConsentFact()],
      donorsWithoutConsent: 0,
      permits: [],
      title: {
        status: "owned",
        ownerName: "",
        leaveToLend: false,
        leaveReference: "",
        recordedOn: "2020-01-01",
      },
    },
    latestCheck: {
      findings: [],
      verdict: { fitToShow: true, fitToHandle: true, fitToTravel: true },
      checkedOn: "2026-10-01",
    },
    taken: null,
    elsewhere: null,
    lastLoan: null,
    numbersOfSeries: null,
    tariffCountries: [],
    spentLxHours: 0,
    ...rest,
  };
}
