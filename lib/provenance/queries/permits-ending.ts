/** Permits that end, by their own day or because they are to be taken back: what somebody should see to in time. */
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { permitOn } from "#lib/provenance/permit-standing.ts";
import { type Page, rowsAsked } from "#lib/provenance/queries.ts";
import type { PermitInput } from "#lib/provenance/schema.ts";
import { toPermit } from "#lib/provenance/stored.ts";

export type ExpiringPermit = PermitInput & {
  id: string;
  specimenId: string;
  accessionNumber: string;
  title: string;
};

/**
 * Permits whose last day is before the given one, those that have lapsed already
 * included, the earliest first. One that is to be taken back ends the day before;
 * one that was taken back already is no longer told of.
 */
export async function listPermitsExpiring(
  viewer: Viewer,
  filter: { before: DateText },
  page: Page = {},
): Promise<{ rows: ExpiringPermit[]; next: string | null }> {
  requireSight(viewer, "consentScopes");
  const limit = rowsAsked(page);
  const day = today();
  const [, afterDay, afterId] = /^(\d{4}-\d{2}-\d{2})\/(.+)$/.exec(page.after ?? "") ?? [];
  const hasKey = DateText.safeParse(afterDay).success && Id.safeParse(afterId).success;
  const key = hasKey ? { day: afterDay, id: afterId } : { day: null, id: null };
  const ending = await database().$queryRaw<{ id: string }[]>`
    SELECT id::text FROM permit CROSS JOIN LATERAL (SELECT LEAST(valid_until, withdrawn_on - 1) AS last_day) AS ends
    WHERE (valid_until < ${filter.before}::date OR withdrawn_on <= ${filter.before}::date)
      AND (withdrawn_on IS NULL OR withdrawn_on > ${day}::date)
      AND (${key.day}::date IS NULL OR (last_day, id) > (${key.day}::date, ${key.id}::uuid))
    ORDER BY last_day, id
    LIMIT ${limit + 1}`;
  const found = await database().permit.findMany({
    where: { id: { in: ending.map(({ id }) => id) } },
    include: { specimen: { select: { accessionNumber: true, title: true } } },
  });
  const rowOf = new Map(found.map((row) => [row.id, row]));
  const rows = ending.slice(0, limit).flatMap(({ id }): ExpiringPermit[] => {
    const row = rowOf.get(id);
    const counts = row && permitOn(toPermit(row), day);
    return counts ? [{ ...counts, id, specimenId: row.specimenId, ...row.specimen }] : [];
  });
  const last = rows.at(-1);
  return { rows, next: ending.length > limit && last ? `${last.validUntil}/${last.id}` : null };
}
