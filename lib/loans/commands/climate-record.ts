/**
 * Filing what a logger wrote at a venue. The file is read and judged in the same
 * act, kept as it came, and never changed; one that cannot be read for sure is not
 * filed at all.
 */

import { readLoggerFile, textOfLoggerFile } from "#lib/environment/logger-file.ts";
import { FileClimateRecordInput, judgedRecord, type LoanAtVenue } from "#lib/loans/climate-record.ts";
import { endedStates } from "#lib/loans/transitions.ts";
import { command } from "#lib/people/command.ts";
import { authorise } from "#lib/people/permission.ts";
import type { Transaction } from "#lib/platform/database.ts";
import { addDays, toDate, toDateText } from "#lib/platform/dates.ts";
import { bytesSha256 } from "#lib/platform/hash.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { specimenFactsOf } from "#lib/specimens/queries.ts";

const mostLoans = 20;

/** Loans whose time at the venue meets the record's, with what is on them and was not taken off. */
async function loansAt(
  transaction: Transaction,
  venueId: string,
  { from, until }: { from: Date; until: Date },
): Promise<LoanAtVenue[]> {
  const rows = await transaction.loan.findMany({
    where: {
      venueId,
      submittedAt: { not: null },
      startsOn: { lt: toDate(addDays(toDateText(until), 1)) },
      endsOn: { gt: toDate(toDateText(from)) },
    },
    select: {
      id: true,
      number: true,
      lines: {
        where: { state: { notIn: endedStates.filter((state) => state !== "closed") } },
        select: { specimenId: true },
      },
    },
    orderBy: { startsOn: "asc" },
    take: mostLoans,
  });
  const facts = await specimenFactsOf(
    transaction,
    rows.flatMap(({ lines }) => lines.map(({ specimenId }) => specimenId)),
  );
  return rows.map(({ id, number, lines }) => ({
    id,
    number,
    specimens: lines.flatMap(({ specimenId }) => facts.get(specimenId) ?? []),
  }));
}

export const fileClimateRecord = command(
  "fileClimateRecord",
  FileClimateRecordInput,
  async (work, input): Promise<{ id: Id; readings: number }> => {
    const { transaction, viewer } = work;
    const { venueId, name, utcOffsetMinutes, dateOrder } = input;
    const venue = await transaction.venue.findUnique({ where: { id: venueId } });
    if (!venue) throw notFound("venue");
    authorise(viewer, "fileClimateRecord", { institutionId: venue.institutionId });
    const content = new Uint8Array(input.content);
    const file = readLoggerFile(textOfLoggerFile(content), { utcOffsetMinutes, dateOrder });
    const startsAt = new Date(file.readings[0]?.at ?? work.now);
    const endsAt = new Date(file.readings.at(-1)?.at ?? work.now);
    // A clock may be some hours wrong; one that is a day ahead stands on another date.
    if (endsAt.getTime() > work.now.getTime() + 86_400_000) throw new Refusal("invalid", "logger.to-come");
    const sha256 = bytesSha256(content);
    const twice = await transaction.climateRecord.findFirst({ where: { venueId, file: { sha256 } } });
    if (twice) throw new Refusal("conflict", "logger.already-filed", { name: twice.name });
    const judged = judgedRecord(file, await loansAt(transaction, venueId, { from: startsAt, until: endsAt }));
    const [id, fileId] = [newId(), newId()];
    await transaction.storedFile.create({
      data: { id: fileId, sha256, mediaType: "text/csv", byteCount: content.byteLength, content },
    });
    await transaction.climateRecord.create({
      data: {
        id,
        venueId,
        fileId,
        name,
        startsAt,
        endsAt,
        readingCount: file.readings.length,
        judged: judged as object,
        accountId: viewer.accountId,
        filedAt: work.now,
      },
    });
    return { id, readings: file.readings.length };
  },
);
