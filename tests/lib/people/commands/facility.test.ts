/** Facility reports and insurance on a database: versions, one truth for the venue's facts, and whose they are. */
import { beforeAll, describe, expect, test } from "vitest";
import { fileFacilityReport } from "#lib/people/commands/facility.ts";
import { keepInsurance } from "#lib/people/commands/insurance.ts";
import { keepVenue } from "#lib/people/commands.ts";
import type { FacilityAnswersInput } from "#lib/people/facility-report.ts";
import { getVenueSheet, listInsurances } from "#lib/people/queries/facility.ts";
import { getVenue } from "#lib/people/queries.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { aBorrower, aCentre, aVenue, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

beforeAll(async () => {
  await testDatabase();
});

const door = {
  kind: "door" as const,
  name: "Yard door",
  widthMm: 1200,
  heightMm: 2100,
  depthMm: null,
  secondWidthMm: null,
  loadKg: null,
  slopePercent: null,
};
const licence = {
  kind: "anatomy" as const,
  authority: "Inspectorate",
  number: "A 1",
  validFrom: null,
  validUntil: null,
  responsiblePerson: "B. Keeper",
};
const answers: FacilityAnswersInput = {
  climate: { temperatureLowC: 18, temperatureHighC: 21 },
  security: { nightGuard: true },
  passages: [door],
  licences: [licence],
};
const report = (
  venueId: string,
  follows: number,
  said: Partial<{ answers: FacilityAnswersInput; reportedOn: string }> = {},
) => ({
  venueId,
  follows,
  reportedOn: today(),
  reportedBy: "C. Registrar",
  answers,
  ...said,
});

describe("a facility report", () => {
  test("is a version with the venue's facts, way in and licences in the same act", async () => {
    const venueId = await aVenue();
    expect(await fileFacilityReport(programViewer, report(venueId, 0))).toEqual({ version: 1 });
    const { reportServesUntil, ...venue } = await getVenue(programViewer, venueId);
    expect(venue).toMatchObject({
      temperatureLowC: 18,
      nightGuard: true,
      fireDetection: null,
      reportedOn: today(),
      passages: [door],
    });
    expect(venue.licences[0]).not.toHaveProperty("responsiblePerson");
    const sheet = await getVenueSheet(programViewer, venueId);
    expect(sheet.reports[0]).toMatchObject({ version: 1, validUntil: reportServesUntil });
    expect(sheet.reports[0]?.answers.licences[0]?.responsiblePerson).toBe("B. Keeper");
  });

  test("counts for the months that the centre has set", async () => {
    await aCentre({ facilityReportMonths: 6 });
    const venueId = await aVenue();
    await fileFacilityReport(programViewer, report(venueId, 0, { reportedOn: "2026-01-15" }));
    expect((await getVenueSheet(programViewer, venueId)).reports[0]?.validUntil).toBe("2026-07-15");
  });

  test("that was written from an older version is refused, and so is a day before the last report", async () => {
    const venueId = await aVenue();
    await fileFacilityReport(programViewer, report(venueId, 0));
    await expect(fileFacilityReport(programViewer, report(venueId, 0))).rejects.toMatchObject({
      reason: "facility.superseded",
    });
    const earlier = report(venueId, 1, { reportedOn: addDays(today(), -1) });
    await expect(fileFacilityReport(programViewer, earlier)).rejects.toMatchObject({
      issues: [{ path: "reportedOn", message: "facility.earlier-than-last" }],
    });
    const toCome = report(venueId, 1, { reportedOn: addDays(today(), 3) });
    await expect(fileFacilityReport(programViewer, toCome)).rejects.toMatchObject({ kind: "invalid" });
    expect((await getVenueSheet(programViewer, venueId)).reports).toHaveLength(1);
  });

  test("that says the same again leaves way in and licences untouched", async () => {
    const venueId = await aVenue();
    await fileFacilityReport(programViewer, report(venueId, 0));
    const before = await database().passage.findMany({ where: { venueId } });
    await fileFacilityReport(programViewer, report(venueId, 1));
    expect(await database().passage.findMany({ where: { venueId } })).toEqual(before);
  });

  test("of two who file at once one is told that the other was first", async () => {
    const venueId = await aVenue();
    const answersOfBoth = await Promise.allSettled([
      fileFacilityReport(programViewer, report(venueId, 0)),
      fileFacilityReport(programViewer, report(venueId, 0)),
    ]);
    expect(answersOfBoth.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
  });

  test("is never changed", async () => {
    const venueId = await aVenue();
    await fileFacilityReport(programViewer, report(venueId, 0));
    await expect(
      inWork(({ transaction }) =>
        transaction.facilityReport.updateMany({ where: { venueId }, data: { reportedBy: "Nobody" } }),
      ),
    ).rejects.toThrow();
  });

  test("states the facts alone from then on: the venue keeps its name, and no other fact", async () => {
    const venueId = await aVenue();
    await fileFacilityReport(programViewer, report(venueId, 0));
    const venue = await getVenue(programViewer, venueId);
    await keepVenue(programViewer, { ...venue, name: "Another name" });
    expect((await getVenue(programViewer, venueId)).name).toBe("Another name");
    await expect(keepVenue(programViewer, { ...venue, temperatureLowC: 5 })).rejects.toMatchObject({
      reason: "venue.facts-by-report",
    });
    await expect(keepVenue(programViewer, { ...venue, passages: [] })).rejects.toMatchObject({
      reason: "venue.facts-by-report",
    });
  });

  test("of another institution is not there for a borrower, and a lecturer neither files nor reads one", async () => {
    const [own, other] = [await aVenue(), await aVenue()];
    const { institutionId } = await getVenue(programViewer, own);
    const registrar = aViewer("borrower registrar", institutionId);
    await fileFacilityReport(registrar, report(own, 0));
    await expect(fileFacilityReport(registrar, report(other, 0))).rejects.toMatchObject({
      kind: "not-found",
    });
    await expect(getVenueSheet(registrar, other)).rejects.toMatchObject({ kind: "not-found" });
    const lecturer = aViewer("lecturer", institutionId);
    await expect(fileFacilityReport(lecturer, report(own, 1))).rejects.toMatchObject({ kind: "forbidden" });
    await expect(getVenueSheet(lecturer, own)).rejects.toMatchObject({ kind: "forbidden" });
  });
});

describe("insurance", () => {
  const policy = (institutionId: string, policyNumber: string) => ({
    id: null,
    institutionId,
    insurer: "Quiet Mutual",
    policyNumber,
    minor: 5_000_000,
    currency: "EUR",
    validFrom: "2027-01-01",
    validUntil: "2028-01-01",
    coversTransit: true,
    territories: ["NO", "DE"],
  });

  test("is kept once, changed under its id, and twice is refused", async () => {
    const institutionId = await aBorrower();
    const registrar = aViewer("borrower registrar", institutionId);
    const id = await keepInsurance(registrar, policy(institutionId, "Q 1"));
    await keepInsurance(registrar, { ...policy(institutionId, "Q 1"), id, minor: 6_000_000 });
    expect(await listInsurances(registrar, institutionId)).toMatchObject([{ id, minor: 6_000_000 }]);
    await expect(keepInsurance(registrar, policy(institutionId, "Q 1"))).rejects.toMatchObject({
      reason: "insurance.already-kept",
    });
  });

  test("of another institution is neither kept nor moved by a borrower", async () => {
    const [own, other] = [await aBorrower(), await aBorrower()];
    const id = await keepInsurance(programViewer, policy(other, "Q 2"));
    const registrar = aViewer("borrower registrar", own);
    await expect(keepInsurance(registrar, policy(other, "Q 3"))).rejects.toMatchObject({ kind: "not-found" });
    await expect(keepInsurance(registrar, { ...policy(own, "Q 2"), id })).rejects.toMatchObject({
      kind: "not-found",
    });
    await expect(listInsurances(registrar, other)).rejects.toMatchObject({ kind: "not-found" });
  });
});
