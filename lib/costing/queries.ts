/**
 * The centre's fee scale: the version that counts on a day, and all versions with
 * the day from which each counts. A version is never changed; a change is a new one.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { FeeScale } from "#lib/costing/schema.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, toDate, toDateText } from "#lib/platform/dates.ts";

export type FeeScaleVersion = {
  version: number;
  validFrom: DateText;
  setAt: string;
  setBy: string;
  scale: FeeScale;
  /** Whether it is the one that counts today. */
  counts: boolean;
};

/** The version that counts on a day: the newest of those that have begun. Null before any has. */
export async function feeScaleOn(
  reader: Database | Transaction,
  day: DateText,
): Promise<{ version: number; scale: FeeScale } | null> {
  const row = await reader.feeScale.findFirst({
    where: { validFrom: { lte: toDate(day) } },
    orderBy: { version: "desc" },
  });
  return row && { version: row.version, scale: FeeScale.parse(row.content) };
}

const toVersion = (
  row: Prisma.FeeScaleGetPayload<object>,
  counting: number | undefined,
  names: ReadonlyMap<string, string>,
): FeeScaleVersion => ({
  version: row.version,
  validFrom: toDateText(row.validFrom),
  setAt: row.setAt.toISOString(),
  setBy: names.get(row.accountId) ?? "",
  scale: FeeScale.parse(row.content),
  counts: row.version === counting,
});

/** All versions, the newest first. */
export async function listFeeScales(viewer: Viewer): Promise<FeeScaleVersion[]> {
  requireSight(viewer, "feeScale");
  const reader = database();
  const rows = await reader.feeScale.findMany({ orderBy: { version: "desc" }, take: 200 });
  const accounts = await reader.account.findMany({
    where: { id: { in: [...new Set(rows.map(({ accountId }) => accountId))] } },
    select: { id: true, name: true },
  });
  const day = today();
  const counting = rows.find(({ validFrom }) => toDateText(validFrom) <= day)?.version;
  const names = new Map(accounts.map(({ id, name }) => [id, name]));
  return rows.map((row) => toVersion(row, counting, names));
}
