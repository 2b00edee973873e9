/**
 * A lending centre with everything that a loan meets, made through commands: the
 * people of both sides, a venue of which all is known, and specimens that nothing
 * is against. A test says what is otherwise.
 */
import { randomUUID } from "node:crypto";
import type { CheckRecord } from "#lib/condition/recording.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import type { RequestDraft } from "#lib/loans/inputs.ts";
import type { VenueInput } from "#lib/people/schema.ts";
import { programViewer, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays, toDate } from "#lib/platform/dates.ts";
import { linkDonor, recordConsent, recordTitle, registerDonor } from "#lib/provenance/commands.ts";
import type { ConsentInput } from "#lib/provenance/schema.ts";
import { keepPlace, moveSpecimen } from "#lib/whereabouts/commands.ts";
import {
  aBorrower,
  aCentre,
  aMandate,
  aSpecimen,
  aVenue,
  aViewer,
  type Made,
  type SpecimenRow,
} from "#tests/support/builders.ts";
import { aConsentForm } from "#tests/support/consents.ts";

export const goodVenue = {
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
  nightGuard: true,
  passages: [
    {
      kind: "door",
      name: "Dock door",
      widthMm: 1_800,
      heightMm: 2_400,
      depthMm: null,
      secondWidthMm: null,
      loadKg: null,
      slopePercent: null,
    },
  ],
} satisfies Partial<VenueInput>;

export type Lending = {
  borrowerId: string;
  venueId: string;
  storeId: string;
  registrar: Viewer;
  curator: Viewer;
  conservator: Viewer;
  manager: Viewer;
  donorOfficer: Viewer;
  lecturer: Viewer;
  borrowerRegistrar: Viewer;
  /** A lecturer of another institution. */
  stranger: Viewer;
};

let stores = 0;

export async function aLending(said: Partial<VenueInput> = {}): Promise<Lending> {
  await aCentre();
  const borrowerId = await aBorrower({ countryCode: "NO", verifiedOn: "2026-01-01" });
  const venueId = await aVenue({
    institutionId: borrowerId,
    ...goodVenue,
    reportedOn: addDays(today(), -30),
    ...said,
  });
  stores += 1;
  const storeId = await keepPlace(programViewer, {
    id: null,
    code: `STORE-${stores}`,
    name: `Store ${stores}`,
    kind: "store",
    parentId: null,
    venueId: null,
  });
  const withMandate = {
    registrar: aViewer("registrar"),
    curator: aViewer("curator"),
    manager: aViewer("collection manager"),
    borrowerRegistrar: aViewer("borrower registrar", borrowerId),
  };
  for (const person of Object.values(withMandate)) await aMandate(person);
  return {
    borrowerId,
    venueId,
    storeId,
    ...withMandate,
    conservator: aViewer("conservator"),
    donorOfficer: aViewer("donor officer"),
    lecturer: aViewer("lecturer", borrowerId),
    stranger: aViewer("lecturer", await aBorrower()),
  };
}

export function aCheckOf(specimenId: string, said: Partial<CheckRecord> = {}): CheckRecord {
  return {
    specimenId,
    loanId: null,
    occasion: "periodic",
    checkedOn: today(),
    check: {
      findings: [],
      verdict: { fitToShow: true, fitToHandle: true, fitToTravel: true },
      grounds: "Nothing to see.",
      checkedBy: "K. N.",
    },
    ...said,
  } as CheckRecord;
}

export function aFinding(said: Partial<CheckRecord["check"]["findings"][number]> = {}) {
  return {
    markId: randomUUID(),
    term: "structure.crack",
    place: "upper third",
    severity: "trace",
    activity: "stable",
    note: "",
    ...said,
  } as CheckRecord["check"]["findings"][number];
}

/** A specimen of a known donor that may be lent, in its store, checked a month ago. */
export async function aLendableSpecimen(
  lending: Pick<Lending, "storeId">,
  said: Partial<SpecimenRow> = {},
  consent: Partial<ConsentInput> | null = {},
): Promise<Made> {
  const specimen = await aSpecimen({
    lengthMm: 200,
    widthMm: 150,
    heightMm: 120,
    massKg: 1.2,
    use: "handling",
    replacementCostMinor: 1_200_000n,
    replacementCostCurrency: "EUR",
    replacementCostBasis: "preparation cost",
    replacementCostOn: toDate(addDays(today(), -60)),
    replacementCostBy: "Collection manager",
    preparedOn: toDate("2015-06-01"),
    acquiredOn: toDate("2014-02-01"),
    ...said,
  });
  if (consent !== null && said.human !== false) {
    const code = await registerDonor(programViewer, {});
    await recordConsent(programViewer, aConsentForm(code, consent));
    await linkDonor(programViewer, { specimenId: specimen.id, donorCodes: [code] });
  }
  await recordTitle(programViewer, {
    specimenId: specimen.id,
    status: "owned",
    ownerName: "",
    leaveToLend: false,
    leaveReference: "",
    recordedOn: "2020-01-01",
  });
  await recordCheck(programViewer, aCheckOf(specimen.id, { checkedOn: addDays(today(), -30) }));
  await moveSpecimen(programViewer, { specimenId: specimen.id, placeId: lending.storeId, reason: "shelved" });
  return specimen;
}

/** A request as a lecturer states it, three months ahead. */
export function aRequestDraft(
  lending: Pick<Lending, "venueId">,
  said: Partial<RequestDraft> = {},
): RequestDraft {
  return {
    venueId: lending.venueId,
    title: "Winter course",
    purpose: "teaching",
    teachingUse: "viewing",
    audience: "enrolled students",
    paidAdmission: false,
    displayStyle: "didactic",
    pictures: [],
    activities: [],
    startsOn: addDays(today(), 90),
    endsOn: addDays(today(), 180),
    contactName: "A. Lecturer",
    contactEmail: "lecturer@example.org",
    contactPhone: "+47 000 000",
    cover: { minor: 90_000_000, currency: "EUR" },
    note: "",
    factsConfirmed: true,
    ...said,
  };
}
