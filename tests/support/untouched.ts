/** A refused command leaves no trace: helpers that look for one. */
import { expect } from "vitest";
import { database } from "#lib/platform/database.ts";
import type { Refusal } from "#lib/platform/refusal.ts";

const counts = async () => {
  const reader = database();
  return {
    specimens: await reader.specimen.count(),
    series: await reader.series.count(),
    shown: await reader.shown.count(),
    files: await reader.storedFile.count(),
    entries: await reader.auditEntry.count(),
  };
};

/** The refusal of an attempt that must have changed nothing in the catalogue. */
export async function refusalOf(attempt: () => Promise<unknown>): Promise<Refusal> {
  const before = await counts();
  const thrown = await attempt().then(
    () => null,
    (error: Refusal) => error,
  );
  expect(thrown?.name).toBe("Refusal");
  expect(await counts()).toEqual(before);
  return thrown as Refusal;
}

/** Its issues as "path: message". */
export async function issuesOf(attempt: () => Promise<unknown>): Promise<string[]> {
  return (await refusalOf(attempt)).issues.map(({ path, message }) => `${path}: ${message}`);
}

/** What one act wrote into the audit about one table, in order. */
export async function entriesOf(tableName: string, act: string) {
  return await database().auditEntry.findMany({ where: { tableName, act }, orderBy: { id: "asc" } });
}
