/** What loggers wrote at a venue, for who may see its facility facts; and the file as it came. */
import type { JudgedRecord } from "#lib/loans/climate-record.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

export type ClimateRecordSheet = {
  id: string;
  name: string;
  startsAt: string;
  endsAt: string;
  readingCount: number;
  filedAt: string;
  judged: JudgedRecord;
};

const most = 24;

/** The newest first. */
export async function listClimateRecords(viewer: Viewer, venueId: string): Promise<ClimateRecordSheet[]> {
  const venue = Id.safeParse(venueId).success
    ? await database().venue.findUnique({ where: { id: venueId }, select: { institutionId: true } })
    : null;
  if (!venue) throw notFound("venue");
  requireSight(viewer, "facilityFacts", venue);
  const rows = await database().climateRecord.findMany({
    where: { venueId },
    orderBy: [{ startsAt: "desc" }, { id: "desc" }],
    take: most,
  });
  return rows.map(({ id, name, startsAt, endsAt, readingCount, filedAt, judged }) => ({
    id,
    name,
    startsAt: startsAt.toISOString(),
    endsAt: endsAt.toISOString(),
    readingCount,
    filedAt: filedAt.toISOString(),
    judged: judged as unknown as JudgedRecord,
  }));
}

export async function getLoggerFile(
  viewer: Viewer,
  venueId: string,
  recordId: string,
): Promise<{ name: string; content: Uint8Array }> {
  if (![venueId, recordId].every((id) => Id.safeParse(id).success)) throw notFound("climate record");
  const row = await database().climateRecord.findFirst({
    where: { id: recordId, venueId },
    select: {
      name: true,
      venue: { select: { institutionId: true } },
      file: { select: { content: true } },
    },
  });
  if (!row) throw notFound("climate record");
  requireSight(viewer, "facilityFacts", row.venue);
  return { name: row.name, content: new Uint8Array(row.file.content) };
}
