/**
 * What the rules would say of specimens that nobody has asked for yet, at a venue
 * or, where none is chosen, in the country of the centre, of whose facilities
 * nothing is known. For queries that answer only what the viewer may read.
 */
import { latestChecksOf } from "#lib/condition/queries.ts";
import { practiceOf } from "#lib/people/practice.ts";
import { centreSettings, venueFactsOf } from "#lib/people/queries.ts";
import type { InstitutionInput, VenueFacts } from "#lib/people/schema.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import type { Database } from "#lib/platform/database.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { provenanceFactsOf } from "#lib/provenance/queries.ts";
import { specimenFactsOf } from "#lib/specimens/queries.ts";
import {
  type BeforeAsking,
  judgeBeforeAsking,
  standingBeforeAsking,
} from "#lib/suitability/before-asking.ts";
import type { Days } from "#lib/suitability/period.ts";
import type { RequestFacts } from "#lib/suitability/rules/case.ts";

/** What it is wanted for. */
export type WantedFor = Pick<RequestFacts, "purpose" | "teachingUse" | "audience" | "paidAdmission"> & Days;

const nobody = "00000000-0000-0000-0000-000000000000";

/** A place in a country, of which nothing else is known. */
function unknownVenue(countryCode: string): VenueFacts {
  return {
    id: nobody,
    institutionId: nobody,
    name: "",
    kind: "teaching room",
    address: "",
    countryCode,
    subdivisionCode: null,
    town: "",
    temperatureLowC: null,
    temperatureHighC: null,
    temperatureSwing24hK: null,
    humidityLow: null,
    humidityHigh: null,
    humiditySwing24h: null,
    illuminanceLx: null,
    uvMicrowattPerLumen: null,
    hoursOpenPerDay: null,
    daysOpenPerWeek: null,
    floorLoadKgPerM2: null,
    supervisedRoom: null,
    restrictedView: null,
    spillProvision: null,
    fireDetection: null,
    nightGuard: null,
    reportedOn: null,
    passages: [],
    licences: [],
  };
}

/** @throws {Refusal} "not-found" for a venue that a borrower does not have */
export async function venueAskedFor(
  reader: Database,
  viewer: Viewer,
  venueId: string | null,
): Promise<VenueFacts> {
  if (venueId === null) return unknownVenue((await centreSettings(reader)).countryCode);
  const venue = await venueFactsOf(reader, venueId);
  if (isBorrower(viewer) && venue.institutionId !== viewer.institutionId) throw notFound("venue");
  return venue;
}

async function borrowerAt(reader: Database, venue: VenueFacts): Promise<RequestFacts["borrower"]> {
  const row = await reader.institution.findUnique({ where: { id: venue.institutionId } });
  return {
    id: venue.institutionId,
    standing: (row?.standing ?? "good") as InstitutionInput["standing"],
    verified: row?.verifiedOn != null,
    kind: (row?.kind ?? "medical school") as InstitutionInput["kind"],
    town: row?.city ?? "",
    record: { loans: 0, late: 0, damaged: 0 },
  };
}

/** By specimen; a fixed number of statements whatever their number. */
export async function beforeAskingOf(
  reader: Database,
  specimenIds: readonly string[],
  venue: VenueFacts,
  wantedFor: WantedFor,
  today: DateText,
): Promise<Map<string, BeforeAsking>> {
  const centre = await centreSettings(reader);
  const request: RequestFacts = {
    ...wantedFor,
    displayStyle: "didactic",
    pictures: [],
    activities: [],
    daysBefore: 0,
    daysAfter: 0,
    today,
    lenderCountry: centre.countryCode,
    requestedOn: today,
    borrower: await borrowerAt(reader, venue),
    venue,
    statedCover: null,
    covers: [],
    through: [],
    oversight: null,
    practice: practiceOf(centre.practice),
    conservator: null,
  };
  const specimens = await specimenFactsOf(reader, specimenIds);
  const provenance = await provenanceFactsOf(reader, specimenIds);
  const checks = await latestChecksOf(reader, specimenIds);
  return new Map(
    [...specimens].flatMap(([id, specimen]) => {
      const known = provenance.get(id);
      if (!known) return [];
      const findings = judgeBeforeAsking(request, {
        specimen,
        provenance: known,
        latestCheck: checks.get(id) ?? null,
        taken: null,
        elsewhere: null,
        lastLoan: null,
        numbersOfSeries: null,
        tariffCountries: [],
        spentLxHours: null,
      });
      return [[id, standingBeforeAsking(findings)] as const];
    }),
  );
}
