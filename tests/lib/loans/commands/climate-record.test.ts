/** Filing a logger's file: read, judged against the loans that were there, kept as it came, and never changed. */
import { beforeAll, expect, test } from "vitest";
import { fileClimateRecord } from "#lib/loans/commands/climate-record.ts";
import { getLoggerFile, listClimateRecords } from "#lib/loans/queries/climate-records.ts";
import { facilityOfLoan } from "#lib/loans/queries/facility-needs.ts";
import { fileFacilityReport } from "#lib/people/commands/facility.ts";
import { getVenue } from "#lib/people/queries.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { aLoanOf, aSpecimen, aVenue, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

beforeAll(async () => {
  await testDatabase();
});

const bytes = (text: string) => new Uint8Array(new TextEncoder().encode(text));
const table = (percent: number) =>
  bytes(`time,temp °C,RH %\n2026-01-10T00:00Z,20,${percent}\n2026-01-10T01:00Z,20,${percent}\n`);
const filing = (venueId: string, content: Uint8Array<ArrayBuffer>) => ({
  venueId,
  name: "Case 1",
  content,
  utcOffsetMinutes: null,
  dateOrder: null,
});

test("a record is judged against the default limits and against each loan that was there", async () => {
  const venueId = await aVenue();
  const bone = await aSpecimen({ kind: "skeleton or bone", preparation: "mounted skeleton" });
  const loan = await aLoanOf([bone], { venueId, startsOn: "2026-01-01", endsOn: "2026-03-01" });
  await aLoanOf([await aSpecimen()], { venueId, startsOn: "2027-01-01", endsOn: "2027-03-01" });
  await inWork(({ transaction }) =>
    transaction.loan.updateMany({ where: { venueId }, data: { submittedAt: new Date("2025-12-01") } }),
  );
  const content = table(63);
  const { id } = await fileClimateRecord(programViewer, filing(venueId, content));
  const [record] = await listClimateRecords(programViewer, venueId);
  expect(record).toMatchObject({ id, readingCount: 2, startsAt: "2026-01-10T00:00:00.000Z" });
  expect(
    record?.judged.judgements.map(({ loan: at, judgement }) => [at?.id ?? null, judgement.outcome]),
  ).toEqual([
    [null, "bar"],
    [loan.id, "attend"],
  ]);
  expect((await getLoggerFile(programViewer, venueId, id)).content).toEqual(content);
});

test("the same file twice, one that cannot be read and one from the future are not filed", async () => {
  const venueId = await aVenue();
  await fileClimateRecord(programViewer, filing(venueId, table(50)));
  await expect(fileClimateRecord(programViewer, filing(venueId, table(50)))).rejects.toMatchObject({
    reason: "logger.already-filed",
  });
  await expect(fileClimateRecord(programViewer, filing(venueId, bytes("no table")))).rejects.toMatchObject({
    reason: "logger.no-table",
  });
  await expect(fileClimateRecord(programViewer, filing(venueId, bytes("")))).rejects.toMatchObject({
    issues: [{ path: "content", message: "logger.file-missing" }],
  });
  const late = bytes("time,temp °C\n2400-01-01T00:00Z,20\n2400-01-01T01:00Z,20\n");
  await expect(fileClimateRecord(programViewer, filing(venueId, late))).rejects.toMatchObject({
    reason: "logger.to-come",
  });
  expect(await listClimateRecords(programViewer, venueId)).toHaveLength(1);
});

test("a borrower files and reads the own venue's records and no other's; a record is never changed", async () => {
  const [own, other] = [await aVenue(), await aVenue()];
  const { institutionId } = await getVenue(programViewer, own);
  const registrar = aViewer("borrower registrar", institutionId);
  const { id } = await fileClimateRecord(registrar, filing(own, table(50)));
  await expect(fileClimateRecord(registrar, filing(other, table(50)))).rejects.toMatchObject({
    kind: "not-found",
  });
  await expect(listClimateRecords(registrar, other)).rejects.toMatchObject({ kind: "not-found" });
  await expect(getLoggerFile(registrar, other, id)).rejects.toMatchObject({ kind: "not-found" });
  await expect(
    inWork(({ transaction }) => transaction.climateRecord.updateMany({ where: { id }, data: { name: "x" } })),
  ).rejects.toThrow();
});

test("a loan's file tells what the venue's report lacks, and nothing of it to a lecturer", async () => {
  const venueId = await aVenue();
  const loan = await aLoanOf([await aSpecimen()], { venueId });
  const before = await facilityOfLoan(programViewer, loan.id);
  expect(before).toMatchObject({ report: null });
  expect(before?.needs.every(({ state }) => state === "not known")).toBe(true);
  await fileFacilityReport(programViewer, {
    venueId,
    follows: 0,
    reportedOn: today(),
    reportedBy: "C. Registrar",
    answers: { fire: { fireDetection: false }, pests: { pestsWatched: true } },
  });
  const after = await facilityOfLoan(programViewer, loan.id);
  expect(after?.report?.version).toBe(1);
  expect(after?.needs.find(({ need }) => need === "fire detection")?.state).toBe("lacking");
  expect(after?.needs.map(({ need }) => need)).not.toContain("pests watched");
  expect(await facilityOfLoan(aViewer("lecturer", loan.borrowerId), loan.id)).toBeNull();
});
